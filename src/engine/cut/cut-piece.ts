import same from 'fast-deep-equal';
import type { Edge, EdgeName, Garment, Piece, PieceId } from '../piece/index.ts';
import { edgeOf, outlineOf, pieceOf } from '../piece/index.ts';
import { allowanceOf, type OwnAllowances } from './allowances.ts';
import type { AllowedEdge } from './allowed-edge.ts';
import { cuttingLineOf, HEMS } from './cutting-line.ts';
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
  /** The edge that an edge of kind `attach` is sewn to; it takes over its allowance, so that cut edges meet. */
  readonly sewnTo?: (piece: PieceId, edge: EdgeName) => SewnTo | null;
}

interface SewnTo {
  readonly piece: Piece;
  readonly edge: Edge;
}

/** What was laid round a piece, with the edges it was laid for. A piece never changes, so it stays right. */
const LAID = new WeakMap<Piece, { readonly edges: readonly AllowedEdge[]; readonly cut: CutPiece }>();

/** Lays the allowances, notches and label round one piece; once only, while nothing about it changes. */
export function makeCutPiece(piece: Piece, options: CutOptions): CutPiece {
  const edges = allowedEdges(piece, options);
  const label = options.label(piece);
  const laid = LAID.get(piece);
  if (laid !== undefined && sameAllowances(laid.edges, edges))
    return same(laid.cut.label, label) ? laid.cut : { ...laid.cut, label };
  const cuttingLine = cuttingLineOf(edges);
  const notches = piece.notches.flatMap((notch) => {
    const on = edges.find(({ edge }) => edge.name === notch.edge);
    return on === undefined ? [] : notchStrokes(notch, on, cuttingLine);
  });
  const cut: CutPiece = {
    piece,
    cuttingLine,
    allowances: Object.fromEntries(edges.map(({ edge, allowance }) => [edge.name, allowance])),
    notches,
    label,
    labelAt: roomyPlace(outlineOf(piece)),
  };
  LAID.set(piece, { edges, cut });
  return cut;
}

const sameAllowances = (a: readonly AllowedEdge[], b: readonly AllowedEdge[]): boolean =>
  a.every((edge, i) => edge.allowance === b[i]?.allowance && edge.turnsUp === b[i]?.turnsUp);

function allowedEdges(piece: Piece, options: CutOptions): readonly AllowedEdge[] {
  return piece.edges.map((edge) => {
    const turnsIn = (on: Piece, at: Edge): boolean =>
      HEMS.includes(at.kind) && (options.bagged?.(on.id, at.name) ?? false);
    const own = options.own ?? {};
    const bagged = turnsIn(piece, edge);
    const like = followsMate(piece, edge, own) ? options.sewnTo?.(piece.id, edge.name) : null;
    const allowance = like
      ? allowanceOf(like.piece, like.edge, turnsIn(like.piece, like.edge), own)
      : allowanceOf(piece, edge, bagged, own);
    return { edge, allowance, turnsUp: HEMS.includes(edge.kind) && !bagged };
  });
}

/** All pieces of a garment. A hem edge that is sewn in a seam is bagged, not hemmed. */
export function makeCutPieces(
  garment: Garment,
  options: Omit<CutOptions, 'bagged' | 'sewnTo'>,
): readonly CutPiece[] {
  const sewn = new Set(
    garment.seams.flatMap((seam) => [...seam.a, ...seam.b].map(({ piece, edge }) => `${piece}/${edge}`)),
  );
  const bagged = (piece: PieceId, edge: EdgeName): boolean => sewn.has(`${piece}/${edge}`);
  const sewnTo = (piece: PieceId, edge: EdgeName): SewnTo | null => mateOf(garment, piece, edge);
  return garment.pieces.map((piece) => makeCutPiece(piece, { ...options, bagged, sewnTo }));
}

/** An edge that is sewn onto another has no allowance of its own, unless the design or the maker gives it one. */
const followsMate = (piece: Piece, edge: Edge, own: OwnAllowances): boolean =>
  edge.kind === 'attach' &&
  edge.allowance === undefined &&
  own.table?.attach === undefined &&
  own.cloth?.[piece.cloth]?.attach === undefined &&
  !own.edges?.some((at) => at.piece === piece.id && at.edge === edge.name);

function mateOf(garment: Garment, piece: PieceId, edge: EdgeName): SewnTo | null {
  for (const { a, b } of garment.seams) {
    for (const [ours, others] of [
      [a, b],
      [b, a],
    ] as const) {
      const [mate] = others;
      if (mate === undefined || !ours.some((at) => at.piece === piece && at.edge === edge)) continue;
      const holder = pieceOf(garment, mate.piece);
      const found = edgeOf(holder, mate.edge);
      if (found.kind !== 'attach') return { piece: holder, edge: found };
    }
  }
  return null;
}
