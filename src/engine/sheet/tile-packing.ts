import { linePath, type Point } from '../geometry/index.ts';
import {
  grownOutline,
  type PackItem,
  type PackProblem,
  type PackVariant,
  startPacking,
} from '../lay/index.ts';
import { onSheet, type Placement } from './placement.ts';
import { turnedPoint } from './raster.ts';
import { boxAround } from './runs.ts';
import type { QuarterTurns } from './scene.ts';
import { coveringTiles, SAFE, stepX, stepY, type TileGrid } from './tile-cover.ts';

/** Trial places for one block of tiles, and for all blocks: a tenth of a second, and half a second at most. */
const ONE_BLOCK = 24_000;
const ALL_BLOCKS = 120_000;

/** Two cutting lines are at least so far apart, mm, mostly more: paper is cut between them. */
const GAP = 3;
/** Packed outlines stray so far, mm: with few corners as many blocks can be tried in the time. */
const STRAY = 2;
/** A cutting line stays so far from the edge of what can be printed, mm: half its own width, and a hair. */
const EDGE = 1;
/** How far a packed outline may reach out over that edge, and so the strip over the tiles, mm. */
const OVER = GAP / 2 - EDGE;

/** Pieces seldom cover more of a block (measured on dresses: 0.75 to 0.85 is reached). */
const TIGHTEST = 0.9;

/** Tiles side by side: full rows and columns, but the last column lacks its lowest tiles. */
interface Block {
  readonly columns: number;
  readonly rows: number;
  readonly lacks: number;
}

/** A shape in its quarter turns, as the packer wants it; places in the list are turns. */
interface TileItem {
  readonly shape: readonly Point[];
  readonly turned: readonly { readonly turns: QuarterTurns; readonly outline: Float64Array }[];
  readonly area: number;
}

/**
 * Looks for an arrangement of the shapes (closed runs of points) on fewer tiles than `most`: blocks of one tile less, and
 * again one less, are packed as strips of the lay are, as long as all shapes find a place on one of them. Null where
 * none is found. Counted in trial places, so that it is always the same.
 */
export function packedOnTiles(
  shapes: readonly (readonly Point[])[],
  grid: TileGrid,
  most: number,
  widest: number,
): readonly Placement[] | null {
  const items = shapes.map(tileItem);
  if (items.some((item) => item === null)) return null;
  const known = items.filter((item) => item !== null);
  const area = known.reduce((sum, item) => sum + item.area, 0);
  let best: readonly Placement[] | null = null;
  let fewest = most;
  let left = ALL_BLOCKS;
  const tryBlocks = (): boolean => {
    for (const block of blocksOf(fewest - 1, grid, widest)) {
      const problem = packProblem(known, block, grid);
      if (left <= 0 || problem === null || area > TIGHTEST * roomOf(block, grid)) continue;
      const { placements, evaluations } = firstLayout(known, problem, Math.min(left, ONE_BLOCK));
      left -= evaluations;
      if (placements === null) continue;
      const tiles = coveringTiles(
        shapes.map((shape, i) => shape.map((p) => onSheet(placements[i], p))),
        grid,
      );
      if (tiles.length >= fewest) continue;
      best = placements;
      fewest = tiles.length;
      return true;
    }
    return false;
  };
  while (fewest > 1 && tryBlocks());
  return best;
}

function tileItem(shape: readonly Point[]): TileItem | null {
  const [first, second, ...rest] = shape;
  if (first === undefined || second === undefined) return null;
  const grown = grownOutline(linePath(first, second, ...rest, first), GAP, null, STRAY);
  if (grown === null) return null;
  const turned = ([0, 1, 2, 3] as const).map((turns) => {
    const outline = new Float64Array(grown.corners.length);
    for (let i = 0; i + 1 < outline.length; i += 2) {
      const p = turnedPoint(turns, { x: grown.corners[i] ?? 0, y: grown.corners[i + 1] ?? 0 });
      outline[i] = p.x;
      outline[i + 1] = p.y;
    }
    return { turns, outline };
  });
  return { shape, turned, area: grown.area };
}

/** All blocks of so many tiles, those with the shortest edge first: they waste least at it. */
function blocksOf(tiles: number, grid: TileGrid, widest: number): readonly Block[] {
  const blocks: Block[] = [];
  for (let rows = 1; rows <= tiles; rows++) {
    const columns = Math.ceil(tiles / rows);
    if (columns <= widest) blocks.push({ columns, rows, lacks: columns * rows - tiles });
  }
  const edge = ({ columns, rows }: Block): number => columns * stepX(grid) + rows * stepY(grid);
  return blocks.filter(({ rows, lacks }) => lacks < rows).sort((a, b) => edge(a) - edge(b));
}

const sizeOf = ({ columns, rows }: Block, grid: TileGrid) => ({
  width: columns * stepX(grid) + grid.overlap,
  height: rows * stepY(grid) + grid.overlap,
});

function roomOf(block: Block, grid: TileGrid): number {
  const { width, height } = sizeOf(block, grid);
  return width * height - block.lacks * stepX(grid) * stepY(grid);
}

/** The strip runs across the block, so that the last column is its end. Null where a shape is too large for it. */
function packProblem(items: readonly TileItem[], block: Block, grid: TileGrid): PackProblem | null {
  const { width, height } = sizeOf(block, grid);
  const [longest, across] = [width + 2 * OVER, height + 2 * OVER];
  const fitting = items.map(({ turned }): PackItem => {
    const variants = turned.flatMap(({ outline }): readonly PackVariant[] => {
      const { minX, minY, maxX, maxY } = boxOf(outline);
      return maxX - minX <= longest && maxY - minY <= across ? [{ outline }] : [];
    });
    return { variants };
  });
  if (fitting.some(({ variants }) => variants.length === 0)) return null;
  return { width: across, longest, items: [...fitting, ...lacking(block, grid, longest, across)] };
}

/** Where the last column lacks tiles nothing may lie but in what the tiles beside and above show of it. */
function lacking(
  { columns, rows, lacks }: Block,
  grid: TileGrid,
  longest: number,
  across: number,
): readonly PackItem[] {
  if (lacks === 0) return [];
  // Packed outlines reach half a gap beyond the cutting lines that must end there.
  const beyond = OVER + GAP / 2 - SAFE;
  const x = (columns - 1) * stepX(grid) + grid.overlap + beyond;
  const y = (rows - lacks) * stepY(grid) + grid.overlap + beyond;
  const outline = new Float64Array([x, y, longest, y, longest, across, x, across]);
  return [{ variants: [{ outline }], fixed: { variant: 0, x, y }, obstacle: true }];
}

function firstLayout(
  items: readonly TileItem[],
  problem: PackProblem,
  evaluations: number,
): { readonly placements: readonly Placement[] | null; readonly evaluations: number } {
  const packing = startPacking(problem, { seed: 1, evaluations });
  if (!packing.ok) return { placements: null, evaluations: 0 };
  for (;;) {
    const { value, done } = packing.run.next();
    if (value.best === null && done !== true) continue;
    const { places } = value.best ?? { places: null };
    const placements = items.map(({ turned }, i): Placement | null => {
      const place = places?.[i];
      const outline = problem.items[i]?.variants[place?.variant ?? 0]?.outline;
      const one = turned.find((t) => t.outline === outline);
      if (place === undefined || one === undefined) return null;
      const { minX, minY } = boxOf(one.outline);
      return { turns: one.turns, shift: { x: place.x - minX - OVER, y: place.y - minY - OVER } };
    });
    const whole = placements.filter((placement) => placement !== null);
    return { placements: whole.length === items.length ? whole : null, evaluations: value.evaluations };
  }
}

function boxOf(outline: Float64Array) {
  const points = Array.from({ length: outline.length / 2 }, (_, i) => ({
    x: outline[2 * i] ?? 0,
    y: outline[2 * i + 1] ?? 0,
  }));
  return boxAround(points);
}
