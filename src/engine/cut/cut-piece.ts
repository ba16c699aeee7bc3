import type { Garment, Piece, PieceId } from '../piece/index.ts';
import { type EdgeName, outlineOf } from '../piece/index.ts';
import { allowanceOf, type OwnAllowances } from './allowances.ts';
import { type AllowedEdge, cuttingLineOf, HEMS } from './cutting-line.ts';
import { notchStrokes } from './notch-strokes.ts';
import { roomyPlace } from './roomy-place.ts';
import type { CutPiece, PieceLabel } from './types.ts';

export interface CutOptions {
  /** What stands on the piece. */
  readonly label: (piece: Piece) => PieceLabel;
  /** The maker's own allowances; the standard ones count where they say nothing. */
  readonly own?: OwnAllowances;
  /** Hem edges that are sewn and turned instead of hemmed. */
  readonly bagged?: (piece: PieceId, edge: EdgeName) => boolean;
}

/** Lays the allowances, notches and label round one piece. */
export function makeCutPiece(piece: Piece, options: CutOptions): CutPiece {
  const edges: AllowedEdge[] = piece.edges.map((edge) => {
    const isHem = HEMS.includes(edge.kind);
    const bagged = isHem && (options.bagged?.(piece.id, edge.name) ?? false);
    const allowance = allowanceOf(piece, edge, bagged, options.own ?? {});
    return { edge, allowance, turnsUp: isHem && !bagged };
  });
  const cuttingLine = cuttingLineOf(edges);
  const notches = piece.notches.flatMap((notch) => {
    const on = edges.find(({ edge }) => edge.name === notch.edge);
    return on === undefined ? [] : notchStrokes(notch, on, cuttingLine);
  });
  return {
    piece,
    cuttingLine,
    allowances: Object.fromEntries(edges.map(({ edge, allowance }) => [edge.name, allowance])),
    notches,
    label: options.label(piece),
    labelAt: roomyPlace(outlineOf(piece)),
  };
}

/** All pieces of a garment. A hem edge that is sewn in a seam is bagged, not hemmed. */
export function makeCutPieces(garment: Garment, options: Omit<CutOptions, 'bagged'>): readonly CutPiece[] {
  const sewn = new Set(
    garment.seams.flatMap((seam) => [...seam.a, ...seam.b].map(({ piece, edge }) => `${piece}/${edge}`)),
  );
  const bagged = (piece: PieceId, edge: EdgeName): boolean => sewn.has(`${piece}/${edge}`);
  return garment.pieces.map((piece) => makeCutPiece(piece, { ...options, bagged }));
}
