import { pathLength } from '../geometry/index.ts';
import { edgeOf, findEdge, type Garment, type Piece } from '../piece/index.ts';

/** The pieces of the outer skirt that end in a straight hem: widths of cloth, or the last tier. */
export const straightHemmed = (garment: Garment): readonly Piece[] =>
  garment.pieces.filter(
    (piece) =>
      piece.layer === 'shell' &&
      piece.cloth === 'skirt' &&
      ['right', 'left'].every((name) => findEdge(piece, name) !== undefined) &&
      findEdge(piece, 'hem')?.kind === 'hem' &&
      edgeOf(piece, 'hem').path.segments.every((segment) => segment.kind === 'line'),
  );

/** Depth of the lowest such piece, mm: no hem and no tuck can be deeper. 400 where there is none to measure. */
export function straightDepth(garment: Garment): number {
  const depths = straightHemmed(garment).map((piece) => pathLength(edgeOf(piece, 'right').path));
  return depths.length === 0 ? 400 : Math.min(...depths);
}
