import type { Point } from '../geometry/index.ts';
import { polygonContains } from './runs.ts';

/** One sheet of a joined pattern, counted from the top left corner. */
export interface Tile {
  readonly column: number;
  readonly row: number;
}

/** Windows of width x height that follow one another with an overlap, in mm; tile (0, 0) starts at the origin. */
export interface TileGrid {
  readonly width: number;
  readonly height: number;
  readonly overlap: number;
}

export const stepX = (grid: TileGrid): number => grid.width - grid.overlap;
export const stepY = (grid: TileGrid): number => grid.height - grid.overlap;

/**
 * How far inside its window a line must stay to count as shown by the neighbour alone, mm: more than the error of
 * the straight runs that stand for the curves.
 */
export const SAFE = 0.2;

/**
 * The fewest tiles (nearly: a greedy choice) that show every part of the areas: their outlines and what lies
 * within, as paper with a hole cannot be cut round. Outlines are closed runs of points, x and y >= 0, that follow
 * the true curves within 0.1 mm. Sorted by row, then column.
 *
 * The overlaps cut the sheet into regions, each shown by one tile (the middle of a window), two (a strip along
 * an edge) or four (a corner). Every region that is touched needs one of its tiles.
 */
export function coveringTiles(outlines: readonly (readonly Point[])[], grid: TileGrid): readonly Tile[] {
  return cover(outlines, grid, () => true);
}

/** The tiles, out of those that are printed, that one shape must stand on; the others may leave its edge out. */
export function tilesOfShape(
  outline: readonly Point[],
  grid: TileGrid,
  printed: readonly Tile[],
): readonly Tile[] {
  const keys = new Set(printed.map(tileKey));
  return cover([outline], grid, (tile) => keys.has(tileKey(tile)));
}

function cover(
  outlines: readonly (readonly Point[])[],
  grid: TileGrid,
  mayUse: (tile: Tile) => boolean,
): readonly Tile[] {
  const touched = new Map<string, Region>();
  for (const outline of outlines) {
    for (const region of touchedRegions(outline, grid)) touched.set(`${region.x} ${region.y}`, region);
  }
  const kept = new Map<string, Tile>();
  const isShown = (region: Region): boolean => showing(region).some((tile) => kept.has(tileKey(tile)));
  for (const region of touched.values()) {
    const [only, ...others] = showing(region);
    if (only !== undefined && others.length === 0) kept.set(tileKey(only), only);
  }
  for (;;) {
    const open = [...touched.values()].filter((region) => !isShown(region));
    const tile = mostUseful(open, mayUse);
    if (tile === null) break;
    kept.set(tileKey(tile), tile);
  }
  return [...kept.values()].sort((s, t) => s.row - t.row || s.column - t.column);
}

const tileKey = (tile: Tile): string => `${tile.column} ${tile.row}`;

/** Even numbers are the middles of windows, odd ones the strips between two. */
interface Region {
  readonly x: number;
  readonly y: number;
}

function showing(region: Region): readonly Tile[] {
  const spans = (n: number): readonly number[] => (n % 2 === 0 ? [n / 2] : [(n - 1) / 2, (n + 1) / 2]);
  return spans(region.y).flatMap((row) => spans(region.x).map((column) => ({ column, row })));
}

function mostUseful(regions: readonly Region[], mayUse: (tile: Tile) => boolean): Tile | null {
  const uses = new Map<string, { readonly tile: Tile; readonly count: number }>();
  for (const tile of regions.flatMap(showing).filter(mayUse)) {
    uses.set(tileKey(tile), { tile, count: (uses.get(tileKey(tile))?.count ?? 0) + 1 });
  }
  let best: { readonly tile: Tile; readonly count: number } | null = null;
  for (const use of uses.values()) if (best === null || use.count > best.count) best = use;
  return best?.tile ?? null;
}

function touchedRegions(outline: readonly Point[], grid: TileGrid): readonly Region[] {
  const found = new Map<string, Region>();
  const note = (region: Region): void => void found.set(`${region.x} ${region.y}`, region);
  const axisX = axis(stepX(grid), grid.overlap);
  const axisY = axis(stepY(grid), grid.overlap);
  let before = outline.at(-1);
  for (const p of outline) {
    if (before !== undefined) for (const place of runPlaces(before, p, axisX, axisY)) note(regionAt(place));
    before = p;
  }
  const all = [...found.values()];
  const [xs, ys] = [all.map((r) => r.x), all.map((r) => r.y)];
  for (let y = Math.min(...ys); y <= Math.max(...ys); y++) {
    for (let x = Math.min(...xs); x <= Math.max(...xs); x++) {
      if (found.has(`${x} ${y}`)) continue;
      if (polygonContains(outline, { x: axisX.middleOf(x), y: axisY.middleOf(y) })) note({ x, y });
    }
  }
  return [...found.values()];

  function regionAt(p: Point): Region {
    return { x: axisX.indexAt(p.x), y: axisY.indexAt(p.y) };
  }
}

/** The regions along one axis: where they begin, and which one a coordinate falls into. */
interface Axis {
  indexAt(v: number): number;
  /** Where the run from a to b passes from one region into the next. */
  bordersBetween(a: number, b: number): readonly number[];
  middleOf(index: number): number;
}

function axis(step: number, overlap: number): Axis {
  // The strip before tile i reaches from i * step to i * step + overlap, made narrower by SAFE on both sides.
  const stripFrom = (i: number): number => i * step + Math.min(SAFE, overlap / 2);
  const stripTo = (i: number): number => i * step + overlap - Math.min(SAFE, overlap / 2);
  const indexAt = (v: number): number => {
    const i = Math.max(0, Math.floor((v - stripFrom(0)) / step));
    if (i === 0) return 0;
    return v < stripTo(i) ? 2 * i - 1 : 2 * i;
  };
  return {
    indexAt,
    bordersBetween(a, b) {
      const [low, high] = a < b ? [a, b] : [b, a];
      const borders: number[] = [];
      for (let i = Math.max(1, Math.floor(low / step)); stripFrom(i) < high; i++) {
        for (const border of [stripFrom(i), stripTo(i)])
          if (border > low && border < high) borders.push(border);
      }
      return borders;
    },
    middleOf(index) {
      const i = Math.floor((index + 1) / 2);
      if (index % 2 === 1) return (stripFrom(i) + stripTo(i)) / 2;
      return ((i === 0 ? 0 : stripTo(i)) + stripFrom(i + 1)) / 2;
    },
  };
}

/** One place in every region that the straight run from a to b passes through, and its ends. */
function runPlaces(a: Point, b: Point, axisX: Axis, axisY: Axis): readonly Point[] {
  const shares = [0, 1];
  for (const x of axisX.bordersBetween(a.x, b.x)) shares.push((x - a.x) / (b.x - a.x));
  for (const y of axisY.bordersBetween(a.y, b.y)) shares.push((y - a.y) / (b.y - a.y));
  shares.sort((s, t) => s - t);
  const places = [a, b];
  for (const [i, share] of shares.entries()) {
    const middle = (share + (shares[i + 1] ?? 1)) / 2;
    places.push({ x: a.x + (b.x - a.x) * middle, y: a.y + (b.y - a.y) * middle });
  }
  return places;
}
