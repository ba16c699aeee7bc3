import { pathLength, segmentLength } from './length.ts';
import { pathEnd, pathFrom, pathJoin, pathOf, pathStart } from './path.ts';
import { add, between, distance, outward, scale, subtract, unit } from './points.ts';
import { cubic } from './segment.ts';
import { cubicDoublePoint } from './segment-crossings.ts';
import { pathSplit } from './split.ts';
import type { Cubic, Path, Point, Segment, Vector } from './types.ts';

/** How near the wished length must be met, mm. */
const MET = 1e-7;
/** Handles may be drawn in to a twentieth and drawn out to this many times; beyond, the shape is another. */
const HANDLES = { least: 0.05, most: 3 };
/** A path of several segments may be pushed sideways by at most this share of its chord. */
const MOST_PUSH = 0.5;

/**
 * The path with the same ends and the same end directions, brought to a wished length (within 1e-6 mm). One
 * cubic has its handles lengthened or shortened in the same ratio; where that is not enough (a cubic that
 * is almost straight), and on a longer path, the middle is pushed sideways, fading out to nothing with the
 * direction unchanged at both ends. Null when that cannot reach the length without changing the character
 * of the curve: a straight line, a length below the chord, or one that would draw the curve into a loop.
 */
export function curveOfLength(path: Path, length: number): Path | null {
  if (Math.abs(pathLength(path) - length) <= MET) return path;
  if (length < distance(pathStart(path), pathEnd(path))) return null;
  const [first, ...rest] = path.segments;
  if (rest.length > 0) return pushed(path, length);
  if (first.kind !== 'cubic') return null;
  return rehandled(first, length) ?? pushed(inHalves(first), length);
}

function rehandled(s: Cubic, length: number): Path | null {
  const draw = (k: number): Path =>
    pathOf(cubic(s.from, between(s.from, s.c1, k), between(s.to, s.c2, k), s.to));
  const wanted = segmentLength(s) < length ? HANDLES.most : HANDLES.least;
  const found = solve(draw, 1, wanted, length)?.path;
  if (found === undefined) return null;
  const [only] = found.segments;
  return only.kind === 'cubic' && foldsBack(only, s) ? null : found;
}

function inHalves(s: Cubic): Path {
  const path = pathOf(s);
  const [first, second] = pathSplit(path, pathLength(path) / 2);
  return first === null || second === null ? path : pathJoin(first, second);
}

/** Whether drawing out the handles made the curve turn back on itself, which it did not do before. */
function foldsBack(now: Cubic, before: Cubic): boolean {
  if (cubicDoublePoint(now) !== null && cubicDoublePoint(before) === null) return true;
  return wandering(now) > wandering(before) + Math.PI / 2;
}

/** Total turning of the handle polygon, radians. */
function wandering(s: Cubic): number {
  const sides = [subtract(s.c1, s.from), subtract(s.c2, s.c1), subtract(s.to, s.c2)];
  let sum = 0;
  for (const [i, side] of sides.entries()) {
    const next = sides[i + 1];
    if (next !== undefined) {
      sum += Math.abs(Math.atan2(side.x * next.y - side.y * next.x, side.x * next.x + side.y * next.y));
    }
  }
  return sum;
}

function pushed(path: Path, length: number): Path | null {
  const chord = subtract(pathEnd(path), pathStart(path));
  const span = Math.hypot(chord.x, chord.y);
  if (!(span > 0)) return null;
  const side = outward(unit(chord));
  const draw = (push: number) => pushedBy(path, scale(side, push));
  const options = [span * MOST_PUSH, -span * MOST_PUSH]
    .map((most) => solvePush(draw, most, length))
    .filter((found) => found !== null)
    .sort((a, b) => Math.abs(a.value) - Math.abs(b.value));
  return options[0]?.path ?? null;
}

/**
 * Every point moved by 16 u2 (1 - u)2 times the push, u being its share of the length; handles keep smooth.
 */
function pushedBy(path: Path, push: Vector): Path {
  const total = pathLength(path);
  const bump = (u: number) => 16 * u * u * (1 - u) * (1 - u);
  const slope = (u: number) => 32 * u * (1 - u) * (1 - 2 * u);
  const segments: Segment[] = [];
  let before = 0;
  for (const s of path.segments) {
    const share = segmentLength(s) / total;
    const u0 = before / total;
    const u1 = Math.min(1, u0 + share);
    const c1 = s.kind === 'cubic' ? s.c1 : between(s.from, s.to, 1 / 3);
    const c2 = s.kind === 'cubic' ? s.c2 : between(s.from, s.to, 2 / 3);
    // A handle's own reach along the path decides how much of the bump's slope it takes.
    const reach1 = distance(s.from, c1) / total;
    const reach2 = distance(s.to, c2) / total;
    segments.push(
      cubic(
        move(s.from, bump(u0), push),
        move(c1, bump(u0) + slope(u0) * reach1, push),
        move(c2, bump(u1) - slope(u1) * reach2, push),
        move(s.to, bump(u1), push),
      ),
    );
    before += segmentLength(s);
  }
  return pathFrom(segments);
}

function move(p: Point, k: number, push: Vector): Point {
  return add(p, scale(push, k));
}

interface Solved {
  readonly value: number;
  readonly path: Path;
}

/** Bisection between two values; null when the wished length does not lie between their lengths. */
function solve(draw: (value: number) => Path, start: number, end: number, length: number): Solved | null {
  let a = start;
  let b = end;
  const rising = pathLength(draw(a)) < length;
  if (pathLength(draw(b)) < length === rising) return null;
  for (let i = 0; i < 80; i++) {
    const value = (a + b) / 2;
    const path = draw(value);
    const miss = pathLength(path) - length;
    if (Math.abs(miss) <= MET) return { value, path };
    if (miss < 0 === rising) a = value;
    else b = value;
  }
  return null;
}

/**
 * The length is a convex function of the push, so lengthening is looked for up to `most`, and shortening only
 * up to the push of least length on this side, which golden section finds.
 */
function solvePush(draw: (value: number) => Path, most: number, length: number): Solved | null {
  const lengthAt = (value: number) => pathLength(draw(value));
  if (length > lengthAt(0)) return solve(draw, 0, most, length);
  const ratio = (Math.sqrt(5) - 1) / 2;
  let low = 0;
  let high = most;
  for (let i = 0; i < 40; i++) {
    const p = high - (high - low) * ratio;
    const q = low + (high - low) * ratio;
    if (lengthAt(p) < lengthAt(q)) high = q;
    else low = p;
  }
  return solve(draw, 0, (low + high) / 2, length);
}
