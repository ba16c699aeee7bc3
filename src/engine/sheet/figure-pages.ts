import type { CutPiece } from '../cut/index.ts';
import type { Ruler } from '../units/index.ts';
import { say } from '../words/index.ts';
import { type Drawn, shifted } from './drawn.ts';
import { pieceFigure } from './figure.ts';
import { type Paper, printableSize } from './paper-format.ts';
import { type RuledPiece, ruledPiece } from './ruled-piece.ts';
import type { Ink, Mark, Page } from './scene.ts';
import { strokeLine } from './shapes.ts';
import { clippedText, LINE_SPACING, textLines, textMark, wrapText } from './text.ts';

const ABOUT = 3.4;
const FOOT = 3.2;
const FOOT_HEIGHT = 8;
/** Between two drawings, mm. */
const BETWEEN = 6;

/** The room for drawings on a page: two of them stand on it as a rule, one where its table is long. */
interface FigureRoom {
  readonly width: number;
  readonly height: number;
  /** The lines at the top of every page. */
  readonly about: readonly string[];
  readonly top: number;
}

function figureRoom(paper: Paper, { measure, units }: Ink): FigureRoom {
  const { width, height } = printableSize(paper);
  const about = wrapText(measure, say('paper.figure.about', {}, units), ABOUT, 'regular', width);
  const top = about.length * ABOUT * LINE_SPACING + 4;
  return { width, height: height - top - FOOT_HEIGHT, about, top };
}

/** A drawing must not become smaller than this share of what half a page allows only to take less of it. */
const WORTH = 0.85;

/**
 * The measured drawing of a piece as the page takes it: a quarter, a third or half of it, or all. Null if the piece has
 * more lines than one page can list.
 */
export function figureFor(piece: RuledPiece, ruler: Ruler, paper: Paper, ink: Ink): Drawn | null {
  const room = figureRoom(paper, ink);
  const partOf = (parts: number): number => (room.height - BETWEEN * (parts - 1)) / parts;
  const onHalf = pieceFigure(piece, ruler, room.width, partOf(2), ink).scale;
  for (const parts of [4, 3, 2, 1]) {
    const height = partOf(parts);
    const drawn = pieceFigure(piece, ruler, room.width, height, ink);
    const isLarge = parts <= 2 || drawn.scale >= WORTH * onHalf;
    if (isLarge && drawn.height <= height + 1e-6) return { ...drawn, height };
  }
  return null;
}

/** How the drawings are shared out on pages, in their order. */
export function stackFigures(
  figures: readonly Drawn[],
  paper: Paper,
  ink: Ink,
): readonly (readonly Drawn[])[] {
  const { height } = figureRoom(paper, ink);
  const pages: Drawn[][] = [];
  let filled = Number.POSITIVE_INFINITY;
  for (const figure of figures) {
    if (filled + BETWEEN + figure.height > height + 1e-6) {
      pages.push([]);
      filled = -BETWEEN;
    }
    pages.at(-1)?.push(figure);
    filled += BETWEEN + figure.height;
  }
  return pages;
}

export interface FigurePageFacts {
  /** Counts the pages of this kind. */
  readonly number: number;
  /** 'page 8 of 9 - Adaeze' */
  readonly foot: string;
}

export function figurePage(figures: readonly Drawn[], facts: FigurePageFacts, paper: Paper, ink: Ink): Page {
  const { width, height, about, top } = figureRoom(paper, ink);
  const name = say('paper.figure.name', { number: facts.number }, ink.units);
  const foot = clippedText(ink.measure, `${name} - ${facts.foot}`, FOOT, 'regular', width);
  const marks: Mark[] = [...textLines(about, { x: 0, y: ABOUT }, { size: ABOUT })];
  let y = top;
  for (const [i, figure] of figures.entries()) {
    if (i > 0) marks.push(strokeLine({ x: 0, y: y - BETWEEN / 2 }, { x: width, y: y - BETWEEN / 2 }, 'rule'));
    marks.push(shifted(figure.marks, 0, y));
    y += figure.height + BETWEEN;
  }
  marks.push(textMark(foot, { x: 0, y: top + height + FOOT_HEIGHT - 1 }, { size: FOOT }));
  return {
    name,
    width: paper.format.width,
    height: paper.format.height,
    marks: [shifted(marks, paper.margin, paper.margin)],
  };
}

export interface MeasuredJob {
  readonly pieces: readonly CutPiece[];
  readonly child: string;
  readonly paper: Paper;
  readonly ruler: Ruler;
  readonly ink: Ink;
}

/** Measured drawings by themselves, of those pieces that can be told so. */
export function measuredPages({ pieces, child, paper, ruler, ink }: MeasuredJob): readonly Page[] {
  const figures = pieces.flatMap((piece) => {
    const ruled = ruledPiece(piece, ruler);
    const figure = ruled === null ? null : figureFor(ruled, ruler, paper, ink);
    return figure === null ? [] : [figure];
  });
  const stacks = stackFigures(figures, paper, ink);
  return stacks.map((stack, i) => {
    const foot = say('paper.tile.about', { page: i + 1, pages: stacks.length, child }, ink.units);
    return figurePage(stack, { number: i + 1, foot }, paper, ink);
  });
}
