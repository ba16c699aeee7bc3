import type { Bounds, Point } from '../../engine/geometry/index.ts';

/** Words that want to stand somewhere, in px; the first place that is free is taken. */
export interface LabelWish {
  readonly key: string;
  readonly width: number;
  readonly height: number;
  /** Where the middle of the words may stand, the best first; `turn` in radians. */
  readonly places: readonly LabelPlace[];
  /** Left out where these words have found a place. */
  readonly unless?: string;
}

export interface LabelPlace {
  readonly at: Point;
  readonly turn: number;
}

/** A straight run of a line that no words may cross. */
export type Obstacle = readonly [Point, Point];

/** Clear px round the words. */
const AIR = 1.5;
/** Side of a cell of the grid in which obstacles are looked up, px. */
const CELL = 64;

/** Words that matter more come first. What finds no free place is left out. */
export function placeLabels(
  wishes: readonly LabelWish[],
  obstacles: readonly Obstacle[],
): ReadonlyMap<string, LabelPlace> {
  const grid = new Map<string, Obstacle[]>();
  for (const obstacle of obstacles) file(grid, boxOf(obstacle), obstacle);
  const taken = new Map<string, readonly (readonly Point[])[]>();
  const placed = new Map<string, LabelPlace>();
  for (const wish of wishes) {
    if (wish.unless !== undefined && placed.has(wish.unless)) continue;
    const free = wish.places.find((place) => {
      const corners = cornersOf(wish, place);
      const cells = cellsOf(boxOf(corners));
      return (
        cells.every((cell) => !(grid.get(cell) ?? []).some((run) => runMeets(run, corners))) &&
        cells.every((cell) => !(taken.get(cell) ?? []).some((other) => boxesMeet(other, corners)))
      );
    });
    if (free === undefined) continue;
    placed.set(wish.key, free);
    const corners = cornersOf(wish, free);
    for (const cell of cellsOf(boxOf(corners))) taken.set(cell, [...(taken.get(cell) ?? []), corners]);
  }
  return placed;
}

/** The corners of a box of words, in order round it. */
export function cornersOf(
  { width, height }: Pick<LabelWish, 'width' | 'height'>,
  { at, turn }: LabelPlace,
): Point[] {
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  const [w, h] = [width / 2 + AIR, height / 2 + AIR];
  return (
    [
      [-w, -h],
      [w, -h],
      [w, h],
      [-w, h],
    ] as const
  ).map(([x, y]) => ({ x: at.x + x * cos - y * sin, y: at.y + x * sin + y * cos }));
}

function boxOf(points: readonly Point[]): Bounds {
  const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
  return { minX: Math.min(...xs), minY: Math.min(...ys), maxX: Math.max(...xs), maxY: Math.max(...ys) };
}

function cellsOf(box: Bounds): readonly string[] {
  const cells: string[] = [];
  for (let x = Math.floor(box.minX / CELL); x <= Math.floor(box.maxX / CELL); x++)
    for (let y = Math.floor(box.minY / CELL); y <= Math.floor(box.maxY / CELL); y++) cells.push(`${x} ${y}`);
  return cells;
}

/** A long run is filed in the cells that it passes, not in all of the box round it. */
function file(grid: Map<string, Obstacle[]>, box: Bounds, run: Obstacle): void {
  const long = Math.max(box.maxX - box.minX, box.maxY - box.minY);
  if (!Number.isFinite(long)) return;
  const parts = Math.max(1, Math.min(400, Math.ceil(long / CELL)));
  const [a, b] = run;
  const at = (t: number): Point => ({ x: a.x + (b.x - a.x) * t, y: a.y + (b.y - a.y) * t });
  for (let i = 0; i < parts; i++) {
    const part: Obstacle = [at(i / parts), at((i + 1) / parts)];
    for (const cell of cellsOf(boxOf(part))) {
      const there = grid.get(cell);
      if (there === undefined) grid.set(cell, [part]);
      else there.push(part);
    }
  }
}

/** Two convex shapes are apart where some side of one of them has the other wholly beyond it. */
export function boxesMeet(a: readonly Point[], b: readonly Point[]): boolean {
  return !apart(a, b) && !apart(b, a);
}

const runMeets = (run: Obstacle, box: readonly Point[]): boolean => boxesMeet(run, box);

function apart(sides: readonly Point[], other: readonly Point[]): boolean {
  return sides.some((p, i) => {
    const q = sides[(i + 1) % sides.length] ?? p;
    const across = { x: q.y - p.y, y: p.x - q.x };
    const reach = (points: readonly Point[]): readonly [number, number] => {
      const along = points.map(({ x, y }) => x * across.x + y * across.y);
      return [Math.min(...along), Math.max(...along)];
    };
    const [low, high] = reach(sides);
    const [otherLow, otherHigh] = reach(other);
    return otherLow > high + 1e-9 || otherHigh < low - 1e-9;
  });
}
