import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { aPoint, number, wildPath } from '../../../tests/outside/geometry-shapes.ts';
import {
  angleBetween,
  cross,
  cubic,
  direction,
  distance,
  line,
  lineCrossing,
  linePath,
  outward,
  type Path,
  type Point,
  pathAt,
  pathBounds,
  pathEnd,
  pathEndTangent,
  pathExtend,
  pathFlatten,
  pathJoin,
  pathLength,
  pathMap,
  pathMirrorLine,
  pathMirrorX,
  pathNearest,
  pathOf,
  pathReverse,
  pathRotate,
  pathSlice,
  pathSplit,
  pathStart,
  pathStartTangent,
  pathTranslate,
  point,
  rotate,
  scale,
  unit,
  walkPath,
} from './index.ts';

const SEED = { seed: 90_210, numRuns: 200 };
const share = number(0.02, 0.98);

describe('points', () => {
  it('have the waste on the left hand', () => {
    expect(outward(point(1, 0))).toEqual(point(0, -1));
    expect(outward(point(0, 1))).toEqual(point(1, -0));
  });

  it('turn clockwise on paper for a positive angle', () => {
    const turned = rotate(point(1, 0), Math.PI / 2);
    expect(turned.x).toBeCloseTo(0, 12);
    expect(turned.y).toBeCloseTo(1, 12);
    expect(cross(point(1, 0), turned)).toBeGreaterThan(0);
  });

  it('have no direction between equal points', () => {
    expect(() => direction(point(3, 4), point(3, 4))).toThrow();
    expect(() => unit(point(0, 0))).toThrow();
  });

  it('straight lines cross where both say, parallel ones nowhere', () => {
    expect(lineCrossing(point(0, 0), point(2, 0), point(5, 5), point(0, -3))).toEqual(point(5, 0));
    expect(lineCrossing(point(0, 0), point(2, 1), point(5, 5), point(-4, -2))).toBeNull();
    expect(angleBetween(point(1, 0), point(0, -2))).toBeCloseTo(Math.PI / 2, 12);
  });
});

describe('a path cut in two', () => {
  it('has parts that add up and meet', () => {
    fc.assert(
      fc.property(wildPath, share, (p, k) => {
        const total = pathLength(p);
        const [head, tail] = pathSplit(p, total * k);
        if (head === null || tail === null) throw new Error('Both parts have a length.');
        expect(Math.abs(pathLength(head) - total * k)).toBeLessThan(1e-6);
        expect(Math.abs(pathLength(head) + pathLength(tail) - total)).toBeLessThan(1e-6);
        expect(pathEnd(head)).toEqual(pathStart(tail));
        expect(pathStart(head)).toEqual(pathStart(p));
        expect(pathEnd(tail)).toEqual(pathEnd(p));
        expect(pathLength(pathJoin(head, tail))).toBeCloseTo(total, 6);
      }),
      SEED,
    );
  });

  it('has no part where nothing lies', () => {
    const p = linePath(point(0, 0), point(10, 0), point(10, 10));
    expect(pathSplit(p, 0)).toEqual([null, p]);
    expect(pathSplit(p, 20)).toEqual([p, null]);
    expect(pathSplit(p, 10)).toEqual([
      linePath(point(0, 0), point(10, 0)),
      linePath(point(10, 0), point(10, 10)),
    ]);
    expect(() => pathSlice(p, 5, 5)).toThrow();
  });

  it('gives slices of the wished length', () => {
    fc.assert(
      fc.property(wildPath, share, share, (p, a, b) => {
        fc.pre(Math.abs(a - b) > 0.01);
        const total = pathLength(p);
        const part = pathSlice(p, total * Math.min(a, b), total * Math.max(a, b));
        expect(Math.abs(pathLength(part) - total * Math.abs(a - b))).toBeLessThan(1e-6);
      }),
      SEED,
    );
  });
});

describe('a place on a path', () => {
  it('is found again from its point', () => {
    fc.assert(
      fc.property(wildPath, share, (p, k) => {
        const place = pathAt(p, pathLength(p) * k);
        expect(place.length).toBeCloseTo(pathLength(p) * k, 9);
        const near = pathNearest(p, place.point);
        expect(near.distance).toBeLessThan(1e-7);
        expect(distance(pathAt(p, near.at).point, place.point)).toBeLessThan(1e-5);
      }),
      SEED,
    );
  });

  it('before the start or beyond the end is that end', () => {
    const p = linePath(point(0, 0), point(10, 0));
    expect(pathAt(p, -5)).toEqual({ point: point(0, 0), tangent: point(1, 0), length: 0 });
    expect(pathAt(p, 15)).toEqual({ point: point(10, 0), tangent: point(1, 0), length: 10 });
  });

  it('has the direction of the path', () => {
    fc.assert(
      fc.property(wildPath, share, (p, k) => {
        const at = pathLength(p) * k;
        const { point: here, tangent } = pathAt(p, at);
        const a = pathAt(p, at - 1e-3).point;
        const b = pathAt(p, at + 1e-3).point;
        // Corners and sharp bends have no single direction.
        fc.pre(distance(a, b) > 1.99e-3);
        expect(angleBetween(tangent, direction(a, b))).toBeLessThan(0.2);
        expect(distance(here, a)).toBeLessThan(1.001e-3);
      }),
      SEED,
    );
  });
});

describe('end directions', () => {
  it('fall back on the next handle when one lies on its end', () => {
    const a = point(0, 0);
    const b = point(100, 100);
    expect(pathStartTangent(pathOf(cubic(a, a, point(50, 0), b)))).toEqual(point(1, 0));
    expect(pathEndTangent(pathOf(cubic(a, point(100, 0), b, b)))).toEqual(point(-0, 1));
    const straight = pathOf(cubic(a, a, b, b));
    expect(pathStartTangent(straight).x).toBeCloseTo(Math.SQRT1_2, 12);
    expect(pathEndTangent(straight).y).toBeCloseTo(Math.SQRT1_2, 12);
  });

  it('pass over segments without length', () => {
    const p = pathOf(
      line(point(1, 1), point(1, 1)),
      line(point(1, 1), point(1, 5)),
      line(point(1, 5), point(1, 5)),
    );
    expect(pathStartTangent(p)).toEqual(point(0, 1));
    expect(pathEndTangent(p)).toEqual(point(0, 1));
  });
});

describe('joining and lengthening', () => {
  it('refuses ends that do not meet', () => {
    const a = linePath(point(0, 0), point(10, 0));
    expect(() => pathJoin(a, linePath(point(10, 0.001), point(20, 0)))).toThrow(/apart/);
    expect(pathEnd(pathJoin(a, linePath(point(10, 1e-7), point(20, 0))))).toEqual(point(20, 0));
  });

  it('goes on straight by the length that was asked for', () => {
    fc.assert(
      fc.property(wildPath, number(1, 50), number(1, 50), (p, start, end) => {
        const longer = pathExtend(p, { start, end });
        expect(pathLength(longer)).toBeCloseTo(pathLength(p) + start + end, 6);
        expect(distance(pathStartTangent(longer), pathStartTangent(p))).toBeLessThan(1e-9);
        expect(distance(pathEndTangent(longer), pathEndTangent(p))).toBeLessThan(1e-9);
        expect(distance(pathAt(longer, start).point, pathStart(p))).toBeLessThan(1e-6);
      }),
      SEED,
    );
    expect(pathExtend(linePath(point(0, 0), point(10, 0)), { start: 5, end: 2 })).toEqual(
      linePath(point(-5, 0), point(12, 0)),
    );
  });

  it('adds no segment without length behind a curve', () => {
    const curve = pathOf(cubic(point(0, 0), point(3, 8), point(9, 8), point(12, 0)));
    for (const speck of [0, 1e-15, 1e-9])
      expect(pathExtend(curve, { start: speck, end: speck })).toEqual(curve);
    expect(pathExtend(curve, { start: 1e-3, end: 1e-3 }).segments).toHaveLength(3);
  });
});

describe('moving a path', () => {
  it('keeps its length when turned, mirrored or shifted, and scales it when scaled', () => {
    fc.assert(
      fc.property(wildPath, aPoint, number(-3, 3), number(0.2, 4), (p, q, angle, k) => {
        const length = pathLength(p);
        const end = pathAt(p, length).point;
        expect(pathLength(pathRotate(p, angle, q))).toBeCloseTo(length, 6);
        expect(pathLength(pathTranslate(p, q))).toBeCloseTo(length, 6);
        expect(pathLength(pathMirrorX(p))).toBeCloseTo(length, 6);
        expect(pathLength(pathMirrorLine(p, q, point(q.x + 3, q.y - 7)))).toBeCloseTo(length, 6);
        const big = pathMap(p, { a: k, b: 0, c: 0, d: k, e: q.x, f: q.y });
        expect(pathLength(big) / k).toBeCloseTo(length, 6);
        expect(distance(pathEnd(big), point(end.x * k + q.x, end.y * k + q.y))).toBeLessThan(1e-9);
      }),
      SEED,
    );
  });

  it('back again gives what there was', () => {
    fc.assert(
      fc.property(wildPath, aPoint, number(-3, 3), (p, q, angle) => {
        same(pathRotate(pathRotate(p, angle, q), -angle, q), p);
        same(pathTranslate(pathTranslate(p, q), scale(q, -1)), p);
        same(pathMirrorX(pathMirrorX(p)), p);
        const other = point(q.x + 30, q.y + 10);
        same(pathMirrorLine(pathMirrorLine(p, q, other), other, q), p);
        expect(pathReverse(pathReverse(p))).toEqual(p);
      }),
      SEED,
    );
  });

  it('mirrored in the centre line changes the sign of x only', () => {
    expect(pathMirrorX(linePath(point(3, 4), point(-1, 2)))).toEqual(linePath(point(-3, 4), point(1, 2)));
  });

  it('reversed has the same length, box and places', () => {
    fc.assert(
      fc.property(wildPath, share, (p, k) => {
        const back = pathReverse(p);
        const total = pathLength(p);
        expect(pathLength(back)).toBeCloseTo(total, 6);
        const a = pathBounds(p);
        const b = pathBounds(back);
        expect(Math.abs(a.minX - b.minX) + Math.abs(a.maxX - b.maxX)).toBeLessThan(1e-9);
        expect(Math.abs(a.minY - b.minY) + Math.abs(a.maxY - b.maxY)).toBeLessThan(1e-9);
        expect(distance(pathAt(p, total * k).point, pathAt(back, total * (1 - k)).point)).toBeLessThan(1e-5);
        expect(pathStartTangent(back)).toEqual(scale(pathEndTangent(p), -1));
      }),
      SEED,
    );
  });
});

function same(p: Path, q: Path): void {
  expect(p.segments.length).toBe(q.segments.length);
  for (const [i, s] of p.segments.entries()) {
    const r = q.segments[i];
    if (r === undefined || r.kind !== s.kind) throw new Error('Another kind of segment.');
    expect(distance(s.from, r.from)).toBeLessThan(1e-9);
    expect(distance(s.to, r.to)).toBeLessThan(1e-9);
    if (s.kind === 'cubic' && r.kind === 'cubic') {
      expect(distance(s.c1, r.c1)).toBeLessThan(1e-9);
      expect(distance(s.c2, r.c2)).toBeLessThan(1e-9);
    }
  }
}

describe('telling a path', () => {
  it('flattened stays within the tolerance and on the path', () => {
    fc.assert(
      fc.property(wildPath, fc.constantFrom(1, 0.1, 0.01), (p, tolerance) => {
        const points = pathFlatten(p, tolerance);
        const chain = linePath(points[0] ?? point(0, 0), points[1] ?? point(0, 0), ...points.slice(2));
        for (let i = 0; i <= 50; i++) {
          const q = pathAt(p, (pathLength(p) * i) / 50).point;
          expect(pathNearest(chain, q).distance).toBeLessThanOrEqual(tolerance + 1e-9);
        }
      }),
      { ...SEED, numRuns: 60 },
    );
  });

  it('to a sink names every segment, and closes only what is closed', () => {
    const told = (p: Path): string[] => {
      const words: string[] = [];
      walkPath(p, {
        moveTo: (x, y) => words.push(`move ${x} ${y}`),
        lineTo: (x, y) => words.push(`line ${x} ${y}`),
        curveTo: (...n) => words.push(`curve ${n.join(' ')}`),
        close: () => words.push('close'),
      });
      return words;
    };
    const a: Point = point(0, 0);
    expect(
      told(pathOf(line(a, point(1, 0)), cubic(point(1, 0), point(2, 0), point(2, 1), point(1, 1)))),
    ).toEqual(['move 0 0', 'line 1 0', 'curve 2 0 2 1 1 1']);
    expect(told(linePath(a, point(1, 0), point(1, 1), a)).at(-1)).toBe('close');
  });
});
