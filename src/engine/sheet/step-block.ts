import { shifted } from './drawn.ts';
import { type Paper, printableSize } from './paper-format.ts';
import type { Ink, Mark } from './scene.ts';
import type { StepFigure } from './sew-figure.ts';
import { strokeLine, tickBox } from './shapes.ts';
import { ASCENT, LINE_SPACING, textLines, textMark, wrapText } from './text.ts';
import type { FlowBlock } from './text-pages.ts';

/** One step of the work in words, with its drawing. */
interface StepEntry {
  readonly number: number;
  readonly title: string;
  readonly text: string;
  readonly reason: string;
  readonly time: string;
  readonly figure: StepFigure | null;
}

const TITLE = 4.6;
const BODY = 4;
const SMALL = 3.4;
const BOX = 5;
const INDENT = 9;
const GUTTER = 5;
const AIR = 3;

/** A step with a box to tick, its words at the left and its drawing at the right, kept on one page. */
export function stepBlock(entry: StepEntry, paper: Paper, ink: Ink): FlowBlock {
  const { marks, height } = lines(entry, ink, printableSize(paper).width);
  return { kind: 'figure', height, draw: () => marks };
}

function lines(
  { number, title, text, reason, time, figure }: StepEntry,
  { measure }: Ink,
  width: number,
): { readonly marks: readonly Mark[]; readonly height: number } {
  const room = width - INDENT - (figure === null ? 0 : figure.width + GUTTER);
  const marks: Mark[] = [tickBox({ x: 0.3, y: AIR + BOX }, BOX)];
  let y = AIR;
  const write = (words: string, size: number, weight: 'regular' | 'bold'): void => {
    if (words === '') return;
    const wrapped = wrapText(measure, words, size, weight, room);
    marks.push(...textLines(wrapped, { x: INDENT, y: y + size * ASCENT }, { size, weight }));
    y += wrapped.length * size * LINE_SPACING + size * 0.3;
  };
  write(`${number}. ${title}`, TITLE, 'bold');
  write(text, BODY, 'regular');
  write(reason, SMALL, 'regular');
  marks.push(textMark(time, { x: INDENT, y: y + SMALL * ASCENT }, { size: SMALL, weight: 'bold' }));
  y += SMALL * LINE_SPACING;
  const height = Math.max(y, figure === null ? 0 : figure.height) + AIR;
  if (figure !== null) marks.push(shifted(figure.marks, width - figure.width, AIR / 2));
  marks.push(strokeLine({ x: 0, y: height }, { x: width, y: height }, 'rule'));
  return { marks, height };
}
