import { type EdgeName, edgeLength, type Piece, type Seam } from '../piece/index.ts';

/** The stretch of waist beyond the centre that lies on the other front. */
export const OVERLAP: EdgeName = 'waist-overlap';

/** The blunt end of the overlap, between waist and neck. */
export const OVERLAP_END: EdgeName = 'overlap-end';

/** The overlap of each front is sewn onto the waist of the other, from the centre out; none where none overlaps. */
export function wrapSeams(piece: Piece): readonly Seam[] {
  const covered = piece.edges.findLast((edge) => edge.kind === 'waist');
  if (covered === undefined || piece.edges.every((edge) => edge.name !== OVERLAP)) return [];
  return [
    {
      id: `wrap-${piece.id}`,
      name: 'waist',
      a: [{ piece: piece.id, edge: OVERLAP, times: 2 }],
      b: [{ piece: piece.id, edge: covered.name, times: 2, reversed: true }],
      // A lining is trimmed at the end of the overlap, so that its overlap comes out a little shorter.
      join: { kind: 'eased', ease: 2 * (edgeLength(piece, covered.name) - edgeLength(piece, OVERLAP)) },
      smoothStart: false,
      smoothEnd: false,
    },
  ];
}
