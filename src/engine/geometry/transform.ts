import { pathFrom } from './path.ts';
import { add, direction, dot, rotate, scale, subtract } from './points.ts';
import { segmentMap } from './segment.ts';
import type { Path, Point, Vector } from './types.ts';

/** x' = a x + c y + e, y' = b x + d y + f. */
export interface Affine {
  readonly a: number;
  readonly b: number;
  readonly c: number;
  readonly d: number;
  readonly e: number;
  readonly f: number;
}

function moved(p: Path, move: (q: Point) => Point): Path {
  return pathFrom(p.segments.map((s) => segmentMap(s, move)));
}

export function pathTranslate(p: Path, v: Vector): Path {
  return moved(p, (q) => add(q, v));
}

/** Turned about a point by an angle in radians, positive clockwise on paper (y points down). */
export function pathRotate(p: Path, radians: number, about: Point): Path {
  return moved(p, (q) => add(about, rotate(subtract(q, about), radians)));
}

/** Mirrored in the centre line x = 0. The direction of travel is kept, so inside and outside change hands. */
export function pathMirrorX(p: Path): Path {
  return moved(p, (q) => ({ x: -q.x, y: q.y }));
}

/** Mirrored in the straight line through two points; the direction of travel is kept. */
export function pathMirrorLine(p: Path, a: Point, b: Point): Path {
  const along = direction(a, b);
  return moved(p, (q) => {
    const way = subtract(q, a);
    const foot = add(a, scale(along, dot(way, along)));
    return subtract(scale(foot, 2), q);
  });
}

export function pathMap(p: Path, m: Affine): Path {
  return moved(p, ({ x, y }) => ({ x: m.a * x + m.c * y + m.e, y: m.b * x + m.d * y + m.f }));
}
