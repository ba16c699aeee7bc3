import { add, type Bounds, outward, type Point, scale, type Vector } from '../geometry/index.ts';
import { isFree } from './label-place.ts';
import { boxAround } from './runs.ts';
import type { Ink, Mark, QuarterTurns, TextMark } from './scene.ts';
import { textMark } from './text.ts';
import { boxHolds } from './words-box.ts';

/** How a piece lies on paper, as far as its words must know. */
export interface PieceLie {
  readonly turns: QuarterTurns;
  /**
   * The windows of the pages that show it, in the piece's coordinates. Words stand whole in one of them if there is
   * room. Empty where the piece is drawn in one.
   */
  readonly windows: readonly Bounds[];
  /** The same windows without what the words of the page itself take. */
  readonly clear: readonly Bounds[];
}

/**
 * The writing on one piece while it is being set: whatever is written becomes an obstacle for what comes after,
 * so that no two words lie on each other.
 */
export interface Lettering extends PieceLie {
  readonly ink: Ink;
  /** The stitching line, as points. */
  readonly outline: readonly Point[];
  readonly obstacles: (readonly Point[])[];
  /** Lines and arrows that belong to the words. */
  readonly marks: Mark[];
  /** What is written, each wording with all its lines. */
  readonly words: (readonly TextMark[])[];
}

/**
 * The window in which a box lies whole, the last if it is whole in several: that page lies on top when they are
 * joined. Null if every window parts it.
 */
export function homeOf(windows: readonly Bounds[], box: Bounds): Bounds | null {
  return windows.findLast((window) => boxHolds(window, box)) ?? null;
}

/** Whether a box lies whole in one of the windows; any box does where there are none. */
export function isOnOnePage(windows: readonly Bounds[], box: Bounds): boolean {
  return windows.length === 0 || homeOf(windows, box) !== null;
}

/**
 * Writes a word along a direction, its near edge at `foot`, growing towards `side`. Returns false and writes nothing
 * if it is longer than `room`, would lie on a line, on other words or outside the piece, or be parted by a page.
 */
export function writeAlong(
  lettering: Lettering,
  words: string,
  foot: Point,
  along: Vector,
  side: Vector,
  size: number,
  room: number,
): boolean {
  const width = lettering.ink.measure.width(words, size, 'regular');
  if (width > room) return false;
  const middle = add(foot, scale(side, size / 2));
  const corners = turnedCorners(middle, along, width, size);
  const box = boxAround(corners);
  if (!isFree(lettering, box) || !isOnOnePage(lettering.windows, box)) return false;
  lettering.words.push([lineOfText(lettering, words, middle, along, size)]);
  lettering.obstacles.push(corners);
  return true;
}

/** Text centred on a point along a direction, not upside down when the piece is looked at as it lies on paper. */
export function lineOfText(
  { turns }: PieceLie,
  words: string,
  middle: Point,
  along: Vector,
  size: number,
): TextMark {
  const turn = readableTurn((Math.atan2(along.y, along.x) * 180) / Math.PI, turns);
  const radians = (turn * Math.PI) / 180;
  const down = { x: -Math.sin(radians), y: Math.cos(radians) };
  return textMark(words, add(middle, scale(down, size * CAP_MIDDLE)), { size, align: 'centre', turn });
}

/** From the middle of the letters down to their baseline, as a share of the size (half the cap height). */
const CAP_MIDDLE = 0.35;

/**
 * The turn of a line of text (degrees clockwise, in the piece's frame), or the opposite one if that would be upside
 * down on paper. Text that runs straight up or down the paper may stay.
 */
export function readableTurn(turn: number, turns: QuarterTurns): number {
  const onPaper = Math.cos(((turn + 90 * turns) * Math.PI) / 180);
  if (onPaper >= -UPRIGHT) return turn;
  return turn > 0 ? turn - 180 : turn + 180;
}

/** Cosine of an angle so near to a right one that it counts as one. */
const UPRIGHT = 1e-3;

export function turnedCorners(middle: Point, along: Vector, width: number, height: number): readonly Point[] {
  const across = outward(along);
  const corner = (u: number, v: number): Point =>
    add(middle, add(scale(along, (u * width) / 2), scale(across, (v * height) / 2)));
  return [corner(-1, -1), corner(1, -1), corner(1, 1), corner(-1, 1), corner(-1, -1)];
}
