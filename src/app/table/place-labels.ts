import type { Bounds, Point } from '../../engine/geometry/index.ts';

/** Words that want to stand somewhere, in px; the first place that is free is taken. */
export interface LabelWish {
  readonly key: string;
  readonly width: number;
  readonly height: number;
  /** Where the middle of the words may stand, the best first, asked for one by one; `turn` in radians. */
  readonly places: Iterable<LabelPlace>;
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

/** Something that takes room: a convex shape and the upright box round it. */
interface Taken {
  readonly corners: readonly Point[];
  readonly box: Bounds;
}

/** Words that matter more come first. What finds no free place is left out. */
export function placeLabels(
  wishes: readonly LabelWish[],
  obstacles: readonly Obstacle[],
): ReadonlyMap<string, LabelPlace> {
  const table = createTable();
  for (const run of obstacles) table.takeRun(run);
  const placed = new Map<string, LabelPlace>();
  for (const wish of wishes) {
    if (wish.unless !== undefined && placed.has(wish.unless)) continue;
    for (const place of wish.places) {
      const words = takenBy(cornersOf(wish, place));
      if (!table.isFree(words)) continue;
      table.take(words);
      placed.set(wish.key, place);
      break;
    }
  }
  return placed;
}

/** The corners of a box of words, in order round it. */
export function cornersOf(
  { width, height }: Pick<LabelWish, 'width' | 'height'>,
  { at, turn }: LabelPlace,
): readonly Point[] {
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  const [w, h] = [width / 2 + AIR, height / 2 + AIR];
  const corner = (x: number, y: number): Point => ({
    x: at.x + x * cos - y * sin,
    y: at.y + x * sin + y * cos,
  });
  return [corner(-w, -h), corner(w, -h), corner(w, h), corner(-w, h)];
}

/** Side of a cell of the grid in which what is taken is looked up, px. */
const CELL = 48;
/** More cells than any screen has in a row, so that a cell has one number. */
const ROW = 65_536;

function createTable() {
  const cells = new Map<number, Taken[]>();
  const eachCell = ({ minX, minY, maxX, maxY }: Bounds, visit: (cell: number) => boolean): boolean => {
    const [right, foot] = [Math.floor(maxX / CELL), Math.floor(maxY / CELL)];
    for (let x = Math.floor(minX / CELL); x <= right; x++)
      for (let y = Math.floor(minY / CELL); y <= foot; y++) if (!visit(x * ROW + y)) return false;
    return true;
  };
  const take = (taken: Taken): void => {
    eachCell(taken.box, (cell) => {
      const there = cells.get(cell);
      if (there === undefined) cells.set(cell, [taken]);
      else there.push(taken);
      return true;
    });
  };
  return {
    take,
    /** A long run is taken in pieces, so that it lies in the cells that it passes and not in all of the box round it. */
    takeRun([a, b]: Obstacle): void {
      const long = Math.max(Math.abs(a.x - b.x), Math.abs(a.y - b.y));
      const parts = Math.max(1, Math.min(400, Math.ceil(long / CELL)));
      const at = (t: number): Point => ({ x: a.x + (b.x - a.x) * t, y: a.y + (b.y - a.y) * t });
      for (let i = 0; i < parts; i++) take(takenBy([at(i / parts), at((i + 1) / parts)]));
    },
    isFree: (words: Taken): boolean =>
      eachCell(words.box, (cell) => !(cells.get(cell) ?? []).some((other) => shapesMeet(other, words))),
  };
}

function takenBy(corners: readonly Point[]): Taken {
  const box = { minX: Infinity, minY: Infinity, maxX: -Infinity, maxY: -Infinity };
  for (const { x, y } of corners) {
    box.minX = Math.min(box.minX, x);
    box.minY = Math.min(box.minY, y);
    box.maxX = Math.max(box.maxX, x);
    box.maxY = Math.max(box.maxY, y);
  }
  return { corners, box };
}

/** Two convex shapes are apart where some side of one of them has the other wholly beyond it. */
function shapesMeet(a: Taken, b: Taken): boolean {
  if (a.box.maxX < b.box.minX || b.box.maxX < a.box.minX) return false;
  if (a.box.maxY < b.box.minY || b.box.maxY < a.box.minY) return false;
  return !apart(a.corners, b.corners) && !apart(b.corners, a.corners);
}

/** Rounding may not make neighbours that touch seem to overlap. */
const TOUCH = 1e-9;

function apart(sides: readonly Point[], other: readonly Point[]): boolean {
  return sides.some((p, i) => {
    const q = sides[(i + 1) % sides.length] ?? p;
    const [acrossX, acrossY] = [q.y - p.y, p.x - q.x];
    let [low, high, otherLow, otherHigh] = [Infinity, -Infinity, Infinity, -Infinity];
    for (const { x, y } of sides) {
      const along = x * acrossX + y * acrossY;
      low = Math.min(low, along);
      high = Math.max(high, along);
    }
    for (const { x, y } of other) {
      const along = x * acrossX + y * acrossY;
      otherLow = Math.min(otherLow, along);
      otherHigh = Math.max(otherHigh, along);
    }
    return otherLow > high + TOUCH || otherHigh < low - TOUCH;
  });
}
