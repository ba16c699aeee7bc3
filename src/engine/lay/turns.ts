import type { Bounds, Path, Point, Vector } from '../geometry/index.ts';
import { pathMap } from '../geometry/index.ts';

/** x' = a x + c y, y' = b x + d y. */
export interface Turn {
  readonly a: number;
  readonly b: number;
  readonly c: number;
  readonly d: number;
}

/** Degrees by which a piece is turned on the cloth against its grain line, clockwise on paper. */
export type TurnDegrees = 0 | 45 | 90 | 135 | 180 | 225 | 270 | 315;

/** The one constant for 45 degrees, so that opposite turns are exact reflections of each other in a point. */
const HALF = Math.SQRT1_2;

const COSINES = {
  0: 1,
  45: HALF,
  90: 0,
  135: -HALF,
  180: -1,
  225: -HALF,
  270: 0,
  315: HALF,
} as const satisfies Record<TurnDegrees, number>;

const SINES = {
  0: 0,
  45: HALF,
  90: 1,
  135: HALF,
  180: 0,
  225: -HALF,
  270: -1,
  315: -HALF,
} as const satisfies Record<TurnDegrees, number>;

export function turnBy(degrees: TurnDegrees): Turn {
  const [cosine, sine] = [COSINES[degrees], SINES[degrees]];
  return { a: cosine, b: sine, c: -sine || 0, d: cosine };
}

/** First `first`, then `second`. */
export function turnsJoined(first: Turn, second: Turn): Turn {
  return {
    a: second.a * first.a + second.c * first.b || 0,
    b: second.b * first.a + second.d * first.b || 0,
    c: second.a * first.c + second.c * first.d || 0,
    d: second.b * first.c + second.d * first.d || 0,
  };
}

/** Mirrored in the grain: the head stays where it is, left and right change. */
export const MIRROR_ACROSS: Turn = { a: 1, b: 0, c: 0, d: -1 };

/** Mirrored square to the grain: the head comes to the other end. */
export const MIRROR_ALONG: Turn = { a: -1, b: 0, c: 0, d: 1 };

/**
 * Turns a piece so that its grain line, which points to the head, runs against x: along the cloth, the head at the
 * cut end. Upright, lying and 45 degree grain lines are turned by exact numbers.
 */
export function turnToGrain(grain: Vector): Turn {
  const length = Math.sqrt(grain.x * grain.x + grain.y * grain.y);
  const [x, y] = [exact(grain.x / length), exact(grain.y / length)];
  return { a: -x || 0, b: y, c: -y || 0, d: -x || 0 };
}

function exact(share: number): number {
  for (const value of [0, 1, -1, HALF, -HALF]) if (Math.abs(share - value) < 1e-9) return value;
  return share;
}

export function turnPoint({ a, b, c, d }: Turn, p: Point): Point {
  return { x: a * p.x + c * p.y, y: b * p.x + d * p.y };
}

export function turnPath(turn: Turn, path: Path, shift: Vector = { x: 0, y: 0 }): Path {
  return pathMap(path, { ...turn, e: shift.x, f: shift.y });
}

/** Corners x0, y0, x1, y1, ... turned. */
export function turnCorners({ a, b, c, d }: Turn, corners: Float64Array): Float64Array {
  const out = new Float64Array(corners.length);
  for (let i = 0; i + 1 < corners.length; i += 2) {
    const [x, y] = [corners[i] ?? 0, corners[i + 1] ?? 0];
    out[i] = a * x + c * y;
    out[i + 1] = b * x + d * y;
  }
  return out;
}

export function cornersBounds(corners: Float64Array): Bounds {
  let [minX, minY, maxX, maxY] = [Infinity, Infinity, -Infinity, -Infinity];
  for (let i = 0; i + 1 < corners.length; i += 2) {
    const [x, y] = [corners[i] ?? 0, corners[i + 1] ?? 0];
    minX = Math.min(minX, x);
    maxX = Math.max(maxX, x);
    minY = Math.min(minY, y);
    maxY = Math.max(maxY, y);
  }
  return { minX, minY, maxX, maxY };
}
