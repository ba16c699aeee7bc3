import { type Drawn, shifted } from './drawn.ts';
import type { Ink, Mark } from './scene.ts';
import { arrowHead, strokeLine } from './shapes.ts';
import { clippedText, textMark } from './text.ts';

/** A row of the table beside a measured drawing, or what heads the rows after it. */
export type TableEntry =
  | { readonly kind: 'heading'; readonly text: string }
  | {
      readonly kind: 'row';
      /** The number in the drawing. */
      readonly name: string;
      /** Whether a fold is brought to the right (1), to the left (-1), or nothing is brought (0). */
      readonly way: -1 | 0 | 1;
      readonly text: string;
      readonly figure: string;
    };

const TEXT = 3.4;
const ROW = 4.6;
const LEAST_COLUMN = 36;
const GUTTER = 5;
/** Of a column: numbers up to here, then the arrow, then the words, mm. */
const NAME_TO = 5;
const ARROW_AT = 6.2;
const ARROW = 2.6;
const WORDS_AT = 10;

/** How many columns of rows go beside one another. */
export function tableColumns(width: number): number {
  return Math.max(1, Math.floor((width + GUTTER) / (LEAST_COLUMN + GUTTER)));
}

/** Rows set in columns of one height; a heading never stands last in its column. */
export function figureTable(entries: readonly TableEntry[], columns: number, width: number, ink: Ink): Drawn {
  const columnWidth = (width - GUTTER * (columns - 1)) / columns;
  const rows = Math.ceil(entries.length / columns);
  const marks: Mark[] = [];
  let [column, row, tallest] = [0, 0, 0];
  for (const [i, entry] of entries.entries()) {
    const isStranded = entry.kind === 'heading' && row === rows - 1 && i < entries.length - 1;
    if ((row >= rows || isStranded) && column < columns - 1) {
      column++;
      row = 0;
    }
    marks.push(shifted(entryMarks(entry, columnWidth, ink), column * (columnWidth + GUTTER), row * ROW));
    row++;
    tallest = Math.max(tallest, row);
  }
  return { marks, height: tallest * ROW };
}

function entryMarks(entry: TableEntry, width: number, { measure }: Ink): readonly Mark[] {
  const y = ROW - 1.2;
  const rule = strokeLine({ x: 0, y: ROW }, { x: width, y: ROW }, 'rule');
  if (entry.kind === 'heading') {
    const text = clippedText(measure, entry.text, TEXT, 'bold', width);
    return [textMark(text, { x: 0, y }, { size: TEXT, weight: 'bold' }), rule];
  }
  const room = width - WORDS_AT - measure.width(entry.figure, TEXT, 'bold') - 1;
  return [
    textMark(entry.name, { x: NAME_TO, y }, { size: TEXT, align: 'right' }),
    ...(entry.way === 0 ? [] : wayArrow(entry.way, y)),
    textMark(clippedText(measure, entry.text, TEXT, 'regular', room), { x: WORDS_AT, y }, { size: TEXT }),
    textMark(entry.figure, { x: width, y }, { size: TEXT, weight: 'bold', align: 'right' }),
    rule,
  ];
}

function wayArrow(way: -1 | 1, baseline: number): readonly Mark[] {
  const y = baseline - TEXT * 0.35;
  const [from, to] = way > 0 ? [ARROW_AT, ARROW_AT + ARROW] : [ARROW_AT + ARROW, ARROW_AT];
  return [
    strokeLine({ x: from, y }, { x: to - way * 1.2, y }, 'measure'),
    arrowHead({ x: to, y }, { x: way, y: 0 }, 1.5),
  ];
}
