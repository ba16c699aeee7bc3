import type { Closing } from './closing.ts';
import type { Piece, PieceId } from './piece.ts';
import type { Seam } from './seam.ts';
import type { Trim } from './trim.ts';

/**
 * A designed dress for one wearer: pieces and the seams that hold them together.
 * `whole` keeps the outline that a piece had before a style line cut it, for linings cut whole.
 * `trims` tells what hangs, is tied or is small, for the cautions.
 */
export interface Garment {
  readonly pieces: readonly Piece[];
  readonly seams: readonly Seam[];
  readonly whole: Readonly<Record<PieceId, Piece>>;
  readonly closing: Closing | null;
  readonly trims: readonly Trim[];
  /** Room for nappies over the seat beyond the usual ease, mm all round, for parts that lie close there. */
  readonly seatRoom?: number;
}
