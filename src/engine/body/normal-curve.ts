/**
 * Of a hundred children, how many lie below z standard deviations. Error below 1.5e-7 of one child in one (M.
 * Abramowitz and I. A. Stegun, Handbook of Mathematical Functions, 1964, formula 7.1.26).
 */
export function centileOf(z: number): number {
  const x = Math.abs(z) / Math.SQRT2;
  const t = 1 / (1 + 0.3275911 * x);
  const [a, b, c, d, e] = [0.254829592, -0.284496736, 1.421413741, -1.453152027, 1.061405429];
  const tail = (t * (a + t * (b + t * (c + t * (d + t * e)))) * Math.exp(-x * x)) / 2;
  return 100 * (z < 0 ? tail : 1 - tail);
}

/** The z below which a centile (more than 0, less than 100) of the children lie; the inverse of `centileOf`. */
export function zOfCentile(centile: number): number {
  let [low, high] = [-9, 9];
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (centileOf(middle) < centile) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** 90 children of 100 lie within this many standard deviations on both sides. */
export const NINETY_PERCENT = 1.6449;
