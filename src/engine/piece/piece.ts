import type { Path, Point } from '../geometry/index.ts';
import type { Saying } from '../words/index.ts';

/** Unique within a garment: `front`, `back`, `front-yoke`, `skirt-front`, `front-lining`, ... */
export type PieceId = string;

/** Unique within a piece: `neckline`, `shoulder`, `overarm`, `armhole`, `sleeve-edge`, `side`, `waist`, ... */
export type EdgeName = string;

/**
 * What happens at an edge when the dress is sewn; it decides the allowance.
 * `fold`: cut on the folded cloth, nothing is added. `join`: a width of skirt sewn to the next.
 * `attach`: sewn onto another piece, as a collar to the neck. `free`: the finished outer edge of a collar, band or
 * bow, sewn to its own back or narrowly turned. `dart`: a leg of a dart, sewn to the other leg.
 * `curved-hem`, `curved-sleeve-hem`: the hem of a circle skirt, the outer edge of a cap: they take a narrow turning only.
 */
export type EdgeKind =
  | 'neck'
  | 'shoulder'
  | 'armhole'
  | 'sleeve-hem'
  | 'curved-sleeve-hem'
  | 'side'
  | 'waist'
  | 'style-line'
  | 'closing'
  | 'centre'
  | 'fold'
  | 'join'
  | 'hem'
  | 'curved-hem'
  | 'cap'
  | 'attach'
  | 'free'
  | 'dart';

/** One side of a piece, walked with the cloth on the right hand. Stitching line, without allowance. */
export interface Edge {
  readonly name: EdgeName;
  readonly kind: EdgeKind;
  readonly path: Path;
  /** Added outside the stitching line, mm, where the design asks for another allowance than the kind's own. */
  readonly allowance?: number;
}

/** Which of the order's cloths a piece is cut from; the order says what each role is made of. */
export type ClothRole = 'main' | 'yoke' | 'skirt' | 'lining' | 'net' | 'trim';

export type Layer = 'shell' | 'lining';

/**
 * How the cloth is cut.
 * `fold`: half the piece is drawn, its edge of kind `fold` lies on the folded cloth; `copies` whole pieces result.
 * `pair`: `copies` pieces (an even number), half of them mirrored. `single`: all the same way up.
 */
export interface Cutting {
  readonly as: 'fold' | 'pair' | 'single';
  readonly copies: number;
}

/** The warp runs from `from` to `to` (up the body), in the piece's own coordinates. */
export interface Grain {
  readonly from: Point;
  readonly to: Point;
}

/**
 * A match mark on a stitching line. `match` is shared by the notches that must meet when the seam is sewn.
 * `single` on fronts, `double` on backs (common practice, no source).
 */
export interface Notch {
  readonly edge: EdgeName;
  /** Distance along the edge from its start, mm. */
  readonly at: number;
  readonly style: 'single' | 'double';
  readonly match: string;
}

/**
 * A line or point to be marked inside a piece. A `pleat-fold` says how far it is brought (mm along x, signed) until
 * it lies on its `pleat-meet` line, which may be beyond a join, on the next width.
 */
export interface Marking {
  readonly brought?: number;
  /** The length, mm, to which elastic draws a `gather` line. */
  readonly drawnTo?: number;
  /** As worn, for a line that holds on one side only: both halves are drawn as one. */
  readonly side?: 'left' | 'right';
  readonly kind:
    | 'centre'
    | 'pleat-fold'
    | 'pleat-meet'
    | 'closing-end'
    | 'gather'
    | 'strip-line'
    | 'button'
    | 'buttonhole'
    | 'loop'
    | 'lower-side';
  readonly path: Path;
}

/** A pattern piece: a closed list of named edges, each starting where the one before ended. */
export interface Piece {
  readonly id: PieceId;
  /** 'Front yoke', 'Skirt panel 2', ... */
  readonly title: Saying;
  readonly edges: readonly Edge[];
  readonly cloth: ClothRole;
  readonly layer: Layer;
  readonly cutting: Cutting;
  readonly grain: Grain;
  readonly notches: readonly Notch[];
  readonly markings: readonly Marking[];
}
