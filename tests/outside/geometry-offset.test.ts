/** Parallels against a densely sampled true parallel, and outlines against clipper2-ts. */
import { areaD, EndType, inflatePathsD, JoinType, PointInPolygonResult, pointInPolygonD } from 'clipper2-ts';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type Cubic,
  cubic,
  linePath,
  offsetOutline,
  outlineArea,
  outlineContains,
  outlineIsClosed,
  outlineSelfCrossings,
  type Path,
  type Point,
  pathEnd,
  pathEndTangent,
  pathFlatten,
  pathLength,
  pathNearest,
  pathOf,
  pathOffset,
  pathStart,
  pathStartTangent,
  point,
} from '../../src/engine/geometry/index.ts';
import {
  aPoint,
  cubicSpeed,
  number,
  onCubic,
  outlineOf,
  starEdges,
  tameCubic,
  wildCubic,
} from './geometry-shapes.ts';

const SEED = { seed: 71_044, numRuns: 200 };
/** What the engine promises for a parallel, mm. */
const PROMISED = 0.02;

/** A point of the true parallel, by the definition: d along the left-hand normal. */
function trueParallel(c: Cubic, d: number, t: number): Point {
  const p = onCubic(c, t);
  const v = cubicSpeed(c, t);
  const speed = Math.hypot(v.x, v.y);
  return point(p.x + (v.y / speed) * d, p.y - (v.x / speed) * d);
}

/** Least value of 1 + d x curvature over the curve: positive where the parallel never turns back. */
function leastStretch(c: Cubic, d: number): number {
  let least = Number.POSITIVE_INFINITY;
  for (let i = 1; i < 1000; i++) {
    const t = i / 1000;
    const v = cubicSpeed(c, t);
    const before = cubicSpeed(c, t - 1e-5);
    const after = cubicSpeed(c, t + 1e-5);
    const turn = (v.x * (after.y - before.y) - v.y * (after.x - before.x)) / 2e-5;
    least = Math.min(least, 1 + (d * turn) / Math.hypot(v.x, v.y) ** 3);
  }
  return least;
}

describe('parallel of one curve', () => {
  it('stays within 0.02 mm of the true parallel, in both directions', () => {
    fc.assert(
      fc.property(tameCubic, number(-40, 40), (c, d) => {
        fc.pre(leastStretch(c, d) > 0.05);
        const offset = pathOffset(pathOf(c), d);
        const truth = Array.from({ length: 301 }, (_, i) => trueParallel(c, d, i / 300));
        for (const p of truth) expect(pathNearest(offset, p).distance).toBeLessThan(PROMISED);
        for (const p of pathFlatten(offset, 0.5)) {
          expect(Math.abs(distanceToCurve(c, p) - Math.abs(d))).toBeLessThan(PROMISED);
        }
        expect(near(pathStart(offset), trueParallel(c, d, 0))).toBeLessThan(1e-9);
        expect(near(pathEnd(offset), trueParallel(c, d, 1))).toBeLessThan(1e-9);
        expect(near(pathStartTangent(offset), pathStartTangent(pathOf(c)))).toBeLessThan(1e-9);
        expect(near(pathEndTangent(offset), pathEndTangent(pathOf(c)))).toBeLessThan(1e-9);
      }),
      SEED,
    );
  });

  it('of any curve that never turns back holds the promise too', () => {
    fc.assert(
      fc.property(wildCubic, number(-30, 30), (c, d) => {
        fc.pre(leastStretch(c, d) > 0.05);
        const offset = pathOffset(pathOf(c), d);
        for (let i = 1; i < 300; i++) {
          expect(pathNearest(offset, trueParallel(c, d, i / 300)).distance).toBeLessThan(PROMISED);
        }
      }),
      SEED,
    );
  });

  // The five curves on which a first version was measured.
  const named: [string, Cubic, number][] = [
    ['long armhole-like', cubic(point(0, 0), point(-20, 60), point(-10, 130), point(60, 170)), 10],
    ['S', cubic(point(0, 0), point(120, 0), point(0, 100), point(120, 100)), 10],
    ['tight', cubic(point(0, 0), point(0, 60), point(60, 60), point(60, 0)), -15],
    ['neckline-like', cubic(point(0, 80), point(45, 80), point(65, 40), point(65, 0)), 6],
    ['handle on its end', cubic(point(0, 0), point(0, 0), point(60, 20), point(100, 100)), 10],
    ['both handles on their ends', cubic(point(0, 0), point(0, 0), point(100, 100), point(100, 100)), 10],
  ];
  it.each(named)('%s', (_name, c, d) => {
    const offset = pathOffset(pathOf(c), d);
    for (let i = 1; i < 2000; i++) {
      expect(pathNearest(offset, trueParallel(c, d, i / 2000)).distance).toBeLessThan(PROMISED);
    }
    expect(offset.segments.length).toBeLessThanOrEqual(16);
  });

  it('inside a bend tighter than the distance leaves a path without a loop', () => {
    const hairpin = cubic(point(0, 0), point(0, 80), point(24, 80), point(24, 0));
    for (const d of [13, 16, 18]) {
      const offset = pathOffset(pathOf(hairpin), d);
      expect(outlineSelfCrossings(offset)).toEqual([]);
    }
    const bent = cubic(point(0, 0), point(100, 0), point(100, 0), point(100, 100));
    for (const d of [-5, -15, -30]) {
      const offset = pathOffset(pathOf(bent), d);
      expect(outlineSelfCrossings(offset)).toEqual([]);
      for (const p of pathFlatten(offset, 0.05)) {
        expect(distanceToCurve(bent, p)).toBeGreaterThan(Math.abs(d) - PROMISED);
      }
      expect(near(pathStart(offset), trueParallel(bent, d, 0))).toBeLessThan(1e-9);
      expect(near(pathEnd(offset), trueParallel(bent, d, 1))).toBeLessThan(1e-9);
    }
  });
});

describe('parallel of a curve whose end bends more tightly than the distance', () => {
  // An armhole that closes into the underarm on a radius of about 12 mm.
  const hook = cubic(point(0, 0), point(-4, 60), point(-2, 86), point(14, 86));

  it('still ends square to the curve and in its direction', () => {
    for (const d of [8, 15, 25, 40]) {
      const offset = pathOffset(pathOf(hook), d);
      expect(near(pathStart(offset), trueParallel(hook, d, 0))).toBeLessThan(1e-9);
      expect(near(pathEnd(offset), trueParallel(hook, d, 1))).toBeLessThan(1e-9);
      expect(near(pathEndTangent(offset), pathEndTangent(pathOf(hook)))).toBeLessThan(1e-9);
    }
    expect(leastStretch(hook, 25)).toBeLessThan(0);
  });

  it('has ends even where nothing else is left', () => {
    const half = cubic(point(10, 0), point(10, 13.3), point(-10, 13.3), point(-10, 0));
    const offset = pathOffset(pathOf(half), -30);
    expect(near(pathStart(offset), point(-20, 0))).toBeLessThan(1e-9);
    expect(near(pathEnd(offset), point(20, 0))).toBeLessThan(1e-9);
  });
});

function near(p: Point, q: Point): number {
  return Math.hypot(p.x - q.x, p.y - q.y);
}

/** By 400 samples and a search between the neighbours of the least one. */
function distanceToCurve(c: Cubic, q: Point): number {
  const at = (t: number) => near(onCubic(c, t), q);
  let best = 0;
  for (let i = 1; i <= 400; i++) if (at(i / 400) < at(best / 400)) best = i;
  let low = Math.max(0, best - 1) / 400;
  let high = Math.min(400, best + 1) / 400;
  for (let i = 0; i < 40; i++) {
    const p = low + (high - low) / 3;
    const q3 = high - (high - low) / 3;
    if (at(p) < at(q3)) high = q3;
    else low = p;
  }
  return at(low);
}

describe('parallel of a path with corners', () => {
  it('mitres outward corners and trims inward ones', () => {
    const l = linePath(point(0, 0), point(100, 0), point(100, 50));
    expect(pathFlatten(pathOffset(l, 10), 1).map(rounded)).toEqual([
      point(0, -10),
      point(110, -10),
      point(110, 50),
    ]);
    expect(pathFlatten(pathOffset(l, -10), 1).map(rounded)).toEqual([
      point(0, 10),
      point(90, 10),
      point(90, 50),
    ]);
  });

  it('cuts off a corner that would reach out more than four times the distance', () => {
    const spike = linePath(point(0, 0), point(200, 0), point(0, 20));
    const offset = pathOffset(spike, 10);
    for (const p of pathFlatten(offset, 1)) expect(pathNearest(spike, p).distance).toBeLessThan(40 + 1e-9);
    expect(offset.segments).toHaveLength(3);
  });

  it('swallows a short segment between two inward corners', () => {
    const step = linePath(point(0, 0), point(100, 0), point(103, 10), point(103, 100));
    const offset = pathOffset(step, -20);
    expect(pathFlatten(offset, 1).map(rounded)).toEqual([point(0, 20), point(83, 20), point(83, 100)]);
  });
});

function rounded(p: Point): Point {
  const r = (x: number) => Math.round(x * 1e9) / 1e9 + 0;
  return point(r(p.x), r(p.y));
}

describe('outlines against clipper2-ts', () => {
  it('area and inside test agree', () => {
    fc.assert(
      fc.property(starEdges, fc.array(aPoint, { minLength: 20, maxLength: 20 }), (edges, points) => {
        const outline = outlineOf(edges);
        const polygon = pathFlatten(outline, 1e-4);
        const length = pathLength(outline);
        expect(Math.abs(outlineArea(outline) - areaD(polygon))).toBeLessThan(length * 1e-4);
        for (const p of points) {
          if (pathNearest(outline, p).distance < 1e-3) continue;
          const judge = pointInPolygonD(p, polygon, 6);
          expect(outlineContains(outline, p)).toBe(judge === PointInPolygonResult.IsInside);
        }
      }),
      SEED,
    );
  });

  it('moved outward by one distance all round, an outline holds the round offset and little more', () => {
    fc.assert(
      fc.property(starEdges, number(3, 25), (edges, d) => {
        const outline = outlineOf(edges);
        const moved = outlineOf(
          offsetOutline(
            edges,
            edges.map(() => d),
          ),
        );
        expect(outlineIsClosed(moved)).toBe(true);
        const [round] = inflatePathsD(
          [pathFlatten(outline, 0.002)],
          d,
          JoinType.Round,
          EndType.Polygon,
          2,
          5,
          0.002,
        );
        // The mitred corners lie outside the round ones; along the edges both agree.
        for (const p of round ?? []) {
          if (!outlineContains(moved, p)) expect(pathNearest(moved, p).distance).toBeLessThan(PROMISED);
        }
        expect(outlineArea(moved)).toBeGreaterThan(areaD(round ?? []) - 0.02 * pathLength(moved));
      }),
      { ...SEED, numRuns: 150 },
    );
  });

  it('moved by one distance with mitred corners, area agrees with the mitred offset', () => {
    fc.assert(
      fc.property(starEdges, number(-8, 20), (edges, d) => {
        fc.pre(Math.abs(d) > 0.5);
        const corners = edges.map((e) => pathStart(e));
        const straight = corners.map((p, i) => linePath(p, corners[(i + 1) % corners.length] ?? p));
        // Corners sharper than the limit are finished differently by both.
        fc.pre(straight.every((e, i) => turn(e, straight[(i + 1) % straight.length] ?? e) < 2.5));
        const moved = outlineOf(
          offsetOutline(
            straight,
            straight.map(() => d),
          ),
        );
        fc.pre(outlineSelfCrossings(moved).length === 0);
        const judge = inflatePathsD([corners], d, JoinType.Miter, EndType.Polygon, 4, 5);
        fc.pre(judge.length === 1);
        expect(Math.abs(outlineArea(moved) - areaD(judge[0] ?? []))).toBeLessThan(0.05);
      }),
      SEED,
    );
  });
});

function turn(a: Path, b: Path): number {
  const u = pathEndTangent(a);
  const v = pathStartTangent(b);
  return Math.abs(Math.atan2(u.x * v.y - u.y * v.x, u.x * v.x + u.y * v.y));
}
