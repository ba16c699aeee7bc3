import { pathOf } from './path.ts';
import { add, angleBetween, cross, distance, scale, subtract, unit } from './points.ts';
import { cubic } from './segment.ts';
import type { Path, Point, Vector } from './types.ts';

/** A handle is never shorter than this share of the chord, so that the end direction can be seen. */
const LEAST_HANDLE = 1 / 20;

/** The share of each leg that draws a quarter ellipse with one cubic: 4/3 (sqrt 2 - 1). */
const QUARTER = (4 / 3) * (Math.SQRT2 - 1);

/**
 * One cubic between two points with given directions of travel. The handles follow the arc of an ellipse that
 * touches both directions: for a turn of 90 degrees each is 0.5523 of its leg (the way to the point where
 * the two directions meet). `fullness` is that share: 0.5523 unless said otherwise; a larger one draws the
 * curve deeper into the corner, and other turns scale with it. Directions that do not meet ahead
 * (an S) get handles of about a third of the chord. Throws when the points coincide.
 */
export function curveBetween(
  from: Point,
  startDirection: Vector,
  to: Point,
  endDirection: Vector,
  fullness: number = QUARTER,
): Path {
  const start = unit(startDirection);
  const end = unit(endDirection);
  const chord = distance(from, to);
  if (!(chord > 0)) throw new Error('A curve needs two different ends.');
  const [first, second] = handles(start, end, unit(subtract(to, from)));
  const size = (chord * fullness) / QUARTER;
  const c1 = add(from, scale(start, first * size));
  const c2 = subtract(to, scale(end, second * size));
  return pathOf(cubic(from, c1, c2, to));
}

/** Lengths of the handles as shares of the chord. */
function handles(start: Vector, end: Vector, chord: Vector): [number, number] {
  const turn = angleBetween(start, end);
  const setOut = cross(start, chord);
  const arrive = cross(chord, end);
  if (!(setOut * arrive > 0) || turn < 1e-6) {
    const share = 1 / (3 * Math.cos(turn / 4) ** 2);
    return [share, share];
  }
  // Leg by the sine rule, times the share 4/3 tan(turn/4) / tan(turn/2) that an arc needs of it.
  const half = Math.sin(turn / 2);
  const arc = ((2 / 3) * Math.tan(turn / 4)) / (half * half);
  return [Math.max(LEAST_HANDLE, Math.abs(arrive) * arc), Math.max(LEAST_HANDLE, Math.abs(setOut) * arc)];
}
