import type { Half } from '../block/index.ts';
import { pathBounds } from '../geometry/index.ts';
import { edgeLength, type Garment, pieceOf, type SeamEdge } from '../piece/index.ts';
import { bodicePieces, HALVES } from './bodice.ts';

/** The neck of one half, edge by edge from the centre to the shoulder; pieces cut from one half share its coordinates. */
export const halfNeck = (garment: Garment, half: Half): readonly SeamEdge[] =>
  bodicePieces(garment, half)
    .flatMap((piece) =>
      piece.edges.filter((edge) => edge.kind === 'neck').map((edge) => ({ piece: piece.id, edge })),
    )
    .toSorted((p, q) => pathBounds(p.edge.path).minX - pathBounds(q.edge.path).minX)
    .map(({ piece, edge }) => ({ piece, edge: edge.name, times: 2 }));

/** The neck as one side of a seam that is sewn alike on both halves: from the centre back to the centre front. */
export const neckSide = (garment: Garment): readonly SeamEdge[] => [
  ...halfNeck(garment, 'back'),
  ...backwards(halfNeck(garment, 'front')),
];

/** The whole neck as one side of a seam, from the centre back once round to the centre back. */
export function neckRing(garment: Garment): readonly SeamEdge[] {
  const once = neckSide(garment).map((edge) => ({ ...edge, times: 1 }));
  return [...once, ...backwards(once)];
}

/** Length of half the neck, or of one half's part of it, mm. */
export const neckLength = (garment: Garment, halves: readonly Half[] = HALVES): number =>
  halves
    .flatMap((half) => halfNeck(garment, half))
    .reduce((sum, { piece, edge }) => sum + edgeLength(pieceOf(garment, piece), edge), 0);

const backwards = (side: readonly SeamEdge[]): readonly SeamEdge[] =>
  side.map((edge) => ({ ...edge, reversed: edge.reversed !== true })).toReversed();

/** Whether the neck parts at the centre back, so that what is sewn round it must part there too. */
export const neckPartsAtBack = ({ closing }: Garment): boolean =>
  closing !== null && closing.kind !== 'shoulder-studs';
