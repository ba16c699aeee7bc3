import { say } from '../words/index.ts';
import type { Drawn } from './drawn.ts';
import { shifted } from './drawn.ts';
import { type Diagram, type DiagramScene, diagramBox, diagramMarks, diagramScene } from './hand-diagram.ts';
import { type Paper, printableSize } from './paper-format.ts';
import type { Ink, Mark, Page } from './scene.ts';
import {
  ASCENT,
  capitalised,
  clippedText,
  LINE_SPACING,
  sizeToFit,
  textLines,
  textMark,
  wrapText,
} from './text.ts';
import { type FlowBlock, flowPages } from './text-pages.ts';

/** One part of a draft as it is drawn by hand, ready to be told: figures rounded to the maker's ruler. */
export interface HandPart {
  readonly title: string;
  readonly steps: readonly HandStep[];
}

export interface HandStep {
  readonly sentence: string;
  readonly diagram: Diagram;
}

export interface HandSheetJob {
  readonly parts: readonly HandPart[];
  readonly child: string;
  readonly size: string;
  readonly date: string;
  readonly paper: Paper;
  readonly ink: Ink;
}

const GUTTER = 7;
const NUMBER = 6;
/** The first line of a sentence stands beside its number, the others under it. */
const INDENT = 9;
const SENTENCE = 4;
const CARD_FOOT = 3.5;
const HEADING = 6.5;
const LEAST_HEADING = 4;
const SCALE = 3.6;
/** A column is not narrower than this, mm; the steps of a part that is tall or wide have wide columns. */
const COLUMN = 58;
const WIDE_COLUMN = 90;
/** Width to height of a part: below the first it is tall, above the second wide. */
const TALL = 0.85;
const WIDE = 1.5;
/** Words beside a diagram have so much room at least, and are so far from it, mm. */
const LEAST_WORDS = 34;
const GAP = 3;
/** Parts with fewer steps share their rows. */
const SHORT_PART = 3;

/**
 * Heights of diagrams to try, mm: at the least of them four rows of steps go on an A4 page. The diagrams are made as
 * high as they can be without taking a page more.
 */
const HEIGHTS = [58, 60, 62, 65, 70, 76, 84] as const;

/**
 * The hand-drafting sheet: steps in columns, each a number, a sentence and a diagram in which what the step makes is
 * heavy, with its length, and the rest faint. A step is never parted by a page break. All diagrams of a part have the
 * same scale, which stands at its head.
 */
export function handSheetPages(job: HandSheetJob): readonly Page[] {
  const { ink, child, size, date, paper } = job;
  const about = say('paper.front.about', { size, date }, ink.units);
  const { width } = printableSize(paper);
  const bands = bandsOf(job.parts, width);
  const blocksAt = (highest: number): readonly FlowBlock[] => [
    { kind: 'title', text: say('paper.hand.title', { child }, ink.units) },
    { kind: 'paragraph', text: about },
    { kind: 'paragraph', text: say('paper.hand.order', {}, ink.units) },
    { kind: 'paragraph', text: say('paper.hand.allowances', {}, ink.units), weight: 'bold' },
    ...bands.flatMap((band) => bandBlocks(band, width, highest, ink)),
  ];
  const name = say('paper.hand.name', {}, ink.units);
  const settings = { paper, ink, name, footer: `${name} - ${child} - ${date}` };
  const undrawn = (block: FlowBlock): FlowBlock =>
    block.kind === 'figure' ? { ...block, draw: () => [] } : block;
  const counts = HEIGHTS.map((highest) => flowPages(blocksAt(highest).map(undrawn), settings).length);
  const best = counts.lastIndexOf(Math.min(...counts));
  return flowPages(blocksAt(HEIGHTS[best] ?? HEIGHTS[0]), settings);
}

/** How the steps of a part are set: so many beside one another, their words beside the diagram or above it. */
interface Layout {
  readonly columns: number;
  readonly words: 'beside' | 'above';
}

/** Tall parts have their words beside the diagram, wide ones above. */
function layoutOf(part: HandPart, width: number): Layout {
  const box = diagramBox(part.steps.map(({ diagram }) => diagram));
  const shape = (box.maxX - box.minX) / Math.max(1, box.maxY - box.minY);
  const words = shape < TALL ? 'beside' : 'above';
  const column = shape < TALL || shape > WIDE ? WIDE_COLUMN : COLUMN;
  return { columns: Math.max(1, Math.floor((width + GUTTER) / (column + GUTTER))), words };
}

/** Parts that are set in the same rows: a long one alone, short ones together. */
interface Band {
  readonly parts: readonly HandPart[];
  readonly layout: Layout;
}

function bandsOf(parts: readonly HandPart[], width: number): readonly Band[] {
  const bands: { parts: HandPart[]; readonly layout: Layout }[] = [];
  for (const part of parts) {
    const layout = layoutOf(part, width);
    const last = bands.at(-1);
    const joins =
      isShort(part) &&
      last !== undefined &&
      last.layout.columns === layout.columns &&
      last.layout.words === layout.words &&
      last.parts.every(isShort);
    if (joins) last.parts.push(part);
    else bands.push({ parts: [part], layout });
  }
  return bands;
}

const isShort = ({ steps }: HandPart): boolean => steps.length < SHORT_PART;

/** A step with, on the first of its part, what heads the part. */
interface Cell {
  readonly heading: Drawn | null;
  readonly height: number;
  draw(): readonly Mark[];
}

function bandBlocks({ parts, layout }: Band, width: number, highest: number, ink: Ink): readonly FlowBlock[] {
  const { columns, words } = layout;
  const column = (width - GUTTER * (columns - 1)) / columns;
  const isBeside = words === 'beside';
  const room = { width: isBeside ? column - LEAST_WORDS - GAP : column, height: highest, snug: isBeside };
  const cells = parts.flatMap((part) => {
    const scene = diagramScene(diagramBox(part.steps.map(({ diagram }) => diagram)), room);
    return part.steps.map((step, i): Cell => {
      const heading = i > 0 ? null : partHeading(part.title, scene, parts.length === 1 ? width : column, ink);
      const card = isBeside
        ? cardBeside(step, i + 1, scene, column, ink)
        : cardAbove(step, i + 1, scene, ink);
      return { heading, ...card };
    });
  });
  const rows: FlowBlock[] = [];
  for (let i = 0; i < cells.length; i += columns) {
    const row = cells.slice(i, i + columns);
    const head = Math.max(...row.map(({ heading }) => heading?.height ?? 0));
    rows.push({
      kind: 'figure',
      height: head + Math.max(...row.map((cell) => cell.height)),
      draw: () =>
        row.flatMap((cell, side) => [
          shifted(cell.heading?.marks ?? [], side * (column + GUTTER), 0),
          shifted(cell.draw(), side * (column + GUTTER), head),
        ]),
    });
  }
  return rows;
}

function partHeading(title: string, { shrink }: DiagramScene, width: number, ink: Ink): Drawn {
  const scale = say('paper.hand.scale', { shrink }, ink.units);
  const scaleWidth = ink.measure.width(scale, SCALE, 'regular') + 3;
  const room = width - scaleWidth;
  const size = sizeToFit(ink.measure, title, 'bold', room, HEADING, LEAST_HEADING);
  const shown = clippedText(ink.measure, title, size, 'bold', room);
  const y = HEADING * (ASCENT + 0.3);
  return {
    marks: [
      textMark(shown, { x: 0, y }, { size, weight: 'bold' }),
      textMark(scale, { x: ink.measure.width(shown, size, 'bold') + 3, y }, { size: SCALE }),
    ],
    height: HEADING * (LINE_SPACING + 0.5),
  };
}

type Card = Omit<Cell, 'heading'>;

function cardAbove(step: HandStep, number: number, scene: DiagramScene, ink: Ink): Card {
  const told = wordsOf(step, number, scene.width, ink);
  return {
    height: told.height + 1.5 + scene.height + CARD_FOOT,
    draw: () => [...told.marks, shifted(diagramMarks(step.diagram, scene, ink), 0, told.height + 1.5)],
  };
}

function cardBeside(step: HandStep, number: number, scene: DiagramScene, width: number, ink: Ink): Card {
  const told = wordsOf(step, number, width - scene.width - GAP, ink);
  return {
    height: Math.max(told.height, scene.height) + CARD_FOOT,
    draw: () => [shifted(told.marks, scene.width + GAP, 0), ...diagramMarks(step.diagram, scene, ink)],
  };
}

/** The number of a step and its sentence. */
function wordsOf(step: HandStep, number: number, width: number, ink: Ink): Drawn {
  const [first = '', ...rest] = sentenceLines(capitalised(step.sentence), width, ink);
  const baseline = NUMBER * 0.85;
  return {
    marks: [
      textMark(`${number}`, { x: 0, y: baseline }, { size: NUMBER, weight: 'bold' }),
      textMark(first, { x: INDENT, y: baseline }, { size: SENTENCE }),
      ...textLines(rest, { x: 0, y: baseline + SENTENCE * LINE_SPACING }, { size: SENTENCE }),
    ],
    height: baseline + SENTENCE * (rest.length * LINE_SPACING + 0.3),
  };
}

/** A sentence broken into lines, of which the first is shorter by the room for the number. */
function sentenceLines(sentence: string, width: number, { measure }: Ink): readonly string[] {
  const [first = ''] = wrapText(measure, sentence, SENTENCE, 'regular', width - INDENT);
  const rest = sentence.split(/\s+/).join(' ').slice(first.length).trim();
  return rest === '' ? [first] : [first, ...wrapText(measure, rest, SENTENCE, 'regular', width)];
}
