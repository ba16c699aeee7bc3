import type { Piece, PieceId } from './piece.ts';
import type { Seam } from './seam.ts';

/** The opening that lets the child in. Lengths in mm. */
export interface Closing {
  readonly kind: 'centred-zip' | 'concealed-zip';
  /** From the finished neck edge down the centre back. */
  readonly openingLength: number;
  /** Named length of the zip to buy. */
  readonly zipLength: number;
}

/**
 * A designed dress for one wearer: pieces and the seams that hold them together.
 * `whole` keeps the outline that a piece had before a style line cut it, for linings cut whole.
 */
export interface Garment {
  readonly pieces: readonly Piece[];
  readonly seams: readonly Seam[];
  readonly whole: Readonly<Record<PieceId, Piece>>;
  readonly closing: Closing | null;
}
