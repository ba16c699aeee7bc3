import type { Half } from '../block/index.ts';
import { type Path, pathBounds, pathStart } from '../geometry/index.ts';
import { edgeLength, edgeOf, type Garment, pieceOf, type Seam, type SeamEdge } from '../piece/index.ts';
import { bodicePieces } from './bodice.ts';

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

/** Length of half the neck, front and back together, with a stand for buttons, mm. */
export const neckLength = (garment: Garment): number =>
  neckSide(garment).reduce((sum, { piece, edge }) => sum + edgeLength(pieceOf(garment, piece), edge), 0);

const backwards = (side: readonly SeamEdge[]): readonly SeamEdge[] =>
  side.map((edge) => ({ ...edge, reversed: edge.reversed !== true })).toReversed();

/** A stand for buttons runs past the centre line by so much, mm; what is sewn to the neck ends at the centre line. */
export const standPastCentre = (neck: Path): number => Math.max(0, -pathStart(neck).x);

/** The neck as a collar or a frill is sewn to it: from the centre front to the centre back, without a stand. */
export interface NeckForCollar {
  readonly side: readonly SeamEdge[];
  /** From the centre front to the centre back, mm. */
  readonly half: number;
  readonly stand: number;
  /** What the seam leaves bare of a stand. A front on the fold makes both halves of the neck one seam. */
  readonly bare: Pick<Seam, 'bareEnd'>;
}

export function neckForCollar(garment: Garment): NeckForCollar | null {
  const [atFront, ...front] = halfNeck(garment, 'front');
  const [atBack, ...back] = halfNeck(garment, 'back');
  if (atFront === undefined || atBack === undefined) return null;
  const side = [atFront, ...front, ...backwards([atBack, ...back])];
  const whole = side.reduce((sum, at) => sum + edgeLength(pieceOf(garment, at.piece), at.edge), 0);
  const stand = standPastCentre(edgeOf(pieceOf(garment, atBack.piece), atBack.edge).path);
  const onFold = pieceOf(garment, atFront.piece).cutting.as === 'fold';
  const bare = stand === 0 ? {} : { bareEnd: onFold ? 2 * stand : stand };
  return { side, half: whole - stand, stand, bare };
}
