import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { GROWTH_TABLES } from './growth-tables.ts';
import { type LmsTails, lmsAt, lmsValue, lmsZ } from './lms.ts';
import { centileOf, zOfCentile } from './normal-curve.ts';

const tails = fc.constantFrom<LmsTails>('formula', 'straight');
const reference = fc.record({
  L: fc.double({ min: -2.5, max: 2.6, noNaN: true }).map((power) => Math.round(power * 100) / 100),
  M: fc.double({ min: 3, max: 1700, noNaN: true }),
  S: fc.double({ min: 0.03, max: 0.08, noNaN: true }),
});

describe('LMS', () => {
  it('value and z are the inverse of each other', () => {
    fc.assert(
      fc.property(reference, fc.double({ min: -3.2, max: 3.2, noNaN: true }), tails, (lms, z, how) => {
        expect(lmsZ(lms, lmsValue(lms, z, how), how)).toBeCloseTo(z, 6);
      }),
      { seed: 20261125, numRuns: 1000 },
    );
  });

  it('rises with z, also across 3 standard deviations', () => {
    fc.assert(
      fc.property(reference, tails, (lms, how) => {
        for (let z = -3.5; z < 3.5; z += 0.1) {
          expect(lmsValue(lms, z + 0.1, how)).toBeGreaterThan(lmsValue(lms, z, how));
        }
      }),
      { seed: 20261126, numRuns: 200 },
    );
  });

  it('beyond 3 the straight tails go on by the step from 2 to 3', () => {
    // Printed columns of the WHO for the weight of girls of 60 months: +2 SD 24.9 (from memory), +3 SD 29.5 kg.
    const lms = lmsAt(GROWTH_TABLES.whoWeight.girl, 60);
    expect(lmsValue(lms, 3, 'straight')).toBeCloseTo(29.5, 0);
    expect(Math.abs(lmsValue(lms, 4, 'straight') - (29.5 + 29.5 - 24.9))).toBeLessThan(0.15);
    expect(lmsValue(lms, 4, 'formula')).toBeGreaterThan(34.6);
  });

  it('reads straight between two ages, and throws outside the table', () => {
    const table = { from: 6, step: 6, L: [1], M: [100, 110], S: [0.03, 0.05] };
    const { L, M, S } = lmsAt(table, 9);
    expect([L, M]).toEqual([1, 105]);
    expect(S).toBeCloseTo(0.04, 12);
    expect(() => lmsAt(table, 12.1)).toThrow();
    expect(() => lmsAt(table, 5.9)).toThrow();
  });
});

describe('the normal curve', () => {
  // Standard normal distribution, as in every statistical table.
  it.each([
    [-1.880794, 3],
    [-1.644854, 5],
    [-1.036433, 15],
    [0, 50],
    [0.6744898, 75],
    [1.959964, 97.5],
  ])('%d is centile %d', (z, centile) => {
    expect(centileOf(z)).toBeCloseTo(centile, 4);
    expect(zOfCentile(centile)).toBeCloseTo(z, 4);
  });
});
