import {
  cross,
  dot,
  type Path,
  pathEndTangent,
  pathOf,
  pathStartTangent,
  type Vector,
} from '../geometry/index.ts';
import type { SeamEdge } from '../piece/index.ts';
import { type End, sewnCornerAt } from './corner.ts';
import { type Look, seamEdge, seamPiece } from './look.ts';

/**
 * A corner with its neighbour that slides further than this for each mm of trim may be closed by a straight step
 * instead, as long as the trim is deep: the two run on into each other almost straight.
 */
const SLIDES_TOO_FAR = 3.5;

/** From least to most: mm that an edge gains for each mm that is trimmed off it (negative: loses). */
export type Growth = readonly [least: number, most: number];

/**
 * How many mm longer one side of a seam gets for each mm that is trimmed off its edges (first order; negative:
 * shorter). Along a bend the parallel changes by the angle turned, at a corner between two trimmed edges by twice
 * the tangent of half the angle, and where the edge ends on a neighbour that stays, by the cotangent of the corner.
 */
export function growthWhenTrimmed(look: Look, side: readonly SeamEdge[]): Growth {
  const trimmed = side.map((at) => seamEdge(look, at));
  const atEnd = (at: SeamEdge, end: End): Growth => {
    const { degrees, neighbour } = sewnCornerAt(look, seamPiece(look, at), at.edge, end);
    const corner = (degrees * Math.PI) / 180;
    if (trimmed.includes(neighbour)) return both(Math.tan((corner - Math.PI) / 2));
    const slide = -1 / Math.tan(corner);
    return Math.abs(slide) > SLIDES_TOO_FAR ? [Math.min(slide, 0), Math.max(slide, 1)] : both(slide);
  };
  return side.reduce<Growth>(
    ([least, most], at) => {
      const [start, end] = [atEnd(at, 'start'), atEnd(at, 'end')];
      const bend = bendOf(seamEdge(look, at).path);
      return [least + at.times * (start[0] + end[0] - bend), most + at.times * (start[1] + end[1] - bend)];
    },
    [0, 0],
  );
}

const both = (growth: number): Growth => [growth, growth];

/** Signed turning of a path toward the cloth, radians, with inner corners as twice the tangent of their half. */
function bendOf(path: Path): number {
  let bend = 0;
  let arriving: Vector | null = null;
  for (const segment of path.segments) {
    const part = pathOf(segment);
    const leaving = pathStartTangent(part);
    if (arriving !== null) bend += 2 * Math.tan(turnBetween(arriving, leaving) / 2);
    arriving = pathEndTangent(part);
    bend += turnBetween(leaving, arriving);
  }
  return bend;
}

const turnBetween = (a: Vector, b: Vector): number => Math.atan2(cross(a, b), dot(a, b));
