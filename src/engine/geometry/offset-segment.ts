import { bernsteinRoots } from './bernstein.ts';
import { add, cross, distance, dot, outward, scale, subtract } from './points.ts';
import {
  cubic,
  line,
  segmentAcceleration,
  segmentCurvature,
  segmentPart,
  segmentPoint,
  segmentTangent,
  segmentVelocity,
} from './segment.ts';
import type { Cubic, Point, Segment } from './types.ts';

/** Half of the 0.02 mm that is promised, since the inner points are only a sample. */
const TOLERANCE = 0.01;
const DEEPEST = 12;
/** A stretch of curve smaller than this has no direction worth following, mm. */
const NOTHING = 1e-7;
const INNER = [0.15, 0.3, 0.5, 0.7, 0.85];

/**
 * The parallel of one segment, at `d` mm on the left hand (right hand when negative), as runs of connected
 * segments. A curve that bends more tightly than `d` towards the parallel's side has stretches whose parallel
 * would travel backwards; these are left out, so that one segment may give several runs, or none.
 */
export function segmentOffset(s: Segment, d: number): Segment[][] {
  if (s.kind === 'line') {
    const shift = scale(outward(segmentTangent(s, 0)), d);
    return [[line(add(s.from, shift), add(s.to, shift))]];
  }
  // A sharp bend takes so little of the parameter that samples could step over it: begin a new stretch there.
  const sharp = slowest(s).filter((t) => Math.abs(d * segmentCurvature(s, t)) > 1);
  const runs = forwardStretches(s, d).map(([low, high]) => {
    const out: Segment[] = [];
    const cuts = [low, ...sharp.filter((t) => t > low && t < high), high];
    for (const [i, next] of cuts.slice(1).entries()) approximate(s, d, cuts[i] ?? low, next, 0, out);
    return out;
  });
  return runs.filter((run) => run.length > 0);
}

/**
 * 1 + d x curvature: how much faster the parallel travels than the curve; below zero it travels backwards.
 */
function stretching(s: Cubic, d: number, t: number): number {
  const velocity = segmentVelocity(s, t);
  const square = dot(velocity, velocity);
  const turn = cross(velocity, segmentAcceleration(s, t));
  // Multiplied by the speed to the third power, which keeps the sign and stays finite at a cusp.
  return square * Math.sqrt(square) + d * turn;
}

function forwardStretches(s: Cubic, d: number): [number, number][] {
  const times = [0, ...slowest(s), 1].sort((a, b) => a - b);
  const samples: number[] = [];
  for (const [i, t] of times.entries()) {
    const next = times[i + 1];
    if (next === undefined) samples.push(t);
    else for (let k = 0; k < 8; k++) samples.push(t + ((next - t) * k) / 8);
  }
  const stretches: [number, number][] = [];
  let open: number | null = null;
  let last: number | null = null;
  for (const t of samples) {
    const forward = stretching(s, d, t) > 0 || ((t === 0 || t === 1) && degenerateEnd(s, t));
    if (forward && open === null) open = last === null ? t : turnOver(s, d, t, last);
    if (!forward && open !== null && last !== null) {
      stretches.push([open, turnOver(s, d, last, t)]);
      open = null;
    }
    last = t;
  }
  if (open !== null) stretches.push([open, 1]);
  return stretches.filter(([low, high]) => high - low > 1e-9);
}

/** A handle on its end point stops the travel there without turning it back. */
function degenerateEnd(s: Cubic, t: number): boolean {
  const velocity = segmentVelocity(s, t);
  return dot(velocity, velocity) < 1e-14;
}

/** Where the speed is least: near these the curve bends most. B' . B'' = 0, of degree three. */
function slowest(s: Cubic): number[] {
  const v = [subtract(s.c1, s.from), subtract(s.c2, s.c1), subtract(s.to, s.c2)] as const;
  const w = [subtract(v[1], v[0]), subtract(v[2], v[1])] as const;
  return bernsteinRoots([
    dot(v[0], w[0]),
    (2 * dot(v[1], w[0]) + dot(v[0], w[1])) / 3,
    (dot(v[2], w[0]) + 2 * dot(v[1], w[1])) / 3,
    dot(v[2], w[1]),
  ]);
}

/** Where the travel turns over between a forward and a backward parameter. */
function turnOver(s: Cubic, d: number, forward: number, backward: number): number {
  let good = forward;
  let bad = backward;
  for (let i = 0; i < 50; i++) {
    const middle = (good + bad) / 2;
    if (stretching(s, d, middle) > 0) good = middle;
    else bad = middle;
  }
  return good;
}

function parallelPoint(s: Cubic, d: number, t: number): Point {
  return add(segmentPoint(s, t), scale(outward(segmentTangent(s, t)), d));
}

/** End points and end directions of the true parallel; halved until the inside agrees as well. */
function approximate(s: Cubic, d: number, low: number, high: number, depth: number, out: Segment[]): void {
  const part = segmentPart(s, low, high);
  if (part.kind === 'line' || extent(part) < NOTHING) return;
  const start = outward(segmentTangent(part, 0));
  const end = outward(segmentTangent(part, 1));
  const from = add(part.from, scale(start, d));
  const to = add(part.to, scale(end, d));
  const c1 = add(from, scale(subtract(part.c1, part.from), 1 + d * segmentCurvature(part, 0)));
  const c2 = add(to, scale(subtract(part.c2, part.to), 1 + d * segmentCurvature(part, 1)));
  const candidate = cubic(from, c1, c2, to);
  if (depth >= DEEPEST || INNER.every((t) => strays(part, d, candidate, t) <= TOLERANCE)) {
    out.push(candidate);
    return;
  }
  const middle = (low + high) / 2;
  approximate(s, d, low, middle, depth + 1, out);
  approximate(s, d, middle, high, depth + 1, out);
}

/** How far the points of a curve lie from its start at most, mm. */
function extent(s: Cubic): number {
  return Math.max(distance(s.from, s.c1), distance(s.from, s.c2), distance(s.from, s.to));
}

/** Distance of the true parallel's point from the candidate, measured to the candidate's tangent there. */
function strays(part: Cubic, d: number, candidate: Cubic, t: number): number {
  const wish = parallelPoint(part, d, t);
  const way = subtract(wish, segmentPoint(candidate, t));
  const velocity = segmentVelocity(candidate, t);
  const square = dot(velocity, velocity);
  if (square < 1e-12) return Math.sqrt(dot(way, way));
  const along = dot(way, velocity) / square;
  // Slide to the foot on the candidate once, since both travel at slightly different speeds.
  const nearer = Math.min(1, Math.max(0, t + along));
  const left = subtract(wish, segmentPoint(candidate, nearer));
  return Math.sqrt(dot(left, left));
}
