import fc from 'fast-check';
import { expect, it } from 'vitest';
import { type Curve, isBeyond, readCurve, readCurveBackwards, readCurveWithin } from './curve.ts';

const rising: Curve = [
  [0, 10],
  [10, 20],
  [20, 50],
];

it('passes through its points, straight between and beyond them', () => {
  expect(readCurve(rising, 10).y).toBe(20);
  expect(readCurve(rising, 15)).toEqual({ y: 35, slope: 3 });
  expect(readCurve(rising, -10)).toEqual({ y: 0, slope: 1 });
  expect(readCurve(rising, 30)).toEqual({ y: 80, slope: 3 });
});

it('can stay at its end values instead', () => {
  expect(readCurveWithin(rising, 30)).toBe(50);
  expect(readCurveWithin(rising, -5)).toBe(10);
});

it('knows where it ends', () => {
  expect([-0.1, 0, 20, 20.1].map((x) => isBeyond(rising, x))).toEqual([true, false, false, true]);
});

it('reads backwards what it reads forwards, and stops at its ends', () => {
  fc.assert(
    fc.property(fc.double({ min: 0, max: 20, noNaN: true }), (x) => {
      expect(readCurveBackwards(rising, readCurve(rising, x).y).x).toBeCloseTo(x, 9);
    }),
    { seed: 20260502 },
  );
  expect(readCurveBackwards(rising, 100).x).toBe(20);
});
