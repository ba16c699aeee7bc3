/** What the maker reads and writes; inside, every length is in mm. */
export type UnitSystem = 'in' | 'cm';

/** Exact by definition: international inch, 1959; ISO 80000-3. */
export const MM_PER_INCH = 25.4;

const MM_PER_CENTIMETRE = 10;

/** Inches to mm. */
export function inches(n: number): number {
  return n * MM_PER_INCH;
}

/** Centimetres to mm. */
export function centimetres(n: number): number {
  return n * MM_PER_CENTIMETRE;
}
