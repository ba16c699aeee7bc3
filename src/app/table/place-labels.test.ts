import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Point } from '../../engine/geometry/index.ts';
import { cornersOf, type LabelPlace, type LabelWish, type Obstacle, placeLabels } from './place-labels.ts';

const SEED = { seed: 20261125 };
const point = fc.record({
  x: fc.double({ min: 0, max: 600, noNaN: true }),
  y: fc.double({ min: 0, max: 400, noNaN: true }),
});
const wishes: fc.Arbitrary<(LabelWish & { readonly places: readonly LabelPlace[] })[]> = fc
  .array(
    fc.record({
      width: fc.double({ min: 10, max: 90, noNaN: true }),
      height: fc.double({ min: 8, max: 20, noNaN: true }),
      places: fc.array(fc.record({ at: point, turn: fc.double({ min: -1.6, max: 1.6, noNaN: true }) }), {
        maxLength: 6,
      }),
    }),
    { maxLength: 40 },
  )
  .map((all) => all.map((wish, i) => ({ ...wish, key: String(i) })));

/** Judged apart from the code: by points close together, put into the box's own upright frame. */
function inside(at: Point, wish: LabelWish, place: LabelPlace): boolean {
  const [cos, sin] = [Math.cos(place.turn), Math.sin(place.turn)];
  const [dx, dy] = [at.x - place.at.x, at.y - place.at.y];
  return Math.abs(dx * cos + dy * sin) < wish.width / 2 && Math.abs(-dx * sin + dy * cos) < wish.height / 2;
}

const along = (a: Point, b: Point): readonly Point[] =>
  Array.from({ length: 60 }, (_, i) => ({
    x: a.x + ((b.x - a.x) * i) / 59,
    y: a.y + ((b.y - a.y) * i) / 59,
  }));

describe('words on the table', () => {
  it('never lie over a line or over each other', () => {
    fc.assert(
      fc.property(
        wishes,
        fc.array(fc.tuple(point, point), { maxLength: 25 }),
        (wished, lines: Obstacle[]) => {
          const placed = placeLabels(wished, lines);
          const boxes = wished.flatMap((wish) => {
            const place = placed.get(wish.key);
            return place === undefined ? [] : [{ wish, place }];
          });
          for (const { wish, place } of boxes) {
            expect(wish.places).toContain(place);
            for (const [a, b] of lines) expect(along(a, b).some((at) => inside(at, wish, place))).toBe(false);
            for (const other of boxes) {
              if (other.wish === wish) continue;
              const corners = cornersOf(other.wish, other.place);
              for (const [i, a] of corners.entries())
                expect(along(a, corners[(i + 1) % 4] ?? a).some((at) => inside(at, wish, place))).toBe(false);
            }
          }
        },
      ),
      { ...SEED, numRuns: 150 },
    );
  });

  it('take their first free place; what matters more comes first', () => {
    const at = (x: number): LabelPlace => ({ at: { x, y: 50 }, turn: 0 });
    const wish = (key: string, ...places: LabelPlace[]): LabelWish => ({
      key,
      width: 40,
      height: 12,
      places,
    });
    const placed = placeLabels(
      [wish('name', at(100)), wish('length', at(110), at(200)), wish('crowded out', at(195))],
      [
        [
          { x: 300, y: 0 },
          { x: 300, y: 100 },
        ],
      ],
    );
    expect([...placed].map(([key, place]) => [key, place.at.x])).toEqual([
      ['name', 100],
      ['length', 200],
    ]);
  });

  it('are left out where other words already say more', () => {
    const place = { at: { x: 50, y: 50 }, turn: 0 };
    const far = { at: { x: 250, y: 50 }, turn: 0 };
    const long = { key: 'long', width: 60, height: 20, places: [place] };
    const short = { key: 'short', width: 30, height: 10, places: [far], unless: 'long' };
    expect([...placeLabels([long, short], []).keys()]).toEqual(['long']);
    expect([...placeLabels([{ ...long, places: [] }, short], []).keys()]).toEqual(['short']);
  });
});
