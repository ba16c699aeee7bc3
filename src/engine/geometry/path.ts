import { add, distance, scale } from './points.ts';
import { line, segmentReverse, segmentTangent, segmentWithEnds } from './segment.ts';
import type { Path, Point, Segment, Vector } from './types.ts';

/** Ends nearer than this count as meeting, mm. */
const MEETS = 1e-6;

/** A path of these segments as they stand; each must start where the one before ended. */
export function pathOf(first: Segment, ...rest: readonly Segment[]): Path {
  return { segments: [first, ...rest] };
}

/** A path from a list. Throws on an empty list. */
export function pathFrom(segments: readonly Segment[]): Path {
  const [first, ...rest] = segments;
  if (first === undefined) throw new Error('A path needs at least one segment.');
  return { segments: [first, ...rest] };
}

/** Straight from point to point. */
export function linePath(a: Point, b: Point, ...more: readonly Point[]): Path {
  const rest: Segment[] = [];
  let last = b;
  for (const next of more) {
    rest.push(line(last, next));
    last = next;
  }
  return { segments: [line(a, b), ...rest] };
}

export function lastSegment(p: Path): Segment {
  return p.segments[p.segments.length - 1] ?? p.segments[0];
}

export function pathStart(p: Path): Point {
  return p.segments[0].from;
}

export function pathEnd(p: Path): Point {
  return lastSegment(p).to;
}

/** Unit direction in which the path sets out; segments without length are passed over. */
export function pathStartTangent(p: Path): Vector {
  const first = p.segments.find(hasExtent) ?? p.segments[0];
  return segmentTangent(first, 0);
}

/** Unit direction of travel with which the path arrives; segments without length are passed over. */
export function pathEndTangent(p: Path): Vector {
  const last = p.segments.findLast(hasExtent) ?? p.segments[0];
  return segmentTangent(last, 1);
}

function hasExtent(s: Segment): boolean {
  if (distance(s.from, s.to) > 1e-9) return true;
  return s.kind === 'cubic' && Math.max(distance(s.from, s.c1), distance(s.from, s.c2)) > 1e-9;
}

export function pathReverse(p: Path): Path {
  return pathFrom(p.segments.map(segmentReverse).reverse());
}

/** One path after the other. Throws when an end and the next start lie more than 1e-6 mm apart. */
export function pathJoin(first: Path, ...rest: readonly Path[]): Path {
  const segments: Segment[] = [...first.segments];
  let end = pathEnd(first);
  for (const path of rest) {
    const gap = distance(end, pathStart(path));
    if (gap > MEETS) throw new Error(`Paths that do not meet cannot be joined: ${gap} mm apart.`);
    for (const [i, s] of path.segments.entries()) {
      segments.push(i === 0 ? segmentWithEnds(s, end, s.to) : s);
    }
    end = pathEnd(path);
  }
  return pathFrom(segments);
}

/**
 * Lengthened straight along its end directions, mm. Zero, or a speck so short that paths meet across it, leaves an
 * end as it is: a segment without length has no direction. Negative throws. A straight end segment is drawn longer;
 * a curved one gets a straight segment behind it.
 */
export function pathExtend(p: Path, by: { readonly start?: number; readonly end?: number }): Path {
  const start = by.start ?? 0;
  const end = by.end ?? 0;
  if (start < 0 || end < 0) throw new Error('A path is extended by a length of zero or more.');
  const segments: Segment[] = [...p.segments];
  if (start > MEETS) {
    const [first] = p.segments;
    const from = add(first.from, scale(pathStartTangent(p), -start));
    segments.splice(
      0,
      first.kind === 'line' ? 1 : 0,
      line(from, first.kind === 'line' ? first.to : first.from),
    );
  }
  const last = segments[segments.length - 1];
  if (end > MEETS && last !== undefined) {
    const to = add(last.to, scale(pathEndTangent(p), end));
    const straight = last.kind === 'line';
    segments.splice(segments.length - (straight ? 1 : 0), 1, line(straight ? last.from : last.to, to));
  }
  return pathFrom(segments);
}

/**
 * The path with its ends set exactly to these points, for ends that differ from them by rounding or little
 * more.
 */
export function pathWithEnds(p: Path, from: Point, to: Point): Path {
  const last = p.segments.length - 1;
  return pathFrom(
    p.segments.map((s, i) => segmentWithEnds(s, i === 0 ? from : s.from, i === last ? to : s.to)),
  );
}
