import type { Affine, Bounds, Path, Point } from '../geometry/index.ts';
import type { UnitSystem } from '../units/index.ts';
import type { FillName, HatchName, LineName } from './styles.ts';

/** A page as data: everything in mm, origin at the top left corner, y down. Writers turn it into PDF or SVG. */
export interface Page {
  /** Names the page in a file or a list: 'Front page', 'B3'. */
  readonly name: string;
  readonly width: number;
  readonly height: number;
  readonly marks: readonly Mark[];
  /** On a page with pieces: the window of the large sheet that it shows inside its margins. */
  readonly place?: Bounds;
}

export type Mark = StrokeMark | FillMark | HatchMark | TextMark | GroupMark;

export interface StrokeMark {
  readonly kind: 'stroke';
  readonly path: Path;
  readonly line: LineName;
}

/** A closed path filled flat. */
export interface FillMark {
  readonly kind: 'fill';
  readonly outline: Path;
  readonly fill: FillName;
}

/** Parallel lines inside a closed path; `scale` draws the spacing of the style smaller in a miniature. */
export interface HatchMark {
  readonly kind: 'hatch';
  readonly outline: Path;
  readonly hatch: HatchName;
  readonly scale: number;
}

export type Align = 'left' | 'centre' | 'right';
export type Weight = 'regular' | 'bold';

/** One line of text. `size` is the em in mm; `at` lies on the baseline; `turn` is clockwise, in degrees. */
export interface TextMark {
  readonly kind: 'text';
  readonly text: string;
  readonly at: Point;
  readonly size: number;
  readonly weight: Weight;
  readonly align: Align;
  readonly turn: number;
}

/** Marks in a coordinate frame of their own, cut off at `clip` (given in that frame) if there is one. */
export interface GroupMark {
  readonly kind: 'group';
  readonly frame: Affine;
  readonly clip: Bounds | null;
  readonly marks: readonly Mark[];
}

/** Measures text in the font that will be embedded; the writer of the pages supplies it. */
export interface TextMeasure {
  /** Width in mm of one line set at `size` mm. */
  width(text: string, size: number, weight: Weight): number;
}

/** What every drawing needs to know of the maker: her units, and the font that will be used. */
export interface Ink {
  readonly units: UnitSystem;
  readonly measure: TextMeasure;
}

/** Quarter turns clockwise. */
export type QuarterTurns = 0 | 1 | 2 | 3;

/** The frame that turns about the origin by quarter turns, then shifts. */
export function turnedFrame(turns: QuarterTurns, shift: Point): Affine {
  const [cos, sin] = QUARTERS[turns];
  return { a: cos, b: sin, c: -sin, d: cos, e: shift.x, f: shift.y };
}

const QUARTERS = { 0: [1, 0], 1: [0, 1], 2: [-1, 0], 3: [0, -1] } as const;
