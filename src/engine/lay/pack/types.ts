/**
 * Packing outlines on a strip. The strip is `0 <= y <= width`, `x >= 0`, and is to be used up to as small an x as can
 * be. Why an outline may be turned, or must stay where it is, is not known here: whatever cloth or paper asks is said
 * by three things of each item: its variants, the places that each variant may take, and whether it may move.
 * Lengths are millimetres, or whatever one unit the caller likes.
 */
export interface PackProblem {
  readonly width: number;
  /** No layout may reach beyond this x. Without it the strip is endless. */
  readonly longest?: number;
  readonly items: readonly PackItem[];
}

export interface PackItem {
  /** At least one; the search chooses among them. */
  readonly variants: readonly PackVariant[];
  /** The item stays there: a pinned piece, a flaw, what an odd remnant lacks. It may lie partly outside the strip. */
  readonly fixed?: PackPlace;
  /** Fixed, and nothing that is laid: the length of a layout need not reach to its end. */
  readonly obstacle?: true;
}

/** One way in which an item may lie. */
export interface PackVariant {
  /**
   * Closed outline x0, y0, x1, y1, ... without repeated end point, not crossing itself, either way round, in any
   * position. Variants and items of equal shape should share one array: what is computed of a shape is computed once, and the
   * array must not change afterwards.
   */
  readonly outline: Float64Array;
  /** Where the least x of the outline's box may lie; the whole strip where it is left out. Equal ends fix it. */
  readonly x?: PackRange;
  /** Where the least y of the outline's box may lie. */
  readonly y?: PackRange;
}

export interface PackRange {
  readonly from: number;
  readonly to: number;
  /** Only `from + k * step` with a whole k: stripes and checks. */
  readonly step?: number;
}

/** The place of an item: the least x and y of the box of the outline of its variant. */
export interface PackPlace {
  readonly variant: number;
  readonly x: number;
  readonly y: number;
}

export interface PackLayout {
  /** A place for each item, in the order of the problem. */
  readonly places: readonly PackPlace[];
  /** The greatest x that an item reaches, obstacles apart. */
  readonly length: number;
}

export interface PackSettings {
  /** Whole number; equal seeds and equal evaluations give equal layouts, in every browser and in Node. */
  readonly seed: number;
  /** Trial places after which the search ends. */
  readonly evaluations: number;
  /** A layout to begin with, for instance the one that the maker sees; it need not be free of overlap. */
  readonly start?: readonly PackPlace[];
  /**
   * How much of the time is gone, 0 to 1, where a clock ends the run and not the count of evaluations; then the run is
   * not repeatable. Asked often.
   */
  readonly gone?: () => number;
}

/** What a run tells on its way: after every little piece of work, so that the caller can pause, show or stop it. */
export interface PackProgress {
  readonly evaluations: number;
  /** The shortest valid layout so far; null only before the first. */
  readonly best: PackLayout | null;
}

/** What makes a problem impossible before any search. `item` is its place in the list. */
export type PackRefusal =
  | { readonly code: 'no-width' }
  | { readonly code: 'bad-outline'; readonly item: number }
  | { readonly code: 'crosses-itself'; readonly item: number }
  | { readonly code: 'no-variant'; readonly item: number }
  | { readonly code: 'too-wide'; readonly item: number; readonly least: number }
  | { readonly code: 'too-long'; readonly item: number; readonly least: number };

export type PackStart =
  | { readonly ok: true; readonly run: Iterator<PackProgress, PackProgress, undefined> }
  | { readonly ok: false; readonly refusals: readonly PackRefusal[] };
