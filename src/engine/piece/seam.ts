import type { EdgeName, PieceId } from './piece.ts';

/**
 * One edge as it is used in a seam. `times` counts its copies in the finished garment (a half piece cut on the
 * fold counts twice). Where a side is listed along a whole ring, each passage stands once with `times` 1, and
 * `reversed` says that the ring walks the edge from its end to its start.
 */
export interface SeamEdge {
  readonly piece: PieceId;
  readonly edge: EdgeName;
  readonly times: number;
  readonly reversed?: boolean;
}

/** How the two sides agree. Lengths in mm over the whole side. */
export type Join =
  | { readonly kind: 'flat' }
  /** Side b is longer (or, if negative, shorter) than side a by `ease`, worked in by hand or stretch. */
  | { readonly kind: 'eased'; readonly ease: number }
  /** Side b is gathered to side a: b = ratio x a. The last `plainEnd` mm of each single seam lie flat, ungathered. */
  | { readonly kind: 'gathered'; readonly ratio: number; readonly plainEnd?: number }
  /** Side b is pleated to side a: b = a + pleats x takeUp, a = pleats x spacing. */
  | {
      readonly kind: 'pleated';
      readonly style: PleatStyle;
      readonly pleats: number;
      readonly spacing: number;
      readonly takeUp: number;
    };

export type PleatStyle = 'knife' | 'box' | 'inverted';

export type SeamName =
  | 'shoulder'
  | 'side'
  | 'yoke'
  | 'waist'
  | 'neck-lining'
  | 'armhole-lining'
  | 'waist-lining'
  | 'closing'
  | 'skirt-join'
  | 'skirt-waist'
  | 'sleeve-underarm'
  | 'sleeve-cap'
  | 'dart'
  | 'princess'
  | 'facing'
  | 'binding'
  | 'collar'
  | 'frill'
  | 'cuff'
  | 'band'
  | 'tier'
  | 'overskirt-waist'
  | 'placket'
  | 'strap'
  | 'trim'
  | 'own';

/**
 * Which edges are sewn to which. Both sides are listed in the order in which they are sewn, from the same end.
 * `smoothStart` / `smoothEnd`: the edges that meet the seam at that end must run through it without a corner,
 * on the first and last edge of the lists.
 */
export interface Seam {
  readonly id: string;
  readonly name: SeamName;
  readonly a: readonly SeamEdge[];
  readonly b: readonly SeamEdge[];
  readonly join: Join;
  /** The last part of side a, mm of each single seam, that side b does not reach: a sleeve that ends above the underarm. */
  readonly bareEnd?: number;
  readonly smoothStart: boolean;
  readonly smoothEnd: boolean;
}
