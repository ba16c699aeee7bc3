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
import { cornerAt } from './corner.ts';
import { type Look, seamEdge, seamPiece } from './look.ts';

/**
 * How many mm longer one side of a seam gets for each mm that is trimmed off its edges (first order; negative:
 * shorter). Along a bend the parallel changes by the angle turned, at an inner corner by twice the tangent of half
 * the angle, and where the edge ends on a neighbour that stays, by the cotangent of the corner.
 */
export function growthWhenTrimmed(look: Look, side: readonly SeamEdge[]): number {
  return side.reduce((sum, at) => {
    const piece = seamPiece(look, at);
    const ends = (['start', 'end'] as const).map((end) => cornerAt(piece, at.edge, end).degrees);
    const slides = ends.reduce((s, degrees) => s - 1 / Math.tan((degrees * Math.PI) / 180), 0);
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
