import type { Point } from '../geometry/index.ts';
import { boxAround, polygonContains } from './runs.ts';
import type { QuarterTurns } from './scene.ts';

/** Size of the cells that an arrangement counts in, mm. They divide a tile evenly. */
export interface Cells {
  readonly width: number;
  readonly height: number;
}

/** A turned shape as cells: every cell that it touches or comes too near to. Row by row as runs [from, to). */
export interface Raster {
  readonly turns: QuarterTurns;
  readonly columns: number;
  readonly rows: number;
  readonly runs: readonly (readonly (readonly [from: number, to: number])[])[];
  /** cover[r * (columns + 1) + c]: cells taken above row r and left of column c; any box is four look-ups. */
  readonly cover: Uint32Array;
  /** What must be added to a turned point so that the first cell lies at the origin. */
  readonly shift: Point;
}

/** Cutting lines of two pieces keep this far apart, mm: scissors need a way between them. */
const GAP = 5;

const TURNED = {
  0: (p: Point): Point => p,
  1: (p: Point): Point => ({ x: -p.y, y: p.x }),
  2: (p: Point): Point => ({ x: -p.x, y: -p.y }),
  3: (p: Point): Point => ({ x: p.y, y: -p.x }),
} as const satisfies Record<QuarterTurns, (p: Point) => Point>;

export function turnedPoint(turns: QuarterTurns, p: Point): Point {
  return TURNED[turns](p);
}

/** Lays a closed run of points over the cells, with half the gap round it. */
export function rasterOf(outline: readonly Point[], turns: QuarterTurns, cells: Cells): Raster {
  const turned = outline.map(TURNED[turns]);
  const box = boxAround(turned);
  const shift = { x: GAP / 2 - box.minX, y: GAP / 2 - box.minY };
  const points = turned.map((p) => ({ x: p.x + shift.x, y: p.y + shift.y }));
  const columns = Math.ceil((box.maxX - box.minX + GAP) / cells.width - 1e-9);
  const rows = Math.ceil((box.maxY - box.minY + GAP) / cells.height - 1e-9);
  const taken = new Uint8Array(columns * rows);
  takeOutline(taken, points, columns, rows, cells);
  takeInside(taken, points, columns, rows, cells);
  return {
    turns,
    columns,
    rows,
    shift,
    runs: runsOf(taken, columns, rows),
    cover: coverOf(taken, columns, rows),
  };
}

/** Steps along the outline finely enough that no cell nearer than half the gap is missed. */
function takeOutline(
  taken: Uint8Array,
  points: readonly Point[],
  columns: number,
  rows: number,
  cells: Cells,
): void {
  const step = Math.min(cells.width, cells.height) / 4;
  const reach = GAP / 2 + step / 2;
  let before = points.at(-1);
  for (const p of points) {
    const from = before ?? p;
    const steps = Math.max(1, Math.ceil(Math.hypot(p.x - from.x, p.y - from.y) / step));
    for (let i = 0; i < steps; i++) {
      const x = from.x + ((p.x - from.x) * i) / steps;
      const y = from.y + ((p.y - from.y) * i) / steps;
      const [c0, c1] = [
        Math.max(0, Math.floor((x - reach) / cells.width)),
        Math.floor((x + reach) / cells.width),
      ];
      const [r0, r1] = [
        Math.max(0, Math.floor((y - reach) / cells.height)),
        Math.floor((y + reach) / cells.height),
      ];
      for (let r = r0; r <= Math.min(r1, rows - 1); r++) {
        taken.fill(1, r * columns + c0, r * columns + Math.min(c1, columns - 1) + 1);
      }
    }
    before = p;
  }
}

function takeInside(
  taken: Uint8Array,
  points: readonly Point[],
  columns: number,
  rows: number,
  cells: Cells,
): void {
  for (let r = 0; r < rows; r++) {
    for (let c = 0; c < columns; c++) {
      const at = r * columns + c;
      if (taken[at] === 1) continue;
      // Between two cells of the outline the answer is the same as for the cell before.
      const sameAsLeft = c > 0 && taken[at - 1] !== 1;
      const inside =
        !sameAsLeft && polygonContains(points, { x: (c + 0.5) * cells.width, y: (r + 0.5) * cells.height });
      if (inside) fillUntilTaken(taken, at, (r + 1) * columns);
    }
  }
}

function fillUntilTaken(taken: Uint8Array, from: number, end: number): void {
  for (let at = from; at < end && taken[at] !== 1; at++) taken[at] = 1;
}

function runsOf(taken: Uint8Array, columns: number, rows: number): Raster['runs'] {
  return Array.from({ length: rows }, (_, r) => {
    const runs: [number, number][] = [];
    for (let c = 0; c < columns; c++) {
      if (taken[r * columns + c] !== 1) continue;
      const last = runs.at(-1);
      if (last !== undefined && last[1] === c) last[1] = c + 1;
      else runs.push([c, c + 1]);
    }
    return runs;
  });
}

function coverOf(taken: Uint8Array, columns: number, rows: number): Uint32Array {
  const wide = columns + 1;
  const cover = new Uint32Array(wide * (rows + 1));
  for (let r = 1; r <= rows; r++) {
    let inRow = 0;
    for (let c = 1; c <= columns; c++) {
      inRow += taken[(r - 1) * columns + c - 1] ?? 0;
      cover[r * wide + c] = (cover[(r - 1) * wide + c] ?? 0) + inRow;
    }
  }
  return cover;
}

/** Whether the raster has a cell in the box of columns [c0, c1) and rows [r0, r1), which may reach beyond it. */
export function rasterTouches(raster: Raster, c0: number, c1: number, r0: number, r1: number): boolean {
  const clampColumn = (c: number): number => Math.min(raster.columns, Math.max(0, c));
  const clampRow = (r: number): number => Math.min(raster.rows, Math.max(0, r));
  const [left, right, top, bottom] = [clampColumn(c0), clampColumn(c1), clampRow(r0), clampRow(r1)];
  if (right <= left || bottom <= top) return false;
  const wide = raster.columns + 1;
  const at = (r: number, c: number): number => raster.cover[r * wide + c] ?? 0;
  return at(bottom, right) - at(top, right) - at(bottom, left) + at(top, left) > 0;
}
