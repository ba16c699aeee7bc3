/**
 * A growth reference of one sex: power L, median M and coefficient of variation S at even steps of age (months).
 * An L that is the same at every age stands once.
 */
export interface LmsTable {
  readonly from: number;
  readonly step: number;
  readonly L: readonly number[];
  readonly M: readonly number[];
  readonly S: readonly number[];
}

export interface Lms {
  readonly L: number;
  readonly M: number;
  readonly S: number;
}

/**
 * How values beyond 3 standard deviations are reckoned. `formula`: as all others (CDC 2000, girth references).
 * `straight`: each further standard deviation is as wide as that between 2 and 3, the restricted application of the
 * formula in WHO Child Growth Standards 2006 (methods, chapter 7) and WHO Reference 2007 for weight, BMI and arm girth.
 */
export type LmsTails = 'formula' | 'straight';

/** Youngest and oldest age of a table, months. */
export function lmsAges({ from, step, M }: LmsTable): readonly [number, number] {
  return [from, from + step * (M.length - 1)];
}

/** L, M and S at an age; straight between two ages of the table, as WHO's and CDC's own programs do. Throws outside it. */
export function lmsAt(table: LmsTable, ageMonths: number): Lms {
  const [least, most] = lmsAges(table);
  if (!(ageMonths >= least && ageMonths <= most))
    throw new Error(`No growth reference at ${ageMonths} months`);
  const place = (ageMonths - least) / table.step;
  const before = Math.floor(place);
  const share = place - before;
  const read = (column: readonly number[]): number => {
    const from = column[before] ?? column[0] ?? Number.NaN;
    return from + share * ((column[before + 1] ?? from) - from);
  };
  return { L: read(table.L), M: read(table.M), S: read(table.S) };
}

/** The value `z` standard deviations from the median. */
export function lmsValue(lms: Lms, z: number, tails: LmsTails): number {
  if (tails === 'formula' || Math.abs(z) <= 3) return formulaValue(lms, z);
  const side = Math.sign(z);
  const third = formulaValue(lms, 3 * side);
  return third + (Math.abs(z) - 3) * (third - formulaValue(lms, 2 * side));
}

/** How many standard deviations a value lies from the median; the inverse of `lmsValue`. */
export function lmsZ(lms: Lms, value: number, tails: LmsTails): number {
  const z = formulaZ(lms, value);
  if (tails === 'formula' || Math.abs(z) <= 3) return z;
  const side = Math.sign(z);
  const third = formulaValue(lms, 3 * side);
  return side * (3 + (value - third) / (third - formulaValue(lms, 2 * side)));
}

/** T. J. Cole and P. J. Green, Statistics in Medicine 1992;11:1305-1319. Nothing below zero where the power has none. */
function formulaValue({ L, M, S }: Lms, z: number): number {
  return L === 0 ? M * Math.exp(S * z) : M * Math.max(1 + L * S * z, 0) ** (1 / L);
}

function formulaZ({ L, M, S }: Lms, value: number): number {
  return L === 0 ? Math.log(value / M) / S : ((value / M) ** L - 1) / (L * S);
}
