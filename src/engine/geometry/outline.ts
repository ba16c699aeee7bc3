import { bernsteinRoots } from './bernstein.ts';
import { boundsMeet, segmentBounds, turningPoints } from './bounds.ts';
import { segmentNearest } from './nearest.ts';
import { pathEnd, pathStart } from './path.ts';
import { add, cross, distance, dot, subtract, vectorLength } from './points.ts';
import { segmentPart, segmentPoint, segmentTangent } from './segment.ts';
import { cubicDoublePoint, segmentCrossings } from './segment-crossings.ts';
import type { Cubic, Path, Point, Segment } from './types.ts';

/** A closed path: its end meets its start. */
export type Outline = Path;

/** Ends nearer than this meet, mm. */
const MEETS = 1e-6;
/** A meeting this near to the common corner of two neighbours is that corner, mm. */
const CORNER = 1e-4;

export function outlineIsClosed(o: Outline): boolean {
  return distance(pathStart(o), pathEnd(o)) <= MEETS;
}

/** Enclosed area in mm2, exact also for curves (Green's theorem); positive when the cloth is on the right hand. */
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

/**
 * Where an outline meets itself, other than at the corners that neighbours share. An outline is simple when
 * there are none. Neighbours that run back along each other are told by the end of the common stretch.
 */
export function outlineSelfCrossings(o: Outline): Point[] {
  const found: Point[] = [];
  const all = o.segments.filter((s) => s.kind === 'cubic' || distance(s.from, s.to) > 0);
  const closed = outlineIsClosed(o);
  for (const [i, a] of all.entries()) {
    if (a.kind === 'cubic') {
      const double = cubicDoublePoint(a);
      if (double !== null) keep(found, segmentPoint(a, double.low));
    }
    for (let j = i + 1; j < all.length; j++) {
      const b = all[j];
      if (b === undefined || !boundsMeet(segmentBounds(a), segmentBounds(b), MEETS)) continue;
      const corners: Point[] = [];
      if (j === i + 1) corners.push(a.to);
      if (closed && i === 0 && j === all.length - 1) corners.push(a.from);
      const [corner] = corners;
      if (corners.length === 1 && corner !== undefined && partAt(corner, j === i + 1 ? [a, b] : [b, a]))
        continue;
      for (const { point } of segmentCrossings(a, b)) {
        if (corners.every((corner) => distance(corner, point) > CORNER)) keep(found, point);
      }
    }
  }
  return found;
}

/**
 * Whether two neighbours lie on different sides of a line through their corner, square to the way through it:
 * then they meet nowhere else. Spares the long search along smooth joints, which most joints are.
 */
function partAt(corner: Point, [arriving, leaving]: readonly [Segment, Segment]): boolean {
  const way = add(segmentTangent(arriving, 1), segmentTangent(leaving, 0));
  const ahead = (p: Point) => dot(subtract(p, corner), way);
  const most = Math.max(...controls(arriving).map(ahead));
  const least = Math.min(...controls(leaving).map(ahead));
  return most <= MEETS && least >= -MEETS && vectorLength(way) > 0.1;
}

function controls(s: Segment): Point[] {
  return s.kind === 'line' ? [s.from, s.to] : [s.from, s.c1, s.c2, s.to];
}

function keep(found: Point[], p: Point): void {
  if (found.every((f) => distance(f, p) > CORNER)) found.push(p);
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
