import { Clipper, EndType, FillRule, JoinType, type PathD } from 'clipper2-ts';
import type { Bounds, Point } from '../geometry/index.ts';

/** A closed ring of corners without repeated end point, mm. */
export type Polygon = readonly Point[];

/** The only door to the polygon library. Its results lie on a grid of a ten thousandth of a millimetre. */
const DECIMALS = 4;

/** All that any of the rings winds round, whichever way: rings that cross themselves come out clean. */
export function polygonsUnion(rings: readonly Polygon[]): readonly Polygon[] {
  return Clipper.unionD(rings.map(ring), [], FillRule.NonZero, DECIMALS).map(corners);
}

/** Grown by `by` with round corners; the chords of a corner lie at most `sag` inside its true arc. */
export function polygonsGrown(rings: readonly Polygon[], by: number, sag: number): readonly Polygon[] {
  return Clipper.inflatePathsD(rings.map(ring), by, JoinType.Round, EndType.Polygon, 2, DECIMALS, sag).map(
    corners,
  );
}

export function polygonsShared(a: readonly Polygon[], b: readonly Polygon[]): readonly Polygon[] {
  return Clipper.intersectD(a.map(ring), b.map(ring), FillRule.NonZero, DECIMALS).map(corners);
}

export function polygonsWithout(a: readonly Polygon[], b: readonly Polygon[]): readonly Polygon[] {
  return Clipper.differenceD(a.map(ring), b.map(ring), FillRule.NonZero, DECIMALS).map(corners);
}

/** Signed, mm2: the sign tells the way round, and holes run against the rings around them. */
export function polygonArea(polygon: Polygon): number {
  let sum = 0;
  let last = polygon.at(-1);
  for (const p of polygon) {
    if (last !== undefined) sum += last.x * p.y - last.y * p.x;
    last = p;
  }
  return sum / 2;
}

/** Signed, mm2: together, holes taken off. */
export function polygonsArea(polygons: readonly Polygon[]): number {
  return polygons.reduce((sum, polygon) => sum + polygonArea(polygon), 0);
}

/** The one with the largest area; null where there is none. */
export function largest(polygons: readonly Polygon[]): Polygon | null {
  let best: Polygon | null = null;
  for (const p of polygons) {
    if (best === null || Math.abs(polygonArea(p)) > Math.abs(polygonArea(best))) best = p;
  }
  return best;
}

export function polygonBounds(polygon: Polygon): Bounds {
  const xs = polygon.map(({ x }) => x);
  const ys = polygon.map(({ y }) => y);
  return { minX: Math.min(...xs), minY: Math.min(...ys), maxX: Math.max(...xs), maxY: Math.max(...ys) };
}

export function rectangle(fromX: number, fromY: number, toX: number, toY: number): Polygon {
  return [
    { x: fromX, y: fromY },
    { x: toX, y: fromY },
    { x: toX, y: toY },
    { x: fromX, y: toY },
  ];
}

const ring = (polygon: Polygon): PathD => polygon.map(({ x, y }) => ({ x, y }));
const corners = (path: PathD): Polygon => path.map(({ x, y }) => ({ x, y }));
