import {
  add,
  distance,
  linePath,
  type Path,
  type Point,
  pathCrossings,
  pathExtend,
  pathJoin,
  pathLength,
  pathMirrorLine,
  pathReverse,
  pathSlice,
  scale,
  subtract,
  type Vector,
} from '../geometry/index.ts';

/** The corner between an edge and the hem below it. */
export interface HemCorner {
  readonly point: Point;
  /** Direction of the hem line at the corner. */
  readonly along: Vector;
  /** Allowance of the hem and of the edge that comes down to it, mm. */
  readonly hem: number;
  readonly side: number;
}

/**
 * Lets a side allowance turn up truly: `side` is the parallel of the edge that comes down to the hem, walked towards
 * the hem. Beyond the hem line it goes on as the mirror image of what lies above it, so that the turned-up
 * hem lies on the piece edge on edge. The mirror is the tangent of the hem at the corner, which is exact for a
 * straight hem. A little more than the hem's depth is drawn, for the hem's own cutting line to cut off.
 */
export function mirrorBelowHem(side: Path, corner: HemCorner): Path {
  const above = downTo(side, corner);
  if (above === null || corner.hem === 0) return side;
  const length = pathLength(above);
  const depth = Math.min(length, 1.5 * corner.hem + corner.side);
  const other = add(corner.point, corner.along);
  const near = pathSlice(above, length - depth, length);
  return pathJoin(above, pathReverse(pathMirrorLine(near, corner.point, other)));
}

/** The side drawn on, or cut off, where it meets the hem line; null when it runs past that line altogether. */
function downTo(side: Path, corner: HemCorner): Path | null {
  const reach = 4 * Math.max(corner.side, corner.hem);
  const hemLine = linePath(
    subtract(corner.point, scale(corner.along, reach)),
    add(corner.point, scale(corner.along, reach)),
  );
  const longer = pathExtend(side, { end: reach });
  let best: number | null = null;
  let least = Number.POSITIVE_INFINITY;
  for (const hit of pathCrossings(longer, hemLine)) {
    const away = distance(hit.point, corner.point);
    if (away < least) {
      least = away;
      best = hit.atA;
    }
  }
  return best === null || best < 1e-6 ? null : pathSlice(longer, 0, best);
}
