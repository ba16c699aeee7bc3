import {
  add,
  cubic,
  line,
  type Path,
  type Point,
  pathLength,
  pathOf,
  pathReverse,
  type Segment,
  scale,
  type Vector,
} from '../geometry/index.ts';

/**
 * The path with one end moved and the other where it was. A straight edge stays straight. A curve keeps its
 * direction at both ends, and its middle follows smoothly.
 */
export function pullEnd(path: Path, end: 'start' | 'end', by: Vector): Path {
  if (end === 'start') return pathReverse(pullEnd(pathReverse(path), 'end', by));
  const total = pathLength(path);
  const straight = path.segments.every(({ kind }) => kind === 'line');
  // How far a point follows, by its share of the way to the moved end; and how fast that grows.
  const follow = straight ? (t: number) => t : (t: number) => t * t * (3 - 2 * t);
  const growth = (t: number) => 6 * t * (1 - t);
  const moved = (p: Point, share: number): Point => add(p, scale(by, share));
  let before = 0;
  const pull = (s: Segment): Segment => {
    const reach = pathLength(pathOf(s)) / total;
    const [from, to] = [before, Math.min(1, before + reach)];
    before = to;
    if (s.kind === 'line') return line(moved(s.from, follow(from)), moved(s.to, follow(to)));
    return cubic(
      moved(s.from, follow(from)),
      moved(s.c1, follow(from) + (growth(from) * reach) / 3),
      moved(s.c2, follow(to) - (growth(to) * reach) / 3),
      moved(s.to, follow(to)),
    );
  };
  const [first, ...rest] = path.segments;
  return pathOf(pull(first), ...rest.map(pull));
}
