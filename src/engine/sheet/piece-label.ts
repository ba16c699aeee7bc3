import type { CutPiece } from '../cut/index.ts';
import type { Bounds } from '../geometry/index.ts';
import { say } from '../words/index.ts';
import { freePlace } from './label-place.ts';
import { isOnOnePage, type Lettering } from './lettering.ts';
import { boxAround } from './runs.ts';
import type { Ink, TextMark } from './scene.ts';
import { SMALLEST_TEXT } from './text.ts';
import { type Block, type BlockLine, blockOf, writeBlock } from './text-block.ts';

/** Sizes at full scale, mm. */
const TITLE = 12;
const CUTTING = 7.5;
const SMALL = 5;

/** From large to small; the last leaves every line at the smallest legible size. */
const SCALES = [1, 0.8, 0.65, 0.5, 0.35];
/** A label is not made smaller than this only to be whole on one page. */
const LEAST_ON_ONE_PAGE = 0.5;
/** How narrow the block is set, as shares of its longest line, and how well a block with so many broken lines reads. */
const NARROWINGS = [
  { share: 1, reads: 1 },
  { share: 0.7, reads: 0.95 },
  { share: 0.5, reads: 0.75 },
  { share: 0.35, reads: 0.5 },
];
/** How well a block reads that runs up the piece. */
const TURNED_READS = 0.85;
/** Sizes, widths and directions to try, the best to read first. */
const SETTINGS = SCALES.flatMap((scale) =>
  NARROWINGS.flatMap(({ share, reads }) => [
    { scale, share, upright: true, merit: scale * reads },
    { scale, share, upright: false, merit: scale * reads * TURNED_READS },
  ]),
).sort((a, b) => b.merit - a.merit);

/**
 * Writes the label where it touches no line and, if it can be, whole on one page: as large as fits, upright if
 * possible, else turned up the piece. A piece too small for all of it carries the title and the cutting; one too small
 * for that has the title at the place that the cut room chose, even if it touches a line, since a nameless piece is
 * worse. Gives what it wrote.
 */
export function labelPiece(lettering: Lettering, cut: CutPiece): readonly TextMark[] {
  const full = labelLines(cut, lettering.ink);
  const room = boxAround(lettering.outline);
  const onOnePage = (box: Bounds): boolean => isOnOnePage(lettering.clear, box);
  const anywhere = (): boolean => true;
  const trials = [
    { lines: full, isAllowed: onOnePage, least: LEAST_ON_ONE_PAGE },
    { lines: full, isAllowed: anywhere, least: 0 },
    { lines: full.slice(0, 2), isAllowed: anywhere, least: 0 },
    { lines: full.slice(0, 1), isAllowed: anywhere, least: 0 },
  ];
  for (const { lines, isAllowed, least } of trials) {
    for (const { scale, share, upright } of SETTINGS) {
      if (scale < least) continue;
      const block = setBlock(lines, scale, share, lettering.ink);
      const at = freePlace(lettering, block, upright, cut.labelAt, room, isAllowed);
      if (at !== null) return writeBlock(lettering, block, at, upright);
    }
  }
  return writeBlock(lettering, setBlock(full.slice(0, 1), 0, 1, lettering.ink), cut.labelAt, true);
}

function labelLines({ label, allowances, piece }: CutPiece, { units }: Ink): readonly BlockLine[] {
  const added = piece.edges.some((edge) => edge.kind !== 'fold' && (allowances[edge.name] ?? 0) > 0);
  const small = (text: string): BlockLine => ({ text, size: SMALL, weight: 'regular' });
  return [
    { text: label.title, size: TITLE, weight: 'bold' },
    { text: label.cutting, size: CUTTING, weight: 'bold' },
    small(say('paper.piece.child', { child: label.child, size: label.size }, units)),
    small(label.date),
    small(say(added ? 'paper.piece.allowances-in' : 'paper.piece.allowances-out', {}, units)),
  ];
}

function setBlock(lines: readonly BlockLine[], scale: number, narrowing: number, ink: Ink): Block {
  const sized = lines.map((line) => ({ ...line, size: Math.max(SMALLEST_TEXT, line.size * scale) }));
  const most = Math.max(...sized.map((line) => ink.measure.width(line.text, line.size, line.weight)));
  return blockOf(sized, most * narrowing, ink);
}
