import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { aPoint, number, outlineOf, starEdges } from '../../../tests/outside/geometry-shapes.ts';
import {
  boundsUnion,
  cubic,
  distance,
  line,
  linePath,
  offsetOutline,
  outlineArea,
  outlineContains,
  outlineIsClosed,
  outlineSelfCrossings,
  pathBounds,
  pathEnd,
  pathLength,
  pathMap,
  pathMirrorX,
  pathNearest,
  pathOf,
  pathOffset,
  pathReverse,
  pathRotate,
  pathStart,
  point,
} from './index.ts';

const SEED = { seed: 808, numRuns: 150 };

describe('area', () => {
  it('is positive with the cloth on the right hand', () => {
    const right = linePath(point(0, 0), point(30, 0), point(30, 20), point(0, 20), point(0, 0));
    expect(outlineArea(right)).toBe(600);
    expect(outlineArea(pathReverse(right))).toBe(-600);
  });

  it('of a parabola segment is Archimedes two thirds', () => {
    // y = 60 x (1 - x/90) / 22.5 as a cubic: height 60 over a base of 90.
    const arch = pathOf(
      cubic(point(0, 0), point(30, -80), point(60, -80), point(90, 0)),
      line(point(90, 0), point(0, 0)),
    );
    expect(outlineArea(arch)).toBeCloseTo((2 / 3) * 90 * 60, 9);
  });

  it('turns and mirrors and scales as areas do, and adds up over a cut', () => {
    fc.assert(
      fc.property(starEdges, aPoint, number(-3, 3), number(0.3, 3), (edges, q, angle, k) => {
        const o = outlineOf(edges);
        const area = outlineArea(o);
        expect(outlineArea(pathRotate(o, angle, q))).toBeCloseTo(area, 5);
        expect(outlineArea(pathMirrorX(o))).toBeCloseTo(-area, 5);
        expect(outlineArea(pathMap(o, { a: k, b: 0, c: 0, d: k, e: 5, f: 9 })) / (k * k)).toBeCloseTo(
          area,
          5,
        );
        const sectors = edges.map((e) => {
          const centre = point(0, 0);
          return outlineArea(pathOf(line(centre, pathStart(e)), ...e.segments, line(pathEnd(e), centre)));
        });
        expect(sectors.reduce((a, b) => a + b, 0)).toBeCloseTo(area, 5);
      }),
      SEED,
    );
  });

  it('of a parallel outline grows by distance times length plus the corners (Steiner)', () => {
    const k = 0.5522847498307936 * 100;
    const c = (x: number, y: number) => point(x * 100, y * 100);
    const round = pathOf(
      cubic(c(0, -1), point(k, -100), point(100, -k), c(1, 0)),
      cubic(c(1, 0), point(100, k), point(k, 100), c(0, 1)),
      cubic(c(0, 1), point(-k, 100), point(-100, k), c(-1, 0)),
      cubic(c(-1, 0), point(-100, -k), point(-k, -100), c(0, -1)),
    );
    const grown = outlineArea(round) + 10 * pathLength(round) + Math.PI * 100;
    expect(Math.abs(outlineArea(pathOffset(round, 10)) - grown)).toBeLessThan(0.02 * pathLength(round));
  });
});

describe('inside test', () => {
  it('agrees with the distance from the centre of a star', () => {
    fc.assert(
      fc.property(starEdges, number(0.05, 0.95), number(1.05, 3), (edges, less, more) => {
        const o = outlineOf(edges);
        for (const e of edges) {
          const corner = pathStart(e);
          expect(outlineContains(o, point(corner.x * more, corner.y * more))).toBe(false);
          expect(outlineContains(o, corner)).toBe(true);
          // Edges bow inwards by up to 12 % of their length, so only points near the centre are sure.
          if (less < 0.2) expect(outlineContains(o, point(corner.x * less, corner.y * less))).toBe(true);
        }
      }),
      SEED,
    );
  });

  it('is not fooled by levels that run through corners or along edges', () => {
    const o = linePath(
      point(0, 0),
      point(20, 10),
      point(40, 0),
      point(40, 20),
      point(20, 20),
      point(20, 30),
      point(0, 20),
      point(0, 0),
    );
    expect(outlineContains(o, point(5, 10))).toBe(true);
    expect(outlineContains(o, point(-5, 10))).toBe(false);
    expect(outlineContains(o, point(-5, 20))).toBe(false);
    expect(outlineContains(o, point(10, 20))).toBe(true);
    expect(outlineContains(o, point(30, 25))).toBe(false);
    expect(outlineContains(o, point(20, 5))).toBe(false);
    expect(outlineContains(o, point(20, 10))).toBe(true);
  });
});

describe('an outline moved edge by edge', () => {
  const rectangle = [
    linePath(point(0, 0), point(400, 0)),
    linePath(point(400, 0), point(400, 300)),
    linePath(point(400, 300), point(0, 300)),
    linePath(point(0, 300), point(0, 0)),
  ];

  it('takes each its own distance', () => {
    const moved = outlineOf(offsetOutline(rectangle, [15, 15, 60, 0]));
    expect(pathBounds(moved)).toEqual({ minX: 0, minY: -15, maxX: 415, maxY: 360 });
    expect(outlineArea(moved)).toBeCloseTo(415 * 375, 6);
  });

  it('is trimmed inward at one edge, the others unmoved', () => {
    const moved = offsetOutline(rectangle, [-3, 0, 0, 0]);
    expect(pathBounds(outlineOf(moved))).toEqual({ minX: 0, minY: 3, maxX: 400, maxY: 300 });
  });

  it('steps where smooth neighbours differ, and says so only once', () => {
    const split = [
      linePath(point(0, 0), point(200, 0)),
      linePath(point(200, 0), point(400, 0)),
      ...rectangle.slice(1),
    ];
    const moved = offsetOutline(split, [10, 25, 10, 10, 10]);
    const [first] = moved;
    if (first === undefined) throw new Error('An edge is missing.');
    expect(pathEnd(first)).toEqual(point(200, -25));
    expect(pathLength(first)).toBeCloseTo(210 + 15, 9);
    expect(outlineSelfCrossings(outlineOf(moved))).toEqual([]);
  });

  it('keeps the order and joins end to start, whatever the distances', () => {
    fc.assert(
      fc.property(starEdges, fc.array(number(0, 25), { minLength: 9, maxLength: 9 }), (edges, distances) => {
        const moved = offsetOutline(edges, distances.slice(0, edges.length));
        expect(moved).toHaveLength(edges.length);
        for (const [i, p] of moved.entries()) {
          expect(pathEnd(p)).toEqual(pathStart(moved[(i + 1) % moved.length] ?? p));
        }
        expect(outlineIsClosed(outlineOf(moved))).toBe(true);
        // Outward only: what was inside stays inside.
        const around = outlineOf(moved);
        for (const corner of edges.map(pathStart)) {
          // Ends up to 0.01 mm apart are drawn together.
          if (!outlineContains(around, corner))
            expect(pathNearest(around, corner).distance).toBeLessThan(0.01);
        }
        for (const [i, e] of edges.entries()) {
          const middle = e.segments[0];
          if (middle.kind !== 'cubic') continue;
          const at = point(
            (middle.from.x + 3 * middle.c1.x + 3 * middle.c2.x + middle.to.x) / 8,
            (middle.from.y + 3 * middle.c1.y + 3 * middle.c2.y + middle.to.y) / 8,
          );
          const own = moved[i];
          if (own !== undefined)
            expect(pathNearest(own, at).distance).toBeGreaterThan((distances[i] ?? 0) - 0.02);
        }
      }),
      SEED,
    );
  });

  it('back again gives the outline there was', () => {
    fc.assert(
      fc.property(starEdges, number(1, 6), (edges, d) => {
        const there = offsetOutline(
          edges,
          edges.map(() => d),
        );
        const back = offsetOutline(
          there,
          edges.map(() => -d),
        );
        // Corners that were squared off do not come back.
        fc.pre(there.every((p) => p.segments.length < 12));
        for (const [i, e] of edges.entries()) {
          const own = back[i];
          if (own === undefined) throw new Error('An edge is missing.');
          if (there[i]?.segments.some((s) => s.kind === 'line' && distance(s.from, s.to) > 20)) return;
          expect(distance(pathStart(own), pathStart(e))).toBeLessThan(0.5);
          expect(Math.abs(pathLength(own) - pathLength(e))).toBeLessThan(0.5);
        }
      }),
      SEED,
    );
  });

  it('asks for one distance an edge', () => {
    expect(() => offsetOutline(rectangle, [1, 2])).toThrow();
  });

  it('boxes unite', () => {
    expect(
      boundsUnion({ minX: 0, minY: 1, maxX: 2, maxY: 3 }, { minX: -1, minY: 2, maxX: 1, maxY: 9 }),
    ).toEqual({
      minX: -1,
      minY: 1,
      maxX: 2,
      maxY: 9,
    });
  });
});
