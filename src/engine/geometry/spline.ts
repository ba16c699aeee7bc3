import { pathFrom } from './path.ts';
import { add, distance, scale, subtract, unit } from './points.ts';
import { cubic } from './segment.ts';
import type { Path, Point, Segment, Vector } from './types.ts';

/**
 * A smooth curve through points: the cubic spline with the chord lengths as its parameter, so direction and
 * curvature run on through the inner points. An end with a direction leaves (or arrives) in it; an end
 * without one runs out straight (natural end). Directions need no particular length. Throws with fewer than
 * two points or with two following points that coincide.
 */
export function curveThrough(
  points: readonly Point[],
  ends: { readonly start?: Vector; readonly end?: Vector } = {},
): Path {
  const spans: number[] = [];
  for (const [i, p] of points.entries()) {
    const next = points[i + 1];
    if (next !== undefined) spans.push(distance(p, next));
  }
  if (spans.length === 0) throw new Error('A curve needs at least two points.');
  if (spans.some((h) => !(h > 0))) throw new Error('Two following points of a curve coincide.');
  const velocities = velocitiesOf(points, spans, ends);
  const segments: Segment[] = spans.map((h, i) => {
    const from = at(points, i);
    const to = at(points, i + 1);
    const c1 = add(from, scale(at(velocities, i), h / 3));
    const c2 = subtract(to, scale(at(velocities, i + 1), h / 3));
    return cubic(from, c1, c2, to);
  });
  return pathFrom(segments);
}

/**
 * The derivative at every point: a tridiagonal system, since the second derivative runs on at inner points.
 */
function velocitiesOf(
  points: readonly Point[],
  spans: readonly number[],
  ends: { readonly start?: Vector; readonly end?: Vector },
): Vector[] {
  const n = points.length;
  const lower: number[] = [];
  const main: number[] = [];
  const upper: number[] = [];
  const right: Vector[] = [];
  const row = (l: number, m: number, u: number, r: Vector) => {
    lower.push(l);
    main.push(m);
    upper.push(u);
    right.push(r);
  };
  const slope = (i: number) => scale(subtract(at(points, i + 1), at(points, i)), 1 / (spans[i] ?? 1));
  if (ends.start !== undefined) row(0, 1, 0, unit(ends.start));
  else row(0, 2, 1, scale(slope(0), 3));
  for (let i = 1; i < n - 1; i++) {
    const before = spans[i - 1] ?? 1;
    const after = spans[i] ?? 1;
    const wish = add(scale(slope(i - 1), 3 * after), scale(slope(i), 3 * before));
    row(after, 2 * (before + after), before, wish);
  }
  if (ends.end !== undefined) row(0, 1, 0, unit(ends.end));
  else row(1, 2, 0, scale(slope(n - 2), 3));
  return solve(lower, main, upper, right);
}

/** Elimination for a tridiagonal system with vectors on the right. */
function solve(lower: number[], main: number[], upper: number[], right: Vector[]): Vector[] {
  const n = main.length;
  for (let i = 1; i < n; i++) {
    const factor = (lower[i] ?? 0) / (main[i - 1] ?? 1);
    main[i] = (main[i] ?? 1) - factor * (upper[i - 1] ?? 0);
    right[i] = subtract(at(right, i), scale(at(right, i - 1), factor));
  }
  const out: Vector[] = new Array<Vector>(n);
  for (let i = n - 1; i >= 0; i--) {
    const known = i < n - 1 ? scale(at(out, i + 1), upper[i] ?? 0) : { x: 0, y: 0 };
    out[i] = scale(subtract(at(right, i), known), 1 / (main[i] ?? 1));
  }
  return out;
}

function at(list: readonly Point[], i: number): Point {
  const p = list[i];
  if (p === undefined) throw new RangeError(`No point at ${i}.`);
  return p;
}
