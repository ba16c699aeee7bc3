import type { Path, Point } from '../geometry/index.ts';
import type { Paper } from './paper-format.ts';
import type { GroupMark, Ink, Mark, Page } from './scene.ts';
import { arrowHead, boxAt, crossMark, rectanglePath, stroke, strokeLine } from './shapes.ts';
import { clippedText, textMark } from './text.ts';
import { stepX, stepY, type Tile, type TileGrid } from './tile-cover.ts';

/** A piece where it lies on the large sheet. */
export interface PlacedPiece {
  readonly title: string;
  /** The drawing, in a frame that turns and shifts it. */
  readonly group: GroupMark;
  /** The cutting line on the large sheet, as a path and as straight runs. */
  readonly outline: Path;
  readonly points: readonly Point[];
  /** The pages that it stands on. */
  readonly tiles: readonly Tile[];
}

export const standsOn = (piece: PlacedPiece, tile: Tile): boolean =>
  piece.tiles.some((t) => t.column === tile.column && t.row === tile.row);

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

/** Marks that belong to the page rather than to the pieces, and their places in the window, mm. */
const CROSS_ARM = 5;
const CROSS_INSET = 18;
const NEIGHBOUR = 4;
const PLACE_NAME = 8;
const FOOT_TEXT = 3.2;
const FOOT_FROM = 44;

/** One page: its window on the large sheet, with all that helps to join it, inside the printable area. */
export function tilePage(facts: PageFacts, paper: Paper, grid: TileGrid, ink: Ink): Page {
  const { tile, height } = facts;
  const { margin } = paper;
  const inWindow = (marks: readonly Mark[], shift: Point): Mark => ({
    kind: 'group',
    frame: { a: 1, b: 0, c: 0, d: 1, e: margin - shift.x, f: margin - shift.y },
    clip: boxAt(shift.x, shift.y, grid.width, height),
    marks,
  });
  const own = [...joinMarks(facts.joins, grid, height), ...footMarks(facts, grid, ink)];
  return {
    name: tileName(tile),
    width: paper.format.width,
    height: height + 2 * margin,
    marks: [
      inWindow([...facts.pieces.map((piece) => piece.group), ...facts.extra], tileCorner(tile, grid)),
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
  // The arrow points at the edge behind which the neighbour lies, the name on its near side.
  const name = (tile: Tile, tip: Point, towards: Point): void => {
    const sideways = towards.x !== 0;
    const at = { x: tip.x - towards.x * 5, y: tip.y - towards.y * (towards.y > 0 ? 3 : 6.6) };
    const text = sideways ? { x: at.x, y: tip.y + NEIGHBOUR * 0.35 } : at;
    marks.push(arrowHead(tip, towards, 2.2));
    marks.push(textMark(tileName(tile), text, { size: NEIGHBOUR, weight: 'bold', align: 'centre' }));
  };
  const [right, foot] = [width - overlap, height - overlap];
  if (joins.right !== null) {
    marks.push(strokeLine({ x: right, y: 0 }, { x: right, y: height }, 'join'));
    columns(right);
    name(joins.right, { x: width - 0.8, y: height / 2 }, { x: 1, y: 0 });
  }
  if (joins.below !== null) {
    marks.push(strokeLine({ x: 0, y: foot }, { x: width, y: foot }, 'join'));
    rows(foot);
    name(joins.below, { x: FOOT_FROM - 12, y: height - 1.2 }, { x: 0, y: 1 });
  }
  if (joins.left !== null) {
    columns(0);
    name(joins.left, { x: 0.8, y: height / 2 }, { x: -1, y: 0 });
  }
  if (joins.above !== null) {
    rows(0);
    name(joins.above, { x: FOOT_FROM - 12, y: 0.8 }, { x: 0, y: -1 });
  }
  return marks;
}

function footMarks(
  { tile, about, pieces, height }: PageFacts,
  grid: TileGrid,
  { measure }: Ink,
): readonly Mark[] {
  const name = tileName(tile);
  const from = FOOT_FROM + measure.width(name, PLACE_NAME, 'bold') + 3;
  const room = grid.width - CROSS_INSET - CROSS_ARM - 2 - from;
  const line = (text: string): string => clippedText(measure, text, FOOT_TEXT, 'regular', room);
  return [
    textMark(name, { x: FOOT_FROM, y: height - 2 }, { size: PLACE_NAME, weight: 'bold' }),
    textMark(line(about), { x: from, y: height - 5.6 }, { size: FOOT_TEXT }),
    textMark(
      line(pieces.map((piece) => piece.title).join(', ')),
      { x: from, y: height - 1.6 },
      { size: FOOT_TEXT },
    ),
  ];
}
