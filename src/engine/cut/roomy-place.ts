import { type Path, type Point, pathBounds, pathFlatten, point } from '../geometry/index.ts';

/** A better place is only looked for while it could be clear of the line by this much more, mm. */
const WORTH = 4;
/** After so many looks the best place so far will do: a long strip has many that are equally good. */
const MOST_LOOKS = 80;
/** How closely straight runs follow the outline for this purpose, mm. */
const FLAT = 1;

interface Cell {
  readonly middle: Point;
  /** Half of its side. */
  readonly half: number;
  /** Distance of the middle from the outline, negative outside. */
  readonly clear: number;
}

/**
 * The point of an outline that lies farthest from its line, or nearly so: where a label has most room.
 * Squares are halved, the most promising first, as long as one can still hold a better place than the best
 * known.
 */
export function roomyPlace(outline: Path): Point {
  const runs = pathFlatten(outline, FLAT);
  const box = pathBounds(outline);
  const [width, height] = [box.maxX - box.minX, box.maxY - box.minY];
  const side = Math.min(width, height);
  const cell = (x: number, y: number, half: number): Cell => {
    const middle = point(x, y);
    return { middle, half, clear: clearance(runs, middle) };
  };
  let best = cell(box.minX + width / 2, box.minY + height / 2, 0);
  const waiting: Cell[] = [];
  for (let x = box.minX + side / 2; x < box.maxX + side / 2; x += side) {
    for (let y = box.minY + side / 2; y < box.maxY + side / 2; y += side) waiting.push(cell(x, y, side / 2));
  }
  for (const first of waiting) if (first.clear > best.clear) best = first;
  for (let looks = waiting.length; looks < MOST_LOOKS; looks += 4) {
    const next = takeMostPromising(waiting);
    if (next === undefined || promise(next) - best.clear <= WORTH) break;
    const half = next.half / 2;
    for (const dx of [-half, half]) {
      for (const dy of [-half, half]) {
        const quarter = cell(next.middle.x + dx, next.middle.y + dy, half);
        if (quarter.clear > best.clear) best = quarter;
        waiting.push(quarter);
      }
    }
  }
  return best.middle;
}

/** The clearance that no point of the cell can exceed. */
const promise = (c: Cell): number => c.clear + c.half * Math.SQRT2;

function takeMostPromising(cells: Cell[]): Cell | undefined {
  let most = 0;
  for (const [i, c] of cells.entries()) {
    const leader = cells[most];
    if (leader !== undefined && promise(c) > promise(leader)) most = i;
  }
  return cells.splice(most, 1)[0];
}

/** Distance from the closed run of points, negative outside. */
function clearance(runs: readonly Point[], p: Point): number {
  let nearest = Number.POSITIVE_INFINITY;
  let inside = false;
  let a = runs[runs.length - 1];
  for (const b of runs) {
    if (a !== undefined) {
      if (b.y > p.y !== a.y > p.y && p.x < ((a.x - b.x) * (p.y - b.y)) / (a.y - b.y) + b.x) inside = !inside;
      nearest = Math.min(nearest, squareToRun(p, a, b));
    }
    a = b;
  }
  return (inside ? 1 : -1) * Math.sqrt(nearest);
}

function squareToRun(p: Point, a: Point, b: Point): number {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const square = dx * dx + dy * dy;
  const t = square > 0 ? Math.min(1, Math.max(0, ((p.x - a.x) * dx + (p.y - a.y) * dy) / square)) : 0;
  const [x, y] = [p.x - a.x - t * dx, p.y - a.y - t * dy];
  return x * x + y * y;
}
