import type { Bounds, Point } from '../geometry/index.ts';

/** Runs of points joined by straight lines: what curves become where only nearness matters. */

export function boxAround(points: readonly Point[]): Bounds {
  const xs = points.map((p) => p.x);
  const ys = points.map((p) => p.y);
  return { minX: Math.min(...xs), minY: Math.min(...ys), maxX: Math.max(...xs), maxY: Math.max(...ys) };
}

/** Even-odd rule on a closed run of points. */
export function polygonContains(polygon: readonly Point[], p: Point): boolean {
  let inside = false;
  let before = polygon.at(-1);
  for (const corner of polygon) {
    if (before !== undefined && corner.y > p.y !== before.y > p.y) {
      const x = corner.x + ((p.y - corner.y) / (before.y - corner.y)) * (before.x - corner.x);
      if (p.x < x) inside = !inside;
    }
    before = corner;
  }
  return inside;
}

/** Whether a run of straight lines enters a box. */
export function runMeetsBox(points: readonly Point[], box: Bounds): boolean {
  let before: Point | undefined;
  for (const p of points) {
    if (before !== undefined && mayMeet(before, p, box) && segmentMeetsBox(before, p, box)) return true;
    before = p;
  }
  return false;
}

/** False when both ends lie beyond one side of the box: most runs do, and this is quickly asked. */
function mayMeet(a: Point, b: Point, box: Bounds): boolean {
  return (
    (a.x >= box.minX || b.x >= box.minX) &&
    (a.x <= box.maxX || b.x <= box.maxX) &&
    (a.y >= box.minY || b.y >= box.minY) &&
    (a.y <= box.maxY || b.y <= box.maxY)
  );
}

/** Clips the straight run from a to b against the box by its parameter range (Liang and Barsky, 1984). */
function segmentMeetsBox(a: Point, b: Point, box: Bounds): boolean {
  let from = 0;
  let to = 1;
  const sides: readonly [number, number][] = [
    [a.x - b.x, a.x - box.minX],
    [b.x - a.x, box.maxX - a.x],
    [a.y - b.y, a.y - box.minY],
    [b.y - a.y, box.maxY - a.y],
  ];
  for (const [speed, room] of sides) {
    if (speed === 0) {
      if (room < 0) return false;
      continue;
    }
    const t = room / speed;
    if (speed < 0) from = Math.max(from, t);
    else to = Math.min(to, t);
    if (from > to) return false;
  }
  return true;
}

/** The part of a closed run of points inside a box (Sutherland and Hodgman, 1974); bridges along its sides may stay. */
export function clippedToBox(polygon: readonly Point[], box: Bounds): readonly Point[] {
  const sides: readonly [axis: 'x' | 'y', at: number, sign: 1 | -1][] = [
    ['x', box.minX, 1],
    ['x', box.maxX, -1],
    ['y', box.minY, 1],
    ['y', box.maxY, -1],
  ];
  return sides.reduce((points, [axis, at, sign]) => clippedToSide(points, axis, at, sign), polygon);
}

function clippedToSide(
  points: readonly Point[],
  axis: 'x' | 'y',
  at: number,
  sign: 1 | -1,
): readonly Point[] {
  const depth = (p: Point): number => sign * (p[axis] - at);
  const kept: Point[] = [];
  let before = points.at(-1);
  for (const p of points) {
    if (before !== undefined && depth(before) >= 0 !== depth(p) >= 0) {
      const share = depth(before) / (depth(before) - depth(p));
      kept.push({ x: before.x + share * (p.x - before.x), y: before.y + share * (p.y - before.y) });
    }
    if (depth(p) >= 0) kept.push(p);
    before = p;
  }
  return kept;
}
