import { MM_PER_INCH } from '../units/index.ts';

/**
 * The steps in which shops sell cloth by length: 1/8 yd (4 1/2 in) or 1/4 yd in the United States, 10 cm or half a
 * metre in the United Kingdom and Europe (common practice, no source). The yard is 36 in, exactly 914.4 mm.
 */
export const SELLING_UNITS = {
  'eighth-yard': { step: (36 * MM_PER_INCH) / 8, perWhole: 8, symbol: 'yd' },
  'quarter-yard': { step: (36 * MM_PER_INCH) / 4, perWhole: 4, symbol: 'yd' },
  'ten-centimetres': { step: 100, perWhole: 10, symbol: 'm' },
  'half-metre': { step: 500, perWhole: 2, symbol: 'm' },
} as const satisfies Record<string, { step: number; perWhole: number; symbol: 'yd' | 'm' }>;

export type SellingUnit = keyof typeof SELLING_UNITS;

/** A length that is a whole number of steps but for rounding errors is not rounded up to the next, mm. */
const FLOAT_SLACK = 1e-6;

/** The shop's length that is at least `mm`; never down, as cloth that is short is wasted. */
export function roundUpToUnit(mm: number, unit: SellingUnit): number {
  const { step } = SELLING_UNITS[unit];
  return Math.max(0, Math.ceil((mm - FLOAT_SLACK) / step)) * step;
}

/** `1 5/8 yd`, `2.4 m`: a length that `roundUpToUnit` gave, as it is asked for in the shop. */
export function formatSellingLength(mm: number, unit: SellingUnit): string {
  const { step, perWhole, symbol } = SELLING_UNITS[unit];
  const steps = Math.round(mm / step);
  if (symbol === 'm') return `${steps / perWhole} m`;
  const whole = Math.floor(steps / perWhole);
  const rest = steps % perWhole;
  if (rest === 0) return `${whole} yd`;
  const shared = [4, 2].find((n) => rest % n === 0 && perWhole % n === 0) ?? 1;
  const fraction = `${rest / shared}/${perWhole / shared}`;
  return whole === 0 ? `${fraction} yd` : `${whole} ${fraction} yd`;
}
