/** Plain arithmetic on closed outlines x0, y0, x1, y1, ...; cloth lies on the left where the area is positive. */

export interface OutlineBox {
  readonly minX: number;
  readonly minY: number;
  readonly maxX: number;
  readonly maxY: number;
}

export function outlineBox(outline: Float64Array): OutlineBox {
  let minX = Number.POSITIVE_INFINITY;
  let minY = Number.POSITIVE_INFINITY;
  let maxX = Number.NEGATIVE_INFINITY;
  let maxY = Number.NEGATIVE_INFINITY;
  for (let i = 0; i + 1 < outline.length; i += 2) {
    const x = at(outline, i);
    const y = at(outline, i + 1);
    if (x < minX) minX = x;
    if (x > maxX) maxX = x;
    if (y < minY) minY = y;
    if (y > maxY) maxY = y;
  }
  return { minX, minY, maxX, maxY };
}

/** Twice the signed area would be the shoelace sum; this is the area itself, positive where x turns towards y. */
export function signedArea(outline: Float64Array): number {
  let sum = 0;
  for (let i = 0, j = outline.length - 2; i < outline.length; j = i, i += 2) {
    sum += at(outline, j) * at(outline, i + 1) - at(outline, i) * at(outline, j + 1);
  }
  return sum / 2;
}

/**
 * The same outline with positive area, its box at the origin, without points that repeat or lie on the line between
 * their neighbours. Null where nothing with an area is left or a number is not finite.
 */
export function tidyOutline(outline: Float64Array): Float64Array | null {
  if (outline.length < 6 || outline.length % 2 !== 0 || !outline.every(Number.isFinite)) return null;
  const { minX, minY, maxX, maxY } = outlineBox(outline);
  const size = Math.max(maxX - minX, maxY - minY);
  const area = signedArea(outline);
  if (!(Math.abs(area) > size * size * 1e-9)) return null;
  const xs: number[] = [];
  const ys: number[] = [];
  const count = outline.length / 2;
  for (let k = 0; k < count; k++) {
    const i = area > 0 ? k : count - 1 - k;
    xs.push(at(outline, 2 * i) - minX);
    ys.push(at(outline, 2 * i + 1) - minY);
  }
  dropPlainPoints(xs, ys, size * 1e-9);
  if (xs.length < 3) return null;
  const tidy = new Float64Array(2 * xs.length);
  xs.forEach((x, k) => {
    tidy[2 * k] = x;
    tidy[2 * k + 1] = ys[k] ?? 0;
  });
  return tidy;
}

function dropPlainPoints(xs: number[], ys: number[], least: number): void {
  for (let k = 0, kept = 0; xs.length >= 3 && kept < xs.length; ) {
    const [px, py] = pointOf(xs, ys, k - 1);
    const [qx, qy] = pointOf(xs, ys, k);
    const [rx, ry] = pointOf(xs, ys, k + 1);
    const long = Math.sqrt((rx - px) * (rx - px) + (ry - py) * (ry - py));
    const off = Math.abs((rx - px) * (qy - py) - (ry - py) * (qx - px));
    const near = Math.abs(qx - px) + Math.abs(qy - py) <= least;
    const between = (qx - px) * (rx - qx) + (qy - py) * (ry - qy) >= 0;
    if (near || (between && off <= least * long)) {
      xs.splice(k % xs.length, 1);
      ys.splice(k % ys.length, 1);
      k = Math.max(0, (k % Math.max(1, xs.length)) - 1);
      kept = 0;
    } else {
      k++;
      kept++;
    }
  }
}

function pointOf(xs: readonly number[], ys: readonly number[], k: number): readonly [number, number] {
  const i = (k + xs.length) % xs.length;
  return [xs[i] ?? 0, ys[i] ?? 0];
}

/** Whether two sides of the outline that are not neighbours meet. */
export function crossesItself(outline: Float64Array): boolean {
  const count = outline.length / 2;
  for (let i = 0; i < count; i++) {
    for (let j = i + 2; j < count; j++) {
      if (i === 0 && j === count - 1) continue;
      if (sidesCross(outline, i, (i + 1) % count, j, (j + 1) % count)) return true;
    }
  }
  return false;
}

function sidesCross(o: Float64Array, a: number, b: number, c: number, d: number): boolean {
  return turn(o, a, b, c) * turn(o, a, b, d) < 0 && turn(o, c, d, a) * turn(o, c, d, b) < 0;
}

/** Positive where the corner a, b, c of the outline turns the way of a positive area. */
export function turn(o: Float64Array, a: number, b: number, c: number): number {
  const ax = at(o, 2 * a);
  const ay = at(o, 2 * a + 1);
  return (at(o, 2 * b) - ax) * (at(o, 2 * c + 1) - ay) - (at(o, 2 * b + 1) - ay) * (at(o, 2 * c) - ax);
}

/** Area of the smallest outline without hollows around the points. */
export function hullArea(outline: Float64Array): number {
  const order = Array.from({ length: outline.length / 2 }, (_, k) => k).sort(
    (a, b) => at(outline, 2 * a) - at(outline, 2 * b) || at(outline, 2 * a + 1) - at(outline, 2 * b + 1),
  );
  const half = (indices: readonly number[]): number[] => {
    const chain: number[] = [];
    for (const k of indices) {
      while (chain.length >= 2 && turn(outline, chain.at(-2) ?? 0, chain.at(-1) ?? 0, k) <= 0) chain.pop();
      chain.push(k);
    }
    return chain.slice(0, -1);
  };
  const hull = [...half(order), ...half([...order].reverse())];
  const points = new Float64Array(hull.flatMap((k) => [at(outline, 2 * k), at(outline, 2 * k + 1)]));
  return signedArea(points);
}

/** A number that is known to be there. */
export const at = (numbers: Float64Array, i: number): number => numbers[i] as number;
