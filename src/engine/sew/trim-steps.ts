import { type PieceId, seamsNamed } from '../piece/index.ts';
import type { SewLook } from './look.ts';
import { makeStep } from './make-step.ts';
import type { EdgeRef, SewStep } from './step.ts';
import { piecesOf, tell } from './words-of.ts';

/** In which seam a piece is caught that no seam of the garment holds; `by-hand`: in none, it is sewn on at the end. */
type Place = 'side' | 'opening' | 'keyhole' | 'slit' | 'by-hand';

/** Ties and sashes caught in another seam, strips round a slit, bands and bows sewn on. */
export function trimSteps(look: SewLook, edges: readonly EdgeRef[]): readonly SewStep[] {
  const byPiece = new Map<PieceId, EdgeRef[]>();
  for (const at of edges) byPiece.set(at.piece, [...(byPiece.get(at.piece) ?? []), at]);
  return [...byPiece].map(([piece, ends]) => trimStep(look, piece, ends));
}

function trimStep(look: SewLook, piece: PieceId, ends: readonly EdgeRef[]): SewStep {
  const named = { piece: piecesOf(look, ends) };
  const place = placeOfTrim(look, piece);
  switch (place) {
    case 'by-hand':
      return makeStep(look, {
        id: `sew-on-${piece}`,
        kind: 'sew-on',
        station: 'hand',
        finishes: ends,
        say: tell('sew.do.sew-on', named),
        reasons: [tell('sew.why.sew-on')],
      });
    case 'slit':
      return makeStep(look, {
        id: `catch-${piece}`,
        kind: 'placket',
        finishes: ends,
        say: tell('sew.do.slit', named),
      });
    case 'side':
    case 'opening':
    case 'keyhole':
      return makeStep(look, {
        id: `catch-${piece}`,
        kind: 'catch-trim',
        finishes: ends,
        say: tell(`sew.do.catch-${place}`, named),
        reasons: [place === 'side' ? tell('sew.why.catch-side') : null],
      });
  }
}

export function placeOfTrim(look: SewLook, piece: PieceId): Place {
  const [side] = seamsNamed(look, 'side');
  if (piece.startsWith('sash') && side !== undefined) return 'side';
  if (piece === 'placket') return 'slit';
  if (piece.startsWith('keyhole')) return 'keyhole';
  if ((piece.startsWith('tie') && !piece.startsWith('tied')) || piece.startsWith('lacing')) return 'opening';
  return 'by-hand';
}
