import { segmentPoint } from './segment.ts';
import type { Bounds, Cubic, Path, Segment } from './types.ts';

const known = new WeakMap<Cubic, Bounds>();

/** Exact box around a segment. Remembered for each curve object, as segments never change. */
export function segmentBounds(s: Segment): Bounds {
  if (s.kind === 'line') return boundsOf(s);
  const before = known.get(s);
  if (before !== undefined) return before;
  const bounds = boundsOf(s);
  known.set(s, bounds);
  return bounds;
}

/** The same without remembering, for parts of curves that are looked at once. */
export function boundsOf(s: Segment): Bounds {
  let minX = Math.min(s.from.x, s.to.x);
  let maxX = Math.max(s.from.x, s.to.x);
  let minY = Math.min(s.from.y, s.to.y);
  let maxY = Math.max(s.from.y, s.to.y);
  if (s.kind === 'cubic') {
    const { from, c1, c2, to } = s;
    if (Math.min(c1.x, c2.x) < minX || Math.max(c1.x, c2.x) > maxX) {
      for (const t of turningPoints(from.x, c1.x, c2.x, to.x)) {
        const { x } = segmentPoint(s, t);
        minX = Math.min(minX, x);
        maxX = Math.max(maxX, x);
      }
    }
    if (Math.min(c1.y, c2.y) < minY || Math.max(c1.y, c2.y) > maxY) {
      for (const t of turningPoints(from.y, c1.y, c2.y, to.y)) {
        const { y } = segmentPoint(s, t);
        minY = Math.min(minY, y);
        maxY = Math.max(maxY, y);
      }
    }
  }
  return { minX, minY, maxX, maxY };
}

/** Parameters inside 0..1 where one coordinate of a cubic stands still, in rising order. */
export function turningPoints(p0: number, p1: number, p2: number, p3: number): number[] {
  const a = p3 - 3 * p2 + 3 * p1 - p0;
  const b = p2 - 2 * p1 + p0;
  const c = p1 - p0;
  const inside: number[] = [];
  const root = b * b - a * c;
  if (root < 0) return inside;
  // The stable form of the quadratic formula for a t2 + 2 b t + c.
  const q = -(b + Math.sign(b || 1) * Math.sqrt(root));
  for (const t of [c / q, q / a]) if (t > 0 && t < 1 && !inside.includes(t)) inside.push(t);
  return inside.sort((s, t) => s - t);
}

/** Exact box around a path, from the roots of its derivatives. */
export function pathBounds(p: Path): Bounds {
  let bounds = segmentBounds(p.segments[0]);
  for (let i = 1; i < p.segments.length; i++) {
    const s = p.segments[i];
    if (s !== undefined) bounds = boundsUnion(bounds, segmentBounds(s));
  }
  return bounds;
}

export function boundsUnion(a: Bounds, b: Bounds): Bounds {
  return {
    minX: Math.min(a.minX, b.minX),
    minY: Math.min(a.minY, b.minY),
    maxX: Math.max(a.maxX, b.maxX),
    maxY: Math.max(a.maxY, b.maxY),
  };
}

/** Whether two boxes come nearer to each other than `margin` in both directions. */
export function boundsMeet(a: Bounds, b: Bounds, margin: number): boolean {
  return (
    a.minX - margin <= b.maxX &&
    b.minX - margin <= a.maxX &&
    a.minY - margin <= b.maxY &&
    b.minY - margin <= a.maxY
  );
}
