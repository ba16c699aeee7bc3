import { areaD, FillRule, intersectD } from 'clipper2-ts';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { realDress } from '../../../tests/fixtures/real-dress.ts';
import { type Point, pathFlatten } from '../geometry/index.ts';
import { finestRuler } from '../units/index.ts';
import { arrange } from './arrange.ts';
import { paperOf, printableSize } from './paper-format.ts';
import { onSheet, type Placement } from './placement.ts';
import { ruledPiece } from './ruled-piece.ts';
import { coveringTiles, type TileGrid } from './tile-cover.ts';
import { packedOnTiles } from './tile-packing.ts';

const A4: TileGrid = { ...printableSize(paperOf('a4')), overlap: paperOf('a4').overlap };

/** A half moon, as sleeves and skirts are: an arc and a smaller one in it, 50 corners. */
const moon = (radius: number, share: number): readonly Point[] => {
  const arc = (r: number): Point[] =>
    Array.from({ length: 25 }, (_, i) => ({
      x: r * Math.cos((Math.PI * i) / 24),
      y: r * Math.sin((Math.PI * i) / 24),
    }));
  return [...arc(radius), ...arc(radius * share).reverse()];
};

function judge(shapes: readonly (readonly Point[])[], placements: readonly Placement[]): void {
  const laid = shapes.map((shape, i) => shape.map((p) => onSheet(placements[i], p)));
  for (const { x, y } of laid.flat()) {
    expect(x).toBeGreaterThan(0);
    expect(y).toBeGreaterThan(0);
  }
  for (const [i, a] of laid.entries())
    for (const b of laid.slice(i + 1)) {
      const shared = intersectD([[...a]], [[...b]], FillRule.NonZero, 4);
      expect(Math.abs(shared.reduce((sum, path) => sum + areaD(path), 0))).toBeLessThan(1e-3);
    }
}

describe('shapes packed on tiles', () => {
  test('lie apart on fewer tiles than were asked for, or there is no answer', () => {
    const radius = fc.double({ min: 60, max: 240, noNaN: true });
    const shapes = fc.array(fc.record({ radius, share: fc.double({ min: 0.2, max: 0.7, noNaN: true }) }), {
      minLength: 2,
      maxLength: 6,
    });
    let found = 0;
    fc.assert(
      fc.property(shapes, fc.integer({ min: 2, max: 12 }), (wanted, most) => {
        const moons = wanted.map((w) => moon(w.radius, w.share));
        const placements = packedOnTiles(moons, A4, most, 7);
        if (placements === null) return;
        found++;
        judge(moons, placements);
        const laid = moons.map((shape, i) => shape.map((p) => onSheet(placements[i], p)));
        expect(coveringTiles(laid, A4).length).toBeLessThan(most);
      }),
      { seed: 20260314, numRuns: 10 },
    );
    expect(found).toBeGreaterThan(2);
  });

  test('are the same every time', () => {
    const moons = [moon(120, 0.5), moon(150, 0.4), moon(90, 0.3), moon(140, 0.6)];
    const first = packedOnTiles(moons, A4, 6, 7);
    expect(first).not.toBeNull();
    expect(packedOnTiles(moons, A4, 6, 7)).toEqual(first);
  });

  test('a dress needs fewer than laid piece by piece', () => {
    const shapes = realDress(60, 'gathered-skirt')
      .filter((piece) => ruledPiece(piece, finestRuler('in')) === null)
      .map((piece) => pathFlatten(piece.cuttingLine, 0.05));
    const settings = { grid: A4, whole: false, roll: false };
    // Where something is kept free the pieces are only laid one by one.
    const oneByOne = arrange(shapes, { ...settings, reserved: [{ width: 1, height: 1 }] });
    const { tiles, placements } = arrange(shapes, { ...settings, reserved: [] });
    expect(tiles.length).toBeLessThan(oneByOne.tiles.length);
    judge(shapes, placements);
  });

  test('what no block can hold is left as it is', () => {
    const full = [
      { x: 0, y: 0 },
      { x: 185, y: 0 },
      { x: 185, y: 270 },
      { x: 0, y: 270 },
    ];
    expect(packedOnTiles([full, full], A4, 2, 7)).toBeNull();
    expect(packedOnTiles([], A4, 1, 7)).toBeNull();
    expect(packedOnTiles([[{ x: 0, y: 0 }]], A4, 3, 7)).toBeNull();
  });
});
