/**
 * Real roots on 0..1 of a polynomial given by its Bernstein coefficients.
 * The number of sign changes in the coefficients bounds the number of roots, so an interval with none is
 * dropped, one with a single change holds one root, and any other is halved. Ends count as roots only when
 * the polynomial changes its sign there; touching without crossing may be missed. Roots to about 1e-14.
 */
export function bernsteinRoots(coefficients: readonly number[]): number[] {
  const roots: number[] = [];
  collect(coefficients, 0, 1, 0, roots);
  return roots;
}

function collect(c: readonly number[], low: number, high: number, depth: number, roots: number[]): void {
  const changes = signChanges(c);
  if (changes === 0) return;
  if (changes === 1 || depth > 40) {
    roots.push(low + (high - low) * singleRoot(c));
    return;
  }
  const [first, second] = halves(c);
  const middle = (low + high) / 2;
  collect(first, low, middle, depth + 1, roots);
  collect(second, middle, high, depth + 1, roots);
}

function signChanges(c: readonly number[]): number {
  let changes = 0;
  let last = 0;
  for (const value of c) {
    // A zero counts with what follows it, so a root on the border of two halves is found exactly once.
    const sign = value < 0 ? -1 : 1;
    if (last !== 0 && sign !== last) changes++;
    last = sign;
  }
  return changes;
}

function halves(c: readonly number[]): [number[], number[]] {
  const work = [...c];
  const first: number[] = [work[0] ?? 0];
  const second: number[] = [work[work.length - 1] ?? 0];
  for (let n = work.length - 1; n > 0; n--) {
    for (let i = 0; i < n; i++) work[i] = ((work[i] ?? 0) + (work[i + 1] ?? 0)) / 2;
    first.push(work[0] ?? 0);
    second.unshift(work[n - 1] ?? 0);
  }
  return [first, second];
}

function valueAt(c: readonly number[], t: number): number {
  const work = [...c];
  for (let n = work.length - 1; n > 0; n--) {
    for (let i = 0; i < n; i++) work[i] = (work[i] ?? 0) * (1 - t) + (work[i + 1] ?? 0) * t;
  }
  return work[0] ?? 0;
}

/**
 * False position with the Illinois change, which never leaves its bracket. An end where the polynomial is
 * zero counts as positive, as in `signChanges`, so that it cannot hide a root further in.
 */
function singleRoot(c: readonly number[]): number {
  let a = 0;
  let b = 1;
  let fa = c[0] ?? 0;
  let fb = c[c.length - 1] ?? 0;
  let side = 0;
  for (let i = 0; i < 120 && b - a > 1e-15; i++) {
    let t = (a * fb - b * fa) / (fb - fa);
    // Now and then a plain halving, so that a slow approach from one side cannot last.
    if (i % 4 === 3 || !(t > a && t < b)) t = (a + b) / 2;
    const f = valueAt(c, t);
    if (f === 0) return t;
    if (f < 0 === fa < 0) {
      a = t;
      fa = f;
      if (side === -1) fb /= 2;
      side = -1;
    } else {
      b = t;
      fb = f;
      if (side === 1) fa /= 2;
      side = 1;
    }
  }
  return (a + b) / 2;
}
