import { pathBounds } from '../geometry/index.ts';
import {
  type Edge,
  edgeLength,
  findEdge,
  type Garment,
  opensBack,
  type Piece,
  pieceOf,
  type Seam,
  type SeamEdge,
  withPiece,
} from '../piece/index.ts';
import { bodicePieces } from './bodice.ts';

/** The bodice's waist, from the centre back once round to the centre back, as it is drawn on the two halves. */
export interface WaistRing {
  /** The waist of half the front and of half the back, edge by edge from the side to the centre. */
  readonly front: readonly SeamEdge[];
  readonly back: readonly SeamEdge[];
  /** Length of half the front and half the back, mm; what darts and seams take out is not in it. */
  readonly frontHalf: number;
  readonly backHalf: number;
  /** The whole ring as one side of a seam. */
  readonly side: readonly SeamEdge[];
}

export function waistRing(garment: Garment, layer: 'shell' | 'lining' = 'shell'): WaistRing | null {
  const [front, back] = [halfWaist(garment, 'front', layer), halfWaist(garment, 'back', layer)];
  if (front.length === 0 || back.length === 0) return null;
  const toSide = (half: readonly SeamEdge[]): readonly SeamEdge[] =>
    half.map((edge) => ({ ...edge, reversed: true })).toReversed();
  return {
    front,
    back,
    frontHalf: lengthOf(garment, front),
    backHalf: lengthOf(garment, back),
    side: [...toSide(back), ...front, ...toSide(front), ...back],
  };
}

/** The waist edges of a half from the side to the centre. Pieces cut from one half share its coordinates. */
function halfWaist(garment: Garment, half: 'front' | 'back', layer: 'shell' | 'lining'): readonly SeamEdge[] {
  const found = bodicePieces(garment, half, layer).flatMap((piece) =>
    piece.edges.filter((edge) => edge.kind === 'waist').map((edge) => ({ piece, edge })),
  );
  return found
    .toSorted((p, q) => outerEnd(q.edge) - outerEnd(p.edge))
    .map(({ piece, edge }) => ({ piece: piece.id, edge: edge.name, times: 1, reversed: false }));
}

const outerEnd = (edge: Edge): number => pathBounds(edge.path).maxX;

const lengthOf = (garment: Garment, edges: readonly SeamEdge[]): number =>
  edges.reduce((sum, { piece, edge }) => sum + edgeLength(pieceOf(garment, piece), edge), 0);

/** Seam allowances at the two sides of a width of cloth that a skirt leaves room for, mm together. */
export const JOIN_ROOM = 50;

/** The pieces of a half that reach the centre: the yoke, if there is one, and the rest, but no side panel. */
const centreParts = (garment: Garment, half: 'front' | 'back'): readonly Piece[] =>
  bodicePieces(garment, half).filter((piece) => findEdge(piece, 'centre') !== undefined);

/** How far the closing runs below the waist seam; null when the back has no closing. */
export function closingBelowWaist(garment: Garment): number | null {
  if (!opensBack(garment.closing)) return null;
  const onBodice = centreParts(garment, 'back').reduce((sum, piece) => sum + edgeLength(piece, 'centre'), 0);
  return Math.max(0, garment.closing.openingLength - onBodice);
}

/** Notches half-way along the waist of each half, for what is gathered to it. */
export function notchWaist(garment: Garment, ring: WaistRing, prefix: string): Garment {
  const front = notchHalf(garment, ring.front, 'single', `${prefix}-waist-front`);
  return notchHalf(front, ring.back, 'double', `${prefix}-waist-back`);
}

function notchHalf(
  garment: Garment,
  edges: readonly SeamEdge[],
  style: 'single' | 'double',
  match: string,
): Garment {
  let left = lengthOf(garment, edges) / 2;
  for (const edge of edges) {
    const piece = pieceOf(garment, edge.piece);
    const length = edgeLength(piece, edge.edge);
    if (left <= length) {
      const notches = [...piece.notches, { edge: edge.edge, at: left, style, match }];
      return withPiece(garment, { ...piece, notches });
    }
    left -= length;
  }
  return garment;
}

/** The centre back seam of a part whose two halves mirror each other: closed, or open for the closing. */
export function centreBack(id: string, edge: Omit<SeamEdge, 'times'>, open: boolean): Seam {
  const side = [{ ...edge, times: 1 }];
  return {
    id,
    name: open ? 'closing' : 'skirt-join',
    a: side,
    b: side,
    join: { kind: 'flat' },
    smoothStart: false,
    smoothEnd: false,
  };
}
