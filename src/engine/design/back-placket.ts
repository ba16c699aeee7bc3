import type { Bench } from '../construct/index.ts';
import type { Garment, Piece } from '../piece/index.ts';
import { stripPiece } from './strip.ts';

const PLACKET = 'placket';
/** Finished width of the strip that binds the slit, mm; both from common practice, no source. */
const PLACKET_WIDTH = 20;
/** What the strip needs to go round the foot of the slit, mm. */
const ROUND_THE_FOOT = 10;
/** A slit shorter than this needs no binding, mm (common practice, no source). */
const LEAST_SLIT = 20;

/**
 * One strip that binds both edges of the slit in the skirt below the waist seam, folded lengthwise. It is sewn to
 * part of the skirt's edge only, so it stands without a seam. Gives the garment unchanged where the slit is short.
 */
export function withPlacket(garment: Garment, bench: Bench, belowWaist: number): Garment {
  if (belowWaist < LEAST_SLIT) return garment;
  const length = 2 * belowWaist + ROUND_THE_FOOT;
  const piece = placketStrip(length, 1);
  bench.part(piece.title);
  bench.tell(
    'draft.placket.strip',
    { length: { mm: length }, width: { mm: 2 * PLACKET_WIDTH }, slit: { mm: belowWaist } },
    { lines: piece.edges.map((edge) => edge.path) },
  );
  return { ...garment, pieces: [...garment.pieces, piece] };
}

/**
 * Two strips in the place of the one for a slit, where both edges of the skirt are open from the waist to the hem.
 * Gives the garment unchanged where it has no such strip or no skirt.
 */
export function withEdgePlackets(garment: Garment, bench: Bench, skirt: number): Garment {
  if (skirt === 0 || !garment.pieces.some(({ id }) => id === PLACKET)) return garment;
  const strips = placketStrip(skirt, 2);
  bench.tell(
    'full-back-opening.draw.skirt-strips',
    { length: { mm: skirt }, width: { mm: 2 * PLACKET_WIDTH } },
    { lines: strips.edges.map((edge) => edge.path) },
  );
  return { ...garment, pieces: garment.pieces.map((piece) => (piece.id === PLACKET ? strips : piece)) };
}

function placketStrip(length: number, copies: number): Piece {
  return stripPiece({
    id: PLACKET,
    title: { key: 'draft.placket', values: {} },
    length,
    width: PLACKET_WIDTH,
    upper: 'fold',
    lower: 'attach',
    left: 'attach',
    right: 'attach',
    cutting: { as: 'fold', copies },
    grain: 'along',
    cloth: 'main',
  });
}
