import { formatLength, MM_PER_INCH, type Ruler, type UnitSystem } from '../units/index.ts';
import { say, type WordKey } from '../words/index.ts';
import { type Drawn, shifted } from './drawn.ts';
import { FIGURE_AIR, type FigureMarks, figureDrawing, type NumberedMark } from './figure-drawing.ts';
import { figureTable, type TableEntry, tableColumns } from './figure-table.ts';
import { MARKING_WORDS } from './piece-lettering.ts';
import type { RuledPiece } from './ruled-piece.ts';
import type { MarkKind, RuledMark } from './running-measures.ts';
import type { Ink, Mark, Weight } from './scene.ts';
import { tickBox } from './shapes.ts';
import { clippedText, LINE_SPACING, textLines, textMark, wrapText } from './text.ts';

const TITLE = 7.5;
const CUTTING = 5;
const SMALL = 3.4;
const BOX = 6;
const GUTTER = 8;
/** A rectangle is not drawn lower than this, mm. */
const LOWEST = 26;
/** A table with so few rows stands beside the drawing. */
const FEW_ROWS = 16;
const TABLE_BESIDE = 64;

/** A measured drawing, and how large its rectangle is drawn: page mm to one mm of the piece, downwards. */
export interface PieceFigure extends Drawn {
  readonly scale: number;
}

/**
 * The measured drawing of a straight piece: what it is, a drawing with numbers, and a table of where every line lies,
 * as running measures with the maker's ruler. `height` is the room that it should fit; it takes more when its table
 * does not. A long table stands under the drawing, which is then drawn as wide as the page and as high as there is
 * room, so that its lines stand apart; it is no picture to scale.
 */
export function pieceFigure(
  piece: RuledPiece,
  ruler: Ruler,
  width: number,
  height: number,
  ink: Ink,
): PieceFigure {
  const told: Told = { ink: { ...ink, units: ruler.system }, ruler };
  const head = figureHead(piece, width, told);
  const marks = namedMarks(piece);
  const entries = tableEntries(marks, told);
  const sizes = {
    width: formatLength(piece.width, ruler.system, ruler),
    length: formatLength(piece.length, ruler.system, ruler),
  };
  const { top, right, bottom, left } = FIGURE_AIR;
  const [across, down] = [piece.box.maxX - piece.box.minX, piece.box.maxY - piece.box.minY];
  const isBeside = entries.length <= FEW_ROWS;
  const table = isBeside
    ? figureTable(entries, 1, TABLE_BESIDE, told.ink)
    : figureTable(entries, tableColumns(width), width, told.ink);
  const room = {
    width: width - left - right - (isBeside ? TABLE_BESIDE + GUTTER : 0),
    height: Math.max(LOWEST, height - head.height - top - bottom - (isBeside ? 0 : table.height + TABLE_GAP)),
  };
  const k = Math.min(room.width / across, room.height / down);
  const scale = isBeside ? { x: k, y: k } : { x: room.width / across, y: k };
  const drawing = figureDrawing(piece, marks, scale, sizes, told.ink);
  const drawn = top + down * scale.y + bottom;
  const tableAt = isBeside
    ? { x: width - TABLE_BESIDE, y: head.height }
    : { x: 0, y: head.height + drawn + TABLE_GAP };
  return {
    marks: [...head.marks, shifted(drawing, 0, head.height), shifted(table.marks, tableAt.x, tableAt.y)],
    height: Math.max(head.height + drawn, tableAt.y + table.height),
    scale: scale.y,
  };
}

const TABLE_GAP = 2;

/** With which ruler, and so in which units, the figures are told. */
interface Told {
  readonly ink: Ink;
  readonly ruler: Ruler;
}

function figureHead(piece: RuledPiece, width: number, { ink, ruler }: Told): Drawn {
  const { label } = piece.cut;
  const { measure, units } = ink;
  const indent = BOX + 3;
  const length = (mm: number): string => formatLength(mm, units, ruler);
  const onFold = Object.values(piece.edges).some(({ kind }) => kind === 'fold');
  const size = say(
    onFold ? 'paper.figure.size-on-fold' : 'paper.figure.size',
    { width: length(piece.width), length: length(piece.length), opened: length(2 * piece.width) },
    units,
  );
  const titled = clippedText(measure, label.title, TITLE, 'bold', width - indent);
  const wearer = `${say('paper.piece.child', { child: label.child, size: label.size }, units)}, ${label.date}`;
  const wearerRoom = width - indent - measure.width(titled, TITLE, 'bold') - GUTTER;
  const marks: Mark[] = [
    tickBox({ x: 0.3, y: TITLE }, BOX),
    textMark(titled, { x: indent, y: TITLE }, { size: TITLE, weight: 'bold' }),
    textMark(
      clippedText(measure, wearer, SMALL, 'regular', wearerRoom),
      { x: width, y: TITLE },
      { size: SMALL, align: 'right' },
    ),
  ];
  let y = TITLE + CUTTING * 1.5;
  const write = (text: string, size: number, weight: Weight): void => {
    const lines = wrapText(measure, text, size, weight, width - indent);
    marks.push(...textLines(lines, { x: indent, y }, { size, weight }));
    y += lines.length * size * LINE_SPACING;
  };
  write(`${label.cutting}. ${size}`, CUTTING, 'bold');
  y -= CUTTING - SMALL;
  write(notes(piece, { ink, ruler }), SMALL, 'regular');
  return { marks, height: y - SMALL + 2 };
}

/** What rounding did: the measures as ruled and, in the maker's units with hundredths, as they were. */
function notes(piece: RuledPiece, { ink: { units }, ruler }: Told): string {
  const { width, exactWidth, exactLength, faces, back, edges } = piece;
  const sum = say(
    'paper.figure.sum',
    {
      ruled: formatLength(width, units, ruler),
      width: hundredths(exactWidth, units),
      length: hundredths(exactLength, units),
    },
    units,
  );
  if (faces === null) return sum;
  const edge = say(`check.edge.${edges[back].kind}`, {}, units);
  return [
    sum,
    say('paper.figure.remainder', { edge }, units),
    say('paper.figure.pleated', { faces: formatLength(faces, units, ruler) }, units),
  ].join(' ');
}

function hundredths(mm: number, units: UnitSystem): string {
  return units === 'in' ? `${(mm / MM_PER_INCH).toFixed(2)} in` : `${(mm / 10).toFixed(2)} cm`;
}

/** Numbers for what is measured across, letters for what is measured down; the far edges need none. */
function namedMarks({ across, down }: RuledPiece): FigureMarks {
  const named = (marks: readonly RuledMark[], name: (i: number) => string): readonly NumberedMark[] =>
    marks.map((mark, i) => ({ ...mark, name: mark.kind === 'edge' ? '' : name(i) }));
  return {
    across: named(across, (i) => `${i + 1}`),
    down: named(down, (i) => String.fromCharCode(65 + i)),
  };
}

function tableEntries(marks: FigureMarks, told: Told): readonly TableEntry[] {
  const { units } = told.ink;
  const entry = (mark: NumberedMark, far: WordKey): TableEntry => ({
    kind: 'row',
    name: mark.name,
    way: mark.brought > 0 ? 1 : mark.brought < 0 ? -1 : 0,
    text: say(mark.kind === 'edge' ? far : MARK_WORDS[mark.kind], {}, units),
    figure: formatLength(mark.at, units, told.ruler),
  });
  const heading = (key: WordKey): TableEntry => ({ kind: 'heading', text: say(key, {}, units) });
  return [
    heading('paper.figure.across'),
    ...marks.across.map((mark) => entry(mark, 'paper.figure.right-edge')),
    heading('paper.figure.down'),
    ...marks.down.map((mark) => entry(mark, 'paper.figure.lower-edge')),
  ];
}

const MARK_WORDS = {
  ...MARKING_WORDS,
  stitch: 'paper.figure.stitch',
  notch: 'paper.figure.notch',
  'double-notch': 'paper.figure.double-notch',
  'closing-end': 'paper.figure.opening-end',
} as const satisfies Record<Exclude<MarkKind, 'edge'>, WordKey>;
