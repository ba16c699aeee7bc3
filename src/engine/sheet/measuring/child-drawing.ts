import {
  curveThrough,
  linePath,
  type Path,
  type Point,
  pathJoin,
  pathMirrorX,
  pathReverse,
} from '../../geometry/index.ts';

/**
 * The child of the measuring guide: about 116 cm, six years, drawn in mm from the crown down, x away from the middle.
 * Lengths and breadths are near the averages of girls of that height (US survey, Snyder 1977), so that a tape lies
 * where it lies on a child; the rest is drawn by eye.
 */
export const CHILD_HEIGHT = 1160;

/** What a line or a field of the drawing is; later ones lie over earlier ones. */
export type ChildPart =
  | { readonly kind: 'skin' | 'cloth' | 'hair'; readonly outline: Path }
  | { readonly kind: 'line' | 'light'; readonly path: Path };

export type ChildView = 'front' | 'back' | 'side';

/** A place on the child, mm. */
export type At = readonly [x: number, y: number];
const pointOf = ([x, y]: At): Point => ({ x, y });

/** A smooth line through places; `start` and `end` are directions. */
export const smooth = (places: readonly At[], start?: At, end?: At): Path =>
  curveThrough(places.map(pointOf), {
    ...(start === undefined ? {} : { start: pointOf(start) }),
    ...(end === undefined ? {} : { end: pointOf(end) }),
  });

export const straight = (a: At, b: At): Path => linePath(pointOf(a), pointOf(b));

/** A half drawn from the middle back to the middle, with the other half to it. */
export const bothHalves = (half: Path): Path => pathJoin(half, pathReverse(pathMirrorX(half)));

/** A line and its mirror image. */
export const onBothSides = (path: Path): readonly Path[] => [path, pathMirrorX(path)];
