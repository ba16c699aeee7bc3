import { add, between, cross, dot, scale, subtract, unit, vectorLength } from './points.ts';
import type { Cubic, Line, Point, Segment, Vector } from './types.ts';

/** Handles nearer than this to their end point give no direction, mm. */
const NO_HANDLE = 1e-9;

export function line(from: Point, to: Point): Line {
  return { kind: 'line', from, to };
}

export function cubic(from: Point, c1: Point, c2: Point, to: Point): Cubic {
  return { kind: 'cubic', from, c1, c2, to };
}

/** The point at parameter `t` (0..1, not a length). */
export function segmentPoint(s: Segment, t: number): Point {
  if (t === 0) return s.from;
  if (t === 1) return s.to;
  if (s.kind === 'line') return between(s.from, s.to, t);
  const u = 1 - t;
  const a = u * u * u;
  const b = 3 * u * u * t;
  const c = 3 * u * t * t;
  const d = t * t * t;
  return {
    x: a * s.from.x + b * s.c1.x + c * s.c2.x + d * s.to.x,
    y: a * s.from.y + b * s.c1.y + c * s.c2.y + d * s.to.y,
  };
}

/** First derivative by the parameter. */
export function segmentVelocity(s: Segment, t: number): Vector {
  if (s.kind === 'line') return subtract(s.to, s.from);
  const u = 1 - t;
  const a = 3 * u * u;
  const b = 6 * u * t;
  const c = 3 * t * t;
  return {
    x: a * (s.c1.x - s.from.x) + b * (s.c2.x - s.c1.x) + c * (s.to.x - s.c2.x),
    y: a * (s.c1.y - s.from.y) + b * (s.c2.y - s.c1.y) + c * (s.to.y - s.c2.y),
  };
}

/** Second derivative by the parameter. */
export function segmentAcceleration(s: Segment, t: number): Vector {
  if (s.kind === 'line') return { x: 0, y: 0 };
  const u = 6 * (1 - t);
  const v = 6 * t;
  return {
    x: u * (s.c2.x - 2 * s.c1.x + s.from.x) + v * (s.to.x - 2 * s.c2.x + s.c1.x),
    y: u * (s.c2.y - 2 * s.c1.y + s.from.y) + v * (s.to.y - 2 * s.c2.y + s.c1.y),
  };
}

/**
 * Unit direction of travel. Where a handle lies on its end point the first derivative vanishes; then the
 * direction is that of the next handle. Throws only for a segment whose points all coincide.
 */
export function segmentTangent(s: Segment, t: number): Vector {
  if (s.kind === 'line') return unit(subtract(s.to, s.from));
  if (t <= 0) return firstDirection(s.from, s.c1, s.c2, s.to);
  if (t >= 1) return scale(firstDirection(s.to, s.c2, s.c1, s.from), -1);
  const velocity = segmentVelocity(s, t);
  if (vectorLength(velocity) > NO_HANDLE) return unit(velocity);
  // A cusp: leave along the second derivative, as the travel goes on from here.
  const acceleration = segmentAcceleration(s, t);
  return vectorLength(acceleration) > NO_HANDLE ? unit(acceleration) : unit(subtract(s.to, s.from));
}

function firstDirection(from: Point, ...others: readonly Point[]): Vector {
  for (const other of others) {
    const way = subtract(other, from);
    if (vectorLength(way) > NO_HANDLE) return unit(way);
  }
  throw new Error('A segment whose points all coincide has no direction.');
}

/**
 * Signed curvature, 1/mm; positive when the path turns to the right hand.
 * At an end whose handle lies on it the curvature of a cubic is infinite or, with straight handles, zero.
 */
export function segmentCurvature(s: Segment, t: number): number {
  if (s.kind === 'line') return 0;
  const velocity = segmentVelocity(s, t);
  const speed = vectorLength(velocity);
  const turn = cross(velocity, segmentAcceleration(s, t));
  if (speed > 1e-7) return turn / (speed * speed * speed);
  return 0;
}

/** Both parts of a segment, by de Casteljau's construction. */
export function segmentSplit(s: Segment, t: number): [Segment, Segment] {
  if (s.kind === 'line') {
    const middle = between(s.from, s.to, t);
    return [line(s.from, middle), line(middle, s.to)];
  }
  const ab = between(s.from, s.c1, t);
  const bc = between(s.c1, s.c2, t);
  const cd = between(s.c2, s.to, t);
  const abc = between(ab, bc, t);
  const bcd = between(bc, cd, t);
  const middle = between(abc, bcd, t);
  return [cubic(s.from, ab, abc, middle), cubic(middle, bcd, cd, s.to)];
}

/** The part of a segment between two parameters, t0 < t1. */
export function segmentPart(s: Segment, t0: number, t1: number): Segment {
  const head = t1 >= 1 ? s : segmentSplit(s, t1)[0];
  return t0 <= 0 ? head : segmentSplit(head, t0 / Math.min(t1, 1))[1];
}

export function segmentReverse(s: Segment): Segment {
  return s.kind === 'line' ? line(s.to, s.from) : cubic(s.to, s.c2, s.c1, s.from);
}

/** Each point moved by the same rule. */
export function segmentMap(s: Segment, move: (p: Point) => Point): Segment {
  return s.kind === 'line'
    ? line(move(s.from), move(s.to))
    : cubic(move(s.from), move(s.c1), move(s.c2), move(s.to));
}

/** The same segment with its ends set exactly; handles move along with their end. */
export function segmentWithEnds(s: Segment, from: Point, to: Point): Segment {
  if (s.from === from && s.to === to) return s;
  if (s.kind === 'line') return line(from, to);
  return cubic(from, add(s.c1, subtract(from, s.from)), add(s.c2, subtract(to, s.to)), to);
}

/** How far the handles stand off the chord at most: a bound for the deviation from a straight line, mm. */
export function segmentFlatness(s: Segment): number {
  if (s.kind === 'line') return 0;
  return Math.max(offChord(s.c1, s.from, s.to), offChord(s.c2, s.from, s.to));
}

function offChord(p: Point, from: Point, to: Point): number {
  const chord = subtract(to, from);
  const way = subtract(p, from);
  const square = dot(chord, chord);
  const share = square > 0 ? Math.min(1, Math.max(0, dot(way, chord) / square)) : 0;
  return vectorLength(subtract(way, scale(chord, share)));
}
