import type { Point } from '../geometry/index.ts';
import type { BlockSize } from './label-place.ts';
import { type Cells, type Raster, rasterOf, rasterTouches, turnedPoint } from './raster.ts';
import { boxAround } from './runs.ts';
import type { QuarterTurns } from './scene.ts';
import { coveringTiles, stepX, stepY, type Tile, type TileGrid } from './tile-cover.ts';

/** Where a shape lies on the large sheet: turned about the origin by quarter turns, then shifted. */
export interface Placement {
  readonly turns: QuarterTurns;
  readonly shift: Point;
}

export interface Arrangement {
  /** One for each shape, in the order given. */
  readonly placements: readonly Placement[];
  /** The tiles that must be printed, by row, then column. */
  readonly tiles: readonly Tile[];
}

export interface ArrangeSettings {
  readonly grid: TileGrid;
  /** Never let the edge of a tile cut a shape that fits on one. */
  readonly whole: boolean;
  /** Blocks in the top left corner that are kept free, mm. */
  readonly reserved: readonly BlockSize[];
}

/** Wished size of a cell, mm. 10 needs a page more now and then; 6 saves none over 8 and takes half as long again. */
const CELL = 8;

/** A joined sheet wider than this does not fit a table, mm. */
const WIDEST_SHEET = 1300;

/**
 * Arranges shapes (closed runs of points) so that few tiles are needed. They are laid one by one, each where it
 * adds the fewest tiles, then nearest the top left; several sheet widths and orders are tried, and the tiles are
 * counted by the true outlines. Deterministic.
 */
export function arrange(shapes: readonly (readonly Point[])[], settings: ArrangeSettings): Arrangement {
  const { grid } = settings;
  const nx = Math.max(1, Math.round(stepX(grid) / CELL));
  const ny = Math.max(1, Math.round(stepY(grid) / CELL));
  const cells: Cells = { width: stepX(grid) / nx, height: stepY(grid) / ny };
  const lattice: Lattice = {
    nx,
    ny,
    overlapX: Math.floor(grid.overlap / cells.width + 1e-9),
    overlapY: Math.floor(grid.overlap / cells.height + 1e-9),
    cells,
  };
  const items = shapes.map((shape) => itemOf(shape, lattice, settings.whole));
  const attempt = (plan: Plan): Attempt => {
    const placements = layAll(items, plan, lattice, settings);
    const onPaper = shapes.map((shape, i) => shape.map((p) => onSheet(placements[i], p)));
    const foot = Math.max(0, ...onPaper.map((points) => boxAround(points).maxY));
    return { plan, placements, tiles: withReserved(coveringTiles(onPaper, grid), settings), foot };
  };
  let best: Attempt | null = null;
  for (const columns of sheetWidths(items, lattice, settings)) {
    for (const order of orders(items)) best = better(best, attempt({ order, columns }));
  }
  return best === null ? { placements: [], tiles: withReserved([], settings) } : improved(best, attempt);
}

/** How the sheet is filled: which shape comes next, and how many tiles it is wide. */
interface Plan {
  readonly order: readonly number[];
  readonly columns: number;
}

interface Attempt extends Arrangement {
  readonly plan: Plan;
  /** How far down the sheet the lowest shape reaches, mm: the length of a roll. */
  readonly foot: number;
}

function better(a: Attempt | null, b: Attempt): Attempt {
  if (a === null) return b;
  const fewer = a.tiles.length - b.tiles.length;
  return fewer > 0 || (fewer === 0 && b.foot < a.foot - 1e-6) ? b : a;
}

/** Most arrangements tried to improve on the first ones. */
const MOST_TRIALS = 20;

/** Lays one shape after another first of all, as long as that saves something. */
function improved(start: Attempt, attempt: (plan: Plan) => Attempt): Attempt {
  let best = start;
  let trials = 0;
  for (let i = 0; i < best.plan.order.length && trials < MOST_TRIALS; i++) {
    const leader = best.plan.order.at(-1 - i);
    if (leader === undefined) break;
    trials++;
    const order = [leader, ...best.plan.order.filter((n) => n !== leader)];
    const found = better(best, attempt({ ...best.plan, order }));
    if (found !== best) {
      best = found;
      i = -1;
    }
  }
  return best;
}

/** A point of a shape where the placement puts it. */
export function onSheet(placement: Placement | undefined, p: Point): Point {
  if (placement === undefined) throw new Error('Every shape has a placement.');
  const turned = turnedPoint(placement.turns, p);
  return { x: turned.x + placement.shift.x, y: turned.y + placement.shift.y };
}

/** The other way: where a point of the large sheet lies in the shape's own coordinates. */
export function fromSheet({ turns, shift }: Placement, p: Point): Point {
  return turnedPoint(BACK[turns], { x: p.x - shift.x, y: p.y - shift.y });
}

const BACK = { 0: 0, 1: 3, 2: 2, 3: 1 } as const satisfies Record<QuarterTurns, QuarterTurns>;

function withReserved(tiles: readonly Tile[], { reserved }: ArrangeSettings): readonly Tile[] {
  const hasFirst = tiles.some((tile) => tile.column === 0 && tile.row === 0);
  return reserved.length === 0 || hasFirst ? tiles : [{ column: 0, row: 0 }, ...tiles];
}

/** How tiles are counted in cells: cells from tile to tile, and how many of them the neighbour shows as well. */
interface Lattice {
  readonly nx: number;
  readonly ny: number;
  readonly overlapX: number;
  readonly overlapY: number;
  readonly cells: Cells;
}

/** A shape in every turn worth trying, with the tiles it needs at each place within a tile. */
interface Item {
  readonly turned: readonly Turned[];
  readonly area: number;
  readonly longest: number;
  readonly narrowest: number;
}

interface Turned {
  readonly raster: Raster;
  /** By offset (row * nx + column) within a tile: the tiles needed, as steps of tile numbers. Filled when asked. */
  readonly needs: (readonly number[] | undefined)[];
  /** Must lie within one tile. */
  readonly whole: boolean;
}

const TURNS = [0, 1, 2, 3] as const;

function itemOf(shape: readonly Point[], lattice: Lattice, whole: boolean): Item {
  const rasters = TURNS.map((turns) => rasterOf(shape, turns, lattice.cells));
  const different = rasters.filter(
    (raster, i) => !rasters.slice(0, i).some((other) => sameCells(raster, other)),
  );
  const fits = (raster: Raster): boolean =>
    raster.columns <= lattice.nx + lattice.overlapX && raster.rows <= lattice.ny + lattice.overlapY;
  const canBeWhole = whole && different.some(fits);
  const box = boxAround(shape);
  const [width, height] = [box.maxX - box.minX, box.maxY - box.minY];
  return {
    turned: different
      .filter((raster) => !canBeWhole || fits(raster))
      .map((raster) => ({ raster, needs: [], whole: canBeWhole })),
    area: width * height,
    longest: Math.max(width, height),
    narrowest: Math.min(...different.map((raster) => raster.columns)),
  };
}

function sameCells(a: Raster, b: Raster): boolean {
  return a.columns === b.columns && a.rows === b.rows && a.cover.every((n, i) => n === b.cover[i]);
}

/** Sheet widths to try, in tiles: from the narrowest that holds every shape to the widest that fits a table. */
function sheetWidths(items: readonly Item[], lattice: Lattice, settings: ArrangeSettings): readonly number[] {
  const narrowest = Math.max(1, ...items.map((item) => item.narrowest - lattice.overlapX));
  const least = Math.ceil(narrowest / lattice.nx);
  if (settings.whole) return [least];
  const most = Math.max(least, Math.floor(WIDEST_SHEET / stepX(settings.grid)));
  return Array.from({ length: most - least + 1 }, (_, i) => least + i);
}

function orders(items: readonly Item[]): readonly (readonly number[])[] {
  if (items.length === 0) return [];
  const sorted = (size: (item: Item) => number): readonly number[] =>
    items
      .map((item, i) => ({ i, size: size(item) }))
      .sort((a, b) => b.size - a.size || a.i - b.i)
      .map(({ i }) => i);
  return [sorted((item) => item.area), sorted((item) => item.longest), sorted((item) => item.narrowest)];
}

function layAll(
  items: readonly Item[],
  { order, columns }: Plan,
  lattice: Lattice,
  { reserved }: ArrangeSettings,
): readonly Placement[] {
  const sheet = emptySheet(columns * lattice.nx + lattice.overlapX);
  for (const block of reserved) {
    const width = Math.min(sheet.columns, Math.ceil(block.width / lattice.cells.width));
    const height = Math.ceil(block.height / lattice.cells.height);
    take(
      sheet,
      Array.from({ length: height }, () => [[0, width] as const]),
      0,
      0,
    );
    useTile(sheet, 0);
  }
  const placements: Placement[] = [];
  for (const i of order) {
    const item = items[i];
    if (item === undefined) continue;
    const { turned, x, y } = bestPlace(item, sheet, lattice);
    take(sheet, turned.raster.runs, x, y);
    const first = firstTile(x, y, lattice);
    for (const step of needsAt(turned, x, y, lattice)) useTile(sheet, first + step);
    const { shift, turns } = turned.raster;
    placements[i] = {
      turns,
      shift: { x: shift.x + x * lattice.cells.width, y: shift.y + y * lattice.cells.height },
    };
  }
  return placements;
}

/** The sheet while it fills. */
interface Sheet {
  readonly columns: number;
  /** taken[r][c]: the last taken cell of row r at or left of column c, -1 if there is none. */
  readonly taken: Int32Array[];
  /** By tile number: 1 if something lies there already. */
  readonly tiles: Uint8Array;
  tileColumns: number;
  tileRows: number;
}

/** Tiles are numbered row * TILES_ACROSS + column; 64 of A4 are 11 m. */
const TILES_ACROSS = 64;
const TILES_DOWN = 1024;

const emptySheet = (columns: number): Sheet => ({
  columns,
  taken: [],
  tiles: new Uint8Array(TILES_ACROSS * TILES_DOWN),
  tileColumns: 0,
  tileRows: 0,
});

function firstTile(x: number, y: number, lattice: Lattice): number {
  return Math.floor(y / lattice.ny) * TILES_ACROSS + Math.floor(x / lattice.nx);
}

function useTile(sheet: Sheet, tile: number): void {
  sheet.tiles[tile] = 1;
  sheet.tileColumns = Math.max(sheet.tileColumns, (tile % TILES_ACROSS) + 1);
  sheet.tileRows = Math.max(sheet.tileRows, Math.floor(tile / TILES_ACROSS) + 1);
}

function take(sheet: Sheet, runs: Raster['runs'], x: number, y: number): void {
  for (const [r, row] of runs.entries()) {
    while (sheet.taken.length <= y + r) sheet.taken.push(new Int32Array(sheet.columns).fill(-1));
    const taken = sheet.taken[y + r];
    if (taken === undefined) continue;
    for (const [from, to] of row) {
      for (let c = x + from; c < sheet.columns; c++)
        taken[c] = Math.max(taken[c] ?? -1, Math.min(c, x + to - 1));
    }
  }
}

/** The column to try next when the place is taken; -1 when it is free. */
function nextColumnIfTaken(sheet: Sheet, raster: Raster, x: number, y: number): number {
  for (let r = 0; r < raster.rows; r++) {
    const taken = sheet.taken[y + r];
    if (taken === undefined) return -1;
    const runs = raster.runs[r];
    if (runs === undefined) continue;
    for (const [from, to] of runs) {
      const last = taken[x + to - 1] ?? -1;
      if (last >= x + from) return last + 1 - from;
    }
  }
  return -1;
}

interface Place {
  readonly turned: Turned;
  readonly x: number;
  readonly y: number;
  readonly added: number;
  /** Lower edge first, then left: the lower, the better. */
  readonly rank: number;
}

function bestPlace(item: Item, sheet: Sheet, lattice: Lattice): Place {
  let best: Place | null = null;
  // Starting in the first empty column or row of tiles is as good as in any later one.
  const lastRow = Math.max(sheet.tileRows * lattice.ny, sheet.taken.length);
  const lastColumn = (sheet.tileColumns + 1) * lattice.nx - 1;
  for (const turned of item.turned) {
    const { raster } = turned;
    const columns = Math.min(lastColumn, sheet.columns - raster.columns);
    search: for (let y = 0; y <= lastRow; y++) {
      for (let x = 0; x <= columns; x++) {
        const rank = (y + raster.rows) * 10_000 + x;
        const added = tilesAdded(turned, x, y, sheet, lattice);
        if (best !== null && (added > best.added || (added === best.added && rank >= best.rank))) continue;
        const next = nextColumnIfTaken(sheet, raster, x, y);
        if (next < 0) {
          best = { turned, x, y, added, rank };
          if (added === 0) break search;
        } else {
          x = next - 1;
        }
      }
    }
  }
  if (best === null) throw new Error('A sheet always has room below what lies on it.');
  return best;
}

function tilesAdded(turned: Turned, x: number, y: number, sheet: Sheet, lattice: Lattice): number {
  if (turned.whole && !liesInOneTile(turned.raster, x, y, lattice)) return Number.POSITIVE_INFINITY;
  const first = firstTile(x, y, lattice);
  if (turned.whole) return sheet.tiles[first] === 1 ? 0 : 1;
  const needs = needsAt(turned, x, y, lattice);
  let added = 0;
  for (const step of needs) if (sheet.tiles[first + step] === 0) added++;
  return added;
}

function liesInOneTile(raster: Raster, x: number, y: number, lattice: Lattice): boolean {
  return (
    (x % lattice.nx) + raster.columns <= lattice.nx + lattice.overlapX &&
    (y % lattice.ny) + raster.rows <= lattice.ny + lattice.overlapY
  );
}

/** The tiles that a turned shape needs at a place, as steps from the tile of its first cell. */
function needsAt(turned: Turned, x: number, y: number, lattice: Lattice): readonly number[] {
  const [offsetX, offsetY] = [x % lattice.nx, y % lattice.ny];
  const at = offsetY * lattice.nx + offsetX;
  const known = turned.needs[at];
  if (known !== undefined) return known;
  const { raster } = turned;
  const needs: number[] = [];
  for (let row = 0; row * lattice.ny < offsetY + raster.rows; row++) {
    // Cells in the overlap are shown by the tile before as well, and that one is needed already.
    const top = row === 0 ? 0 : row * lattice.ny + lattice.overlapY - offsetY;
    const bottom = (row + 1) * lattice.ny - offsetY;
    for (let column = 0; column * lattice.nx < offsetX + raster.columns; column++) {
      const left = column === 0 ? 0 : column * lattice.nx + lattice.overlapX - offsetX;
      const right = (column + 1) * lattice.nx - offsetX;
      if (rasterTouches(raster, left, right, top, bottom)) needs.push(row * TILES_ACROSS + column);
    }
  }
  turned.needs[at] = needs;
  return needs;
}
