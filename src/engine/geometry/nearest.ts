import { bernsteinRoots } from './bernstein.ts';
import { segmentBounds } from './bounds.ts';
import { segmentLength, segmentLengthTo } from './length.ts';
import { distance, dot, subtract } from './points.ts';
import { segmentPoint } from './segment.ts';
import type { Bounds, Cubic, Path, Point, Segment } from './types.ts';

/** The place of a path that lies nearest to a point; `at` is its distance along the path, mm. */
export interface NearestPlace {
  readonly point: Point;
  readonly distance: number;
  readonly at: number;
}

export interface NearestOnSegment {
  readonly t: number;
  readonly point: Point;
  readonly distance: number;
}

export function segmentNearest(s: Segment, q: Point): NearestOnSegment {
  if (s.kind === 'line') {
    const way = subtract(s.to, s.from);
    const square = dot(way, way);
    const t = square > 0 ? Math.min(1, Math.max(0, dot(subtract(q, s.from), way) / square)) : 0;
    const at = segmentPoint(s, t);
    return { t, point: at, distance: distance(at, q) };
  }
  let best: NearestOnSegment = { t: 0, point: s.from, distance: distance(s.from, q) };
  for (const t of [1, ...feet(s, q)]) {
    const at = segmentPoint(s, t);
    const d = distance(at, q);
    if (d < best.distance) best = { t, point: at, distance: d };
  }
  return best;
}

/** Where the way from the curve to `q` stands square to the curve: (B - q) . B' = 0, of degree five. */
function feet(s: Cubic, q: Point): number[] {
  const a = [subtract(s.from, q), subtract(s.c1, q), subtract(s.c2, q), subtract(s.to, q)];
  const b = [subtract(s.c1, s.from), subtract(s.c2, s.c1), subtract(s.to, s.c2)];
  const coefficients = [0, 0, 0, 0, 0, 0];
  for (const [i, p] of a.entries()) {
    for (const [j, v] of b.entries()) {
      const share = ((CHOOSE_3[i] ?? 0) * (CHOOSE_2[j] ?? 0)) / (CHOOSE_5[i + j] ?? 1);
      coefficients[i + j] = (coefficients[i + j] ?? 0) + share * dot(p, v);
    }
  }
  return bernsteinRoots(coefficients);
}

const CHOOSE_2 = [1, 2, 1];
const CHOOSE_3 = [1, 3, 3, 1];
const CHOOSE_5 = [1, 5, 10, 10, 5, 1];

function boundsDistance(b: Bounds, q: Point): number {
  const x = Math.max(b.minX - q.x, 0, q.x - b.maxX);
  const y = Math.max(b.minY - q.y, 0, q.y - b.maxY);
  return Math.sqrt(x * x + y * y);
}

/** The nearest place on a path. Of several equally near ones the first along the path. */
export function pathNearest(p: Path, q: Point): NearestPlace {
  let best: NearestOnSegment | null = null;
  let owner = 0;
  for (const [i, s] of p.segments.entries()) {
    if (best !== null && boundsDistance(segmentBounds(s), q) >= best.distance) continue;
    const found = segmentNearest(s, q);
    if (best === null || found.distance < best.distance) {
      best = found;
      owner = i;
    }
  }
  const found = best ?? segmentNearest(p.segments[0], q);
  let at = 0;
  for (const s of p.segments.slice(0, owner)) at += segmentLength(s);
  at += segmentLengthTo(p.segments[owner] ?? p.segments[0], found.t);
  return { point: found.point, distance: found.distance, at };
}
