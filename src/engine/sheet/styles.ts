/** How a kind of line is drawn on paper. Widths and dashes in mm; `grey` from 0 (black) to 1 (white). */
export interface LineStyle {
  readonly width: number;
  readonly dash: readonly number[];
  readonly grey: number;
}

/**
 * Every line of every sheet, by what it means. Black and white first: kinds differ by weight and dash, never by
 * colour alone, so that a cheap printer and a photocopy keep them apart.
 * Cutting line solid and heavy, stitching line dashed, as on printed dress patterns (common practice, no source).
 */
export const LINE_STYLES = {
  cutting: { width: 0.6, dash: [], grey: 0 },
  stitching: { width: 0.3, dash: [4, 2], grey: 0 },
  fold: { width: 0.6, dash: [12, 2, 2.5, 2], grey: 0 },
  grain: { width: 0.35, dash: [], grey: 0 },
  notch: { width: 0.7, dash: [], grey: 0 },
  centre: { width: 0.2, dash: [9, 1.5, 1.5, 1.5], grey: 0 },
  'pleat-fold': { width: 0.35, dash: [], grey: 0 },
  'pleat-meet': { width: 0.3, dash: [1.6, 1.6], grey: 0 },
  'closing-end': { width: 0.6, dash: [], grey: 0 },
  gather: { width: 0.3, dash: [0.8, 1.6], grey: 0 },
  'strip-line': { width: 0.3, dash: [6, 1.5, 1.5, 1.5], grey: 0 },
  button: { width: 0.35, dash: [], grey: 0 },
  buttonhole: { width: 0.6, dash: [], grey: 0 },
  loop: { width: 0.6, dash: [], grey: 0 },
  'lower-side': { width: 0.35, dash: [3, 1, 0.8, 1, 0.8, 1], grey: 0 },
  frame: { width: 0.15, dash: [], grey: 0.35 },
  join: { width: 0.3, dash: [0.6, 2], grey: 0.2 },
  cross: { width: 0.25, dash: [], grey: 0 },
  measure: { width: 0.2, dash: [], grey: 0 },
  box: { width: 0.3, dash: [], grey: 0 },
  rule: { width: 0.2, dash: [], grey: 0.4 },
  hatch: { width: 0.1, dash: [], grey: 0.6 },
  faint: { width: 0.2, dash: [], grey: 0.55 },
  live: { width: 0.6, dash: [], grey: 0 },
  body: { width: 0.25, dash: [], grey: 0.25 },
  tape: { width: 0.8, dash: [], grey: 0 },
  'tape-behind': { width: 0.5, dash: [1, 1], grey: 0 },
  // Where the needle goes, in the small drawings of the sewing plan.
  needle: { width: 0.7, dash: [1.8, 0.9], grey: 0 },
  // Sizes of a run lie close together: kinds of dash that the eye can follow, from the smallest size to the largest.
  'size-1': { width: 0.5, dash: [], grey: 0 },
  'size-2': { width: 0.5, dash: [6, 2], grey: 0 },
  'size-3': { width: 0.5, dash: [1.2, 1.8], grey: 0 },
  'size-4': { width: 0.5, dash: [10, 2, 1.2, 2], grey: 0 },
  'size-5': { width: 0.5, dash: [3, 1.5], grey: 0 },
  'size-6': { width: 0.5, dash: [10, 2, 1.2, 2, 1.2, 2], grey: 0 },
  'size-7': { width: 0.5, dash: [14, 3], grey: 0 },
  'size-8': { width: 0.5, dash: [5, 2, 5, 2, 1.2, 2], grey: 0 },
  'size-9': { width: 0.5, dash: [1.2, 4], grey: 0 },
  'size-10': { width: 0.5, dash: [18, 2, 3, 2], grey: 0 },
  'size-11': { width: 0.9, dash: [], grey: 0 },
  'size-12': { width: 0.9, dash: [6, 3], grey: 0 },
} as const satisfies Record<string, LineStyle>;

export type LineName = keyof typeof LINE_STYLES;

/** The lines of a run of sizes, from the smallest. */
export const SIZE_LINES: readonly LineName[] = Object.keys(LINE_STYLES).filter((name): name is LineName =>
  name.startsWith('size-'),
);

/**
 * Flat fills: ink for arrow heads and points, shade for what is dark in a picture, tint for areas that text is read on,
 * paper to clear a place.
 */
export const FILL_GREYS = { ink: 0, shade: 0.65, tint: 0.85, paper: 1 } as const;

export type FillName = keyof typeof FILL_GREYS;

/** Families of parallel lines that tell cloths apart: direction in degrees from the x axis, spacing in mm. */
export const HATCHES = {
  plain: [],
  net: [
    { angle: 45, spacing: 12 },
    { angle: -45, spacing: 12 },
  ],
  diagonal: [{ angle: -60, spacing: 12 }],
} as const satisfies Record<string, readonly { readonly angle: number; readonly spacing: number }[]>;

export type HatchName = keyof typeof HATCHES;
