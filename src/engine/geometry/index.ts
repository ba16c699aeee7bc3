export { boundsUnion, pathBounds } from './bounds.ts';
export { pathCrossings } from './crossings.ts';
export { curveBetween } from './curve-between.ts';
export { curveOfLength } from './fit-length.ts';
export { pathLength } from './length.ts';
export { pathNearest } from './nearest.ts';
export { pathOffset } from './offset.ts';
export { cornerBetween, meetAtCorners, offsetOutline } from './offset-outline.ts';
export {
  type Outline,
  outlineArea,
  outlineContains,
  outlineIsClosed,
} from './outline.ts';
export {
  linePath,
  pathEnd,
  pathEndTangent,
  pathExtend,
  pathJoin,
  pathOf,
  pathReverse,
  pathStart,
  pathStartTangent,
  pathWithEnds,
} from './path.ts';
export {
  add,
  angleBetween,
  between,
  cross,
  direction,
  distance,
  dot,
  lineCrossing,
  midpoint,
  outward,
  point,
  rotate,
  scale,
  subtract,
  unit,
  vectorLength,
} from './points.ts';
export { cubic, line } from './segment.ts';
export { outlineSelfCrossings, outlineWithoutLoops } from './self-crossings.ts';
export { curveThrough } from './spline.ts';
export { pathAt, pathSlice, pathSplit } from './split.ts';
export { type Affine, pathMap, pathMirrorLine, pathMirrorX, pathRotate, pathTranslate } from './transform.ts';
export type * from './types.ts';
export { pathFlatten, walkPath } from './walk.ts';
