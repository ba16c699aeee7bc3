import type { Point } from '../geometry/index.ts';
import type { BlockSize } from './label-place.ts';
import type { Placement } from './placement.ts';
import { type Cells, type Raster, rasterOf, rasterTouches } from './raster.ts';
import { boxAround } from './runs.ts';

/** How a sheet is filled. */
export interface Plan {
  /** Which shape comes next. */
  readonly order: readonly number[];
  /** By shape: the only turn to be tried, as a place in its list of turns; null for whichever lies best. */
  readonly turns: readonly (number | null)[];
  /** How many tiles the sheet is wide. */
  readonly columns: number;
}

/** How tiles are counted in cells: cells from tile to tile, and how many of them the neighbour shows as well. */
export interface Lattice {
  readonly nx: number;
  readonly ny: number;
  readonly overlapX: number;
  readonly overlapY: number;
  readonly cells: Cells;
}

/** A shape in every turn worth trying, with the tiles it needs at each place within a tile. */
export interface Item {
  readonly turned: readonly Turned[];
  /** How many cells it takes. */
  readonly cells: number;
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

export function itemOf(shape: readonly Point[], lattice: Lattice, whole: boolean): Item {
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
    cells: rasters[0]?.cover.at(-1) ?? 0,
    area: width * height,
    longest: Math.max(width, height),
    narrowest: Math.min(...different.map((raster) => raster.columns)),
  };
}

function sameCells(a: Raster, b: Raster): boolean {
  return a.columns === b.columns && a.rows === b.rows && a.cover.every((n, i) => n === b.cover[i]);
}

export interface FilledSheet {
  readonly placements: readonly Placement[];
  /** How many tiles bear something. */
  readonly pages: number;
  /** Cells of what begins on the tile with the least of it. */
  readonly emptiest: number;
  /** Rows of cells down to the foot of the lowest shape. */
  readonly rows: number;
}

/** Lays the shapes in the order of the plan, each where it adds the fewest tiles, then nearest the top left. */
export function fillSheet(
  items: readonly Item[],
  { order, turns, columns }: Plan,
  lattice: Lattice,
  reserved: readonly BlockSize[],
): FilledSheet {
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
    takeTile(sheet, 0);
  }
  const placements: Placement[] = [];
  const begun = new Map<number, number>();
  for (const i of order) {
    const item = items[i];
    if (item === undefined) continue;
    const { turned, x, y } = bestPlace(turnsToTry(item, turns[i] ?? null, sheet), sheet, lattice);
    take(sheet, turned.raster.runs, x, y);
    const first = firstTile(x, y, lattice);
    begun.set(first, (begun.get(first) ?? 0) + item.cells);
    for (const step of needsAt(turned, x, y, lattice)) takeTile(sheet, first + step);
    const { shift } = turned.raster;
    placements[i] = {
      turns: turned.raster.turns,
      shift: { x: shift.x + x * lattice.cells.width, y: shift.y + y * lattice.cells.height },
    };
  }
  return { placements, pages: sheet.used, emptiest: Math.min(...begun.values()), rows: sheet.taken.length };
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
  used: number;
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
  used: 0,
});

function firstTile(x: number, y: number, lattice: Lattice): number {
  return Math.floor(y / lattice.ny) * TILES_ACROSS + Math.floor(x / lattice.nx);
}

function takeTile(sheet: Sheet, tile: number): void {
  if (sheet.tiles[tile] === 0) sheet.used++;
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
      for (let c = x + from; c < x + to; c++) taken[c] = c;
      // From left to right the numbers never fall, so the rest of the row is right as soon as one is.
      for (let c = x + to; c < sheet.columns && (taken[c] ?? -1) < x + to - 1; c++) taken[c] = x + to - 1;
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

/** The turn that the plan asks for, unless it is wider than the sheet. */
function turnsToTry({ turned }: Item, wished: number | null, sheet: Sheet): readonly Turned[] {
  const only = wished === null ? undefined : turned[wished];
  return only === undefined || only.raster.columns > sheet.columns ? turned : [only];
}

/** A row farther down is worse than any column farther right. */
const RANK_ROW = 10_000;

function bestPlace(turns: readonly Turned[], sheet: Sheet, lattice: Lattice): Place {
  let best: Place | null = null;
  // Starting in the first empty column or row of tiles is as good as in any later one.
  const lastRow = Math.max(sheet.tileRows * lattice.ny, sheet.taken.length);
  const lastColumn = (sheet.tileColumns + 1) * lattice.nx - 1;
  for (const turned of turns) {
    const { raster } = turned;
    const columns = Math.min(lastColumn, sheet.columns - raster.columns);
    search: for (let y = 0; y <= lastRow; y++) {
      // Nothing farther down can be better than a place that adds no tile.
      if (best !== null && best.added === 0 && (y + raster.rows) * RANK_ROW >= best.rank) break;
      const rowInTile = y % lattice.ny;
      if (turned.whole && rowInTile + raster.rows > lattice.ny + lattice.overlapY) {
        y += lattice.ny - rowInTile - 1;
        continue;
      }
      let x = 0;
      while (x <= columns) {
        const next = nextColumnIfTaken(sheet, raster, x, y);
        if (next >= 0) {
          x = next;
          continue;
        }
        const rank = (y + raster.rows) * RANK_ROW + x;
        const added = tilesAdded(turned, x, y, sheet, lattice);
        if (best === null || added < best.added || (added === best.added && rank < best.rank)) {
          best = { turned, x, y, added, rank };
          if (added === 0) break search;
        }
        x = nextAligned(x, raster, lattice);
      }
    }
  }
  if (best === null) throw new Error('A sheet always has room below what lies on it.');
  return best;
}

/** The next column at which the shape begins or ends with a tile; in between it would only waste room. */
function nextAligned(x: number, raster: Raster, { nx, overlapX }: Lattice): number {
  const left = (Math.floor(x / nx) + 1) * nx;
  const end = x + raster.columns - overlapX;
  const right = (Math.floor(end / nx) + 1) * nx - (raster.columns - overlapX);
  return Math.min(left, right);
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
