import type { CutPiece } from '../cut/index.ts';
import {
  add,
  type Bounds,
  between,
  direction,
  distance,
  outward,
  type Path,
  type Point,
  pathAt,
  pathEnd,
  pathLength,
  pathStart,
  scale,
} from '../geometry/index.ts';
import type { Grain, Marking } from '../piece/index.ts';
import { formatLength } from '../units/index.ts';
import { say, type WordKey } from '../words/index.ts';
import { isOnOnePage, type Lettering, lineOfText, turnedCorners, writeAlong } from './lettering.ts';
import { boxAround } from './runs.ts';
import { arrowHead, strokeLine } from './shapes.ts';
import { SMALLEST_TEXT } from './text.ts';

const WORD_SIZE = 4;
const FOLD_WORD_SIZE = 5;
/** From a line to the foot of the word beside it, mm. */
const BESIDE = 1.2;

/** From the fold to the bracket beside it, mm. */
const BRACKET_DEPTH = 9;
/** From the ends of the fold to the bracket's arrows; a share of a short fold. */
const BRACKET_INSET = 20;
const BRACKET_HEAD = 4.5;

/** A bracket beside the fold with arrows that point at it, and the words. */
export function foldBracket(lettering: Lettering, fold: Path): void {
  const [start, end] = [pathStart(fold), pathEnd(fold)];
  const along = direction(start, end);
  const inwards = scale(outward(along), -1);
  const length = distance(start, end);
  const inset = Math.min(BRACKET_INSET, length / 5);
  const feet = [add(start, scale(along, inset)), add(end, scale(along, -inset))] as const;
  const knees = feet.map((foot) => add(foot, scale(inwards, BRACKET_DEPTH)));
  const [from, to] = knees;
  if (from === undefined || to === undefined) return;
  lettering.marks.push(strokeLine(from, to, 'grain'));
  for (const [i, foot] of feet.entries()) {
    const knee = knees[i] ?? foot;
    const neck = add(foot, scale(inwards, BRACKET_HEAD * 0.8));
    lettering.marks.push(strokeLine(knee, neck, 'grain'), arrowHead(foot, scale(inwards, -1), BRACKET_HEAD));
  }
  lettering.obstacles.push([feet[0], from, to, feet[1]]);
  const words = say('paper.piece.fold', {}, lettering.ink.units);
  for (const windows of [lettering.windows, []]) {
    for (const share of PLACES_ALONG) {
      const foot = add(between(from, to, share), scale(inwards, BESIDE));
      if (
        writeAlong({ ...lettering, windows }, words, foot, along, inwards, FOLD_WORD_SIZE, length - 2 * inset)
      )
        return;
    }
  }
}

/** What each marking is called. */
export const MARKING_WORDS = {
  centre: 'paper.piece.centre',
  'pleat-fold': 'paper.piece.pleat-fold',
  'pleat-meet': 'paper.piece.pleat-meet',
  'closing-end': 'paper.piece.closing-end',
  gather: 'paper.piece.gather',
  'strip-line': 'paper.piece.strip-line',
  button: 'paper.piece.button',
  buttonhole: 'paper.piece.buttonhole',
  loop: 'paper.piece.loop',
  'lower-side': 'paper.piece.lower-side',
} as const satisfies Record<Marking['kind'], WordKey>;

const wordOf = ({ kind, side }: Marking): WordKey =>
  kind === 'lower-side' && side !== undefined ? `paper.piece.lower-side.${side}` : MARKING_WORDS[kind];

/** Writes beside each marking what it is; words that find no free place are left out, the line speaks by its dash. */
export function writeMarkings(lettering: Lettering, markings: readonly Marking[]): void {
  for (const marking of markings) {
    const words = say(wordOf(marking), {}, lettering.ink.units);
    if (marking.kind === 'lower-side') writeLevel(lettering, marking.path, words);
    else writeBeside(lettering, marking.path, words);
  }
}

export function writeGrain(lettering: Lettering, grain: Grain): void {
  const path: Path = { segments: [{ kind: 'line', from: grain.from, to: grain.to }] };
  writeBeside(lettering, path, say('paper.piece.grain', {}, lettering.ink.units));
}

/** Places along a line where a word may stand, as shares of its length, the best first. */
const PLACES_ALONG = [0.5, 0.3, 0.7, 0.15, 0.85];

function writeBeside(lettering: Lettering, path: Path, words: string): void {
  const length = pathLength(path);
  for (const windows of [lettering.windows, []]) {
    for (const share of PLACES_ALONG) {
      const { point: at, tangent } = pathAt(path, length * share);
      for (const side of [outward(tangent), scale(outward(tangent), -1)]) {
        const foot = add(at, scale(side, BESIDE));
        if (writeAlong({ ...lettering, windows }, words, foot, tangent, side, WORD_SIZE, length)) return;
      }
    }
  }
  writeBeyond(lettering, path, words);
}

/** For a line that slopes beside an edge: the words stand level below it, or above, clear of it. */
function writeLevel(lettering: Lettering, path: Path, words: string): void {
  const half = lettering.ink.measure.width(words, WORD_SIZE, 'regular') / 2;
  for (const windows of [lettering.windows, []]) {
    for (const share of PLACES_ALONG) {
      const { point: at, tangent } = pathAt(path, pathLength(path) * share);
      const slope = Math.abs(tangent.y) / Math.max(Math.abs(tangent.x), 0.2);
      for (const way of [1, -1]) {
        const foot = add(at, { x: 0, y: way * (2 * BESIDE + slope * half) });
        const side = { x: 0, y: way };
        if (writeAlong({ ...lettering, windows }, words, foot, { x: 1, y: 0 }, side, WORD_SIZE, 2 * half))
          return;
      }
    }
  }
}

/** For a short mark: the word follows on one of its ends. */
function writeBeyond(lettering: Lettering, path: Path, words: string): void {
  const half = lettering.ink.measure.width(words, WORD_SIZE, 'regular') / 2 + BESIDE;
  const along = direction(pathStart(path), pathEnd(path));
  const side = outward(along);
  for (const [end, way] of [
    [pathEnd(path), half],
    [pathStart(path), -half],
  ] as const) {
    const foot = add(end, add(scale(along, way), scale(side, -WORD_SIZE / 2)));
    if (writeAlong(lettering, words, foot, along, side, WORD_SIZE, 2 * half)) return;
  }
}

/** An allowance narrower than this has no room for a figure, mm. */
const NARROWEST_WITH_FIGURE = 5;

/** Writes the width of each allowance between the stitching line and the cutting line. */
export function writeAllowances(lettering: Lettering, cut: CutPiece): void {
  for (const edge of cut.piece.edges) {
    const allowance = cut.allowances[edge.name] ?? 0;
    if (edge.kind === 'fold' || allowance < NARROWEST_WITH_FIGURE) continue;
    const words = formatLength(allowance, lettering.ink.units);
    const size = Math.min(WORD_SIZE, Math.max(SMALLEST_TEXT, allowance * 0.5));
    const width = lettering.ink.measure.width(words, size, 'regular');
    const length = pathLength(edge.path);
    if (length < width * 1.6) continue;
    const places = PLACES_ALONG.map((share) => {
      const { point: on, tangent } = pathAt(edge.path, length * share);
      const middle = add(on, scale(outward(tangent), allowance / 2));
      const corners = turnedCorners(middle, tangent, width, size);
      return { middle, tangent, corners, box: boxAround(corners) };
    }).filter(({ box }) => !cut.notches.some((notch) => near(notch.from, box) || near(notch.to, box)));
    const best = places.find(({ box }) => isOnOnePage(lettering.windows, box)) ?? places[0];
    if (best === undefined) continue;
    lettering.words.push([lineOfText(lettering, words, best.middle, best.tangent, size)]);
    lettering.obstacles.push(best.corners);
  }
}

function near(p: Point, box: Bounds): boolean {
  return p.x > box.minX - 1 && p.x < box.maxX + 1 && p.y > box.minY - 1 && p.y < box.maxY + 1;
}
