import type { Garment } from './garment.ts';
import type { EdgeName, Piece, PieceId } from './piece.ts';
import type { Seam, SeamEdge, SeamName } from './seam.ts';
import type { Split } from './split-piece.ts';

const findPiece = (garment: Garment, id: PieceId): Piece | undefined =>
  garment.pieces.find((piece) => piece.id === id);

/** The piece with this id. Throws when there is none: ask `findPiece` where that can happen. */
export function pieceOf(garment: Garment, id: PieceId): Piece {
  const piece = findPiece(garment, id);
  if (piece === undefined) throw new Error(`The garment has no piece "${id}".`);
  return piece;
}

export function withPiece(garment: Garment, piece: Piece): Garment {
  return { ...garment, pieces: garment.pieces.map((p) => (p.id === piece.id ? piece : p)) };
}

/**
 * Puts the two parts of a split piece into the garment: seams that held the piece now hold the part that
 * carries the edge, and the outline before the cut is kept for linings cut whole.
 */
export function withSplit(garment: Garment, before: Piece, split: Split): Garment {
  const retarget = (edge: SeamEdge): readonly SeamEdge[] => {
    if (edge.piece !== before.id) return [edge];
    const carriers = split.carriers[edge.edge] ?? [];
    const inOrder = edge.reversed === true ? carriers.toReversed() : carriers;
    return inOrder.map((piece) => ({ ...edge, piece }));
  };
  return {
    ...garment,
    pieces: garment.pieces.flatMap((p) => (p.id === before.id ? [split.cutOff, split.rest] : [p])),
    seams: garment.seams.map((seam) => ({
      ...seam,
      a: seam.a.flatMap(retarget),
      b: seam.b.flatMap(retarget),
    })),
    whole: { ...garment.whole, [before.id]: garment.whole[before.id] ?? before },
  };
}

/** Lets a seam run on over a further edge of each side, as the overarm follows the shoulder. */
export function extendSeam(seam: Seam, after: EdgeName, next: EdgeName): Seam {
  const extend = (side: readonly SeamEdge[]): readonly SeamEdge[] =>
    side.flatMap((edge) => (edge.edge === after ? [edge, { ...edge, edge: next }] : [edge]));
  return { ...seam, a: extend(seam.a), b: extend(seam.b) };
}

/** A seam whose two sides are equally long, with no promise that anything runs through at its ends. */
export function flatSeam(id: string, name: SeamName, a: Seam['a'], b: Seam['b']): Seam {
  return { id, name, a, b, join: { kind: 'flat' }, smoothStart: false, smoothEnd: false };
}
