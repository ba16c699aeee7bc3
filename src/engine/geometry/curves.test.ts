import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { aPoint, number, tameCubic } from '../../../tests/outside/geometry-shapes.ts';
import {
  angleBetween,
  type Cubic,
  cross,
  curveBetween,
  curveOfLength,
  curveThrough,
  direction,
  distance,
  dot,
  linePath,
  outlineSelfCrossings,
  type Path,
  type Point,
  pathAt,
  pathEnd,
  pathEndTangent,
  pathLength,
  pathNearest,
  pathOf,
  pathStart,
  pathStartTangent,
  point,
  rotate,
  subtract,
  vectorLength,
} from './index.ts';

const SEED = { seed: 1234, numRuns: 200 };

/** Points like those of an armhole or a neckline: steps forward with moderate turns. */
const chain = fc
  .array(fc.tuple(number(20, 80), number(-0.7, 0.7)), { minLength: 2, maxLength: 6 })
  .map((steps) => {
    const points: Point[] = [point(0, 0)];
    let way = 0;
    for (const [step, turn] of steps) {
      way += turn;
      const last = points[points.length - 1] ?? point(0, 0);
      points.push(point(last.x + step * Math.cos(way), last.y + step * Math.sin(way)));
    }
    return points;
  });

function cubics(p: Path): Cubic[] {
  return p.segments.map((s) => {
    if (s.kind !== 'cubic') throw new Error('A curve is expected.');
    return s;
  });
}

function curvature(p: Point, q: Point, r: Point): number {
  // At the end r of a cubic with its two handles p, q (from far to near).
  const near = subtract(r, q);
  const far = subtract(q, p);
  return ((2 / 3) * cross(far, near)) / vectorLength(near) ** 3;
}

describe('a curve through points', () => {
  it('passes every point with direction and curvature running on', () => {
    fc.assert(
      fc.property(chain, number(-1, 1), (points, lean) => {
        const start = rotate(point(1, 0), lean);
        const curve = curveThrough(points, { start });
        const parts = cubics(curve);
        expect(parts.map((s) => s.to)).toEqual(points.slice(1));
        expect(distance(pathStartTangent(curve), start)).toBeLessThan(1e-9);
        for (const [i, s] of parts.entries()) {
          const next = parts[i + 1];
          if (next === undefined) continue;
          expect(angleBetween(subtract(s.to, s.c2), subtract(next.c1, next.from))).toBeLessThan(1e-6);
          const before = curvature(s.c1, s.c2, s.to);
          const after = -curvature(next.c2, next.c1, next.from);
          expect(Math.abs(before - after)).toBeLessThan(1e-6 * (1 + Math.abs(before)));
        }
      }),
      SEED,
    );
  });

  it('arrives in the direction that was asked for and is straight at a free end', () => {
    const points = [point(0, 0), point(40, 10), point(70, 50)];
    const held = curveThrough(points, { end: point(0, 7) });
    expect(distance(pathEndTangent(held), point(0, 1))).toBeLessThan(1e-12);
    const first = cubics(held)[0];
    if (first === undefined) throw new Error('A segment is expected.');
    // Natural end: no second derivative, so the first handle is halfway to the second.
    expect(distance(subtract(first.c2, first.c1), subtract(first.c1, first.from))).toBeLessThan(1e-9);
  });

  it('through points of a straight line is that line', () => {
    const curve = curveThrough([point(0, 0), point(10, 20), point(50, 100)]);
    expect(pathLength(curve)).toBeCloseTo(Math.hypot(50, 100), 6);
  });

  it('needs two different points', () => {
    expect(() => curveThrough([point(0, 0)])).toThrow();
    expect(() => curveThrough([point(0, 0), point(0, 0), point(1, 1)])).toThrow();
  });
});

describe('a curve between two points', () => {
  it('draws a quarter ellipse where the directions stand square', () => {
    fc.assert(
      fc.property(number(20, 200), number(20, 200), (a, b) => {
        const curve = curveBetween(point(a, 0), point(0, 1), point(0, b), point(-1, 0));
        for (let i = 0; i <= 20; i++) {
          const { x, y } = pathAt(curve, (pathLength(curve) * i) / 20).point;
          // The known error of this handle length is 2.73e-4 of the radius.
          expect(Math.abs(Math.hypot(x / a, y / b) - 1)).toBeLessThan(2.8e-4);
        }
      }),
      SEED,
    );
  });

  it('draws an arc for any turn with equal legs', () => {
    fc.assert(
      fc.property(number(0.05, 2.6), number(20, 200), (turn, radius) => {
        const end = point(radius * Math.sin(turn), radius * (1 - Math.cos(turn)));
        const curve = curveBetween(point(0, 0), point(1, 0), end, rotate(point(1, 0), turn));
        expect(Math.abs(pathLength(curve) / (radius * turn) - 1)).toBeLessThan(0.005);
      }),
      SEED,
    );
  });

  it('keeps both directions for an S and for directions along the chord', () => {
    fc.assert(
      fc.property(aPoint, aPoint, number(-1.3, 1.3), number(-1.3, 1.3), (a, b, first, second) => {
        fc.pre(distance(a, b) > 5);
        const start = rotate(direction(a, b), first);
        const end = rotate(direction(a, b), second);
        const curve = curveBetween(a, start, b, end);
        expect(distance(pathStartTangent(curve), start)).toBeLessThan(1e-9);
        expect(distance(pathEndTangent(curve), end)).toBeLessThan(1e-9);
        expect(pathLength(curve)).toBeLessThan(3 * distance(a, b));
        expect(outlineSelfCrossings(curve)).toEqual([]);
      }),
      SEED,
    );
  });

  it('lies deeper in the corner when fuller', () => {
    const corner = point(100, 100);
    const depth = (fullness: number) =>
      pathNearest(curveBetween(point(100, 0), point(0, 1), point(0, 100), point(-1, 0), fullness), corner)
        .distance;
    expect(depth(0.7)).toBeLessThan(depth(0.5));
    expect(depth(0.5)).toBeLessThan(depth(0.3));
  });
});

describe('a curve of a wished length', () => {
  it('has that length, the same ends and the same directions', () => {
    let reached = 0;
    fc.assert(
      fc.property(tameCubic, number(-0.03, 0.1), (c, more) => {
        const before = pathOf(c);
        const wish = pathLength(before) * (1 + more);
        const after = curveOfLength(before, wish);
        if (after === null) return;
        reached++;
        expect(Math.abs(pathLength(after) - wish)).toBeLessThan(1e-6);
        sameEnds(after, before);
      }),
      SEED,
    );
    // Curves that are almost straight cannot be shortened; most others can be changed.
    expect(reached).toBeGreaterThan(100);
  });

  it('also holds for a curve of several segments, whose smooth joints stay smooth', () => {
    let reached = 0;
    fc.assert(
      fc.property(chain, number(-0.01, 0.05), (points, more) => {
        fc.pre(points.length > 2);
        const before = curveThrough(points);
        const wish = pathLength(before) * (1 + more);
        const after = curveOfLength(before, wish);
        if (after === null) return;
        reached++;
        expect(Math.abs(pathLength(after) - wish)).toBeLessThan(1e-6);
        sameEnds(after, before);
        for (const [i, s] of cubics(after).entries()) {
          const next = cubics(after)[i + 1];
          if (next === undefined) continue;
          const [u, v] = [subtract(s.to, s.c2), subtract(next.c1, next.from)];
          expect(dot(u, v)).toBeGreaterThan(0);
          expect(angleBetween(u, v)).toBeLessThan(0.01);
        }
      }),
      SEED,
    );
    expect(reached).toBeGreaterThan(100);
  });

  it('is refused where the shape cannot give it', () => {
    const arc = curveBetween(point(100, 0), point(0, 1), point(0, 100), point(-1, 0));
    expect(curveOfLength(arc, 141)).toBeNull();
    expect(curveOfLength(arc, 1000)).toBeNull();
    expect(curveOfLength(linePath(point(0, 0), point(100, 0)), 101)).toBeNull();
    expect(curveOfLength(arc, pathLength(arc))).toBe(arc);
  });
});

function sameEnds(after: Path, before: Path): void {
  expect(pathStart(after)).toEqual(pathStart(before));
  expect(pathEnd(after)).toEqual(pathEnd(before));
  expect(distance(pathStartTangent(after), pathStartTangent(before))).toBeLessThan(1e-6);
  expect(distance(pathEndTangent(after), pathEndTangent(before))).toBeLessThan(1e-6);
}
