import { say } from '../words/index.ts';
import { type Drawn, shifted } from './drawn.ts';
import { type Paper, printableSize } from './paper-format.ts';
import type { Align, Ink, Mark, Page, Weight } from './scene.ts';
import { strokeLine, tickBox } from './shapes.ts';
import { ASCENT, clippedText, LINE_SPACING, textLines, textMark, wrapText } from './text.ts';

/** A piece of a document that runs down its pages. */
export type FlowBlock =
  | { readonly kind: 'title' | 'heading' | 'subheading'; readonly text: string }
  | { readonly kind: 'paragraph'; readonly text: string; readonly weight?: Weight }
  /** One line each, with a box to tick. */
  | { readonly kind: 'ticks'; readonly items: readonly string[] }
  | TableBlock
  /** A drawing as wide as the page, kept in one piece. */
  | { readonly kind: 'figure'; readonly height: number; draw(width: number): readonly Mark[] }
  /** Lines at the left edge and at the right one, beside one another: who writes, and to whom. */
  | { readonly kind: 'sides'; readonly left: readonly string[]; readonly right: readonly string[] }
  | { readonly kind: 'gap'; readonly height: number }
  | { readonly kind: 'new-page' };

export interface TableBlock {
  readonly kind: 'table';
  readonly columns: readonly TableColumn[];
  readonly rows: readonly (readonly string[])[];
  /** A box to tick before every row. */
  readonly ticked: boolean;
  /** Rows from this one on are bold: the sums at the foot. */
  readonly sumsFrom?: number;
}

export interface TableColumn {
  readonly heading: string;
  /** Of the width, in proportion to the other columns. */
  readonly share: number;
  readonly align: Align;
}

export interface FlowSettings {
  readonly paper: Paper;
  readonly ink: Ink;
  /** Names the pages in a file: 'Cut list'. */
  readonly name: string;
  /** Stands at the foot of every page, before its number. */
  readonly footer: string;
}

/** Something that no page break may part; `holdsNext` keeps a heading with what it heads. */
interface Slab {
  readonly height: number;
  readonly marks: readonly Mark[];
  readonly holdsNext: boolean;
  /** Begins a new page unless nothing stands on this one yet. */
  readonly newPage: boolean;
}

const SIZES = { title: 9, heading: 6.5, subheading: 5 } as const;
const BODY = 4.2;
const FOOT = 3.2;
const FOOT_HEIGHT = 8;
const TICK = 4.5;
const CELL_GAP = 3;

/** Sets blocks into pages of a small format, with the footer and the number of the page at the foot. */
export function flowPages(blocks: readonly FlowBlock[], settings: FlowSettings): readonly Page[] {
  const { width, height } = printableSize(settings.paper);
  const room = height - FOOT_HEIGHT;
  const pages: Mark[][] = [[]];
  let y = 0;
  for (const group of heldTogether(blocks.flatMap((block) => slabsOf(block, width, settings.ink)))) {
    const needed = group.reduce((sum, slab) => sum + slab.height, 0);
    if (y > 0 && (y + needed > room || group.some((slab) => slab.newPage))) {
      pages.push([]);
      y = 0;
    }
    for (const slab of group) {
      if (slab.marks.length > 0) pages.at(-1)?.push(shifted(slab.marks, 0, y));
      y += slab.height;
    }
  }
  return pages.map((marks, i) => page(marks, i + 1, pages.length, settings));
}

function page(marks: readonly Mark[], number: number, count: number, settings: FlowSettings): Page {
  const { paper, ink, name, footer } = settings;
  const { width, height } = printableSize(paper);
  const look = { size: FOOT } as const;
  const numbers = say('paper.flow.number', { page: number, pages: count }, ink.units);
  const footerWidth = width - ink.measure.width(numbers, FOOT, 'regular') - CELL_GAP;
  const foot = [
    textMark(clippedText(ink.measure, footer, FOOT, 'regular', footerWidth), { x: 0, y: height - 1 }, look),
    textMark(numbers, { x: width, y: height - 1 }, { ...look, align: 'right' }),
  ];
  return {
    name: count === 1 ? name : `${name} ${number}`,
    width: paper.format.width,
    height: paper.format.height,
    marks: [shifted([...marks, ...foot], paper.margin, paper.margin)],
  };
}

function heldTogether(slabs: readonly Slab[]): readonly (readonly Slab[])[] {
  const groups: Slab[][] = [];
  let holding = false;
  for (const slab of slabs) {
    if (holding) groups.at(-1)?.push(slab);
    else groups.push([slab]);
    holding = slab.holdsNext;
  }
  return groups;
}

function slabsOf(block: FlowBlock, width: number, ink: Ink): readonly Slab[] {
  switch (block.kind) {
    case 'title':
    case 'heading':
    case 'subheading':
      return [headingSlab(block.text, SIZES[block.kind], width, ink)];
    case 'paragraph':
      return [...lineSlabs(block.text, block.weight ?? 'regular', width, ink), slab(BODY * 0.5, [])];
    case 'ticks':
      return block.items.map((item) => tickSlab(item, width, ink));
    case 'table':
      return tableSlabs(block, width, ink);
    case 'figure':
      return [slab(block.height, block.draw(width))];
    case 'sides':
      return [sidesSlab(block, width, ink), slab(BODY, [])];
    case 'gap':
      return [slab(block.height, [])];
    case 'new-page':
      return [{ ...slab(0, []), newPage: true, holdsNext: true }];
  }
}

const slab = (height: number, marks: readonly Mark[]): Slab => ({
  height,
  marks,
  holdsNext: false,
  newPage: false,
});

function headingSlab(text: string, size: number, width: number, { measure }: Ink): Slab {
  const lines = wrapText(measure, text, size, 'bold', width);
  const marks = textLines(lines, { x: 0, y: size * (ASCENT + 0.3) }, { size, weight: 'bold' });
  return { ...slab(size * (lines.length * LINE_SPACING + 0.5), marks), holdsNext: true };
}

function lineSlabs(text: string, weight: Weight, width: number, { measure }: Ink): readonly Slab[] {
  return wrapText(measure, text, BODY, weight, width).map((line) =>
    slab(BODY * LINE_SPACING, [textMark(line, { x: 0, y: BODY * ASCENT }, { size: BODY, weight })]),
  );
}

function tickSlab(text: string, width: number, ink: Ink): Slab {
  const cell = cellOf(text, 'left', TICK + CELL_GAP, width - TICK - CELL_GAP, ink);
  return slab(cell.height, [tickBox({ x: 0.2, y: TICK_FOOT }, TICK), ...cell.marks]);
}

function tableSlabs(table: TableBlock, width: number, ink: Ink): readonly Slab[] {
  const left = table.ticked ? TICK + CELL_GAP : 0;
  const shares = table.columns.reduce((sum, column) => sum + column.share, 0);
  const room = width - left - CELL_GAP * (table.columns.length - 1);
  let x = left;
  const places = table.columns.map((column) => {
    const place = { x, width: (room * column.share) / shares };
    x += place.width + CELL_GAP;
    return place;
  });
  const row = (texts: readonly string[], weight: Weight): Drawn => {
    const cells = table.columns.map((column, i) => {
      const place = places[i] ?? { x: 0, width };
      return cellOf(texts[i] ?? '', column.align, place.x, place.width, ink, weight);
    });
    return {
      marks: cells.flatMap((cell) => cell.marks),
      height: Math.max(...cells.map((cell) => cell.height)),
    };
  };
  const ruled = (drawn: Drawn): Mark[] => [
    ...drawn.marks,
    strokeLine({ x: 0, y: drawn.height }, { x: width, y: drawn.height }, 'rule'),
  ];
  const head = row(
    table.columns.map((column) => column.heading),
    'bold',
  );
  const body = table.rows.map((texts, i) => {
    const drawn = row(texts, i >= (table.sumsFrom ?? table.rows.length) ? 'bold' : 'regular');
    const box = table.ticked ? [tickBox({ x: 0.2, y: TICK_FOOT }, TICK)] : [];
    return slab(drawn.height, [...ruled(drawn), ...box]);
  });
  return [{ ...slab(head.height, ruled(head)), holdsNext: true }, ...body, slab(BODY, [])];
}

function sidesSlab({ left, right }: Extract<FlowBlock, { kind: 'sides' }>, width: number, ink: Ink): Slab {
  const half = (width - CELL_GAP) / 2;
  const column = (texts: readonly string[], align: Align): Drawn => {
    let height = 0;
    const marks = texts.flatMap((text) => {
      const lines = wrapText(ink.measure, text, BODY, 'regular', half);
      const at = { x: align === 'left' ? 0 : width, y: height + BODY * ASCENT };
      height += lines.length * BODY * LINE_SPACING;
      return textLines(lines, at, { size: BODY, align });
    });
    return { marks, height };
  };
  const [one, other] = [column(left, 'left'), column(right, 'right')];
  return slab(Math.max(one.height, other.height), [...one.marks, ...other.marks]);
}

/** Foot of a tick box that stands beside the first line of a row, mm from the top of the row. */
const TICK_FOOT = BODY * ASCENT + 1.2;

function cellOf(
  text: string,
  align: Align,
  x: number,
  width: number,
  { measure }: Ink,
  weight: Weight = 'regular',
): Drawn {
  const lines = wrapText(measure, text, BODY, weight, width);
  const at = { left: x, centre: x + width / 2, right: x + width }[align];
  return {
    marks: textLines(lines, { x: at, y: BODY * ASCENT + 0.8 }, { size: BODY, weight, align }),
    height: lines.length * BODY * LINE_SPACING + ROW_AIR,
  };
}

const ROW_AIR = 1.6;
