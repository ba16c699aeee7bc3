import { type Path, type Point, pathFlatten } from '../geometry/index.ts';
import {
  largest,
  type Polygon,
  polygonArea,
  polygonsArea,
  polygonsGrown,
  polygonsShared,
  polygonsUnion,
  rectangle,
} from './polygons.ts';
import { simplifyOutward } from './simplify-outward.ts';

/**
 * The outline that is packed contains the cutting line and all within half the gap of it, and reaches at most this
 * much further, mm. Cloth is cut no finer (rulers for cloth: 2 to 5 mm, common practice, no source).
 */
export const OUTLINE_TOLERANCE = 0.9;

/** How far the chords of a curve lie inside it, and those of a round corner inside theirs, mm. */
const FLATTENED = 0.02;
const ROUNDED = 0.05;
/** For the grid of the polygon library, mm. */
const GRID = 0.001;
/** Corners stray by no more, mm; the middle of a side may lie a little further out than its ends. */
const SIMPLIFIED = 0.8;

/** Below this nothing can be cut out, mm2. */
const NO_AREA = 1;

export interface GrownOutline {
  /** x0, y0, x1, y1, ... */
  readonly corners: Float64Array;
  /** Of the cutting line itself, mm2. */
  readonly area: number;
  /** The cutting line crosses itself; all that it winds round is kept. */
  readonly cleaned: boolean;
}

/** On which axis a half piece lies with its fold: it reaches to one side of it only. */
export type FoldLine = 'y=0' | 'x=0';

/**
 * The outline of a piece grown by half the gap, with few corners. At a fold it ends on the fold line. Null where the
 * outline encloses nothing. `stray`: how far corners may lie outside, mm; less makes more of them.
 */
export function grownOutline(
  path: Path,
  gap: number,
  fold: FoldLine | null = null,
  stray: number = SIMPLIFIED,
): GrownOutline | null {
  const points = pathFlatten(path, FLATTENED);
  if (points.some(({ x, y }) => !Number.isFinite(x) || !Number.isFinite(y))) return null;
  const clean = polygonsUnion([points]);
  const area = Math.abs(polygonsArea(clean));
  if (area < NO_AREA) return null;
  const grown = largest(polygonsGrown(clean, gap / 2 + FLATTENED + ROUNDED + GRID, ROUNDED));
  if (grown === null) return null;
  const onFold = (p: Point): boolean => Math.abs(fold === 'y=0' ? p.y : p.x) < 2 * GRID;
  const half = fold === null ? grown : (largest(polygonsShared([grown], [beyond(grown, fold)])) ?? grown);
  const simple = simplifyOutward(
    half,
    stray,
    fold === null ? undefined : (from, to) => onFold(from) && onFold(to),
  );
  const corners = new Float64Array(simple.flatMap(({ x, y }) => cornerOnFold(x, y, fold)));
  return { corners, area, cleaned: clean.length > 1 || isOtherArea(points, area) };
}

/** The library's grid may leave a corner a hair beyond the fold. */
function cornerOnFold(x: number, y: number, fold: FoldLine | null): readonly [number, number] {
  if (fold === 'y=0') return [x, Math.abs(y) < 2 * GRID ? 0 : y];
  if (fold === 'x=0') return [Math.abs(x) < 2 * GRID ? 0 : x, y];
  return [x, y];
}

function beyond(polygon: Polygon, fold: FoldLine): Polygon {
  const far = 1 + Math.max(...polygon.map(({ x, y }) => Math.max(Math.abs(x), Math.abs(y))));
  return fold === 'y=0' ? rectangle(-far, 0, far, far) : rectangle(0, -far, far, far);
}

/** A ring that does not cross itself encloses as much before it is made clean as after. */
function isOtherArea(points: Polygon, after: number): boolean {
  const before = Math.abs(polygonArea(points));
  return Math.abs(after - before) > 0.01 + before * 1e-5;
}
