import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pathBounds, pathMap } from '../../engine/geometry/index.ts';
import { arrange, layPieces } from './lay-pieces.ts';
import { laidSteadily } from './steady-layout.ts';
import { cutsOf, libraryDress } from './test-dress.ts';

const SEED = { seed: 20261125 };

describe('pieces on the table', () => {
  it('none overlaps another, whatever their sizes', () => {
    const size = fc.record({
      width: fc.double({ min: 1, max: 1500, noNaN: true }),
      height: fc.double({ min: 1, max: 900, noNaN: true }),
    });
    fc.assert(
      fc.property(
        fc.array(size, { minLength: 1, maxLength: 24 }),
        fc.double({ min: 0.4, max: 2.5, noNaN: true }),
        (sizes, shape) => {
          const spots = arrange(sizes, shape);
          expect(spots).toHaveLength(sizes.length);
          const boxes = spots.map(({ x, y }, i) => ({
            x,
            y,
            right: x + (sizes[i]?.width ?? 0),
            foot: y + (sizes[i]?.height ?? 0),
          }));
          for (const [i, a] of boxes.entries()) {
            expect(a.x).toBeGreaterThanOrEqual(0);
            expect(a.y).toBeGreaterThanOrEqual(0);
            for (const b of boxes.slice(i + 1))
              expect(a.right <= b.x || b.right <= a.x || a.foot <= b.y || b.foot <= a.y).toBe(true);
          }
        },
      ),
      { ...SEED, numRuns: 200 },
    );
  });

  it('lie at true size, and keep their places while a number changes a little', () => {
    const cuts = cutsOf(libraryDress('clover'));
    const laid = layPieces(cuts, 4 / 3, true);
    for (const { frame } of laid) expect(frame).toMatchObject({ a: 1, b: 0, c: 0, d: 1 });
    const wider = cutsOf(libraryDress('clover', { length: '210 mm' }));
    const again = laidSteadily(laid, wider, 4 / 3, true);
    expect(again.map(({ frame }) => frame)).toEqual(laid.map(({ frame }) => frame));
    expect(again[0]?.cut).toBe(wider[0]);
  });

  it('are laid anew when they would touch', () => {
    const laid = layPieces(cutsOf(libraryDress('clover')), 4 / 3, true);
    const longer = cutsOf(libraryDress('clover', { length: '600 mm' }));
    const again = laidSteadily(laid, longer, 4 / 3, true);
    const boxes = again.map(({ cut, frame }) => pathBounds(pathMap(cut.cuttingLine, frame)));
    for (const [i, a] of boxes.entries())
      for (const b of boxes.slice(i + 1))
        expect(a.maxX < b.minX || b.maxX < a.minX || a.maxY < b.minY || b.maxY < a.minY).toBe(true);
  });
});
