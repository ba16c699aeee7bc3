import {
  cross,
  dot,
  type Path,
  pathEndTangent,
  pathOf,
  pathStartTangent,
  type Vector,
} from '../geometry/index.ts';
import { edgeAt, pieceAt, type SeamEdge } from '../piece/index.ts';
import { cornerAt, type End, sewnCornerAt } from './corner.ts';
import type { Look } from './look.ts';

/**
 * Where a trimmed edge would slide along its neighbour by more than this for each mm of trim, the two run on into
 * each other almost straight, and the corner may be closed by a straight step as long as the trim is deep.
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
  const trimmed = side.map((at) => edgeAt(look, at));
  const atEnd = (at: SeamEdge, end: End): Growth => {
    const piece = pieceAt(look, at);
    const sewn = sewnCornerAt(look, piece, at.edge, end);
    if (trimmed.includes(sewn.neighbour)) {
      const turn = 2 * Math.tan(((sewn.degrees - 180) * Math.PI) / 360);
      return [turn / 2, turn / 2];
    }
    // A lining cut whole ends on the edge beyond a yoke line, one that follows the yoke on the yoke line itself.
    const [whole, apart] = [slide(sewn.degrees), slide(cornerAt(piece, at.edge, end).degrees)];
    return [Math.min(whole[0], apart[0]), Math.max(whole[1], apart[1])];
  };
  return side.reduce<Growth>(
    ([least, most], at) => {
      const [start, end] = [atEnd(at, 'start'), atEnd(at, 'end')];
      const bend = bendOf(edgeAt(look, at).path);
      return [least + at.times * (start[0] + end[0] - bend), most + at.times * (start[1] + end[1] - bend)];
    },
    [0, 0],
  );
}

/** How an edge grows at a corner with a neighbour that stays. */
function slide(degrees: number): Growth {
  const growth = -1 / Math.tan((degrees * Math.PI) / 180);
  if (Math.abs(growth) <= SLIDES_TOO_FAR) return [growth, growth];
  return [Math.max(Math.min(growth, 0), -SLIDES_TOO_FAR), Math.min(Math.max(growth, 1), SLIDES_TOO_FAR)];
}

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
