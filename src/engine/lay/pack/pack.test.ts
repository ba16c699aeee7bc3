import { areaD, FillRule, intersectD, type PathD } from 'clipper2-ts';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { convexParts } from './convex-parts.ts';
import { type PackItem, type PackPlace, type PackProblem, type PackProgress, startPacking } from './index.ts';
import { layoutFaults } from './layout-faults.ts';
import { crossesItself, outlineBox, signedArea, tidyOutline, turn } from './outline.ts';

const outline = (...points: readonly (readonly [number, number])[]): Float64Array =>
  Float64Array.from(points.flat());
const box = (w: number, h: number): Float64Array => outline([0, 0], [w, 0], [w, h], [0, h]);
const turned = (o: Float64Array): Float64Array => o.map((v) => -v);
const item = (...outlines: readonly Float64Array[]): PackItem => ({
  variants: outlines.map((o) => ({ outline: o })),
});

/** A star-shaped outline around a middle: any angles in order, any distances, so also deep hollows. */
const randomOutline = fc
  .array(fc.double({ min: 0.2, max: 1, noNaN: true }), { minLength: 3, maxLength: 14 })
  .chain((radii) =>
    fc.record({ size: fc.double({ min: 20, max: 90, noNaN: true }), radii: fc.constant(radii) }),
  )
  .map(({ size, radii }) =>
    Float64Array.from(
      radii.flatMap((r, k) => {
        const angle = (2 * Math.PI * k) / radii.length;
        return [size * r * Math.cos(angle), size * r * Math.sin(angle)];
      }),
    ),
  )
  .filter((o) => {
    const tidy = tidyOutline(o);
    return tidy !== null && !crossesItself(tidy);
  });

function run(
  problem: PackProblem,
  evaluations: number,
  seed = 1,
  start?: readonly PackPlace[],
): PackProgress {
  const packing = startPacking(problem, { seed, evaluations, ...(start === undefined ? {} : { start }) });
  if (!packing.ok) throw new Error(packing.refusals.map(({ code }) => code).join());
  for (;;) {
    const { value, done } = packing.run.next();
    if (done === true) return value;
  }
}

function laid(problem: PackProblem, evaluations: number, seed = 1) {
  const { best } = run(problem, evaluations, seed);
  if (best === null) throw new Error('No layout was found.');
  return best;
}

/** Area that two items share, by a library that knows nothing of the search. */
function sharedArea(problem: PackProblem, places: readonly PackPlace[]): number {
  const paths = problem.items.map((each, i): PathD => {
    const place = places[i];
    const shape = place && each.variants[place.variant]?.outline;
    if (place === undefined || shape === undefined) throw new Error('An item has no place.');
    const { minX, minY } = outlineBox(shape);
    return Array.from({ length: shape.length / 2 }, (_, k) => ({
      x: (shape[2 * k] ?? 0) - minX + place.x,
      y: (shape[2 * k + 1] ?? 0) - minY + place.y,
    }));
  });
  let most = 0;
  for (const [i, a] of paths.entries()) {
    for (const b of paths.slice(i + 1)) {
      const both = intersectD([a], [b], FillRule.NonZero, 5);
      most = Math.max(most, Math.abs(areaD(both[0] ?? [])));
    }
  }
  return most;
}

describe('convex parts', () => {
  test('they cover just the outline and none has a hollow', () => {
    fc.assert(
      fc.property(randomOutline, (o) => {
        const tidy = tidyOutline(o);
        if (tidy === null) return;
        const parts = convexParts(tidy) ?? [];
        const sum = parts.reduce((total, part) => total + signedArea(part), 0);
        expect(sum).toBeCloseTo(signedArea(tidy), 6);
        for (const part of parts) {
          const count = part.length / 2;
          for (let k = 0; k < count; k++) {
            expect(turn(part, (k + count - 1) % count, k, (k + 1) % count)).toBeGreaterThanOrEqual(0);
          }
        }
      }),
      { seed: 20261125, numRuns: 150 },
    );
  });

  test('a piece like an L is two, a cross three', () => {
    const l = outline([0, 0], [3, 0], [3, 1], [1, 1], [1, 3], [0, 3]);
    expect(convexParts(l)).toHaveLength(2);
    const cross = outline(
      [1, 0],
      [2, 0],
      [2, 1],
      [3, 1],
      [3, 2],
      [2, 2],
      [2, 3],
      [1, 3],
      [1, 2],
      [0, 2],
      [0, 1],
      [1, 1],
    );
    expect(convexParts(cross)).toHaveLength(3);
  });
});

describe('layouts', () => {
  test('any outlines: a valid layout, by our own judge and by a library', () => {
    fc.assert(
      fc.property(
        fc.array(randomOutline, { minLength: 1, maxLength: 9 }),
        fc.integer({ min: 0, max: 1000 }),
        (outlines, seed) => {
          const problem = { width: 200, items: outlines.map((o) => item(o, turned(o))) };
          const best = laid(problem, 10_000, seed);
          expect(layoutFaults(problem, best.places)).toEqual([]);
          expect(sharedArea(problem, best.places)).toBeLessThan(1e-3);
        },
      ),
      { seed: 20261125, numRuns: 30 },
    );
  });

  test('four squares of half the width fill the strip without a gap', () => {
    const square = box(50, 50);
    const problem = { width: 100, items: [1, 2, 3, 4].map(() => item(square)) };
    expect(laid(problem, 40_000).length).toBeCloseTo(100, 6);
  });

  test('two halves of a square find each other', () => {
    const half = outline([0, 0], [100, 0], [0, 100]);
    const problem = { width: 100, items: [item(half, turned(half)), item(half, turned(half))] };
    expect(laid(problem, 40_000).length).toBeCloseTo(100, 4);
  });

  test('a small piece goes into the hollow of a large one', () => {
    const u = outline([0, 0], [90, 0], [90, 30], [30, 30], [30, 70], [90, 70], [90, 100], [0, 100]);
    const problem = { width: 100, items: [item(u), item(box(60, 39))] };
    expect(laid(problem, 40_000).length).toBeCloseTo(90, 6);
  });

  test('the same seed and count give the same layout, another seed another one', () => {
    const pieces = [box(31, 47), box(53, 22), outline([0, 0], [60, 10], [20, 50])];
    const problem = { width: 90, items: pieces.flatMap((o) => [item(o, turned(o)), item(o, turned(o))]) };
    expect(laid(problem, 8000, 5)).toEqual(laid(problem, 8000, 5));
    expect(laid(problem, 8000, 5).places).not.toEqual(laid(problem, 8000, 6).places);
  });

  test('more work never gives a longer layout, and the length told is the length', () => {
    const pieces = [box(31, 47), box(53, 22), outline([0, 0], [60, 10], [20, 50])];
    const problem = { width: 90, items: pieces.flatMap((o) => [item(o), item(o)]) };
    const packing = startPacking(problem, { seed: 3, evaluations: 30_000 });
    if (!packing.ok) throw new Error('It can be laid.');
    let last = Number.POSITIVE_INFINITY;
    for (;;) {
      const { value, done } = packing.run.next();
      if (value.best !== null) {
        expect(value.best.length).toBeLessThanOrEqual(last);
        last = value.best.length;
        const edge = Math.max(
          ...value.best.places.map((place, i) => {
            const shape = problem.items[i]?.variants[place.variant]?.outline ?? box(0, 0);
            const { minX, maxX } = outlineBox(shape);
            return place.x + maxX - minX;
          }),
        );
        expect(edge).toBeCloseTo(last, 9);
      }
      if (done === true) break;
    }
  });
});

describe('what an item may do', () => {
  test('a fixed item stays, the others go around it', () => {
    const problem: PackProblem = {
      width: 100,
      items: [
        { ...item(box(40, 40)), fixed: { variant: 0, x: 30, y: 30 } },
        ...[1, 2, 3, 4].map(() => item(box(28, 60))),
      ],
    };
    const best = laid(problem, 20_000);
    expect(best.places[0]).toEqual({ variant: 0, x: 30, y: 30 });
    expect(layoutFaults(problem, best.places)).toEqual([]);
    expect(sharedArea(problem, best.places)).toBeLessThan(1e-3);
  });

  test('an obstacle is gone around, and the length need not reach it', () => {
    const problem: PackProblem = {
      width: 100,
      items: [
        { ...item(box(500, 40)), fixed: { variant: 0, x: 10, y: 30 }, obstacle: true },
        item(box(60, 60)),
        item(box(60, 30)),
      ],
    };
    const best = laid(problem, 20_000);
    expect(layoutFaults(problem, best.places)).toEqual([]);
    expect(best.length).toBeCloseTo(570, 6);
    const flaw = { ...item(box(5, 5)), fixed: { variant: 0, x: 900, y: 30 }, obstacle: true as const };
    expect(laid({ width: 100, items: [flaw, item(box(60, 60))] }, 2000).length).toBeCloseTo(60, 6);
  });

  test('a small piece finds its place on a triangle of cloth', () => {
    const above = outline([-10, -10], [210, -10], [210, 0], [0, 0], [-10, 0]);
    const beyond = outline([0, 100], [200, 0], [210, 0], [210, 110], [-10, 110], [-10, 100]);
    const around = [above, beyond].map((o): PackItem => {
      const { minX, minY } = outlineBox(o);
      return { ...item(o), fixed: { variant: 0, x: minX, y: minY }, obstacle: true };
    });
    const problem: PackProblem = { width: 100, longest: 200, items: [item(box(30, 60)), ...around] };
    const best = laid(problem, 20_000);
    expect(layoutFaults(problem, best.places)).toEqual([]);
    expect(best.length).toBeCloseTo(30, 3);
  });

  test('a piece on a fold lies on it; a striped piece on its stripe', () => {
    const half: PackItem = { variants: [{ outline: box(50, 30), y: { from: 0, to: 0 } }] };
    const striped: PackItem = { variants: [{ outline: box(33, 33), x: { from: 4, to: 1000, step: 25 } }] };
    const problem: PackProblem = { width: 100, items: [half, half, striped, striped, item(box(20, 20))] };
    const best = laid(problem, 20_000);
    expect(layoutFaults(problem, best.places)).toEqual([]);
    expect(best.places.slice(0, 2).map(({ y }) => y)).toEqual([0, 0]);
    for (const { x } of best.places.slice(2, 4)) expect(((x - 4) / 25) % 1).toBeCloseTo(0, 9);
  });

  test('a cloth that ends: everything lies before its end, or nothing is told as laid', () => {
    const items = [1, 2, 3, 4].map(() => item(box(45, 45)));
    const fits = laid({ width: 100, longest: 95, items }, 60_000);
    expect(fits.length).toBeLessThanOrEqual(95);
    expect(run({ width: 100, longest: 80, items }, 5000).best).toBeNull();
  });

  test('begins from the layout that it is given', () => {
    const items = [item(box(40, 50)), item(box(40, 50))];
    const start = [
      { variant: 0, x: 0, y: 50 },
      { variant: 0, x: 0, y: 0 },
    ];
    expect(run({ width: 100, items }, 1, 1, start).best).toEqual({ places: start, length: 40 });
  });

  test('a start where an item may not lie is brought to where it may', () => {
    const folded: PackItem = { variants: [{ outline: box(40, 50), y: { from: 5, to: 5 } }] };
    const problem: PackProblem = { width: 100, longest: 60, items: [folded] };
    const { best } = run(problem, 1, 1, [{ variant: 0, x: 70, y: 0 }]);
    expect(best?.places).toEqual([{ variant: 0, x: 0, y: 5 }]);
    expect(layoutFaults(problem, best?.places ?? [])).toEqual([]);
  });
});

describe('what can not be laid, or hardly', () => {
  const codes = (problem: PackProblem): readonly string[] => {
    const packing = startPacking(problem, { seed: 1, evaluations: 10 });
    return packing.ok ? [] : packing.refusals.map(({ code }) => code);
  };

  test('no width, no area, a crossing outline, no variant, too wide, too long', () => {
    const good = item(box(10, 10));
    expect(codes({ width: 0, items: [good] })).toEqual(['no-width']);
    expect(codes({ width: Number.NaN, items: [good] })).toEqual(['no-width']);
    expect(codes({ width: 50, items: [good, item(outline([0, 0], [5, 5], [10, 10]))] })).toEqual([
      'bad-outline',
    ]);
    expect(codes({ width: 50, items: [item(outline([0, 0], [Number.NaN, 5], [1, 9]))] })).toEqual([
      'bad-outline',
    ]);
    expect(codes({ width: 50, items: [item(outline([0, 0], [30, 30], [30, 0], [0, 20]))] })).toEqual([
      'crosses-itself',
    ]);
    expect(codes({ width: 50, items: [{ variants: [] }] })).toEqual(['no-variant']);
    expect(codes({ width: 50, items: [item(box(80, 60))] })).toEqual(['too-wide']);
    expect(codes({ width: 50, longest: 70, items: [item(box(80, 40))] })).toEqual(['too-long']);
    expect(codes({ width: 50, longest: 70, items: [item(box(80, 40), box(40, 50))] })).toEqual([]);
  });

  test('nothing to lay needs no length', () => {
    expect(run({ width: 50, items: [] }, 100).best).toEqual({ places: [], length: 0 });
  });

  test('stopped at once there is a layout already', () => {
    const packing = startPacking(
      { width: 50, items: [item(box(10, 10)), item(box(20, 20))] },
      { seed: 1, evaluations: 1e9 },
    );
    if (!packing.ok) throw new Error('It can be laid.');
    expect(packing.run.next().value.best?.places).toHaveLength(2);
  });

  test('a thousand pieces have a valid layout', () => {
    const shapes = [box(40, 60), outline([0, 0], [50, 10], [30, 60], [10, 40])];
    const problem = {
      width: 1000,
      items: Array.from({ length: 1000 }, (_, k) => item(shapes[k % 2] ?? box(1, 1))),
    };
    const best = laid(problem, 3000);
    expect(layoutFaults(problem, best.places)).toEqual([]);
  });
});

describe('the judge of layouts', () => {
  const one = box(50, 50);
  const problem: PackProblem = { width: 100, items: [item(one), item(one)] };
  const codesAt = (x: number, y: number): readonly string[] =>
    layoutFaults(problem, [
      { variant: 0, x: 0, y: 0 },
      { variant: 0, x, y },
    ]).map(({ code }) => code);

  test('touching is no overlap; a tenth, an equal place, a cross are', () => {
    expect(codesAt(50, 0)).toEqual([]);
    expect(codesAt(0, 50)).toEqual([]);
    expect(codesAt(49.9, 0)).toEqual(['overlap']);
    expect(codesAt(0, 0)).toEqual(['overlap']);
    const cross = { width: 100, items: [item(box(90, 10)), item(box(10, 90))] };
    const places = [
      { variant: 0, x: 0, y: 40 },
      { variant: 0, x: 40, y: 0 },
    ];
    expect(layoutFaults(cross, places).map(({ code }) => code)).toEqual(['overlap']);
  });

  test('outside, missing, off its range', () => {
    expect(codesAt(60, 51)).toEqual(['outside']);
    expect(codesAt(-1, 50)).toEqual(['outside']);
    expect(layoutFaults(problem, [{ variant: 0, x: 0, y: 0 }]).map(({ code }) => code)).toEqual(['missing']);
    const striped: PackProblem = {
      width: 100,
      items: [{ variants: [{ outline: one, x: { from: 0, to: 90, step: 30 } }] }],
    };
    const at = (x: number) => layoutFaults(striped, [{ variant: 0, x, y: 0 }]).map(({ code }) => code);
    expect(at(30)).toEqual([]);
    expect(at(40)).toEqual(['not-allowed-there']);
  });
});
