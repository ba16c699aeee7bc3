import type { Polygon } from './polygons.ts';

/** On a strip of cloth, mm: from `x` so far along, from `y` so far across. */
export interface FreeRectangle {
  readonly x: number;
  readonly y: number;
  readonly along: number;
  readonly across: number;
}

/** Offcuts are looked for on squares of this size, mm; a rectangle is at most so much smaller than it could be. */
const CELL = 5;

/**
 * The largest rectangles, one after another, that no ring touches and that do not touch each other, each at least
 * `least` mm both ways.
 */
export function freeRectangles(
  rings: readonly Polygon[],
  length: number,
  depth: number,
  most: number,
  least: number,
): readonly FreeRectangle[] {
  const columns = Math.floor(length / CELL);
  const rows = Math.floor(depth / CELL);
  const taken = new Uint8Array(columns * rows);
  const take = (row: number, from: number, to: number): void => {
    if (row < 0 || row >= rows || to < 0) return;
    taken.fill(1, row * columns + Math.max(0, from), row * columns + Math.min(columns, to + 1));
  };
  for (const ring of rings) cover(ring, rows, take);
  const found: FreeRectangle[] = [];
  while (found.length < most) {
    const best = largestFree(taken, columns, rows, Math.ceil(least / CELL));
    if (best === null) break;
    for (let row = best.row; row < best.row + best.rows; row++)
      take(row, best.column, best.column + best.columns - 1);
    found.push({
      x: best.column * CELL,
      y: best.row * CELL,
      along: best.columns * CELL,
      across: best.rows * CELL,
    });
  }
  return found;
}

/** Takes every cell that the ring's line passes, and those between by a line through the middle of each row. */
function cover(ring: Polygon, rows: number, take: (row: number, from: number, to: number) => void): void {
  const crossings = Array.from({ length: rows }, (): number[] => []);
  let a = ring.at(-1);
  for (const b of ring) {
    if (a === undefined) return;
    const [low, high] = a.y <= b.y ? [a, b] : [b, a];
    const xAt = (y: number): number =>
      high.y === low.y ? low.x : low.x + ((high.x - low.x) * (y - low.y)) / (high.y - low.y);
    const firstRow = Math.max(0, Math.floor(low.y / CELL));
    for (let row = firstRow; row <= Math.min(rows - 1, Math.floor(high.y / CELL)); row++) {
      const ends =
        high.y === low.y
          ? [low.x, high.x]
          : [xAt(Math.max(low.y, row * CELL)), xAt(Math.min(high.y, (row + 1) * CELL))];
      take(row, Math.floor(Math.min(...ends) / CELL), Math.floor(Math.max(...ends) / CELL));
      const middle = (row + 0.5) * CELL;
      if (low.y <= middle && middle < high.y) crossings[row]?.push(xAt(middle));
    }
    a = b;
  }
  for (const [row, xs] of crossings.entries()) {
    xs.sort((p, q) => p - q);
    for (let i = 0; i + 1 < xs.length; i += 2)
      take(row, Math.floor((xs[i] ?? 0) / CELL), Math.floor((xs[i + 1] ?? 0) / CELL));
  }
}

interface CellBlock {
  readonly row: number;
  readonly column: number;
  readonly rows: number;
  readonly columns: number;
}

/** Row by row: how many free cells stand above each, and the largest block under that skyline. */
function largestFree(taken: Uint8Array, columns: number, rows: number, least: number): CellBlock | null {
  const heights = new Int32Array(columns + 1);
  let best: CellBlock | null = null;
  let bestArea = 0;
  for (let row = 0; row < rows; row++) {
    for (let c = 0; c < columns; c++) heights[c] = taken[row * columns + c] === 1 ? 0 : (heights[c] ?? 0) + 1;
    const rising: { readonly from: number; readonly height: number }[] = [];
    for (let c = 0; c <= columns; c++) {
      const height = heights[c] ?? 0;
      let from = c;
      for (let top = rising.at(-1); top !== undefined && top.height >= height; top = rising.at(-1)) {
        rising.pop();
        const area = top.height * (c - top.from);
        if (area > bestArea && top.height >= least && c - top.from >= least) {
          bestArea = area;
          best = {
            row: row - top.height + 1,
            column: top.from,
            rows: top.height,
            columns: c - top.from,
          };
        }
        from = top.from;
      }
      rising.push({ from, height });
    }
  }
  return best;
}
