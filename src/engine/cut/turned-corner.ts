import {
  add,
  cross,
  distance,
  linePath,
  type Path,
  type Point,
  pathCrossings,
  pathEndTangent,
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

/** An edge that meets the hem at a smaller angle than 35 degrees runs on into it rather than down to it. */
const RUNS_ON = Math.sin((35 * Math.PI) / 180);

/** The corner between an edge and the hem below it. */
export interface HemCorner {
  readonly point: Point;
  /** Unit direction of the hem line at the corner. */
  readonly along: Vector;
  /** Allowance of the hem and of the edge that comes down to it, mm. */
  readonly hem: number;
  readonly side: number;
}

/**
 * Lets a side allowance turn up truly: `side` is the parallel of the edge that comes down to the hem,
 * walked towards the hem. Beyond the hem line it goes on as the mirror image of what lies above it, so that
 * the turned-up hem lies on the piece edge on edge. The mirror is the tangent of the hem at the corner,
 * which is exact for a straight hem. A little more than the hem's depth is drawn, for the hem's own cutting
 * line to cut off. An edge that runs on into the hem without a corner is left alone.
 */
export function mirrorBelowHem(side: Path, corner: HemCorner): Path {
  const runsOn = Math.abs(cross(pathEndTangent(side), corner.along)) < RUNS_ON;
  const above = runsOn || corner.hem === 0 ? null : downTo(side, corner);
  if (above === null) return side;
  const length = pathLength(above);
  const depth = Math.min(length, 1.5 * corner.hem + corner.side);
  const other = add(corner.point, corner.along);
  const near = pathSlice(above, length - depth, length);
  return pathJoin(above, pathReverse(pathMirrorLine(near, corner.point, other)));
}

/**
 * The side drawn on, or cut off, where it meets the hem line; null when it runs past that line altogether.
 */
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
