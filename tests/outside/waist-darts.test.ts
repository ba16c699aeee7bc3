import { describe, expect, it } from 'vitest';
import { MM_PER_INCH } from '../../src/engine/units/index.ts';
import { dressOf } from '../dress-of.ts';

/**
 * A. van H. Wakeman, Scientific Sewing and Garment Cutting: a difference of 4 in between chest and waist wants one
 * dart and a straight back; 5 in one dart and 1 in taken out at the back; 7 in two darts and 1 in at the back.
 */
const PUBLISHED = [
  { difference: 4, front: 1, back: 0 },
  { difference: 5, front: 1, back: 1 },
  { difference: 7, front: 2, back: 1 },
];

describe('darts by the difference of chest and waist (Wakeman)', () => {
  for (const { difference, front, back } of PUBLISHED) {
    it(`${difference} in`, () => {
      const chestGirth = 760;
      const measured = { chestGirth, waistGirth: chestGirth - difference * MM_PER_INCH - 0.5 };
      const dress = dressOf({ ageMonths: 144, measured, steps: ['waist-darts'] });
      const darts = (half: string) => dress.seams.filter((seam) => seam.id.startsWith(`dart-${half}`)).length;
      expect([darts('front'), darts('back')]).toEqual([front, back]);
    });
  }
});
