import type { Point } from '../geometry/index.ts';
import { fillSheet, type Item, itemOf, type Lattice, type Plan } from './fill-sheet.ts';
import type { BlockSize } from './label-place.ts';
import { onSheet, type Placement } from './placement.ts';
import { searchPlans, type Trial } from './plan-search.ts';
import type { Cells } from './raster.ts';
import { boxAround } from './runs.ts';
import { coveringTiles, stepX, stepY, type Tile, type TileGrid } from './tile-cover.ts';
import { packedOnTiles } from './tile-packing.ts';

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
  /** The sheet is cut off below the lowest shape, so that every mm less is worth something. */
  readonly roll: boolean;
}

/** Wished size of a cell, mm. 10 needs a page more now and then; 6 saves none over 8 and takes half as long again. */
const CELL = 8;

/** A joined sheet wider than this does not fit a table, mm. */
const WIDEST_SHEET = 1300;

/**
 * Arranges shapes (closed runs of points) so that few tiles are needed. They are laid one by one, each where it
 * adds the fewest tiles, then nearest the top left; many orders and turns are tried, and the tiles are counted by the
 * true outlines. What is to be joined is then packed more densely, where that saves a tile. Deterministic.
 */
export function arrange(shapes: readonly (readonly Point[])[], settings: ArrangeSettings): Arrangement {
  const { grid, whole, reserved } = settings;
  const lattice = latticeOf(grid);
  const items = shapes.map((shape) => itemOf(shape, lattice, whole));
  const onPaper = (placements: readonly Placement[]): readonly (readonly Point[])[] =>
    shapes.map((shape, i) => shape.map((p) => onSheet(placements[i], p)));
  const attempt = (plan: Plan): Trial => {
    const { placements, pages, emptiest, rows } = fillSheet(items, plan, lattice, reserved);
    if (whole) return { plan, placements, pages, rest: settings.roll || pages === 1 ? rows : emptiest };
    const laid = onPaper(placements);
    const foot = Math.max(...laid.map((points) => boxAround(points).maxY));
    return { plan, placements, pages: coveringTiles(laid, grid).length, rest: foot };
  };
  const free = items.map(() => null);
  const starts = sheetWidths(items, lattice, settings).flatMap((columns) =>
    orders(items).map((order) => attempt({ order, turns: free, columns })),
  );
  const turns = items.map((item) => item.turned.length);
  const room = items.reduce((sum, { cells }) => sum + cells, 0) / (lattice.nx * lattice.ny);
  const best = searchPlans(starts, attempt, {
    turns,
    trials: whole ? WHOLE_TRIALS : JOINED_TRIALS,
    goodEnough: settings.roll ? 0 : Math.ceil(room),
  });
  const denser =
    whole || reserved.length > 0 || best === null
      ? null
      : packedOnTiles(shapes, grid, best.pages, widest(grid));
  const placements = denser ?? best?.placements ?? [];
  return { placements, tiles: withReserved(coveringTiles(onPaper(placements), grid), settings) };
}

/**
 * How many arrangements are tried beyond the first ones, for each shape fewer of them: 15 shapes take a quarter of a
 * second on large sheets. On joined ones the true outlines are counted each time, which takes longer.
 */
const WHOLE_TRIALS = 4000;
const JOINED_TRIALS = 150;

function latticeOf(grid: TileGrid): Lattice {
  const nx = Math.max(1, Math.round(stepX(grid) / CELL));
  const ny = Math.max(1, Math.round(stepY(grid) / CELL));
  const cells: Cells = { width: stepX(grid) / nx, height: stepY(grid) / ny };
  return {
    nx,
    ny,
    overlapX: Math.floor(grid.overlap / cells.width + 1e-9),
    overlapY: Math.floor(grid.overlap / cells.height + 1e-9),
    cells,
  };
}

function withReserved(tiles: readonly Tile[], { reserved }: ArrangeSettings): readonly Tile[] {
  const hasFirst = tiles.some((tile) => tile.column === 0 && tile.row === 0);
  return reserved.length === 0 || hasFirst ? tiles : [{ column: 0, row: 0 }, ...tiles];
}

/** Sheet widths to try, in tiles: from the narrowest that holds every shape to the widest that fits a table. */
function sheetWidths(items: readonly Item[], lattice: Lattice, settings: ArrangeSettings): readonly number[] {
  const narrowest = Math.max(1, ...items.map((item) => item.narrowest - lattice.overlapX));
  const least = Math.ceil(narrowest / lattice.nx);
  if (settings.whole) return [least];
  const most = Math.max(least, widest(settings.grid));
  return Array.from({ length: most - least + 1 }, (_, i) => least + i);
}

const widest = (grid: TileGrid): number => Math.floor(WIDEST_SHEET / stepX(grid));

function orders(items: readonly Item[]): readonly (readonly number[])[] {
  if (items.length === 0) return [];
  const sorted = (size: (item: Item) => number): readonly number[] =>
    items
      .map((item, i) => ({ i, size: size(item) }))
      .sort((a, b) => b.size - a.size || a.i - b.i)
      .map(({ i }) => i);
  return [sorted((item) => item.area), sorted((item) => item.longest), sorted((item) => item.narrowest)];
}
