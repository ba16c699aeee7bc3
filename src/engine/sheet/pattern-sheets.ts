import type { CutPiece } from '../cut/index.ts';
import { type Bounds, type Point, pathFlatten, pathMap } from '../geometry/index.ts';
import { say } from '../words/index.ts';
import { type ArrangeSettings, arrange, fromSheet, onSheet } from './arrange.ts';
import { checkLine, checkLineIn } from './check-scale.ts';
import { shifted } from './drawn.ts';
import type { Placement } from './fill-sheet.ts';
import { type FrontFacts, frontHead, pieceList } from './front-block.ts';
import { frontPages, type Placed } from './front-page.ts';
import { homeOf } from './lettering.ts';
import { type Paper, printableSize } from './paper-format.ts';
import { drawPiece } from './piece-drawing.ts';
import { drawnForPrinter, type PrinterError } from './printer.ts';
import { boxAround } from './runs.ts';
import { type Ink, type Mark, type Page, turnedFrame } from './scene.ts';
import { FOOT_HEIGHT } from './tile-captions.ts';
import { type Tile, type TileGrid, tilesOfShape } from './tile-cover.ts';
import { joinsOf, type PlacedPiece, standsOn, tileCorner, tilePage } from './tile-pages.ts';
import { wordsBox } from './words-box.ts';

/** One child's pieces to be printed at true size. */
export interface PatternJob {
  readonly pieces: readonly CutPiece[];
  readonly child: string;
  readonly size: string;
  readonly date: string;
  readonly paper: Paper;
  /** What the test square of an earlier print measured, if the sheets shall make up for it. */
  readonly printer: PrinterError | null;
  readonly ink: Ink;
}

export interface PatternSheets {
  readonly pages: readonly Page[];
  /** How many of the pages carry pieces; the rest is the front page. */
  readonly tiles: number;
}

/** Straight runs that stand for the cutting lines stay this near to them, mm. */
const FLAT = 0.05;

/** The head on a large sheet, mm: as wide as an A4 page, under a check line over the whole width. */
const HEAD_WIDTH = 190;
const HEAD_ROOM = 6;
const LINE_ROOM = 14;
/** A piece must be this much smaller than a sheet to lie on it with a gap all round, mm. */
const FIT_ROOM = 5;
/** Room for the foot of a page below the pieces on a roll, mm. */
const FOOT_ROOM = 14;

/**
 * Lays out a child's pieces on the paper that she has: on small formats a front page and the pages to join, on large
 * ones sheets that begin with the same head. Throws on a printer error that `printerProblem` would refuse.
 */
export function patternSheets(job: PatternJob): PatternSheets {
  const { ink, paper } = job;
  const shapes = job.pieces.map((piece) => pathFlatten(piece.cuttingLine, FLAT));
  const facts: FrontFacts = { ...job, pieces: job.pieces.map((piece) => piece.label) };
  const { grid, whole } = gridFor(paper, shapes);
  const head = paper.format.joined ? null : sheetHead(facts, grid.width, ink);
  const arrangement = arrange(shapes, { grid, whole, reserved: head?.blocks ?? [] });
  const placed: Placed = {
    tiles: arrangement.tiles,
    pieces: job.pieces.map((piece, i) =>
      placedPiece(piece, shapes[i], arrangement.placements[i], arrangement.tiles, grid, ink),
    ),
  };
  const front = head === null ? frontPages(facts, placed, grid, paper, ink) : [];
  const tiles = tilePages(placed, grid, head, front.length, job);
  return {
    pages: [...front, ...tiles].map((page) => drawnForPrinter(page, job.printer)),
    tiles: tiles.length,
  };
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

function placedPiece(
  piece: CutPiece,
  shape: readonly Point[] | undefined,
  placement: Placement | undefined,
  printed: readonly Tile[],
  grid: TileGrid,
  ink: Ink,
): PlacedPiece {
  if (shape === undefined || placement === undefined) throw new Error('Every piece has a place.');
  const points = shape.map((p) => onSheet(placement, p));
  const tiles = tilesOfShape(points, grid, printed);
  const windows = tiles.map((tile) => windowOnPiece(tile, grid, placement));
  const clear = tiles.map((tile) => windowOnPiece(tile, grid, placement, FOOT_HEIGHT));
  const { marks, words } = drawPiece(piece, ink, { turns: placement.turns, windows, clear });
  const frame = turnedFrame(placement.turns, placement.shift);
  return {
    title: piece.label.title,
    frame,
    marks,
    words: words.map((lines) => {
      const box = wordsBox(lines, ink.measure);
      const home = homeOf(windows, box);
      return {
        lines,
        box: boxAround([
          onSheet(placement, { x: box.minX, y: box.minY }),
          onSheet(placement, { x: box.maxX, y: box.maxY }),
        ]),
        home: home === null ? null : (tiles[windows.indexOf(home)] ?? null),
      };
    }),
    outline: pathMap(piece.cuttingLine, frame),
    points,
    tiles,
  };
}

/** The window of a page in a piece's own coordinates, without a strip at its foot. */
function windowOnPiece(tile: Tile, grid: TileGrid, placement: Placement, foot = 0): Bounds {
  const { x, y } = tileCorner(tile, grid);
  return boxAround([
    fromSheet(placement, { x, y }),
    fromSheet(placement, { x: x + grid.width, y: y + grid.height - foot }),
  ]);
}

function tilePages(
  { pieces, tiles }: Placed,
  grid: TileGrid,
  head: SheetHead | null,
  pagesBefore: number,
  { paper, ink, child }: PatternJob,
): readonly Page[] {
  return tiles.map((tile, i) => {
    const corner = tileCorner(tile, grid);
    const here = pieces.filter((piece) => standsOn(piece, tile));
    const headHere = tile.column === 0 && tile.row === 0 ? head : null;
    const numbers = { page: pagesBefore + i + 1, pages: pagesBefore + tiles.length };
    const facts = {
      tile,
      joins: joinsOf(tile, pieces, grid),
      pieces: here,
      extra: headHere?.marks ?? [],
      height: paper.format.roll ? rollLength(here, corner.y, headHere, grid) : grid.height,
      about: say('paper.tile.about', { ...numbers, child }, ink.units),
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

/** What stands in the corner of a large sheet. */
interface SheetHead {
  readonly marks: readonly Mark[];
  readonly height: number;
  readonly blocks: ArrangeSettings['reserved'];
}

function sheetHead(facts: FrontFacts, width: number, ink: Ink): SheetHead {
  const head = frontHead(HEAD_WIDTH, 0, false, facts, ink);
  const list = pieceList(
    facts.pieces,
    1,
    HEAD_WIDTH,
    Number.POSITIVE_INFINITY,
    say('paper.front.pieces', {}, ink.units),
    ink,
  );
  const height = LINE_ROOM + head.height + list.height;
  return {
    marks: [
      ...checkLine(1, 5, checkLineIn(width - 2, ink.units), false, ink),
      shifted(head.marks, 1, LINE_ROOM),
      shifted(list.marks, 1, LINE_ROOM + head.height),
    ],
    height,
    blocks: [
      { width, height: LINE_ROOM },
      { width: HEAD_WIDTH + HEAD_ROOM, height: height + HEAD_ROOM },
    ],
  };
}
