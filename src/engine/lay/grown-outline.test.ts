import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bodiceBack, bodiceFront, skirtPanel } from '../../../tests/fixtures/cut-pieces.ts';
import { realDress } from '../../../tests/fixtures/real-dress.ts';
import {
  curveThrough,
  linePath,
  midpoint,
  outlineArea,
  outlineSelfCrossings,
  type Path,
  type Point,
  pathAt,
  pathLength,
  pathNearest,
} from '../geometry/index.ts';
import { grownOutline, OUTLINE_TOLERANCE } from './grown-outline.ts';
import { halfShape, wholeShape } from './piece-shape.ts';

const SEED = { seed: 20260401 };

function points(corners: Float64Array): readonly Point[] {
  return Array.from({ length: corners.length / 2 }, (_, i) => ({
    x: corners[2 * i] ?? Number.NaN,
    y: corners[2 * i + 1] ?? Number.NaN,
  }));
}

/** Winding by crossings of a ray: written for the test, apart from the library that made the polygon. */
function inside(ring: readonly Point[], p: Point): boolean {
  let is = false;
  for (const [i, a] of ring.entries()) {
    const b = ring[(i + 1) % ring.length] ?? a;
    if (a.y > p.y !== b.y > p.y && p.x < a.x + ((b.x - a.x) * (p.y - a.y)) / (b.y - a.y)) is = !is;
  }
  return is;
}

const circle = Array.from({ length: 16 }, (_, i) => ({
  x: Math.cos((i * Math.PI) / 8),
  y: Math.sin((i * Math.PI) / 8),
}));

/** Holds all within half the gap, reaches no further than the tolerance says, and does not cross itself. */
function judge(path: Path, gap: number): readonly Point[] {
  const grown = grownOutline(path, gap);
  if (grown === null) throw new Error('It encloses cloth.');
  const ring = points(grown.corners);
  const length = pathLength(path);
  const reach = gap / 2 + 0.0005;
  const left: Point[] = [];
  for (let i = 0; i < 150; i++) {
    const { point } = pathAt(path, (length * i) / 150);
    const around = circle.map(({ x, y }) => ({ x: point.x + reach * x, y: point.y + reach * y }));
    left.push(...[point, ...around].filter((p) => !inside(ring, p)));
  }
  expect(left).toEqual([]);
  const on = ring.flatMap((p, i) => [p, midpoint(p, ring[(i + 1) % ring.length] ?? p)]);
  // What a narrow inlet encloses is filled; all else lies near the cutting line.
  const far = on.map((p) => pathNearest(path, p).distance);
  expect(Math.max(...far)).toBeLessThanOrEqual(gap / 2 + OUTLINE_TOLERANCE + 1e-3);
  const [first, second, ...rest] = ring;
  if (first === undefined || second === undefined) throw new Error('A ring has corners.');
  expect(outlineSelfCrossings(linePath(first, second, ...rest, first))).toEqual([]);
  return ring;
}

/** A star of random reach, its corners joined by a smooth curve or by straight lines. */
const star = fc
  .record({
    reach: fc.array(fc.double({ min: 40, max: 300, noNaN: true }), { minLength: 5, maxLength: 14 }),
    curved: fc.boolean(),
  })
  .map(({ reach, curved }): Path => {
    const corners = reach.map((r, i) => ({
      x: r * Math.cos((2 * Math.PI * i) / reach.length),
      y: r * Math.sin((2 * Math.PI * i) / reach.length),
    }));
    const [first, second, ...rest] = corners;
    if (first === undefined || second === undefined) throw new Error('A star has corners.');
    return curved ? curveThrough([...corners, first], {}) : linePath(first, second, ...rest, first);
  });

describe('the outline that is packed', () => {
  test('contains random outlines with half the gap around them, and little more', () => {
    fc.assert(
      fc.property(star, fc.constantFrom(0, 3, 10), (path, gap) => {
        fc.pre(outlineSelfCrossings(path).length === 0);
        judge(path, gap);
      }),
      { ...SEED, numRuns: 40, endOnFailure: true },
    );
  });

  test('pieces of a dress have few corners', () => {
    const counts = realDress(60, 'gathered-skirt').map((cut) => {
      const whole = wholeShape(cut, 6);
      if (whole === null) throw new Error('It encloses cloth.');
      return judge(whole.path, 6).length;
    });
    expect(counts.length).toBeGreaterThan(8);
    // The widest are fronts and yokes opened out, of some fifty curves.
    expect(Math.max(...counts)).toBeLessThanOrEqual(110);
    expect(counts.toSorted((a, b) => a - b)[counts.length >> 1]).toBeLessThanOrEqual(40);
  });

  test('an outline that crosses itself comes out clean, and says so', () => {
    const bow = linePath(
      { x: 0, y: 0 },
      { x: 100, y: 100 },
      { x: 100, y: 0 },
      { x: 0, y: 100 },
      { x: 0, y: 0 },
    );
    const grown = grownOutline(bow, 4);
    expect(grown?.cleaned).toBe(true);
    // Two triangles of 100 by 50.
    expect(grown?.area).toBeCloseTo(5000, 2);
    const ring = points(grown?.corners ?? new Float64Array());
    for (const p of [
      { x: 5, y: 50 },
      { x: 95, y: 50 },
      { x: 50, y: 50 },
    ])
      expect(inside(ring, p)).toBe(true);
    expect(wholeShape(bodiceBack(), 4)?.grown.cleaned).toBe(false);
  });

  test('what encloses nothing is no outline', () => {
    expect(grownOutline(linePath({ x: 0, y: 0 }, { x: 50, y: 0 }, { x: 0, y: 0 }), 4)).toBeNull();
    expect(grownOutline(linePath({ x: 0, y: 0 }, { x: Number.NaN, y: 3 }, { x: 5, y: 5 }), 4)).toBeNull();
  });
});

describe('pieces as they lie', () => {
  test('half on a fold begins at the fold line and is not grown across it', () => {
    const half = halfShape(bodiceFront(), 10, 'y=0');
    if (half === null) throw new Error('The front has a fold.');
    const ring = points(half.grown.corners);
    expect(Math.min(...ring.map(({ y }) => y))).toBe(0);
    expect(half.box.minY).toBeCloseTo(0, 9);
    // Grown by half the gap everywhere else.
    expect(Math.max(...ring.map(({ y }) => y)) - half.box.maxY).toBeGreaterThan(5);
    expect(half.box.minX - Math.min(...ring.map(({ x }) => x))).toBeGreaterThan(5);
    expect(halfShape(bodiceBack(), 10, 'y=0')).toBeNull();
    expect(halfShape(bodiceFront(), 10, 'x=0')).toBeNull();
  });

  test('opened out it is twice the half, the head at the cut end, and alike on both sides', () => {
    for (const cut of [bodiceFront(), skirtPanel(300, 400)]) {
      const [half, whole] = [halfShape(cut, 6, 'y=0'), wholeShape(cut, 6)];
      if (half === null || whole === null) throw new Error('Both enclose cloth.');
      expect(Math.abs(outlineArea(whole.path))).toBeCloseTo(2 * Math.abs(outlineArea(half.path)), 4);
      expect(whole.box.maxY - whole.box.minY).toBeCloseTo(2 * half.box.maxY, 6);
      expect(whole.symmetric).toBe(true);
    }
    expect(wholeShape(bodiceBack(), 6)?.symmetric).toBe(false);
    const box = wholeShape(bodiceBack(), 6)?.box;
    // The head of the piece (y = 0 and less) comes to the least x.
    expect(box?.minX).toBeLessThan(0);
    expect(box?.maxX).toBeGreaterThan(280);
  });
});
