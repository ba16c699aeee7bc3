import type { Point } from '../geometry/index.ts';
import { fillSheet, type Item, itemOf, type Lattice, type Placement, type Plan } from './fill-sheet.ts';
import type { BlockSize } from './label-place.ts';
import { type Cells, turnedPoint } from './raster.ts';
import { boxAround } from './runs.ts';
import type { QuarterTurns } from './scene.ts';
import { coveringTiles, stepX, stepY, type Tile, type TileGrid } from './tile-cover.ts';

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
    const placements = fillSheet(items, plan, lattice, settings.reserved);
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
