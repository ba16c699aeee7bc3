import { linePath } from '../geometry/index.ts';
import {
  type ClothRole,
  type Cutting,
  type EdgeKind,
  grainThrough,
  type Layer,
  type Marking,
  type Notch,
  type Piece,
  type PieceId,
} from '../piece/index.ts';
import type { Saying } from '../words/index.ts';

export interface PanelWish {
  readonly id: PieceId;
  readonly title: Saying;
  readonly width: number;
  readonly length: number;
  /** What the left and right edges are: a fold, the closing, a side seam, a join of two widths. */
  readonly left: EdgeKind;
  readonly right: EdgeKind;
  /** What the upper and the lower edge are, when not the waist and the hem. */
  readonly top?: EdgeKind;
  readonly foot?: EdgeKind;
  readonly cutting: Cutting;
  readonly cloth: ClothRole;
  readonly layer: Layer;
  readonly notches: readonly Notch[];
  readonly markings: readonly Marking[];
}

/** A straight width of skirt: waist on top from left to right, then right, hem and left. */
export function skirtPanel(wish: PanelWish): Piece {
  const { width, length } = wish;
  const [topLeft, topRight] = [
    { x: 0, y: 0 },
    { x: width, y: 0 },
  ];
  const [footRight, footLeft] = [
    { x: width, y: length },
    { x: 0, y: length },
  ];
  return {
    id: wish.id,
    title: wish.title,
    edges: [
      { name: 'waist', kind: wish.top ?? 'waist', path: linePath(topLeft, topRight) },
      { name: 'right', kind: wish.right, path: linePath(topRight, footRight) },
      { name: 'hem', kind: wish.foot ?? 'hem', path: linePath(footRight, footLeft) },
      { name: 'left', kind: wish.left, path: linePath(footLeft, topLeft) },
    ],
    cloth: wish.cloth,
    layer: wish.layer,
    cutting: wish.cutting,
    grain: grainThrough({ x: width / 2, y: length / 2 }, length * 0.6),
    notches: wish.notches,
    markings: wish.markings,
  };
}

/** Where the closing ends on an edge that runs down from the waist at `x`. */
export function closingEnd(x: number, y: number): Marking {
  return { kind: 'closing-end', path: linePath({ x: x - 8, y }, { x: x + 8, y }) };
}
