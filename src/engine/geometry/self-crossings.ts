import { boundsMeet, segmentBounds } from './bounds.ts';
import { segmentLength, segmentLengthTo } from './length.ts';
import { outlineArea, outlineIsClosed } from './outline.ts';
import { pathEnd, pathFrom, pathWithEnds } from './path.ts';
import { add, distance, dot, subtract, vectorLength } from './points.ts';
import { segmentPoint, segmentTangent, segmentWithEnds } from './segment.ts';
import { cubicDoublePoint, segmentCrossings } from './segment-crossings.ts';
import { pathSplit } from './split.ts';
import type { Path, Point, Segment } from './types.ts';

/** A meeting this near to the common corner of two neighbours is that corner, mm. */
const CORNER = 1e-4;
/** A line as short as this is a rounding error between two ends that meet, mm. */
const NOTHING = 1e-9;
/** Boxes nearer than this are looked at, mm. */
const MEETS = 1e-6;
/** More loops than this have never been seen on an outline of a piece; a guard against an endless search. */
const MOST_LOOPS = 50;

/** A place where a path meets itself, by its two distances along the path, mm. */
interface SelfMeeting {
  readonly point: Point;
  readonly first: number;
  readonly second: number;
}

/**
 * Where an outline (or an open path) meets itself, other than at the corners that neighbours share. An
 * outline is simple when there are none. Neighbours that run back along each other are told by the end of
 * the common stretch.
 */
export function outlineSelfCrossings(o: Path): Point[] {
  return selfMeetings(o).map((m) => m.point);
}

/**
 * The outline without its loops: at each place where it crosses itself the part that encloses less is cut
 * off; a part that runs the wrong way round encloses less than nothing. Gives back the same outline when it is
 * simple. For outlines in our orientation, with the cloth on the right hand.
 */
export function outlineWithoutLoops(o: Path): Path {
  const cut = loopsCutOff(o);
  if (cut.simple) return cut.outline;
  // What is left may be no loop but a speck that runs backward; without it the outline may be simple.
  const again = loopsCutOff(withoutSpecks(cut.outline));
  return again.simple ? again.outline : cut.outline;
}

function loopsCutOff(o: Path): { readonly outline: Path; readonly simple: boolean } {
  let outline = o;
  for (let i = 0; i < MOST_LOOPS; i++) {
    const [meeting] = selfMeetings(outline);
    if (meeting === undefined) return { outline, simple: true };
    const parts = partsAt(outline, meeting);
    if (parts === null) break;
    const [loop, rest] = parts;
    outline = outlineArea(loop) < outlineArea(rest) ? rest : loop;
  }
  return { outline, simple: false };
}

/** Shorter bits of a parallel are thinner than any pen, and may run backward where its parts meet, mm. */
const SPECK = 0.03;

/** The path without its specks; what follows one begins where it began. */
function withoutSpecks(o: Path): Path {
  const kept: Segment[] = [];
  for (const s of o.segments) {
    const before = kept.at(-1);
    if (before !== undefined && segmentLength(s) < SPECK) continue;
    const meets = before === undefined || (before.to.x === s.from.x && before.to.y === s.from.y);
    kept.push(meets ? s : segmentWithEnds(s, before.to, s.to));
  }
  const [first, last] = [kept[0], kept.at(-1)];
  if (first === undefined || last === undefined || kept.length === o.segments.length) return o;
  return pathWithEnds(pathFrom(kept), first.from, outlineIsClosed(o) ? first.from : pathEnd(o));
}

/** The loop between both passages of a meeting, and what remains without it; both closed. */
function partsAt(o: Path, { point, first, second }: SelfMeeting): [Path, Path] | null {
  const [head, beyond] = pathSplit(o, Math.min(first, second));
  if (beyond === null) return null;
  const [loop, tail] = pathSplit(beyond, Math.abs(second - first));
  if (loop === null || (head === null && tail === null)) return null;
  const before = head === null ? [] : pathWithEnds(head, head.segments[0].from, point).segments;
  const after = tail === null ? [] : pathWithEnds(tail, point, o.segments[0].from).segments;
  return [pathWithEnds(loop, point, point), pathFrom([...before, ...after])];
}

function selfMeetings(o: Path): SelfMeeting[] {
  const found: SelfMeeting[] = [];
  const all = o.segments.filter((s) => s.kind === 'cubic' || distance(s.from, s.to) > NOTHING);
  const boxes = all.map(segmentBounds);
  const closed = outlineIsClosed(o);
  const placeOf = (i: number, t: number) => {
    let before = 0;
    for (const s of all.slice(0, i)) before += segmentLength(s);
    const s = all[i];
    return s === undefined ? before : before + segmentLengthTo(s, t);
  };
  const keep = (at: Point, i: number, ti: number, j: number, tj: number) => {
    if (found.some((f) => distance(f.point, at) <= CORNER)) return;
    found.push({ point: at, first: placeOf(i, ti), second: placeOf(j, tj) });
  };
  for (const [i, a] of all.entries()) {
    const boxA = segmentBounds(a);
    if (a.kind === 'cubic') {
      const double = cubicDoublePoint(a);
      if (double !== null) keep(segmentPoint(a, double.low), i, double.low, i, double.high);
    }
    for (let j = i + 1; j < all.length; j++) {
      const b = all[j];
      const boxB = boxes[j];
      if (b === undefined || boxB === undefined || !boundsMeet(boxA, boxB, MEETS)) continue;
      const corners: Point[] = [];
      if (j === i + 1) corners.push(a.to);
      if (closed && i === 0 && j === all.length - 1) corners.push(a.from);
      const [corner] = corners;
      if (corners.length === 1 && corner !== undefined && partAt(corner, j === i + 1 ? [a, b] : [b, a]))
        continue;
      for (const { point, ta, tb } of segmentCrossings(a, b)) {
        if (corners.every((c) => distance(c, point) > CORNER)) keep(point, i, ta, j, tb);
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
