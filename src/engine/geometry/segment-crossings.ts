import { bernsteinRoots } from './bernstein.ts';
import { boundsMeet, boundsOf, segmentBounds } from './bounds.ts';
import { segmentNearest } from './nearest.ts';
import { cross, distance, dot, midpoint, subtract } from './points.ts';
import { segmentFlatness, segmentPoint, segmentSplit, segmentVelocity } from './segment.ts';
import type { Bounds, Cubic, Line, Point, Segment } from './types.ts';

/** Nearer than this two points are one, mm. */
const SAME = 1e-7;
/** Pieces of curve that stray less than this from their chord go to Newton's steps, mm. */
const FLAT = 0.01;
/** A guard for curves that run side by side almost everywhere; far above what ordinary curves need. */
const MOST_PAIRS = 20_000;

/** One crossing by the parameters of both segments. */
export interface SegmentHit {
  readonly ta: number;
  readonly tb: number;
  readonly point: Point;
}

/**
 * Where two segments meet, touching ends included. Segments that run along each other are told by the two
 * ends of the common stretch. A meeting may be told more than once, within 1e-7 mm; the caller merges.
 */
export function segmentCrossings(a: Segment, b: Segment): SegmentHit[] {
  if (!boundsMeet(segmentBounds(a), segmentBounds(b), SAME)) return [];
  const hits = endsOnOther(a, b);
  if (runAlong(a, b, hits)) return hits;
  if (a.kind === 'line') hits.push(...(b.kind === 'line' ? lineLine(a, b) : cubicLine(b, a).map(swapped)));
  else hits.push(...(b.kind === 'line' ? cubicLine(a, b) : cubicCubic(a, b)));
  return hits;
}

function swapped(hit: SegmentHit): SegmentHit {
  return { ta: hit.tb, tb: hit.ta, point: hit.point };
}

function endsOnOther(a: Segment, b: Segment): SegmentHit[] {
  const hits: SegmentHit[] = [];
  for (const ta of [0, 1]) {
    const q = segmentPoint(a, ta);
    const near = nearWithin(b, q);
    if (near !== null) hits.push({ ta, tb: near, point: q });
  }
  for (const tb of [0, 1]) {
    const q = segmentPoint(b, tb);
    const near = nearWithin(a, q);
    if (near !== null) hits.push({ ta: near, tb, point: q });
  }
  return hits;
}

/** The parameter at which a point lies on a segment, or null. */
function nearWithin(s: Segment, q: Point): number | null {
  if (distance(q, s.from) <= SAME) return 0;
  if (distance(q, s.to) <= SAME) return 1;
  if (!boundsMeet(segmentBounds(s), { minX: q.x, maxX: q.x, minY: q.y, maxY: q.y }, SAME)) return null;
  const near = segmentNearest(s, q);
  return near.distance <= SAME ? near.t : null;
}

/** Whether the segments coincide between the two outermost of their end touches. */
function runAlong(a: Segment, b: Segment, touches: readonly SegmentHit[]): boolean {
  if (touches.length < 2) return false;
  const times = touches.map((h) => h.ta);
  const low = Math.min(...times);
  const high = Math.max(...times);
  if (distance(segmentPoint(a, low), segmentPoint(a, high)) <= SAME) return false;
  return [0.17, 0.5, 0.83].every(
    (share) => nearWithin(b, segmentPoint(a, low + (high - low) * share)) !== null,
  );
}

function lineLine(a: Line, b: Line): SegmentHit[] {
  const u = subtract(a.to, a.from);
  const v = subtract(b.to, b.from);
  const turn = cross(u, v);
  if (Math.abs(turn) < 1e-12 * (dot(u, u) + dot(v, v))) return [];
  const way = subtract(b.from, a.from);
  const ta = cross(way, v) / turn;
  const tb = cross(way, u) / turn;
  return ta >= 0 && ta <= 1 && tb >= 0 && tb <= 1 ? [{ ta, tb, point: segmentPoint(a, ta) }] : [];
}

/** The distances of the four control points from the line are the coefficients of the distance. */
function cubicLine(a: Cubic, b: Line): SegmentHit[] {
  const way = subtract(b.to, b.from);
  const square = dot(way, way);
  if (square === 0) return [];
  const off = (p: Point) => cross(way, subtract(p, b.from));
  const hits: SegmentHit[] = [];
  for (const ta of bernsteinRoots([off(a.from), off(a.c1), off(a.c2), off(a.to)])) {
    const at = segmentPoint(a, ta);
    const tb = dot(subtract(at, b.from), way) / square;
    if (tb >= 0 && tb <= 1) hits.push({ ta, tb, point: at });
  }
  return hits;
}

interface Stretch {
  readonly part: Segment;
  readonly low: number;
  readonly high: number;
  readonly flat: boolean;
  readonly box: Bounds;
}

function cubicCubic(a: Cubic, b: Cubic): SegmentHit[] {
  const hits: SegmentHit[] = [];
  const work: [Stretch, Stretch][] = [[stretchOf(a, 0, 1), stretchOf(b, 0, 1)]];
  for (let done = 0; done < MOST_PAIRS; done++) {
    const pair = work.pop();
    if (pair === undefined) break;
    const [p, q] = pair;
    if (!boundsMeet(p.box, q.box, SAME)) continue;
    if (p.flat && q.flat) finish(a, b, p, q, hits);
    else if (q.flat || (!p.flat && extent(p) >= extent(q)))
      for (const half of halves(p)) work.push([half, q]);
    else for (const half of halves(q)) work.push([p, half]);
  }
  return hits;
}

function stretchOf(part: Segment, low: number, high: number): Stretch {
  return { part, low, high, flat: segmentFlatness(part) <= FLAT, box: boundsOf(part) };
}

function halves(s: Stretch): [Stretch, Stretch] {
  const [first, second] = segmentSplit(s.part, 0.5);
  const middle = (s.low + s.high) / 2;
  return [stretchOf(first, s.low, middle), stretchOf(second, middle, s.high)];
}

function extent({ box }: Stretch): number {
  return Math.max(box.maxX - box.minX, box.maxY - box.minY);
}

/** Newton from both ends and the middle of two nearly straight pieces, which may still cross twice. */
function finish(a: Cubic, b: Cubic, p: Stretch, q: Stretch, hits: SegmentHit[]): void {
  const along = dot(subtract(p.part.to, p.part.from), subtract(q.part.to, q.part.from)) >= 0;
  for (const share of [0.5, 0, 1]) {
    const hit = newton(
      a,
      b,
      p.low + (p.high - p.low) * share,
      q.low + (q.high - q.low) * (along ? share : 1 - share),
    );
    if (hit !== null && within(hit.ta, p) && within(hit.tb, q)) hits.push(hit);
  }
}

/** With a margin: a crossing on the border of two stretches must not fall between them. */
function within(t: number, s: Stretch): boolean {
  const margin = (s.high - s.low) * 0.01;
  return t >= s.low - margin && t <= s.high + margin;
}

function newton(a: Cubic, b: Cubic, startA: number, startB: number): SegmentHit | null {
  let ta = startA;
  let tb = startB;
  for (let i = 0; i < 40; i++) {
    const gap = subtract(segmentPoint(b, tb), segmentPoint(a, ta));
    const u = segmentVelocity(a, ta);
    const v = segmentVelocity(b, tb);
    const turn = cross(u, v);
    if (Math.abs(turn) < 1e-14 * (dot(u, u) + dot(v, v))) break;
    const stepA = cross(gap, v) / turn;
    const stepB = cross(gap, u) / turn;
    ta += stepA;
    tb += stepB;
    if (!(ta > -0.5 && ta < 1.5 && tb > -0.5 && tb < 1.5)) return null;
    if (Math.abs(stepA) < 1e-14 && Math.abs(stepB) < 1e-14) break;
  }
  ta = Math.min(1, Math.max(0, ta));
  tb = Math.min(1, Math.max(0, tb));
  const p = segmentPoint(a, ta);
  const q = segmentPoint(b, tb);
  return distance(p, q) <= SAME ? { ta, tb, point: midpoint(p, q) } : null;
}

/** The parameters of the double point of a cubic that crosses itself within 0..1, or null. */
export function cubicDoublePoint(s: Cubic): { readonly low: number; readonly high: number } | null {
  // B = a t3 + b t2 + c t + d; two parameters with sum m and product n give a (m2 - n) + b m + c = 0.
  const c = { x: 3 * (s.c1.x - s.from.x), y: 3 * (s.c1.y - s.from.y) };
  const b = { x: 3 * (s.c2.x - 2 * s.c1.x + s.from.x), y: 3 * (s.c2.y - 2 * s.c1.y + s.from.y) };
  const a = { x: s.to.x - s.from.x - b.x - c.x, y: s.to.y - s.from.y - b.y - c.y };
  const turn = cross(a, b);
  const square = dot(a, a);
  if (square === 0 || Math.abs(turn) < 1e-12 * square) return null;
  const m = cross(c, a) / turn;
  const n = m * m + (m * dot(b, a) + dot(c, a)) / square;
  const root = m * m - 4 * n;
  if (!(root > 1e-12)) return null;
  const low = (m - Math.sqrt(root)) / 2;
  const high = (m + Math.sqrt(root)) / 2;
  return low >= 0 && high <= 1 ? { low, high } : null;
}
