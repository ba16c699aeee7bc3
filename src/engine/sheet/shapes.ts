import { type Bounds, cubic, linePath, type Path, type Point, pathOf } from '../geometry/index.ts';
import type { FillMark, Mark, StrokeMark } from './scene.ts';
import type { LineName } from './styles.ts';

/** Small shapes that sheets are made of; all lengths in mm. */

export function stroke(path: Path, line: LineName): StrokeMark {
  return { kind: 'stroke', path, line };
}

export function strokeLine(from: Point, to: Point, line: LineName): StrokeMark {
  return stroke(linePath(from, to), line);
}

export function rectanglePath(box: Bounds): Path {
  const { minX, minY, maxX, maxY } = box;
  return linePath(
    { x: minX, y: minY },
    { x: maxX, y: minY },
    { x: maxX, y: maxY },
    { x: minX, y: maxY },
    { x: minX, y: minY },
  );
}

export function boxAt(x: number, y: number, width: number, height: number): Bounds {
  return { minX: x, minY: y, maxX: x + width, maxY: y + height };
}

/** Handle length of a quarter circle of radius 1 drawn as one cubic; off the true circle by 0.03 % at most. */
const QUARTER_CIRCLE_HANDLE = 0.5522847498;

export function circlePath(centre: Point, radius: number): Path {
  const { x, y } = centre;
  const h = radius * QUARTER_CIRCLE_HANDLE;
  const at = (dx: number, dy: number): Point => ({ x: x + dx, y: y + dy });
  return pathOf(
    cubic(at(radius, 0), at(radius, h), at(h, radius), at(0, radius)),
    cubic(at(0, radius), at(-h, radius), at(-radius, h), at(-radius, 0)),
    cubic(at(-radius, 0), at(-radius, -h), at(-h, -radius), at(0, -radius)),
    cubic(at(0, -radius), at(h, -radius), at(radius, -h), at(radius, 0)),
  );
}

export function dot(centre: Point, radius: number): FillMark {
  return { kind: 'fill', outline: circlePath(centre, radius), fill: 'ink' };
}

/** A filled arrow head with its tip at `tip`, pointing along `towards` (a unit vector). */
export function arrowHead(tip: Point, towards: Point, length: number): FillMark {
  const half = length * 0.36;
  const back = { x: tip.x - towards.x * length, y: tip.y - towards.y * length };
  const outline = linePath(
    tip,
    { x: back.x - towards.y * half, y: back.y + towards.x * half },
    { x: back.x + towards.y * half, y: back.y - towards.x * half },
    tip,
  );
  return { kind: 'fill', outline, fill: 'ink' };
}

/** A line with a head at both ends. */
export function doubleArrow(from: Point, to: Point, line: LineName, head: number): readonly Mark[] {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  const u = { x: (to.x - from.x) / length, y: (to.y - from.y) / length };
  return [
    strokeLine(
      { x: from.x + u.x * head * 0.8, y: from.y + u.y * head * 0.8 },
      { x: to.x - u.x * head * 0.8, y: to.y - u.y * head * 0.8 },
      line,
    ),
    arrowHead(to, u, head),
    arrowHead(from, { x: -u.x, y: -u.y }, head),
  ];
}

/** A dimension line between two points: thin, small heads. */
export function measureLine(from: Point, to: Point): readonly Mark[] {
  return doubleArrow(from, to, 'measure', 2.5);
}

/** Two short strokes crossing at `centre`. */
export function crossMark(centre: Point, arm: number, line: LineName): readonly Mark[] {
  const { x, y } = centre;
  return [
    strokeLine({ x: x - arm, y }, { x: x + arm, y }, line),
    strokeLine({ x, y: y - arm }, { x, y: y + arm }, line),
  ];
}

/** An empty square to tick, its lower left corner at `corner`. */
export function tickBox(corner: Point, side: number): StrokeMark {
  return stroke(rectanglePath(boxAt(corner.x, corner.y - side, side, side)), 'box');
}
