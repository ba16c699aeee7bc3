import { cross, dot, type Point, pathEndTangent, pathStart, pathStartTangent } from '../geometry/index.ts';
import {
  type Edge,
  type EdgeName,
  edgeOf,
  type Piece,
  pieceAt,
  type SeamEdge,
  seamsNamed,
} from '../piece/index.ts';
import type { Look } from './look.ts';

export interface Corner {
  readonly at: Point;
  /** Angle of cloth in the corner, degrees, 0 to 360. */
  readonly degrees: number;
  /** The edge on the other side of the corner. */
  readonly neighbour: Edge;
}

export type End = 'start' | 'end';

/** Where an edge begins or ends when its seam is walked. The same turn leads from the edge to the seam and back. */
export const walkedEnd = (at: SeamEdge, end: End): End =>
  at.reversed === true ? (end === 'start' ? 'end' : 'start') : end;

/** The corner of a piece at the start or the end of an edge. */
export function cornerAt(piece: Piece, name: EdgeName, end: End): Corner {
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

/**
 * The corner at the end of an edge, across the style lines that run into it: where a yoke line ends on the corner,
 * the yoke's cloth is added, and the neighbour is the edge beyond it.
 */
export function sewnCornerAt(look: Look, piece: Piece, name: EdgeName, end: End): Corner {
  let corner = cornerAt(piece, name, end);
  let holder = piece;
  // A piece is entered once at most, so a ring of style lines cannot go on for ever.
  for (const _ of look.garment.pieces) {
    if (corner.neighbour.kind !== 'style-line') break;
    const beyond = acrossSeam(look, holder, corner.neighbour.name, end === 'start' ? 'end' : 'start');
    if (beyond === null) break;
    holder = pieceAt(look, beyond);
    // The next edge round the corner lies on the other side of the style line, in the same sense of walking.
    const next = cornerAt(holder, beyond.edge, end);
    corner = { at: corner.at, degrees: corner.degrees + next.degrees, neighbour: next.neighbour };
  }
  return corner;
}

/** The edge that is sewn to this end of a style line. */
function acrossSeam(look: Look, piece: Piece, name: EdgeName, end: End): SeamEdge | null {
  for (const seam of seamsNamed(look, 'yoke', 'own')) {
    for (const [ours, others] of [
      [seam.a, seam.b],
      [seam.b, seam.a],
    ] as const) {
      const here = ours.find((at) => at.piece === piece.id && at.edge === name);
      if (here === undefined) continue;
      const outer = walkedEnd(here, end) === 'start' ? 0 : -1;
      // Where a line of its own ends in the middle of a style line, nothing lies across but the line itself.
      if (ours.at(outer) !== here) continue;
      const mate = others.at(outer);
      if (mate !== undefined) return mate;
    }
  }
  return null;
}
