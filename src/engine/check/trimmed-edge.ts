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
 * How many mm longer one side of a seam gets for each mm that is trimmed off its edges (first order; negative:
 * shorter). Along a bend the parallel changes by the angle turned, at a corner between two trimmed edges by twice
 * the tangent of half the angle, and where the edge ends on a neighbour that stays, by the cotangent of the corner.
 */
export function growthWhenTrimmed(look: Look, side: readonly SeamEdge[]): number {
  const trimmed = side.map((at) => seamEdge(look, at));
  const slide = (at: SeamEdge, end: End): number => {
    const { degrees, neighbour } = sewnCornerAt(look, seamPiece(look, at), at.edge, end);
    const corner = (degrees * Math.PI) / 180;
    return trimmed.includes(neighbour) ? Math.tan((corner - Math.PI) / 2) : -1 / Math.tan(corner);
  };
  return side.reduce((sum, at) => {
    const slides = slide(at, 'start') + slide(at, 'end');
    return sum + at.times * (slides - bendOf(seamEdge(look, at).path));
  }, 0);
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
