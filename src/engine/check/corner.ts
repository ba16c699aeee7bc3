import { cross, dot, type Point, pathEndTangent, pathStart, pathStartTangent } from '../geometry/index.ts';
import { type Edge, type EdgeName, edgeOf, type Piece } from '../piece/index.ts';

export interface Corner {
  readonly at: Point;
  /** Angle of cloth in the corner, degrees, 0 to 360. */
  readonly degrees: number;
  /** The edge on the other side of the corner. */
  readonly neighbour: Edge;
}

/** The corner of a piece at the start or the end of an edge. */
export function cornerAt(piece: Piece, name: EdgeName, end: 'start' | 'end'): Corner {
  const edge = edgeOf(piece, name);
  const here = piece.edges.indexOf(edge);
  const neighbour = piece.edges.at((here + (end === 'start' ? -1 : 1)) % piece.edges.length);
  if (neighbour === undefined) throw new Error(`Piece "${piece.id}" has no edges.`);
  const [before, after] = end === 'start' ? [neighbour, edge] : [edge, neighbour];
  const arriving = pathEndTangent(before.path);
  const leaving = pathStartTangent(after.path);
  // Cloth lies on the right hand, so a turn to the right makes the corner smaller.
  const turn = Math.atan2(cross(arriving, leaving), dot(arriving, leaving));
  return { at: pathStart(after.path), degrees: 180 - (turn * 180) / Math.PI, neighbour };
}
