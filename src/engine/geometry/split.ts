import { segmentLength, segmentParameterAt } from './length.ts';
import { lastSegment, pathFrom } from './path.ts';
import { segmentPoint, segmentSplit, segmentTangent } from './segment.ts';
import type { Path, Point, Segment, Vector } from './types.ts';

/** A stretch shorter than this is no stretch, mm. */
const NOTHING = 1e-9;

/** A place on a path; `length` is its distance along the path from the start, mm. */
export interface PathPlace {
  readonly point: Point;
  /** Unit direction of travel. */
  readonly tangent: Vector;
  readonly length: number;
}

/**
 * The place at a length from the start. A length before the start or beyond the end gives that end.
 * At a corner the tangent is that of the segment that arrives.
 */
export function pathAt(p: Path, length: number): PathPlace {
  let before = 0;
  for (const s of p.segments) {
    const own = segmentLength(s);
    if (own > 0 && length <= before + own) {
      const t = segmentParameterAt(s, length - before);
      return { point: segmentPoint(s, t), tangent: segmentTangent(s, t), length: Math.max(0, length) };
    }
    before += own;
  }
  const last = p.segments.findLast((s) => segmentLength(s) > 0) ?? lastSegment(p);
  return { point: last.to, tangent: segmentTangent(last, 1), length: before };
}

/** Both parts of a path cut at a length from its start; a part without length is null. */
export function pathSplit(p: Path, length: number): [Path | null, Path | null] {
  const head: Segment[] = [];
  const tail: Segment[] = [];
  let before = 0;
  for (const s of p.segments) {
    const own = segmentLength(s);
    if (before + own <= length + NOTHING) head.push(s);
    else if (before >= length - NOTHING) tail.push(s);
    else {
      const [first, second] = segmentSplit(s, segmentParameterAt(s, length - before));
      head.push(first);
      tail.push(second);
    }
    before += own;
  }
  return [head.length > 0 ? pathFrom(head) : null, tail.length > 0 ? pathFrom(tail) : null];
}

/** The part between two lengths from the start. Throws when nothing lies between them. */
export function pathSlice(p: Path, from: number, to: number): Path {
  const [head] = pathSplit(p, to);
  const part = head === null ? null : from <= NOTHING ? head : pathSplit(head, from)[1];
  if (part === null || !(to > from))
    throw new Error(`No stretch of the path lies between ${from} and ${to} mm.`);
  return part;
}
