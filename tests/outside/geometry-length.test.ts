/** Lengths, boxes and splits against bezier-js, dense Simpson sums and closed forms. */
import { Bezier } from 'bezier-js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type Cubic,
  cubic,
  line,
  pathAt,
  pathBounds,
  pathLength,
  pathNearest,
  pathOf,
  pathSplit,
  point,
} from '../../src/engine/geometry/index.ts';
import { aPoint, cubicSpeed, number, onCubic, tameCubic, wildCubic } from './geometry-shapes.ts';

const SEED = { seed: 71_043, numRuns: 300 };

function bezier(c: Cubic): Bezier {
  return new Bezier(c.from, c.c1, c.c2, c.to);
}

/** Simpson's rule on equal steps. */
function simpson(c: Cubic, t0: number, t1: number, steps: number): number {
  const h = (t1 - t0) / steps;
  let sum = 0;
  for (let i = 0; i <= steps; i++) {
    const v = cubicSpeed(c, t0 + h * i);
    sum += Math.hypot(v.x, v.y) * (i === 0 || i === steps ? 1 : i % 2 === 1 ? 4 : 2);
  }
  return (sum * h) / 3;
}

describe('length', () => {
  it('agrees with bezier-js on ordinary curves to 1e-6 mm', () => {
    fc.assert(
      fc.property(tameCubic, (c) => {
        expect(Math.abs(pathLength(pathOf(c)) - bezier(c).length())).toBeLessThan(1e-6);
      }),
      SEED,
    );
  });

  it('agrees with a dense Simpson sum on any curve', () => {
    fc.assert(
      fc.property(wildCubic, (c) => {
        // Simpson's own error is judged by halving its step; near a cusp it converges slowly.
        const coarse = simpson(c, 0, 1, 20_000);
        const fine = simpson(c, 0, 1, 40_000);
        const doubt = Math.abs(fine - coarse);
        expect(Math.abs(pathLength(pathOf(c)) - fine)).toBeLessThan(1e-6 + doubt);
      }),
      { ...SEED, numRuns: 150 },
    );
  });

  // A true cusp at t = 1/2: B(t) - B(1/2) is a multiple of (s2, s3) with s = t - 1/2, whose length has a closed form.
  it('meets the closed form on a curve with a true cusp', () => {
    // x = 400 s2, y = 800 s3 with s from -1/2 to 1/2, written as Bernstein coefficients.
    const c = cubic(point(100, -100), point(-100 / 3, 100), point(-100 / 3, -100), point(100, 100));
    for (const t of [0, 0.2, 0.5, 0.9, 1]) {
      const s = t - 0.5;
      expect(onCubic(c, t).x).toBeCloseTo(400 * s * s, 9);
      expect(onCubic(c, t).y).toBeCloseTo(800 * s ** 3, 9);
    }
    // Speed = |s| sqrt(800^2 + (2400 s)^2); twice its integral from 0 to 1/2.
    const exact = (2 * ((800 ** 2 + 1200 ** 2) ** 1.5 - 800 ** 3)) / (3 * 2400 ** 2);
    expect(Math.abs(pathLength(pathOf(c)) - exact)).toBeLessThan(1e-6);
  });

  it.each([1e-1, 1e-3, 1e-6, 1e-9])('is right on a curve %d mm away from a cusp', (off) => {
    // x = 400 s2, y = 800 s3 + k s: the speed nearly vanishes in the middle.
    const c = cubic(
      point(100, -100 - off),
      point(-100 / 3, 100 - off / 3),
      point(-100 / 3, -100 + off / 3),
      point(100, 100 + off),
    );
    // Simpson on stretches that shrink towards the middle, so that each is smooth.
    let sum = 0;
    let far = 0.5;
    for (let i = 0; i < 60; i++) {
      sum += simpson(c, 0.5 - far, 0.5 - far / 2, 400) + simpson(c, 0.5 + far / 2, 0.5 + far, 400);
      far /= 2;
    }
    expect(Math.abs(pathLength(pathOf(c)) - sum)).toBeLessThan(1e-6);
  });

  it('of a straight cubic that runs back on itself counts every stretch', () => {
    // x(t) = 3 u2 t 300 - 3 u t2 200 + t3 100 on a line: the sum of its rises and falls.
    const c = cubic(point(0, 0), point(300, 0), point(-200, 0), point(100, 0));
    const xs = Array.from({ length: 200_001 }, (_, i) => onCubic(c, i / 200_000).x);
    const walked = xs.slice(1).reduce((sum, x, i) => sum + Math.abs(x - (xs[i] ?? 0)), 0);
    expect(Math.abs(pathLength(pathOf(c)) - walked)).toBeLessThan(1e-5);
  });

  it('of a straight line is Pythagoras', () => {
    expect(pathLength(pathOf(line(point(1, 2), point(4, 6))))).toBe(5);
  });
});

function thirdDifference(c: Cubic, k: 'x' | 'y'): number {
  return c.to[k] - 3 * c.c2[k] + 3 * c.c1[k] - c.from[k];
}

describe('box', () => {
  it('agrees with bezier-js', () => {
    fc.assert(
      fc.property(wildCubic, (c) => {
        const ours = pathBounds(pathOf(c));
        const box = bezier(c).bbox();
        // Where the cubic term nearly vanishes bezier-js finds wrong extrema (a box 12 mm short was seen).
        fc.pre(Math.abs(thirdDifference(c, 'x')) > 1 && Math.abs(thirdDifference(c, 'y')) > 1);
        expect(Math.abs(ours.minX - box.x.min)).toBeLessThan(1e-3);
        expect(Math.abs(ours.maxX - box.x.max)).toBeLessThan(1e-3);
        expect(Math.abs(ours.minY - box.y.min)).toBeLessThan(1e-3);
        expect(Math.abs(ours.maxY - box.y.max)).toBeLessThan(1e-3);
      }),
      SEED,
    );
  });

  it('holds every point and is touched on all four sides', () => {
    fc.assert(
      fc.property(wildCubic, (c) => {
        const box = pathBounds(pathOf(c));
        const points = Array.from({ length: 2001 }, (_, i) => onCubic(c, i / 2000));
        const xs = points.map((p) => p.x);
        const ys = points.map((p) => p.y);
        expect(Math.min(...xs)).toBeGreaterThanOrEqual(box.minX - 1e-9);
        expect(Math.max(...xs)).toBeLessThanOrEqual(box.maxX + 1e-9);
        expect(Math.min(...ys)).toBeGreaterThanOrEqual(box.minY - 1e-9);
        expect(Math.max(...ys)).toBeLessThanOrEqual(box.maxY + 1e-9);
        expect(Math.min(...xs) - box.minX).toBeLessThan(2e-4);
        expect(box.maxX - Math.max(...xs)).toBeLessThan(2e-4);
        expect(Math.min(...ys) - box.minY).toBeLessThan(2e-4);
        expect(box.maxY - Math.max(...ys)).toBeLessThan(2e-4);
      }),
      { ...SEED, numRuns: 100 },
    );
  });
});

describe('split', () => {
  it('gives the two parts that bezier-js gives', () => {
    fc.assert(
      fc.property(wildCubic, number(0.05, 0.95), (c, t) => {
        const { left, right } = bezier(c).split(t);
        const [head, tail] = pathSplit(pathOf(c), pathLength(pathOf(cubicOf(left))));
        expect(Math.abs(pathLength(head ?? pathOf(c)) - pathLength(pathOf(cubicOf(left))))).toBeLessThan(
          1e-6,
        );
        expect(Math.abs(pathLength(tail ?? pathOf(c)) - pathLength(pathOf(cubicOf(right))))).toBeLessThan(
          1e-6,
        );
        const cut = cubicOf(left).to;
        expect(
          Math.hypot((tail?.segments[0].from.x ?? 1e9) - cut.x, (tail?.segments[0].from.y ?? 1e9) - cut.y),
        ).toBeLessThan(1e-5);
      }),
      SEED,
    );
  });
});

function cubicOf(b: Bezier): Cubic {
  const [from, c1, c2, to] = b.points.map((p) => point(p.x, p.y));
  if (!from || !c1 || !c2 || !to) throw new Error('Not a cubic.');
  return cubic(from, c1, c2, to);
}

describe('nearest', () => {
  it('is never farther than the nearest of 4000 samples', () => {
    fc.assert(
      fc.property(wildCubic, aPoint, (c, q) => {
        const near = pathNearest(pathOf(c), q);
        let best = Number.POSITIVE_INFINITY;
        for (let i = 0; i <= 4000; i++) {
          const p = onCubic(c, i / 4000);
          best = Math.min(best, Math.hypot(p.x - q.x, p.y - q.y));
        }
        expect(near.distance).toBeLessThanOrEqual(best + 1e-9);
        // And it is a place on the curve: told by its length it is found again.
        const again = pathAt(pathOf(c), near.at).point;
        expect(Math.hypot(again.x - near.point.x, again.y - near.point.y)).toBeLessThan(1e-5);
        expect(Math.abs(Math.hypot(near.point.x - q.x, near.point.y - q.y) - near.distance)).toBeLessThan(
          1e-9,
        );
      }),
      { ...SEED, numRuns: 200 },
    );
  });
});
