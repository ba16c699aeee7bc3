import { cubic, distance, type Path, pathOf, scale, subtract, unit, type Vector } from '../geometry/index.ts';

/** Lets a path arrive in another direction: the last handle is turned, its length kept. Ends stay in place. */
export function turnEnd(path: Path, arriving: Vector): Path {
  const last = path.segments[path.segments.length - 1];
  if (last === undefined || last.kind === 'line') return path;
  const reach = distance(last.c2, last.to);
  const turned = cubic(last.from, last.c1, subtract(last.to, scale(unit(arriving), reach)), last.to);
  const [first, ...rest] = [...path.segments.slice(0, -1), turned];
  return first === undefined ? path : pathOf(first, ...rest);
}
