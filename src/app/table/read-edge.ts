import { cross, dot, pathEndTangent, pathLength, pathStartTangent } from '../../engine/geometry/index.ts';
import {
  type Edge,
  type EdgeName,
  edgeLength,
  findEdge,
  type Garment,
  type Join,
  type Piece,
  type PieceId,
  type Seam,
  type SeamEdge,
} from '../../engine/piece/index.ts';

/** One seam in which an edge is sewn, with what lies on each side of it. */
export interface SewnTo {
  readonly seam: Seam['name'];
  readonly join: Join;
  /** The edges of the other side, each once. */
  readonly others: readonly { readonly piece: Piece; readonly edge: Edge }[];
  /** Length of one such seam on the side of the edge, and on the other side, mm. */
  readonly own: number;
  readonly other: number;
  /** The edge is sewn to itself, on the mirrored piece. */
  readonly toItself: boolean;
}

export interface EdgeReading {
  readonly piece: Piece;
  readonly edge: Edge;
  readonly length: number;
  readonly sewn: readonly SewnTo[];
}

/** All that can be said of an edge; null where the dress has none of that name. */
export function readEdge(garment: Garment, pieceId: PieceId, edgeName: EdgeName): EdgeReading | null {
  const piece = garment.pieces.find(({ id }) => id === pieceId);
  const edge = piece === undefined ? undefined : findEdge(piece, edgeName);
  if (piece === undefined || edge === undefined) return null;
  const isIt = (e: SeamEdge): boolean => e.piece === pieceId && e.edge === edgeName;
  const sewn = garment.seams.flatMap((seam): readonly SewnTo[] => {
    const inA = seam.a.some(isIt);
    if (!inA && !seam.b.some(isIt)) return [];
    const [own, other] = inA ? [seam.a, seam.b] : [seam.b, seam.a];
    // A seam that stands on both halves of the dress is told once.
    const copies = Math.min(...[...own, ...other].map(({ times }) => times));
    return [
      {
        seam: seam.name,
        join: seam.join,
        others: distinct(garment, other),
        own: lengthOf(garment, own) / copies,
        other: lengthOf(garment, other) / copies,
        toItself: inA && seam.b.some(isIt),
      },
    ];
  });
  return { piece, edge, length: pathLength(edge.path), sewn };
}

function distinct(garment: Garment, side: readonly SeamEdge[]): SewnTo['others'] {
  return side
    .filter((e, i) => side.findIndex((o) => o.piece === e.piece && o.edge === e.edge) === i)
    .flatMap((e) => {
      const piece = garment.pieces.find(({ id }) => id === e.piece);
      const edge = piece === undefined ? undefined : findEdge(piece, e.edge);
      return piece === undefined || edge === undefined ? [] : [{ piece, edge }];
    });
}

const lengthOf = (garment: Garment, side: readonly SeamEdge[]): number =>
  side.reduce((sum, { piece: id, edge, times }) => {
    const piece = garment.pieces.find((p) => p.id === id);
    return piece === undefined || findEdge(piece, edge) === undefined
      ? sum
      : sum + times * edgeLength(piece, edge);
  }, 0);

/** The angle of the cloth at the corner where an edge starts, degrees: 90 is square, 180 runs through. */
export function cornerAngle(piece: Piece, edgeName: EdgeName): number | null {
  const index = piece.edges.findIndex(({ name }) => name === edgeName);
  const [before, edge] = [piece.edges.at(index - 1), piece.edges[index]];
  if (index < 0 || before === undefined || edge === undefined) return null;
  const [coming, going] = [pathEndTangent(before.path), pathStartTangent(edge.path)];
  // The cloth lies on the right hand: with y down the page a turn to the right is positive and closes the angle.
  return 180 - (Math.atan2(cross(coming, going), dot(coming, going)) * 180) / Math.PI;
}
