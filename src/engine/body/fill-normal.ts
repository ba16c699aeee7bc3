/**
 * Quantities that hang together: a multivariate normal distribution, by name. The covariance stands row by row. Made
 * anew at each keystroke of the maker's, so it is reckoned in plain loops over flat arrays.
 */
export interface Joint<K extends string> {
  readonly ids: readonly K[];
  readonly mean: readonly number[];
  readonly covariance: readonly number[];
}

/** A quantity as a sum of earlier ones and a part of its own (standard deviation `own`) that nothing else knows. */
export interface Link<K extends string> {
  readonly id: K;
  readonly mean: number;
  readonly from: readonly (readonly [id: K, times: number])[];
  readonly own: number;
}

/** Builds a joint distribution link by link; each goes by those before it only, and throws where it does not. */
export function jointOf<K extends string>(links: readonly Link<K>[]): Joint<K> {
  const n = links.length;
  const ids = links.map(({ id }) => id);
  const covariance = new Array<number>(n * n).fill(0);
  const at = (i: number, j: number): number => covariance[i * n + j] ?? 0;
  links.forEach(({ from, own }, row) => {
    const times = from.map(([id, by]) => [placeOf(ids.slice(0, row), id), by] as const);
    for (let i = 0; i < row; i++) {
      let sum = 0;
      for (const [j, by] of times) sum += by * at(j, i);
      covariance[row * n + i] = sum;
      covariance[i * n + row] = sum;
    }
    covariance[row * n + row] = times.reduce((sum, [j, by]) => sum + by * at(row, j), own ** 2);
  });
  return { ids, mean: links.map(({ mean }) => mean), covariance };
}

/** Below this a variance is none: what is left of a known quantity by the rounding of sums. */
const NOTHING = 1e-10;

/** The distribution of all when some are known to be so. What never varied, or was known before, changes nothing. */
export function conditioned<K extends string>(
  { ids, ...joint }: Joint<K>,
  known: readonly (readonly [K, number])[],
): Joint<K> {
  const n = ids.length;
  const mean = [...joint.mean];
  const covariance = [...joint.covariance];
  for (const [id, value] of known) {
    const place = placeOf(ids, id);
    const line = covariance.slice(place * n, place * n + n);
    const variance = line[place] ?? 0;
    if (variance < NOTHING) continue;
    const away = value - (mean[place] ?? 0);
    for (let i = 0; i < n; i++) {
      const share = (line[i] ?? 0) / variance;
      if (share === 0) continue;
      mean[i] = (mean[i] ?? 0) + share * away;
      for (let j = 0; j < n; j++)
        covariance[i * n + j] = (covariance[i * n + j] ?? 0) - share * (line[j] ?? 0);
    }
  }
  return { ids, mean, covariance };
}

export function meanOf<K extends string>({ ids, mean }: Joint<K>, id: K): number {
  return mean[placeOf(ids, id)] ?? Number.NaN;
}

export function covarianceOf<K extends string>({ ids, covariance }: Joint<K>, a: K, b: K): number {
  return covariance[placeOf(ids, a) * ids.length + placeOf(ids, b)] ?? Number.NaN;
}

/** The standard deviation; never below nothing by rounding. */
export function deviationOf<K extends string>(joint: Joint<K>, id: K): number {
  return Math.sqrt(Math.max(covarianceOf(joint, id, id), 0));
}

function placeOf<K extends string>(ids: readonly K[], id: K): number {
  const place = ids.indexOf(id);
  if (place < 0) throw new Error(`${id} is not in the distribution`);
  return place;
}

/** The lower triangle L with L Lᵀ = the matrix, which must be positive definite; throws where it is not. */
export function choleskyOf(matrix: readonly (readonly number[])[]): readonly (readonly number[])[] {
  const lower: number[][] = [];
  matrix.forEach((line, i) => {
    const row: number[] = [];
    for (let j = 0; j <= i; j++) {
      const other = j === i ? row : (lower[j] ?? []);
      let rest = line[j] ?? 0;
      for (let k = 0; k < j; k++) rest -= (row[k] ?? 0) * (other[k] ?? 0);
      if (j === i && !(rest > 0)) throw new Error('Not positive definite');
      row.push(j === i ? Math.sqrt(rest) : rest / (other[j] ?? 1));
    }
    lower.push(row);
  });
  return lower;
}

/** The inverse of a positive definite matrix. */
export function inverseOf(matrix: readonly (readonly number[])[]): readonly (readonly number[])[] {
  const lower = choleskyOf(matrix);
  const n = matrix.length;
  const columns = matrix.map((_, unit) => {
    const y: number[] = [];
    for (let i = 0; i < n; i++) {
      let rest = i === unit ? 1 : 0;
      for (let k = 0; k < i; k++) rest -= (lower[i]?.[k] ?? 0) * (y[k] ?? 0);
      y.push(rest / (lower[i]?.[i] ?? 1));
    }
    const x = new Array<number>(n).fill(0);
    for (let i = n - 1; i >= 0; i--) {
      let rest = y[i] ?? 0;
      for (let k = i + 1; k < n; k++) rest -= (lower[k]?.[i] ?? 0) * (x[k] ?? 0);
      x[i] = rest / (lower[i]?.[i] ?? 1);
    }
    return x;
  });
  // Symmetric: its columns are its rows.
  return columns;
}
