import { pathCrossings } from './crossings.ts';
import { pathLength, segmentLength } from './length.ts';
import { segmentOffset } from './offset-segment.ts';
import {
  lastSegment,
  pathEnd,
  pathEndTangent,
  pathExtend,
  pathFrom,
  pathOf,
  pathStart,
  pathStartTangent,
} from './path.ts';
import { add, cross, direction, distance, lineCrossing, midpoint, outward, scale } from './points.ts';
import { line, segmentTangent, segmentWithEnds } from './segment.ts';
import { pathSplit } from './split.ts';
import type { Path, Point, Segment, Vector } from './types.ts';

/** A corner of the parallel may reach this many times the distance from the corner of the path. */
const MITRE_LIMIT = 4;
/** Ends nearer than this are drawn together without a corner, mm; half of the tolerance that is promised. */
const WELD = 0.01;

/** A stub that gives a parallel its end and its direction there, where the curve itself has lost it, mm. */
const STUB = 0.02;

/** A connected stretch of the parallel; its tangents are those of the original where it begins and ends. */
interface Run {
  readonly path: Path;
  readonly startCorner: Point;
  readonly startTangent: Vector;
  readonly endTangent: Vector;
}

/**
 * The parallel of a path at `d` mm: positive on the left hand (outward on a piece), negative on the right.
 * Within 0.02 mm of the true parallel. A corner turned away from the parallel's side is mitred (up to four
 * times the distance, else cut off straight), one turned towards it is trimmed at the crossing. It begins and
 * ends square to the ends of the path and in their directions.
 *
 * Limits. Where a curve bends more tightly than `d`, the stretch that would travel backwards is left out
 * and its neighbours are trimmed against each other; where that stretch reaches an end of the path, the
 * rest is joined to that end by a straight line. Stretches that come near each other from afar (a narrow U)
 * are not trimmed.
 */
export function pathOffset(p: Path, d: number): Path {
  if (d === 0) return p;
  const [first, ...rest] = withEnds(p, d, runsOf(p, d));
  let out = first;
  let waiting: readonly Run[] = rest;
  while (waiting.length > 0) {
    const [joined, used] = joinNext(out, waiting, d);
    out = joined;
    waiting = waiting.slice(used);
  }
  return out.path;
}

function runsOf(p: Path, d: number): Run[] {
  const runs: Run[] = [];
  for (const s of p.segments) {
    if (segmentLength(s) <= 1e-9) continue;
    for (const segments of segmentOffset(s, d)) {
      const path = pathFrom(segments);
      runs.push({
        path,
        startCorner: s.from,
        startTangent: segmentTangent(path.segments[0], 0),
        endTangent: segmentTangent(lastSegment(path), 1),
      });
    }
  }
  return runs;
}

/** The runs, with a stub at either end of the path that they do not reach. */
function withEnds(p: Path, d: number, runs: readonly Run[]): [Run, ...Run[]] {
  const start = add(pathStart(p), scale(outward(pathStartTangent(p)), d));
  const end = add(pathEnd(p), scale(outward(pathEndTangent(p)), d));
  const [first] = runs;
  const last = runs[runs.length - 1];
  const afterEnd = last === undefined || distance(pathEnd(last.path), end) > WELD;
  const tail = afterEnd ? [stub(add(end, scale(pathEndTangent(p), -STUB)), end, pathEnd(p))] : [];
  if (first !== undefined && distance(pathStart(first.path), start) <= WELD)
    return [first, ...runs.slice(1), ...tail];
  return [stub(start, add(start, scale(pathStartTangent(p), STUB)), pathStart(p)), ...runs, ...tail];
}

function stub(from: Point, to: Point, startCorner: Point): Run {
  const tangent = direction(from, to);
  return { path: pathOf(line(from, to)), startCorner, startTangent: tangent, endTangent: tangent };
}

/** Joins the next run (or, where that is swallowed by a corner, a later one) and says how many were used. */
function joinNext(out: Run, waiting: readonly Run[], d: number): [Run, number] {
  const [next] = waiting;
  if (next === undefined) return [out, 0];
  const gap = distance(pathEnd(out.path), pathStart(next.path));
  if (gap <= WELD) return [merge(out, next, weld(out.path, next.path)), 1];
  if (cross(out.endTangent, next.startTangent) * d > 0) {
    return [merge(out, next, mitre(out, next, d)), 1];
  }
  for (const [i, later] of waiting.entries()) {
    const trimmed = trim(out.path, later.path);
    if (trimmed !== null) return [merge(out, later, trimmed), i + 1];
  }
  // No crossing: the parallel is left with a straight bridge.
  const bridge = line(pathEnd(out.path), pathStart(next.path));
  return [merge(out, next, [...out.path.segments, bridge, ...next.path.segments]), 1];
}

function merge(out: Run, next: Run, segments: readonly Segment[]): Run {
  return { ...out, path: pathFrom(segments), endTangent: next.endTangent };
}

function weld(a: Path, b: Path): Segment[] {
  const last = lastSegment(a);
  const [first, ...rest] = b.segments;
  const at = distance(last.to, first.from) < 1e-9 ? last.to : midpoint(last.to, first.from);
  return [
    ...a.segments.slice(0, -1),
    segmentWithEnds(last, last.from, at),
    segmentWithEnds(first, at, first.to),
    ...rest,
  ];
}

/**
 * Both sides drawn on straight to the point where they meet, or joined straight when that lies too far out.
 */
function mitre(out: Run, next: Run, d: number): Segment[] {
  const from = pathEnd(out.path);
  const to = pathStart(next.path);
  const tip = lineCrossing(from, out.endTangent, to, next.startTangent);
  if (tip === null || distance(tip, next.startCorner) > MITRE_LIMIT * Math.abs(d)) {
    return [...out.path.segments, line(from, to), ...next.path.segments];
  }
  const head = pathExtend(out.path, { end: distance(from, tip) });
  const tail = pathExtend(next.path, { start: distance(tip, to) });
  return weld(head, tail);
}

/** Both paths cut at the crossing nearest to where they should meet; null when they do not cross. */
function trim(a: Path, b: Path): Segment[] | null {
  const total = pathLength(a);
  let best: { readonly cost: number; readonly atA: number; readonly atB: number } | null = null;
  for (const { atA, atB } of pathCrossings(a, b)) {
    const cost = total - atA + atB;
    if (best === null || cost < best.cost) best = { cost, atA, atB };
  }
  if (best === null) return null;
  const [head] = pathSplit(a, best.atA);
  const [, tail] = pathSplit(b, best.atB);
  if (head === null) return tail === null ? null : [...tail.segments];
  if (tail === null) return [...head.segments];
  return weld(head, tail);
}
