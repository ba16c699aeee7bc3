import type { CutPiece } from '../cut/index.ts';
import { type Point, pathFlatten } from '../geometry/index.ts';
import { finestRuler, type Ruler } from '../units/index.ts';
import { say } from '../words/index.ts';
import { arrange } from './arrange.ts';
import type { Drawn } from './drawn.ts';
import { figureFor, figurePage, stackFigures } from './figure-pages.ts';
import type { PieceGroup } from './front-block.ts';
import { frontPages, type Placed } from './front-page.ts';
import { type Paper, paperOf, printableSize } from './paper-format.ts';
import { type NumberedPiece, placedPiece } from './placed-piece.ts';
import { drawnForPrinter, type PrinterError } from './printer.ts';
import { ruledPiece } from './ruled-piece.ts';
import { boxAround } from './runs.ts';
import type { Ink, Page } from './scene.ts';
import { type SheetHead, sheetHead } from './sheet-head.ts';
import type { TileGrid } from './tile-cover.ts';
import { joinsOf, type PlacedPiece, standsOn, tileCorner, tilePage } from './tile-pages.ts';

/** One child's pieces to be printed. */
export interface PatternJob {
  readonly pieces: readonly CutPiece[];
  readonly child: string;
  readonly size: string;
  readonly date: string;
  readonly paper: Paper;
  /** What the test square of an earlier print measured, if the sheets shall make up for it. */
  readonly printer: PrinterError | null;
  /**
   * `full`: every piece at true size. `figures`: a piece that is a plain rectangle is told by a measured drawing, two
   * to a page, instead of filling pages with straight lines.
   */
  readonly rectangles: Rectangles;
  /** The maker's ruler, to which those measures are rounded; null for the finest. */
  readonly ruler: Ruler | null;
  readonly ink: Ink;
}

export type Rectangles = 'full' | 'figures';

export interface PatternSheets {
  readonly pages: readonly Page[];
  /** How many of the pages carry pieces at true size. */
  readonly tiles: number;
  /** How many carry measured drawings. The rest is the front page. */
  readonly figures: number;
}

/** Straight runs that stand for the cutting lines stay this near to them, mm. */
const FLAT = 0.05;

/** A piece must be this much smaller than a sheet to lie on it with a gap all round, mm. */
const FIT_ROOM = 5;
/** Room for the foot of a page below the pieces on a roll, mm. */
const FOOT_ROOM = 14;

/**
 * Lays out a child's pieces on the paper that she has: on small formats a front page and the pages to join, on large
 * ones sheets that begin with the same head; then the measured drawings, on A4 where the format is large.
 * Throws on a printer error that `printerProblem` would refuse.
 */
export function patternSheets(job: PatternJob): PatternSheets {
  const { ink, paper } = job;
  const { printed, ruled } = sortedOut(job);
  const desk = deskPaper(paper);
  const stacks = stackFigures(
    ruled.map(({ figure }) => figure),
    desk,
    ink,
  );
  const shapes = printed.map(({ piece }) => pathFlatten(piece.cuttingLine, FLAT));
  const { grid, whole } = gridFor(paper, shapes);
  const facts = (heading: string) => ({ ...job, groups: groupsOf(heading, printed, ruled, ink) });
  const head = paper.format.joined
    ? null
    : sheetHead(facts(say('paper.front.pieces', {}, ink.units)), grid.width, ink);
  const { tiles, placements } = arrange(shapes, {
    grid,
    whole,
    reserved: head?.blocks ?? [],
    roll: paper.format.roll,
  });
  const placed: Placed = {
    tiles,
    pieces: printed.flatMap((own, i) => {
      const [shape, placement] = [shapes[i], placements[i]];
      if (shape === undefined || placement === undefined) throw new Error('Every piece has a place.');
      return placedPiece(own, shape, placement, tiles, grid, ink);
    }),
  };
  const count = tiles.length + stacks.length;
  const heading = say('paper.front.pages', { count }, ink.units);
  const front = head === null ? frontPages(facts(heading), placed, grid, paper, ink) : [];
  const tiled = tilePages(placed, grid, head, { before: front.length, all: front.length + count }, job);
  const figures = stacks.map((stack, i) => {
    const page = front.length + tiles.length + i + 1;
    const foot = say('paper.tile.about', { page, pages: front.length + count, child: job.child }, ink.units);
    return figurePage(stack, { number: i + 1, foot }, desk, ink);
  });
  return {
    pages: [...front, ...tiled, ...figures].map((page) => drawnForPrinter(page, job.printer)),
    tiles: tiled.length,
    figures: figures.length,
  };
}

/** Where measured drawings and lists are printed: they need no large sheet. */
const deskPaper = (paper: Paper): Paper => (paper.format.joined ? paper : paperOf('a4'));

interface RuledEntry extends NumberedPiece {
  readonly figure: Drawn;
}

/** Which pieces are printed at true size and which are told by a measured drawing. */
function sortedOut({ pieces, rectangles, ruler, paper, ink }: PatternJob): {
  readonly printed: readonly NumberedPiece[];
  readonly ruled: readonly RuledEntry[];
} {
  const own = ruler ?? finestRuler(ink.units);
  const printed: NumberedPiece[] = [];
  const ruled: RuledEntry[] = [];
  for (const [i, piece] of pieces.entries()) {
    const read = rectangles === 'figures' ? ruledPiece(piece, own) : null;
    const figure = read === null ? null : figureFor(read, own, deskPaper(paper), ink);
    if (figure === null) printed.push({ piece, number: i + 1 });
    else ruled.push({ piece, number: i + 1, figure });
  }
  return { printed, ruled };
}

function groupsOf(
  heading: string,
  printed: readonly NumberedPiece[],
  ruled: readonly NumberedPiece[],
  { units }: Ink,
): readonly PieceGroup[] {
  const listed = (own: readonly NumberedPiece[]): PieceGroup['pieces'] =>
    own.map(({ piece: { label }, number }) => ({ number, title: label.title, cutting: label.cutting }));
  const groups = [
    { heading, pieces: listed(printed) },
    { heading: say('paper.front.figures', {}, units), pieces: listed(ruled) },
  ];
  return groups.filter(({ pieces }) => pieces.length > 0);
}

/** Large sheets stand alone, without overlap, unless a piece is too large for one. */
function gridFor(
  paper: Paper,
  shapes: readonly (readonly Point[])[],
): { readonly grid: TileGrid; readonly whole: boolean } {
  const { width, height } = printableSize(paper);
  const [short, long] = [Math.min(width, height) - FIT_ROOM, Math.max(width, height) - FIT_ROOM];
  const allFit = shapes.every((shape) => {
    const box = boxAround(shape);
    const sides = [box.maxX - box.minX, box.maxY - box.minY];
    return Math.min(...sides) <= short && Math.max(...sides) <= long;
  });
  const whole = !paper.format.joined;
  return { grid: { width, height, overlap: whole && allFit ? 0 : paper.overlap }, whole };
}

function tilePages(
  { pieces, tiles }: Placed,
  grid: TileGrid,
  head: SheetHead | null,
  numbers: { readonly before: number; readonly all: number },
  { paper, ink, child }: PatternJob,
): readonly Page[] {
  return tiles.map((tile, i) => {
    const corner = tileCorner(tile, grid);
    const here = pieces.filter((piece) => standsOn(piece, tile));
    const headHere = tile.column === 0 && tile.row === 0 ? head : null;
    const page = numbers.before + i + 1;
    const facts = {
      tile,
      joins: joinsOf(tile, pieces, grid),
      pieces: here,
      extra: headHere?.marks ?? [],
      height: paper.format.roll ? rollLength(here, corner.y, headHere, grid) : grid.height,
      about: say('paper.tile.about', { page, pages: numbers.all, child }, ink.units),
    };
    return tilePage(facts, paper, grid, ink);
  });
}

/** Where the roll is cut: below the lowest piece, with room for the foot of the page. */
function rollLength(
  pieces: readonly PlacedPiece[],
  top: number,
  head: SheetHead | null,
  grid: TileGrid,
): number {
  const feet = pieces.flatMap((piece) => piece.points.map((p) => p.y - top));
  return Math.min(grid.height, Math.max(head?.height ?? 0, ...feet) + FOOT_ROOM);
}
