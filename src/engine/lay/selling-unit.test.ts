import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { MM_PER_INCH } from '../units/index.ts';
import { formatSellingLength, lengthToBuy, roundUpToUnit, SELLING_UNITS, type SellingUnit } from './index.ts';

const units = Object.keys(SELLING_UNITS) as SellingUnit[];

describe('what the shop sells', () => {
  test('2.34 m sold by 10 cm: 2.4 m', () => {
    const bought = roundUpToUnit(2340, 'ten-centimetres');
    expect(bought).toBeCloseTo(2400, 9);
    expect(formatSellingLength(bought, 'ten-centimetres')).toBe('2.4 m');
  });

  test('55 in by 1/8 yd: 1 5/8 yd (58 1/2 in); by 1/4 yd: 1 3/4 yd', () => {
    const eighths = roundUpToUnit(55 * MM_PER_INCH, 'eighth-yard');
    expect(eighths / MM_PER_INCH).toBeCloseTo(58.5, 9);
    expect(formatSellingLength(eighths, 'eighth-yard')).toBe('1 5/8 yd');
    expect(formatSellingLength(roundUpToUnit(55 * MM_PER_INCH, 'quarter-yard'), 'quarter-yard')).toBe(
      '1 3/4 yd',
    );
  });

  test('240 cm of a cloth that shrinks by 3 %: 247.4 cm, so 250 cm', () => {
    expect(2400 / (1 - 0.03)).toBeCloseTo(2474, 0);
    expect(lengthToBuy(2400, { shrinkage: 0.03, unit: 'ten-centimetres' })).toBeCloseTo(2500, 9);
  });

  test('an eighth of a yard is 11.43 cm', () => {
    expect(SELLING_UNITS['eighth-yard'].step).toBeCloseTo(114.3, 9);
  });

  test('never down, and never a whole step too much', () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 20_000, noNaN: true }), fc.constantFrom(...units), (mm, unit) => {
        const bought = roundUpToUnit(mm, unit);
        expect(bought).toBeGreaterThanOrEqual(mm - 1e-5);
        expect(bought - mm).toBeLessThan(SELLING_UNITS[unit].step);
      }),
      { seed: 20260314 },
    );
  });

  test('whole units stay whole: twelve eighths are 1 1/2 yd, ten steps of 10 cm are 1 m', () => {
    const { step } = SELLING_UNITS['eighth-yard'];
    expect(formatSellingLength(roundUpToUnit(12 * step, 'eighth-yard'), 'eighth-yard')).toBe('1 1/2 yd');
    expect(formatSellingLength(8 * step, 'eighth-yard')).toBe('1 yd');
    expect(formatSellingLength(3 * step, 'eighth-yard')).toBe('3/8 yd');
    expect(formatSellingLength(roundUpToUnit(1000, 'ten-centimetres'), 'ten-centimetres')).toBe('1 m');
  });

  test('cloth that shrinks to nothing is a mistake of the caller', () => {
    expect(() => lengthToBuy(100, { shrinkage: 1, unit: 'half-metre' })).toThrow();
  });
});
