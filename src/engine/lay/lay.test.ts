import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  bodiceBack,
  bodiceFront,
  bowKnot,
  dressOf,
  skirtPanel,
  yokeFront,
} from '../../../tests/fixtures/cut-pieces.ts';
import { pathBounds } from '../geometry/index.ts';
import { MM_PER_INCH } from '../units/index.ts';
import {
  type Cloth,
  formatSellingLength,
  layInRows,
  lengthToBuy,
  roundUpToUnit,
  SELLING_UNITS,
  type SellingUnit,
} from './index.ts';

const SATIN: Cloth = { name: 'ivory satin', usableWidth: 1100, shrinkage: 0, unit: 'ten-centimetres' };
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

describe('rows of pieces', () => {
  const pieces = dressOf();
  const result = layInRows(pieces, SATIN);
  const lay = result.ok ? result.lay : null;

  test('every copy is laid once, within the cloth, and no two boxes touch', () => {
    if (lay === null) throw new Error('The pieces fit.');
    for (const [i, piece] of pieces.entries()) {
      expect(lay.laid.filter((laid) => laid.index === i)).toHaveLength(piece.piece.cutting.copies);
    }
    for (const [i, { at, shape }] of lay.laid.entries()) {
      expect(at.x).toBeGreaterThanOrEqual(0);
      expect(at.x + shape.width).toBeLessThanOrEqual(SATIN.usableWidth + 1e-9);
      expect(at.y + shape.length).toBeLessThanOrEqual(lay.length + 1e-9);
      for (const other of lay.laid.slice(i + 1)) {
        const apartX = at.x + shape.width <= other.at.x || other.at.x + other.shape.width <= at.x;
        const apartY = at.y + shape.length <= other.at.y || other.at.y + other.shape.length <= at.y;
        expect(apartX || apartY).toBe(true);
      }
    }
    expect(lay.lengthToBuy).toBeGreaterThanOrEqual(lay.length);
  });

  test('a piece on the fold is laid opened out, twice as wide', () => {
    const front = bodiceFront();
    const box = pathBounds(front.cuttingLine);
    const laid = layInRows([front], SATIN);
    if (!laid.ok) throw new Error('It fits.');
    expect(laid.lay.laid[0]?.shape.width).toBeCloseTo(2 * (box.maxX - box.minX), 6);
    expect(laid.lay.length).toBeCloseTo(box.maxY - box.minY, 6);
  });

  test('of a pair the second piece is turned over', () => {
    const laid = layInRows([bodiceBack()], SATIN);
    if (!laid.ok) throw new Error('It fits.');
    const [first, second] = laid.lay.laid.map(({ shape }) => shape.outlines[0]?.segments[0].from);
    expect(second?.x).not.toBeCloseTo(first?.x ?? 0, 1);
    expect(second?.y).toBeCloseTo(first?.y ?? 0, 9);
  });

  test('the grain runs along the cloth: a piece drawn on its side lies as the upright one', () => {
    const knot = bowKnot();
    const sideways = {
      ...knot,
      piece: { ...knot.piece, grain: { from: { x: 10, y: 35 }, to: { x: 30, y: 35 } } },
    };
    const upright = layInRows([knot], SATIN);
    const turned = layInRows([sideways], SATIN);
    if (!upright.ok || !turned.ok) throw new Error('They fit.');
    expect(turned.lay.length).toBeCloseTo(upright.lay.laid[0]?.shape.width ?? 0, 6);
  });

  test('a piece wider than the cloth is named with both widths', () => {
    const narrow = { ...SATIN, usableWidth: 600 };
    const laid = layInRows([skirtPanel(330, 420), yokeFront()], narrow);
    if (laid.ok) throw new Error('It does not fit.');
    expect(laid.problems).toHaveLength(1);
    expect(laid.problems[0]?.code).toBe('lay.wider-than-cloth');
    expect(laid.problems[0]?.values.piece).toBe('Skirt front');
    expect(laid.problems[0]?.values.width.mm).toBeCloseTo(2 * 345, 0);
    expect(laid.problems[0]?.values.usable.mm).toBe(600);
  });

  test('nothing to cut needs no cloth', () => {
    expect(layInRows([], SATIN)).toEqual({ ok: true, lay: { laid: [], length: 0, lengthToBuy: 0 } });
  });
});
