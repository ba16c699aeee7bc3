import type { Path } from '../geometry/index.ts';

export type SketchSide = 'front' | 'back';

/** What a line of the sketch is, so that a screen or a sheet can draw it in its own way. */
export type SketchStroke =
  /** The edge of the dress against the paper. */
  | 'outline'
  /** A seam or style line within it. */
  | 'seam'
  /** The fold of a pleat, or one that a flared skirt falls in; the stitching of a tuck. */
  | 'pleat'
  /** A short stroke that runs out from gathers. */
  | 'gather'
  /** An opening and what closes it: zip, buttons, lacing. */
  | 'opening'
  /** A light layer over the dress, or an edge seen behind it. */
  | 'light';

export interface SketchLine {
  readonly stroke: SketchStroke;
  readonly path: Path;
  /** True for a closed shape whose inside is net, to be hatched lightly. */
  readonly net?: boolean;
}

/** A flat drawing of one side of the dress, in the millimetres of the pieces: x = 0 is the centre. */
export interface Sketch {
  readonly side: SketchSide;
  readonly lines: readonly SketchLine[];
}
