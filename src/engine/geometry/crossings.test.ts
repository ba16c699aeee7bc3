import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { onCubic, tameCubic, wildCubic, wildPath } from '../../../tests/outside/geometry-shapes.ts';
import {
  type Cubic,
  cubic,
  distance,
  line,
  linePath,
  outlineArea,
  outlineIsClosed,
  outlineSelfCrossings,
  outlineWithoutLoops,
  type Path,
  pathAt,
  pathBounds,
  pathCrossings,
  pathLength,
  pathOf,
  pathOffset,
  pathReverse,
  pathSlice,
  pathTranslate,
  point,
} from './index.ts';

const SEED = { seed: 4711, numRuns: 150 };

/** Crossings of two finely drawn chains of points: counts those that no rounding can hide. */
function countBySamples(a: Cubic, b: Cubic, steps: number): number {
  const p = Array.from({ length: steps + 1 }, (_, i) => onCubic(a, i / steps));
  const q = Array.from({ length: steps + 1 }, (_, i) => onCubic(b, i / steps));
  let count = 0;
  for (let i = 0; i < steps; i++) {
    for (let j = 0; j < steps; j++) {
      const [a0, a1, b0, b1] = [p[i], p[i + 1], q[j], q[j + 1]];
      if (!a0 || !a1 || !b0 || !b1) continue;
      const side = (u: typeof a0, v: typeof a0, w: typeof a0) =>
        (v.x - u.x) * (w.y - u.y) - (v.y - u.y) * (w.x - u.x);
      if (side(a0, a1, b0) * side(a0, a1, b1) < 0 && side(b0, b1, a0) * side(b0, b1, a1) < 0) count++;
    }
  }
  return count;
}

describe('crossings of paths', () => {
  it('lie on both paths where they say', () => {
    fc.assert(
      fc.property(wildPath, wildPath, (a, b) => {
        for (const { point: at, atA, atB } of pathCrossings(a, b)) {
          expect(distance(pathAt(a, atA).point, at)).toBeLessThan(1e-5);
          expect(distance(pathAt(b, atB).point, at)).toBeLessThan(1e-5);
        }
      }),
      SEED,
    );
  });

  it('are as many as two chains of 300 points have', () => {
    fc.assert(
      fc.property(wildCubic, wildCubic, (a, b) => {
        const ours = pathCrossings(pathOf(a), pathOf(b)).length;
        const coarse = countBySamples(a, b, 300);
        if (ours === coarse) return;
        // A near-touch can fool the chains: only a finer count that agrees with the coarse one contradicts.
        expect(ours).toBe(countBySamples(a, b, 1200));
      }),
      SEED,
    );
  });

  it('are the same from the other side and backwards', () => {
    fc.assert(
      fc.property(wildPath, wildPath, (a, b) => {
        const one = pathCrossings(a, b).map((c) => c.point);
        const two = pathCrossings(b, pathReverse(a)).map((c) => c.point);
        expect(two.length).toBe(one.length);
        for (const p of one) expect(Math.min(...two.map((q) => distance(p, q)))).toBeLessThan(1e-4);
      }),
      SEED,
    );
  });

  it('three crossings of an S are told once each', () => {
    const s = pathOf(cubic(point(0, 0), point(150, 0), point(-50, 100), point(100, 100)));
    const across = pathOf(cubic(point(20, -10), point(60, 60), point(40, 40), point(80, 110)));
    expect(pathCrossings(s, across)).toHaveLength(3);
    expect(pathCrossings(s, linePath(point(20, -10), point(80, 110)))).toHaveLength(3);
  });

  it('count ends that lie on the other path, once even at a corner of it', () => {
    const wall = linePath(point(0, 0), point(100, 0), point(200, 0));
    expect(pathCrossings(wall, linePath(point(100, 0), point(100, 50)))).toEqual([
      { point: point(100, 0), atA: 100, atB: 0 },
    ]);
    expect(pathCrossings(wall, linePath(point(30, -50), point(30, 50)))).toEqual([
      { point: point(30, 0), atA: 30, atB: 50 },
    ]);
    expect(pathCrossings(wall, linePath(point(30, 1), point(30, 50)))).toEqual([]);
  });

  it('of touching curves give the touch', () => {
    const arch = pathOf(cubic(point(0, 0), point(0, 100), point(100, 100), point(100, 0)));
    const hits = pathCrossings(arch, linePath(point(-50, 75), point(150, 75)));
    expect(hits.length).toBeGreaterThanOrEqual(1);
    for (const h of hits) expect(distance(h.point, point(50, 75))).toBeLessThan(0.01);
  });

  it('of a curve with itself are its ends, and it does not take long', () => {
    fc.assert(
      fc.property(tameCubic, (c) => {
        const p = pathOf(c);
        const hits = pathCrossings(p, pathOf(cubic(c.from, c.c1, c.c2, c.to)));
        expect(hits.map((h) => h.point)).toEqual([c.from, c.to]);
      }),
      SEED,
    );
  });

  it('of overlapping parts are the ends of what they share', () => {
    fc.assert(
      fc.property(tameCubic, (c) => {
        const p = pathOf(c);
        const total = pathLength(p);
        const hits = pathCrossings(pathSlice(p, 0, total * 0.7), pathSlice(p, total * 0.3, total));
        expect(hits).toHaveLength(2);
        expect(hits[0]?.atA).toBeCloseTo(total * 0.3, 4);
        expect(hits[1]?.atA).toBeCloseTo(total * 0.7, 4);
      }),
      SEED,
    );
    const a = linePath(point(0, 0), point(60, 0));
    const b = linePath(point(90, 0), point(40, 0));
    expect(pathCrossings(a, b).map((h) => h.point)).toEqual([point(40, 0), point(60, 0)]);
  });

  it.each([1e-9, 1e-7, 1e-5, 1e-3])('of curves %d mm apart all along come to an end', (gap) => {
    const c = pathOf(cubic(point(0, 0), point(100, 0), point(200, 100), point(200, 250)));
    const began = performance.now();
    pathCrossings(c, pathTranslate(c, point(gap, gap)));
    pathCrossings(c, pathOffset(c, gap));
    pathCrossings(c, pathReverse(pathTranslate(c, point(gap, 0))));
    expect(performance.now() - began).toBeLessThan(1500);
  });
});

describe('an outline that meets itself', () => {
  it('is not one whose neighbours meet at their corners', () => {
    const square = linePath(point(0, 0), point(10, 0), point(10, 10), point(0, 10), point(0, 0));
    expect(outlineSelfCrossings(square)).toEqual([]);
  });

  it('is told with every crossing', () => {
    const bow = linePath(point(0, 0), point(10, 10), point(10, 0), point(0, 10), point(0, 0));
    expect(outlineSelfCrossings(bow)).toEqual([point(5, 5)]);
    const spike = linePath(point(0, 0), point(10, 0), point(4, 0), point(4, 5), point(0, 0));
    expect(outlineSelfCrossings(spike).length).toBeGreaterThan(0);
  });

  it('may be a single cubic with a loop', () => {
    const loop = cubic(point(0, 0), point(200, 100), point(-100, 100), point(100, 0));
    const closed: Path = pathOf(loop, line(point(100, 0), point(50, -40)), line(point(50, -40), point(0, 0)));
    const found = outlineSelfCrossings(closed);
    expect(found).toHaveLength(1);
    // By symmetry the double point lies on x = 50.
    expect(found[0]?.x).toBeCloseTo(50, 9);
  });
});

describe('an outline without its loops', () => {
  it('is the same one when it is simple', () => {
    const square = linePath(point(0, 0), point(10, 0), point(10, 10), point(0, 10), point(0, 0));
    expect(outlineWithoutLoops(square)).toBe(square);
  });

  it('keeps the larger part of a crossing', () => {
    const bow = linePath(point(0, 0), point(30, 30), point(40, 30), point(30, 20), point(0, 20), point(0, 0));
    const simple = outlineWithoutLoops(bow);
    expect(outlineSelfCrossings(simple)).toEqual([]);
    expect(outlineIsClosed(simple)).toBe(true);
    // The triangle on the left has 200 mm2, the parallelogram right of the crossing 100.
    expect(Math.abs(outlineArea(simple))).toBeCloseTo(200, 9);
  });

  it('loses every one of several loops', () => {
    // A saw whose teeth run back under themselves.
    const saw = linePath(
      point(0, 0),
      point(100, 0),
      point(100, 60),
      point(60, 60),
      point(70, 50),
      point(75, 65),
      point(30, 60),
      point(40, 50),
      point(45, 65),
      point(0, 60),
      point(0, 0),
    );
    expect(outlineSelfCrossings(saw).length).toBeGreaterThan(1);
    const simple = outlineWithoutLoops(saw);
    expect(outlineSelfCrossings(simple)).toEqual([]);
    expect(pathBounds(simple).maxX).toBe(100);
    expect(outlineArea(simple)).toBeGreaterThan(5500);
  });
});
