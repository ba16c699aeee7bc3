import { type Garment, type Notch, type Piece, pieceOf, withPiece } from '../piece/index.ts';
import { notchWaist, type WaistRing } from './waist-ring.ts';

/**
 * Matches what is gathered to the waist with the notches that the bodice has there already from its skirt, or gives
 * the bodice new ones. Joined widths without notches leave the bodice as it is.
 */
export function matchWaist(
  garment: Garment,
  ring: WaistRing,
  prefix: string,
  pieces: readonly Piece[],
): { readonly garment: Garment; readonly pieces: readonly Piece[] } {
  const halves = (['front', 'back'] as const).map((half) => {
    const own = `${prefix}-waist-${half}`;
    const wanted = pieces.some((piece) => piece.notches.some((notch) => notch.match === own));
    return { own, wanted, known: notchOn(garment, ring, half) };
  });
  const renamed = pieces.map((piece) => ({
    ...piece,
    notches: piece.notches.map((notch): Notch => {
      const known = halves.find(({ own }) => own === notch.match)?.known;
      return known === undefined ? notch : { ...notch, match: known };
    }),
  }));
  const unneeded = halves.filter(({ wanted, known }) => !wanted || known !== undefined).map(({ own }) => own);
  const notched = notchWaist(garment, ring, prefix);
  const kept = [...ring.front, ...ring.back].reduce((g, { piece: id }) => {
    const piece = pieceOf(g, id);
    return withPiece(g, {
      ...piece,
      notches: piece.notches.filter((notch) => !unneeded.includes(notch.match)),
    });
  }, notched);
  return { garment: kept, pieces: renamed };
}

/** The match of a skirt's notch half-way along the waist of this half. */
function notchOn(garment: Garment, ring: WaistRing, half: 'front' | 'back'): string | undefined {
  return ring[half]
    .flatMap(({ piece, edge }) => pieceOf(garment, piece).notches.filter((notch) => notch.edge === edge))
    .map((notch) => notch.match)
    .find((match) => match.endsWith(`-waist-${half}`));
}
