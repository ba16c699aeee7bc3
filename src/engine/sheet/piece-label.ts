import type { CutPiece } from '../cut/index.ts';
import type { Point } from '../geometry/index.ts';
import { say } from '../words/index.ts';
import { type BlockSize, freePlace } from './label-place.ts';
import { type Lettering, withJoins } from './piece-lettering.ts';
import type { Ink, Mark, Weight } from './scene.ts';
import { ASCENT, LINE_SPACING, SMALLEST_TEXT, textMark, wrapText } from './text.ts';

interface LabelLine {
  readonly text: string;
  readonly size: number;
  readonly weight: Weight;
}

/** A label set into lines, with the room it takes. */
interface Block extends BlockSize {
  readonly lines: readonly LabelLine[];
}

/** Sizes at full scale, mm. */
const TITLE = 12;
const CUTTING = 7.5;
const SMALL = 5;

/** From large to small; the last leaves every line at the smallest legible size. */
const SCALES = [1, 0.8, 0.65, 0.5, 0.35];
/** A label is not made smaller than this only to keep off a join of the paper. */
const LARGE_SCALES = SCALES.slice(0, 4);
/** How narrow the block is set, as shares of its longest line. */
const NARROWINGS = [1, 0.7, 0.5, 0.35];

/**
 * Writes the label where it touches no line: as large as fits, upright if possible, else turned up the page.
 * A piece too small for all of it carries the title and the cutting; one too small for that has the title at the
 * place that the cut room chose, even if it touches a line, since a nameless piece is worse.
 */
export function labelPiece(lettering: Lettering, cut: CutPiece): void {
  const full = labelLines(cut, lettering.ink);
  const trials = [
    { lines: full, ground: withJoins(lettering), scales: LARGE_SCALES },
    { lines: full, ground: lettering, scales: SCALES },
    { lines: full.slice(0, 2), ground: lettering, scales: SCALES },
    { lines: full.slice(0, 1), ground: lettering, scales: SCALES },
  ];
  for (const { lines, ground, scales } of trials) {
    for (const scale of scales) {
      for (const upright of [true, false]) {
        for (const narrowing of NARROWINGS) {
          const block = setBlock(lines, scale, narrowing, lettering.ink);
          const at = freePlace(ground, block, upright, cut.labelAt);
          if (at === null) continue;
          place(lettering, block, at, upright);
          return;
        }
      }
    }
  }
  place(lettering, setBlock(full.slice(0, 1), 0, 1, lettering.ink), cut.labelAt, true);
}

function labelLines({ label, allowances, piece }: CutPiece, { units }: Ink): readonly LabelLine[] {
  const added = piece.edges.some((edge) => edge.kind !== 'fold' && (allowances[edge.name] ?? 0) > 0);
  const small = (text: string): LabelLine => ({ text, size: SMALL, weight: 'regular' });
  return [
    { text: label.title, size: TITLE, weight: 'bold' },
    { text: label.cutting, size: CUTTING, weight: 'bold' },
    small(say('paper.piece.child', { child: label.child, size: label.size }, units)),
    small(label.date),
    small(say(added ? 'paper.piece.allowances-in' : 'paper.piece.allowances-out', {}, units)),
  ];
}

function setBlock(lines: readonly LabelLine[], scale: number, narrowing: number, { measure }: Ink): Block {
  const sized = lines.map((line) => ({ ...line, size: Math.max(SMALLEST_TEXT, line.size * scale) }));
  const widthOf = (line: LabelLine): number => measure.width(line.text, line.size, line.weight);
  const most = Math.max(...sized.map(widthOf)) * narrowing;
  const broken = sized.flatMap((line) =>
    wrapText(measure, line.text, line.size, line.weight, most).map((text) => ({ ...line, text })),
  );
  return {
    lines: broken,
    width: Math.max(...broken.map(widthOf)),
    height: broken.reduce((sum, line) => sum + line.size * LINE_SPACING, 0),
  };
}

function place(lettering: Lettering, block: Block, at: Point, upright: boolean): void {
  // In the block's own frame u runs along the lines and v down them; turned by -90 degrees, u runs up the page.
  const onPiece = (u: number, v: number): Point =>
    upright ? { x: at.x + u, y: at.y + v } : { x: at.x + v, y: at.y - u };
  let v = -block.height / 2;
  const marks: Mark[] = block.lines.map((line) => {
    const baseline = v + line.size * ASCENT;
    v += line.size * LINE_SPACING;
    const look = { size: line.size, weight: line.weight, align: 'centre', turn: upright ? 0 : -90 } as const;
    return textMark(line.text, onPiece(0, baseline), look);
  });
  const [w, h] = [block.width / 2, block.height / 2];
  lettering.marks.push(...marks);
  lettering.obstacles.push([onPiece(-w, -h), onPiece(w, -h), onPiece(w, h), onPiece(-w, h), onPiece(-w, -h)]);
}
