import type { CutPiece } from '../cut/index.ts';
import type { Point } from '../geometry/index.ts';
import type { EdgeName } from '../piece/index.ts';
import type { SellingUnit } from './selling-unit.ts';
import type { TurnDegrees } from './turns.ts';

/** A cloth as it is bought. */
export interface Cloth {
  /** 'ivory satin' */
  readonly name: string;
  /** Without the selvedges, mm, as it is after shrinking. */
  readonly usableWidth: number;
  /** The part of its length that it loses when washed or steamed before cutting: 0.03 is 3 %. */
  readonly shrinkage: number;
  readonly unit: SellingUnit;
}

/**
 * A cloth with the rules by which it is laid. Places on it are given from the cut end (x) and from one selvedge (y),
 * on the cloth spread out single, mm; the selvedges themselves are not counted.
 */
export interface LayCloth extends Cloth {
  /** What it is, in the maker's words: 'satin', 'net'. */
  readonly kind: string | null;
  /** Part of the length that is bought on top because the cloth slips when it is cut: 0.05 is 5 %. */
  readonly extra: number;
  /** `one-way`: nap, sheen or print; every head lies the same way. */
  readonly way: 'one-way' | 'both-ways';
  /** All pieces of one garment lie the same way, though the next garment may lie the other way. */
  readonly garmentOneWay?: boolean;
  /** Both faces may be worn, so that a piece may be turned over. */
  readonly facesAlike?: boolean;
  readonly folding: Folding;
  /** Folded lengthwise with both selvedges to the middle, which gives two folds. */
  readonly selvedgesToMiddle?: boolean;
  /** Clear cloth between two cutting lines, mm. */
  readonly gap: number;
  readonly repeat?: ClothRepeat;
  readonly flaws?: readonly Flaw[];
  /** A leftover of odd outline instead of a length from the roll. */
  readonly remnant?: readonly Point[];
  /** All that there is of it, mm. */
  readonly longest?: number;
}

/** Folded lengthwise the selvedges lie together, folded crosswise the cut ends do. */
export type Folding = 'single' | 'lengthwise' | 'crosswise';

/** Stripes across the cloth repeat along it; checks repeat both ways. `first`: where the first line lies, mm. */
export interface ClothRepeat {
  readonly along?: Repeat;
  readonly across?: Repeat;
}

export interface Repeat {
  readonly every: number;
  readonly first: number;
}

/** A stain, hole or join on the cloth that no piece may touch: a closed ring. */
export interface Flaw {
  readonly outline: readonly Point[];
}

/**
 * `lengthwise`: the grain line along the cloth. `cross-allowed`: or across it. `any`: every eighth of a turn.
 * `bias`: the grain line at 45 degrees.
 */
export type GrainRule = (typeof GRAIN_RULES)[number];
export const GRAIN_RULES = ['lengthwise', 'cross-allowed', 'any', 'bias'] as const;

/** A point of the stitching line that meets the points of the same `group` on other pieces on one line of the stripe. */
export interface StripeMatch {
  readonly group: string;
  readonly edge: EdgeName;
  /** An end of the edge, or the distance from its start, mm. */
  readonly at: 'start' | 'end' | number;
}

/** A piece to lay, so many times. */
export interface LayPiece {
  readonly cut: CutPiece;
  readonly child: string;
  /** Whole pieces wanted; left out for what the piece itself says. 0 leaves it out. */
  readonly copies?: number;
  readonly grain: GrainRule;
  readonly matches?: readonly StripeMatch[];
  /** Pieces of one garment, for `garmentOneWay`. */
  readonly garment?: string;
  /** Pieces that must come from the same length of cloth share this name. */
  readonly together?: string;
}

/** Where the maker has put a copy of a piece: the least x and y of its cutting line on the cloth as folded. */
export interface LayPin {
  readonly piece: number;
  readonly copy: number;
  readonly turn: TurnDegrees;
  readonly mirrored: boolean;
  readonly x: number;
  readonly y: number;
}
