import type { Bench } from '../construct/index.ts';
import { linePath, type Point } from '../geometry/index.ts';
import {
  type ClothRole,
  type Cutting,
  type EdgeKind,
  edgeLength,
  type Marking,
  type Piece,
  type PieceId,
} from '../piece/index.ts';
import type { Saying } from '../words/index.ts';

/** A straight strip as it is drawn: finished, from left to right, without allowances. Lengths in mm. */
export interface StripWish {
  readonly id: PieceId;
  readonly title: Saying;
  readonly length: number;
  readonly width: number;
  /** The upper long edge: a fold when the strip is doubled lengthwise. */
  readonly upper: EdgeKind;
  readonly lower: EdgeKind;
  readonly left: EdgeKind;
  readonly right: EdgeKind;
  readonly cutting: Cutting;
  /** How far each end slants: the upper edge is longer than the lower one by so much there. */
  readonly slant?: { readonly left: number; readonly right: number };
  /** `across`: cut from selvedge to selvedge, the grain across the strip; else along it. */
  readonly grain: 'along' | 'across';
  readonly cloth?: ClothRole;
  readonly markings?: readonly Marking[];
}

/** A strip with the edges `upper`, `right`, `lower` and `left`; `length` is that of its upper edge. */
export function stripPiece(wish: StripWish): Piece {
  const { length, width } = wish;
  const { left, right } = wish.slant ?? { left: 0, right: 0 };
  const corners = {
    upperLeft: { x: 0, y: 0 },
    upperRight: { x: length, y: 0 },
    lowerRight: { x: length - right, y: width },
    lowerLeft: { x: left, y: width },
  };
  // Towards one end, so that the title has the middle to itself.
  const middle: Point = { x: length * 0.2, y: width / 2 };
  const reach = wish.grain === 'along' ? { x: length * 0.12, y: 0 } : { x: 0, y: width * 0.3 };
  return {
    id: wish.id,
    title: wish.title,
    edges: [
      { name: 'upper', kind: wish.upper, path: linePath(corners.upperLeft, corners.upperRight) },
      { name: 'right', kind: wish.right, path: linePath(corners.upperRight, corners.lowerRight) },
      { name: 'lower', kind: wish.lower, path: linePath(corners.lowerRight, corners.lowerLeft) },
      { name: 'left', kind: wish.left, path: linePath(corners.lowerLeft, corners.upperLeft) },
    ],
    cloth: wish.cloth ?? 'trim',
    layer: 'shell',
    cutting: wish.cutting,
    grain: {
      from: { x: middle.x - reach.x, y: middle.y + reach.y },
      to: { x: middle.x + reach.x, y: middle.y - reach.y },
    },
    notches: [],
    markings: wish.markings ?? [],
  };
}

/** Tells how a strip is ruled by hand; its length is that of its longer edge. */
export function tellStrip(bench: Bench, piece: Piece, width: number): void {
  bench.tell(
    piece.cutting.as === 'fold' ? 'draft.strip-on-fold' : 'draft.strip',
    {
      piece: piece.title,
      length: { mm: edgeLength(piece, 'upper') },
      width: { mm: width },
      count: piece.cutting.copies,
    },
    { lines: piece.edges.map((edge) => edge.path) },
  );
}
