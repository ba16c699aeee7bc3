import {
  add,
  cubic,
  curveThrough,
  distance,
  linePath,
  outward,
  type Path,
  type Point,
  pathAt,
  pathEnd,
  pathJoin,
  pathLength,
  pathOf,
  pathStart,
  scale,
} from '../geometry/index.ts';

/** Points nearer than this are one, mm. */
const ONE_POINT = 1e-6;

/** Joins lines that follow each other; a gap, as a dart leaves one, is bridged. Null when there are none. */
export function joinNear(paths: readonly Path[]): Path | null {
  const [first, ...rest] = paths;
  if (first === undefined) return null;
  return rest.reduce((joined, next) => {
    const [end, start] = [pathEnd(joined), pathStart(next)];
    return distance(end, start) <= ONE_POINT
      ? pathJoin(joined, next)
      : pathJoin(joined, linePath(end, start), next);
  }, first);
}

/** A closed shape from lines that follow each other. */
export function closedShape(first: Path, ...rest: readonly Path[]): Path {
  const joined = joinNear([first, ...rest]) ?? first;
  const [end, start] = [pathEnd(joined), pathStart(joined)];
  return distance(end, start) <= ONE_POINT ? joined : pathJoin(joined, linePath(end, start));
}

/** A smooth line through points, or a straight one where there are too few. Null for less than two. */
export function through(points: readonly Point[]): Path | null {
  const apart = points.filter((p, i) => {
    const before = points[i - 1];
    return before === undefined || distance(before, p) > ONE_POINT;
  });
  const [a, b, ...more] = apart;
  if (a === undefined || b === undefined) return null;
  return more.length === 0 ? linePath(a, b) : curveThrough(apart);
}

/** From a place of a line, square to it: to the right hand, or to the left where `by` is negative, mm. */
export function squareOff(path: Path, at: number, by: number): Point {
  const place = pathAt(path, Math.min(Math.max(at, 0), pathLength(path)));
  return add(place.point, scale(outward(place.tangent), -by));
}

/** Length of the handles of a quarter circle, times the radius: the usual value, within 0.03 % of the radius. */
const QUARTER = 0.5523;

/** A circle: a button, a stud. */
export function circleAt({ x, y }: Point, radius: number): Path {
  const h = radius * QUARTER;
  const p = (right: number, down: number): Point => ({ x: x + right, y: y + down });
  return pathOf(
    cubic(p(radius, 0), p(radius, h), p(h, radius), p(0, radius)),
    cubic(p(0, radius), p(-h, radius), p(-radius, h), p(-radius, 0)),
    cubic(p(-radius, 0), p(-radius, -h), p(-h, -radius), p(0, -radius)),
    cubic(p(0, -radius), p(h, -radius), p(radius, -h), p(radius, 0)),
  );
}
