import { areaD, FillRule, intersectD } from 'clipper2-ts';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { realDress } from '../../../tests/fixtures/real-dress.ts';
import { type Point, pathFlatten } from '../geometry/index.ts';
import { arrange } from './arrange.ts';
import { fromSheet, onSheet } from './placement.ts';
import { coveringTiles, type Tile, type TileGrid, tilesOfShape } from './tile-cover.ts';

const SEED = { seed: 20260314 };

const rectangle = (x: number, y: number, width: number, height: number): readonly Point[] => [
  { x, y },
  { x: x + width, y },
  { x: x + width, y: y + height },
  { x, y: y + height },
];

const grids: readonly TileGrid[] = [
  { width: 190, height: 277, overlap: 10 },
  { width: 195.9, height: 259.4, overlap: 10 },
  { width: 277, height: 400, overlap: 15 },
  { width: 190, height: 277, overlap: 0 },
];

/** A star-shaped outline of 5 to 14 corners, concave as often as not. */
const shape = fc
  .record({
    radii: fc.array(fc.double({ min: 20, max: 260, noNaN: true }), { minLength: 5, maxLength: 14 }),
    squeeze: fc.double({ min: 0.3, max: 1, noNaN: true }),
  })
  .map(({ radii, squeeze }): readonly Point[] =>
    radii.map((r, i) => {
      const angle = (2 * Math.PI * i) / radii.length;
      return { x: 40 + r * Math.cos(angle), y: -70 + squeeze * r * Math.sin(angle) };
    }),
  );

const shows = (tile: Tile, grid: TileGrid, p: Point): boolean => {
  const x = p.x - tile.column * (grid.width - grid.overlap);
  const y = p.y - tile.row * (grid.height - grid.overlap);
  return x >= -1e-9 && y >= -1e-9 && x <= grid.width + 1e-9 && y <= grid.height + 1e-9;
};

/** Points on the outline, 3 mm apart, and a lattice of points inside it. */
function probes(outline: readonly Point[]): readonly Point[] {
  return outline.flatMap((a, i) => {
    const b = outline[(i + 1) % outline.length] ?? a;
    const steps = Math.ceil(Math.hypot(b.x - a.x, b.y - a.y) / 3);
    return Array.from({ length: steps }, (_, n) => ({
      x: a.x + ((b.x - a.x) * n) / steps,
      y: a.y + ((b.y - a.y) * n) / steps,
    }));
  });
}

describe('tiles that show everything', () => {
  test('640 x 480 mm on a printable A4 of 190 x 277 mm, overlap 10: 4 x 2 pages', () => {
    // Worked by n = ceil((W - o) / (p - o)): ceil(630 / 180) = 4, ceil(470 / 267) = 2.
    const tiles = coveringTiles([rectangle(0, 0, 640, 480)], { width: 190, height: 277, overlap: 10 });
    expect(tiles).toHaveLength(8);
    expect(Math.max(...tiles.map((tile) => tile.column))).toBe(3);
    expect(Math.max(...tiles.map((tile) => tile.row))).toBe(1);
  });

  test('any rectangle needs ceil((W - o) / (p - o)) pages each way', () => {
    const side = fc.double({ min: 30, max: 1500, noNaN: true });
    fc.assert(
      fc.property(side, side, fc.constantFrom(...grids), (width, height, grid) => {
        const count = (length: number, page: number): number =>
          Math.max(1, Math.ceil((length - grid.overlap) / (page - grid.overlap)));
        // A rectangle that ends within the safety margin of a page's edge may get one page more.
        const nearEdge = (length: number, page: number): boolean => {
          const over = (length - grid.overlap) % (page - grid.overlap);
          return over > page - grid.overlap - 0.3 || over < 0.3;
        };
        fc.pre(!nearEdge(width, grid.width) && !nearEdge(height, grid.height));
        const tiles = coveringTiles([rectangle(0, 0, width, height)], grid);
        expect(tiles).toHaveLength(count(width, grid.width) * count(height, grid.height));
      }),
      SEED,
    );
  });

  test('a corner that only lies in an overlap costs no page', () => {
    const grid = { width: 190, height: 277, overlap: 10 };
    expect(coveringTiles([rectangle(20, 20, 168, 100)], grid)).toEqual([{ column: 0, row: 0 }]);
    expect(coveringTiles([rectangle(182, 20, 160, 100)], grid)).toEqual([{ column: 1, row: 0 }]);
  });

  test('a page wholly inside a large piece is kept', () => {
    const tiles = coveringTiles([rectangle(0, 0, 500, 800)], { width: 190, height: 277, overlap: 10 });
    expect(tiles).toContainEqual({ column: 1, row: 1 });
  });
});

describe('arranging', () => {
  const settings = { whole: false, reserved: [], roll: false };

  test('every point of every shape is shown by a kept page, and no two shapes touch', () => {
    fc.assert(
      fc.property(
        fc.array(shape, { minLength: 1, maxLength: 7 }),
        fc.constantFrom(...grids),
        (shapes, grid) => {
          const { placements, tiles } = arrange(shapes, { ...settings, grid });
          const laid = shapes.map((outline, i) => outline.map((p) => onSheet(placements[i], p)));
          for (const outline of laid) {
            for (const p of probes(outline)) expect(tiles.some((tile) => shows(tile, grid, p))).toBe(true);
          }
          for (const [i, a] of laid.entries()) {
            for (const b of laid.slice(i + 1)) {
              const shared = intersectD([[...a]], [[...b]], FillRule.NonZero, 4);
              expect(Math.abs(shared.reduce((sum, path) => sum + areaD(path), 0))).toBeLessThan(1e-3);
            }
          }
        },
      ),
      { ...SEED, numRuns: 24 },
    );
  });

  test('a placement turns by quarters and shifts, nothing else', () => {
    fc.assert(
      fc.property(shape, (outline) => {
        const { placements } = arrange([outline], {
          ...settings,
          grid: grids[0] ?? { width: 1, height: 1, overlap: 0 },
        });
        const [placement] = placements;
        if (placement === undefined) throw new Error('One shape, one placement.');
        for (const p of outline) {
          const back = fromSheet(placement, onSheet(placement, p));
          expect(Math.hypot(back.x - p.x, back.y - p.y)).toBeLessThan(1e-9);
        }
      }),
      { ...SEED, numRuns: 30 },
    );
  });

  test('is the same every time', () => {
    const shapes = [rectangle(0, 0, 300, 200), rectangle(0, 0, 90, 400), rectangle(0, 0, 120, 120)];
    const grid = { width: 190, height: 277, overlap: 10 };
    expect(arrange(shapes, { ...settings, grid })).toEqual(arrange(shapes, { ...settings, grid }));
  });

  test('small pieces share pages: eight of 80 x 120 mm go on two A4 pages', () => {
    const shapes = Array.from({ length: 8 }, () => rectangle(0, 0, 80, 120));
    const { tiles } = arrange(shapes, { ...settings, grid: { width: 190, height: 277, overlap: 10 } });
    expect(tiles).toHaveLength(2);
  });

  test('on large sheets no shape is cut by an edge and the head stays free', () => {
    fc.assert(
      fc.property(fc.array(shape, { minLength: 1, maxLength: 12 }), (shapes) => {
        const grid = { width: 821, height: 1169, overlap: 0 };
        const reserved = [{ width: 200, height: 300 }];
        const { placements, tiles } = arrange(shapes, { grid, whole: true, reserved, roll: false });
        expect(tiles).toContainEqual({ column: 0, row: 0 });
        for (const [i, outline] of shapes.entries()) {
          const laid = outline.map((p) => onSheet(placements[i], p));
          expect(tiles.some((tile) => laid.every((p) => shows(tile, grid, p)))).toBe(true);
          expect(laid.some((p) => p.x < 200 && p.y < 300)).toBe(false);
        }
      }),
      { ...SEED, numRuns: 40 },
    );
  });

  test('looks on until a dress lies on one large sheet, if the largest shapes first do not do it', () => {
    const grid = { width: 821, height: 1169, overlap: 0 };
    const shapes = realDress(60, 'gathered-skirt').map((piece) => pathFlatten(piece.cuttingLine, 0.05));
    const reserved = [{ width: 200, height: 330 }];
    expect(arrange(shapes, { ...settings, grid, whole: true, reserved }).tiles).toHaveLength(1);
  });

  test('without shapes there are no pages, or the one that bears the head', () => {
    const grid = { width: 190, height: 277, overlap: 10 };
    expect(arrange([], { ...settings, grid }).tiles).toEqual([]);
    expect(arrange([], { ...settings, grid, reserved: [{ width: 9, height: 9 }] }).tiles).toHaveLength(1);
  });
});

describe('the pages that a shape stands on', () => {
  const grid = { width: 190, height: 277, overlap: 10 };
  const [first, second] = [
    { column: 0, row: 0 },
    { column: 1, row: 0 },
  ] as const;

  test('leave out a page that would show no more than a sliver of it', () => {
    // It begins at 184 mm, in the strip from 180 to 190 that the second page shows as well.
    expect(tilesOfShape(rectangle(184, 20, 150, 100), grid, [first, second])).toEqual([second]);
    // It ends at 186 mm, in the same strip.
    expect(tilesOfShape(rectangle(20, 20, 166, 100), grid, [first, second])).toEqual([first]);
    expect(tilesOfShape(rectangle(20, 20, 180, 100), grid, [first, second])).toEqual([first, second]);
  });

  test('are pages that are printed', () => {
    // All of it lies in the strip that both pages show.
    expect(tilesOfShape(rectangle(182, 20, 6, 100), grid, [second])).toEqual([second]);
    expect(tilesOfShape(rectangle(182, 20, 6, 100), grid, [first])).toEqual([first]);
  });
});
