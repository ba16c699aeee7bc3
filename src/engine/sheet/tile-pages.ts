import type { Affine, Bounds, Path, Point } from '../geometry/index.ts';
import type { Paper } from './paper-format.ts';
import type { Ink, Mark, Page, TextMark } from './scene.ts';
import { boxAt, crossMark, rectanglePath, stroke, strokeLine } from './shapes.ts';
import { footCaption, neighbourCaption, type Shown, type Side } from './tile-captions.ts';
import { stepX, stepY, type Tile, type TileGrid } from './tile-cover.ts';

/** One wording of a piece, with its box on the large sheet. */
export interface PlacedWords {
  readonly lines: readonly TextMark[];
  readonly box: Bounds;
  /** The page that shows it whole; the others leave it out, as half-letters read as dirt. */
  readonly home: Tile | null;
}

/** A piece where it lies on the large sheet. */
export interface PlacedPiece {
  /** As in the list of the pieces. */
  readonly number: number;
  readonly title: string;
  /** The frame that turns and shifts the drawing. */
  readonly frame: Affine;
  readonly marks: readonly Mark[];
  readonly words: readonly PlacedWords[];
  /** The cutting line on the large sheet, as a path and as straight runs. */
  readonly outline: Path;
  readonly points: readonly Point[];
  /** The pages that it stands on. */
  readonly tiles: readonly Tile[];
}

const sameTile = (a: Tile, b: Tile): boolean => a.column === b.column && a.row === b.row;

export const standsOn = (piece: PlacedPiece, tile: Tile): boolean =>
  piece.tiles.some((t) => sameTile(t, tile));

const isWrittenOn = ({ home }: PlacedWords, tile: Tile): boolean => home === null || sameTile(home, tile);

/** The drawing of a piece as one page shows it, on the large sheet. */
function drawnOn({ frame, marks, words }: PlacedPiece, tile: Tile): Mark {
  const elsewhere = new Set<Mark>(words.filter((w) => !isWrittenOn(w, tile)).flatMap(({ lines }) => lines));
  return { kind: 'group', frame, clip: null, marks: marks.filter((mark) => !elsewhere.has(mark)) };
}

/** Rows are letters, columns numbers: B3 is the third page of the second row. */
export function tileName(tile: Tile): string {
  return `${rowLetters(tile.row)}${tile.column + 1}`;
}

/** A ... Z, then AA, AB, ... */
function rowLetters(row: number): string {
  const last = String.fromCharCode(65 + (row % 26));
  return row < 26 ? last : rowLetters(Math.floor(row / 26) - 1) + last;
}

/** The corner of a tile's window on the large sheet. */
export function tileCorner(tile: Tile, grid: TileGrid): Point {
  return { x: tile.column * stepX(grid), y: tile.row * stepY(grid) };
}

/** Which neighbours a page is joined to: only those that share a piece with it. */
export interface Joins {
  readonly left: Tile | null;
  readonly right: Tile | null;
  readonly above: Tile | null;
  readonly below: Tile | null;
}

/**
 * The neighbours of a tile that a piece runs on to. The line where two pages meet is the left or top edge of the
 * window of the later page; a piece that stands on both and crosses that line ties them together.
 */
export function joinsOf(tile: Tile, pieces: readonly PlacedPiece[], grid: TileGrid): Joins {
  const { x, y } = tileCorner(tile, grid);
  const here = pieces.filter((piece) => standsOn(piece, tile));
  const joined = (dx: number, dy: number, axis: 'x' | 'y', at: number): Tile | null => {
    const neighbour = { column: tile.column + dx, row: tile.row + dy };
    const shared = here.filter((piece) => standsOn(piece, neighbour));
    const [across, from, to] =
      axis === 'x' ? (['y', y, y + grid.height] as const) : (['x', x, x + grid.width] as const);
    return shared.some(({ points }) => runsCross(points, axis, at, across, from, to)) ? neighbour : null;
  };
  return {
    left: joined(-1, 0, 'x', x),
    right: joined(1, 0, 'x', x + stepX(grid)),
    above: joined(0, -1, 'y', y),
    below: joined(0, 1, 'y', y + stepY(grid)),
  };
}

/** Whether the area inside a closed run of points has a part of the line `axis = at` between `from` and `to`. */
function runsCross(
  points: readonly Point[],
  axis: 'x' | 'y',
  at: number,
  across: 'x' | 'y',
  from: number,
  to: number,
): boolean {
  const places: number[] = [];
  let before = points.at(-1);
  for (const p of points) {
    if (before !== undefined && p[axis] > at !== before[axis] > at) {
      const share = (at - before[axis]) / (p[axis] - before[axis]);
      places.push(before[across] + share * (p[across] - before[across]));
    }
    before = p;
  }
  places.sort((a, b) => a - b);
  // Crossings come in pairs, into the area and out of it again.
  return places.some((enter, i) => i % 2 === 0 && enter < to && (places[i + 1] ?? enter) > from);
}

/** What one page shows. */
export interface PageFacts {
  readonly tile: Tile;
  readonly joins: Joins;
  /** The pieces that lie in its window, at least in part. */
  readonly pieces: readonly PlacedPiece[];
  /** Further marks on the large sheet. */
  readonly extra: readonly Mark[];
  /** Height of the window, mm: a roll may be cut short. */
  readonly height: number;
  /** 'page 3 of 18 - Adaeze' */
  readonly about: string;
}

/** Crosses where pages are joined: their size, and how far they stand from the corners of the window, mm. */
const CROSS_ARM = 5;
const CROSS_INSET = 18;

/** One page: its window on the large sheet, with all that helps to join it, inside the printable area. */
export function tilePage(facts: PageFacts, paper: Paper, grid: TileGrid, ink: Ink): Page {
  const { tile, height, pieces } = facts;
  const { margin } = paper;
  const inWindow = (marks: readonly Mark[], shift: Point): Mark => ({
    kind: 'group',
    frame: { a: 1, b: 0, c: 0, d: 1, e: margin - shift.x, f: margin - shift.y },
    clip: boxAt(shift.x, shift.y, grid.width, height),
    marks,
  });
  const own = [...joinMarks(facts.joins, grid, height), ...captions(facts, grid, ink)];
  const corner = tileCorner(tile, grid);
  return {
    name: tileName(tile),
    width: paper.format.width,
    height: height + 2 * margin,
    place: boxAt(corner.x, corner.y, grid.width, height),
    marks: [
      inWindow([...pieces.map((piece) => drawnOn(piece, tile)), ...facts.extra], corner),
      inWindow(own, { x: 0, y: 0 }),
    ],
  };
}

/**
 * A page is trimmed along its frame where it is joined to the page on its left or above, and laid on that page's
 * dotted line. Every cross sits on that line: half of it shows on the page below, half on the page that lies on top.
 */
function joinMarks(joins: Joins, { width, overlap }: TileGrid, height: number): readonly Mark[] {
  const marks: Mark[] = [stroke(rectanglePath(boxAt(0, 0, width, height)), 'frame')];
  const columns = (x: number): void => {
    for (const y of [CROSS_INSET, height - CROSS_INSET])
      marks.push(...crossMark({ x, y }, CROSS_ARM, 'cross'));
  };
  const rows = (y: number): void => {
    for (const x of [CROSS_INSET, width - CROSS_INSET])
      marks.push(...crossMark({ x, y }, CROSS_ARM, 'cross'));
  };
  const [right, foot] = [width - overlap, height - overlap];
  if (joins.right !== null) {
    marks.push(strokeLine({ x: right, y: 0 }, { x: right, y: height }, 'join'));
    columns(right);
  }
  if (joins.below !== null) {
    marks.push(strokeLine({ x: 0, y: foot }, { x: width, y: foot }, 'join'));
    rows(foot);
  }
  if (joins.left !== null) columns(0);
  if (joins.above !== null) rows(0);
  return marks;
}

const SIDES = ['left', 'right', 'above', 'below'] as const satisfies readonly Side[];

function captions(
  { tile, joins, about, pieces, height }: PageFacts,
  grid: TileGrid,
  ink: Ink,
): readonly Mark[] {
  const corner = tileCorner(tile, grid);
  const window = boxAt(0, 0, grid.width, height);
  const words = pieces
    .flatMap((piece) => piece.words)
    .filter((w) => isWrittenOn(w, tile))
    .map(({ box }) =>
      boxAt(box.minX - corner.x, box.minY - corner.y, box.maxX - box.minX, box.maxY - box.minY),
    );
  // What the page below or on the right shows as well may be hidden: it is covered by that page.
  const shown = (covering: Tile | null): Shown => ({
    words,
    lines: pieces
      .filter((piece) => covering === null || !standsOn(piece, covering))
      .map(({ points }) => closed(points).map((p) => ({ x: p.x - corner.x, y: p.y - corner.y }))),
  });
  const covering = { left: null, above: null, right: joins.right, below: joins.below };
  return [
    ...SIDES.flatMap((side) => {
      const neighbour = joins[side];
      if (neighbour === null) return [];
      return neighbourCaption(tileName(neighbour), side, window, shown(covering[side]), ink);
    }),
    ...footCaption(
      { name: tileName(tile), about, pieces: pieces.map((piece) => piece.title) },
      window,
      shown(joins.below),
      ink,
    ),
  ];
}

function closed(points: readonly Point[]): readonly Point[] {
  return [...points, ...points.slice(0, 1)];
}
