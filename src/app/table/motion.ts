import {
  type Affine,
  type Bounds,
  boundsUnion,
  type Path,
  type Point,
  pathBounds,
  pathMap,
} from '../../engine/geometry/index.ts';

export const STAY: Affine = { a: 1, b: 0, c: 0, d: 1, e: 0, f: 0 };
/** The other half of a dress: mirrored in the centre line. */
export const MIRROR: Affine = { ...STAY, a: -1 };

export const shift = (x: number, y: number): Affine => ({ ...STAY, e: x, f: y });

export const applyTo = ({ a, b, c, d, e, f }: Affine, { x, y }: Point): Point => ({
  x: a * x + c * y + e,
  y: b * x + d * y + f,
});

/** First `inner`, then `outer`. */
export const after = (outer: Affine, inner: Affine): Affine => ({
  a: outer.a * inner.a + outer.c * inner.b,
  b: outer.b * inner.a + outer.d * inner.b,
  c: outer.a * inner.c + outer.c * inner.d,
  d: outer.b * inner.c + outer.d * inner.d,
  e: outer.a * inner.e + outer.c * inner.f + outer.e,
  f: outer.b * inner.e + outer.d * inner.f + outer.f,
});

/** The way back; the motions of the table never flatten anything, so there is one. */
export function inverse({ a, b, c, d, e, f }: Affine): Affine {
  const k = a * d - b * c;
  return {
    a: d / k,
    b: -b / k,
    c: -c / k,
    d: a / k,
    e: (c * f - d * e) / k,
    f: (b * e - a * f) / k,
  };
}

/** The turn and shift that brings `from` onto `to` and the direction to `fromEnd` onto the direction to `toEnd`. */
export function chordOnto(from: Point, fromEnd: Point, to: Point, toEnd: Point): Affine {
  const turn =
    Math.atan2(toEnd.y - to.y, toEnd.x - to.x) - Math.atan2(fromEnd.y - from.y, fromEnd.x - from.x);
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  const turned: Affine = { a: cos, b: sin, c: -sin, d: cos, e: 0, f: 0 };
  const at = applyTo(turned, from);
  return { ...turned, e: to.x - at.x, f: to.y - at.y };
}

export const isMirrored = ({ a, b, c, d }: Affine): boolean => a * d - b * c < 0;

/** Bounds of lines as they are; lines never change, and those of a piece are asked for at every frame of a drag. */
const OWN_BOUNDS = new WeakMap<Path, Bounds>();

export function movedBounds(path: Path, frame: Affine): Bounds {
  const { a, b, c, d, e, f } = frame;
  if (a !== 1 || b !== 0 || c !== 0 || d !== 1) return pathBounds(pathMap(path, frame));
  const own = OWN_BOUNDS.get(path) ?? pathBounds(path);
  OWN_BOUNDS.set(path, own);
  return { minX: own.minX + e, minY: own.minY + f, maxX: own.maxX + e, maxY: own.maxY + f };
}

export function boundsOfAll(boxes: readonly Bounds[]): Bounds {
  const [first, ...rest] = boxes;
  return first === undefined ? { minX: 0, minY: 0, maxX: 100, maxY: 100 } : rest.reduce(boundsUnion, first);
}

export const svgMatrix = ({ a, b, c, d, e, f }: Affine): string => `matrix(${a} ${b} ${c} ${d} ${e} ${f})`;
