import { pieceOf } from './change-garment.ts';
import { edgeOf } from './edges.ts';
import type { Garment } from './garment.ts';
import type { Edge, EdgeName, Piece, PieceId } from './piece.ts';
import type { Seam, SeamName } from './seam.ts';

/** Whatever looks at a garment: a check, a sewing plan. */
interface Look {
  readonly garment: Garment;
}

/** The piece that a seam or a step names. Throws where the garment has none of that name. */
export const pieceAt = ({ garment }: Look, at: { readonly piece: PieceId }): Piece =>
  pieceOf(garment, at.piece);

/** The edge that a seam or a step names. Throws where its piece has none of that name. */
export const edgeAt = (look: Look, at: { readonly piece: PieceId; readonly edge: EdgeName }): Edge =>
  edgeOf(pieceAt(look, at), at.edge);

/** All seams of these names, in the order of the garment. */
export const seamsNamed = ({ garment }: Look, ...names: readonly SeamName[]): readonly Seam[] =>
  garment.seams.filter((seam) => names.includes(seam.name));
