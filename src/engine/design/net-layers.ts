import { type Garment, type Notch, type Piece, pieceOf, withPiece } from '../piece/index.ts';
import type { SkirtParts } from './gathered-panels.ts';
import { notchWaist, type WaistRing } from './waist-ring.ts';

/**
 * Makes so many layers of gathered net. Net does not fray, so its foot is a cut edge; and its opening edges lie 1 in
 * back from the raw edges of the dress, on its stitching line, so that they meet at the closing and are not folded
 * into the seam (a maker's diary of a flower-girl dress, part 8).
 */
export function netLayers(parts: SkirtParts, layers: number): SkirtParts {
  return {
    ...parts,
    pieces: parts.pieces.map((piece) => ({
      ...piece,
      cutting: { ...piece.cutting, copies: piece.cutting.copies * layers },
      edges: piece.edges.map((edge) =>
        edge.kind === 'hem' || edge.kind === 'closing' ? { ...edge, allowance: 0 } : edge,
      ),
    })),
  };
}

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
