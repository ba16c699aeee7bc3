import { bernsteinRoots } from './bernstein.ts';
import { boundsMeet, segmentBounds, turningPoints } from './bounds.ts';
import { segmentNearest } from './nearest.ts';
import { pathEnd, pathStart } from './path.ts';
import { cross, distance } from './points.ts';
import { segmentPart, segmentPoint } from './segment.ts';
import type { Cubic, Path, Point, Segment } from './types.ts';

/** A closed path: its end meets its start. */
export type Outline = Path;

/** Ends nearer than this meet, mm. */
const MEETS = 1e-6;

export function outlineIsClosed(o: Outline): boolean {
  return distance(pathStart(o), pathEnd(o)) <= MEETS;
}

/**
 * Enclosed area in mm2, exact also for curves (Green's theorem); positive when the cloth is on the right
 * hand.
 */
export function outlineArea(o: Outline): number {
  // Measured from the start point, so that a piece far from the origin loses no digits.
  const origin = pathStart(o);
  let sum = 0;
  for (const s of o.segments) {
    const p = { x: s.from.x - origin.x, y: s.from.y - origin.y };
    const q = { x: s.to.x - origin.x, y: s.to.y - origin.y };
    sum += cross(p, q) / 2;
    if (s.kind === 'cubic') sum += besideChord(s);
  }
  return sum;
}

/** Area between a cubic and its chord: the integral of half of B x B', worked out with `from` as origin. */
function besideChord(s: Cubic): number {
  const u = { x: s.c1.x - s.from.x, y: s.c1.y - s.from.y };
  const v = { x: s.c2.x - s.from.x, y: s.c2.y - s.from.y };
  const w = { x: s.to.x - s.from.x, y: s.to.y - s.from.y };
  return (3 / 20) * (cross(u, v) + cross(u, w) + 2 * cross(v, w));
}

/** Whether a point lies inside or on the line (within 1e-6 mm). Stretches wound twice count as inside. */
export function outlineContains(o: Outline, p: Point): boolean {
  let winding = 0;
  const box = { minX: p.x, maxX: p.x, minY: p.y, maxY: p.y };
  for (const s of o.segments) {
    const bounds = segmentBounds(s);
    if (boundsMeet(bounds, box, MEETS) && segmentNearest(s, p).distance <= MEETS) return true;
    if (bounds.maxX < p.x || bounds.minY > p.y || bounds.maxY < p.y) continue;
    for (const part of risingParts(s)) winding += passes(part, p);
  }
  return winding !== 0;
}

/** A segment cut where it turns over in y, so that each part crosses a level line at most once. */
function risingParts(s: Segment): Segment[] {
  if (s.kind === 'line') return [s];
  const times = [0, ...turningPoints(s.from.y, s.c1.y, s.c2.y, s.to.y), 1];
  const parts: Segment[] = [];
  for (const [i, t] of times.entries()) {
    const next = times[i + 1];
    if (next !== undefined) parts.push(segmentPart(s, t, next));
  }
  return parts;
}

/** +1 or -1 when a rising or falling part passes the level of `p` on its far side in x, else 0. */
function passes(s: Segment, p: Point): number {
  const down = s.from.y <= p.y;
  if (down === s.to.y <= p.y) return 0;
  return levelX(s, p.y) > p.x ? (down ? 1 : -1) : 0;
}

function levelX(s: Segment, y: number): number {
  if (s.kind === 'line') return s.from.x + ((s.to.x - s.from.x) * (y - s.from.y)) / (s.to.y - s.from.y);
  const [t] = bernsteinRoots([s.from.y - y, s.c1.y - y, s.c2.y - y, s.to.y - y]);
  return segmentPoint(s, t ?? (Math.abs(s.from.y - y) < Math.abs(s.to.y - y) ? 0 : 1)).x;
}
