import {
  edgeLength,
  findEdge,
  type Garment,
  type Piece,
  type Seam,
  type SeamEdge,
  withPiece,
} from '../piece/index.ts';
import { bodicePieces } from './bodice.ts';

/** The bodice's waist, from the centre back once round to the centre back, as it is drawn on the two halves. */
export interface WaistRing {
  readonly front: Piece;
  readonly back: Piece;
  /** Waist edge of half the front and half the back, mm. */
  readonly frontHalf: number;
  readonly backHalf: number;
  /** The whole ring as one side of a seam. */
  readonly side: readonly SeamEdge[];
}

export function waistRing(garment: Garment, layer: 'shell' | 'lining' = 'shell'): WaistRing | null {
  const withWaist = (half: 'front' | 'back'): Piece | undefined =>
    bodicePieces(garment, half, layer).find((piece) => findEdge(piece, 'waist') !== undefined);
  const [front, back] = [withWaist('front'), withWaist('back')];
  if (front === undefined || back === undefined) return null;
  const once = (piece: Piece, reversed: boolean): SeamEdge => ({
    piece: piece.id,
    edge: 'waist',
    times: 1,
    reversed,
  });
  return {
    front,
    back,
    frontHalf: edgeLength(front, 'waist'),
    backHalf: edgeLength(back, 'waist'),
    side: [once(back, true), once(front, false), once(front, true), once(back, false)],
  };
}

/** Seam allowances at the two sides of a width of cloth that a skirt leaves room for, mm together. */
export const JOIN_ROOM = 50;

/** How far the closing runs below the waist seam; null when the back has no closing. */
export function closingBelowWaist(garment: Garment): number | null {
  if (garment.closing === null) return null;
  const onBodice = bodicePieces(garment, 'back').reduce((sum, piece) => sum + edgeLength(piece, 'centre'), 0);
  return Math.max(0, garment.closing.openingLength - onBodice);
}

/** Notches half-way along the waist of each half, for what is gathered to it. */
export function notchWaist(garment: Garment, ring: WaistRing, prefix: string): Garment {
  const notched = (piece: Piece, half: 'front' | 'back', length: number): Piece => ({
    ...piece,
    notches: [
      ...piece.notches,
      {
        edge: 'waist',
        at: length / 2,
        style: half === 'front' ? 'single' : 'double',
        match: `${prefix}-waist-${half}`,
      },
    ],
  });
  return withPiece(
    withPiece(garment, notched(ring.front, 'front', ring.frontHalf)),
    notched(ring.back, 'back', ring.backHalf),
  );
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
