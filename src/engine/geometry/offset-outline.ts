import { pathCrossings } from './crossings.ts';
import { pathLength } from './length.ts';
import { pathOffset } from './offset.ts';
import { pathEnd, pathEndTangent, pathExtend, pathStart, pathStartTangent, pathWithEnds } from './path.ts';
import {
  add,
  angleBetween,
  cross,
  distance,
  dot,
  lineCrossing,
  midpoint,
  scale,
  subtract,
} from './points.ts';
import { line } from './segment.ts';
import { pathSlice } from './split.ts';
import type { Path, Point } from './types.ts';

/** A corner may reach this many times the greater of its two distances from the original corner. */
const MITRE_LIMIT = 4;
/** Ends nearer than this are drawn together, mm. */
const WELD = 0.01;

/** Edges that turn by less than this run on smoothly enough for a step, radians. */
const SMOOTH = Math.PI / 4;

/** A corner between an arriving and a leaving edge that were moved. */
export interface Corner {
  readonly point: Point;
  /** The greater of the two distances, mm. */
  readonly reach: number;
  /** Joined by a straight step, since drawing both on to their crossing would eat up too much of one. */
  readonly step: boolean;
}

/** The corner between two edges of an outline that are moved by different distances, mm. */
export function cornerBetween(a: Path, b: Path, distanceA: number, distanceB: number): Corner {
  const [arriving, leaving] = [pathEndTangent(a), pathStartTangent(b)];
  const reach = Math.max(Math.abs(distanceA), Math.abs(distanceB));
  const sine = cross(arriving, leaving);
  const cosine = dot(arriving, leaving);
  // How far each edge would be drawn on to the crossing if both were straight; negative: cut back.
  const onA = distanceB - distanceA * cosine;
  const onB = distanceA - distanceB * cosine;
  const cutBack = Math.max(-onA * Math.sign(sine), -onB * Math.sign(sine));
  const step = angleBetween(arriving, leaving) < SMOOTH && cutBack > reach * Math.abs(sine) + WELD;
  return { point: pathEnd(a), reach, step };
}

/**
 * The edges of a closed outline, each moved parallel by its own distance in mm (positive = outward,
 * negative = inward) and drawn on or trimmed to meet its neighbours. Same number and order of edges as
 * given; each result starts where the one before ends.
 *
 * Corners: drawn on straight to the crossing, up to four times the greater distance; a sharper corner is
 * squared off; edges that run on smoothly with unlike distances are joined by a straight step. Step and
 * squared end belong to the earlier edge. A distance of zero leaves an edge where it is.
 *
 * Limits: an edge that the distances swallow altogether shrinks to a short straight link between its
 * neighbours; `outlineSelfCrossings` tells whether that left a loop. Throws when the lists differ in length.
 */
export function offsetOutline(paths: readonly Path[], distances: readonly number[]): readonly Path[] {
  if (paths.length !== distances.length) throw new Error('One distance is needed for each edge.');
  const parallels = paths.map((p, i) => pathOffset(p, distances[i] ?? 0));
  const n = paths.length;
  const corners = paths.map((p, i) =>
    cornerBetween(p, paths[(i + 1) % n] ?? p, distances[i] ?? 0, distances[(i + 1) % n] ?? 0),
  );
  return meetAtCorners(parallels, corners);
}

/** Where a path ends or starts anew, as a length on it (negative or beyond its length: drawn on straight). */
interface Meeting {
  readonly endOfA: number;
  readonly startOfB: number;
  /** The common point; null when a straight bridge leads to the next path instead. */
  readonly point: Point | null;
}

/**
 * Draws on or trims the paths of a ring so that each meets the next; `corners[i]` lies between path i and the
 * one after it. See `offsetOutline`.
 */
export function meetAtCorners(paths: readonly Path[], corners: readonly Corner[]): readonly Path[] {
  const n = paths.length;
  const meetings = paths.map((p, i) =>
    meet(p, paths[(i + 1) % n] ?? p, corners[i] ?? { point: pathEnd(p), reach: 0, step: true }),
  );
  const cut = paths.map((p, i) => {
    const from = meetings[(i + n - 1) % n]?.startOfB ?? 0;
    const to = meetings[i]?.endOfA ?? pathLength(p);
    return stretchOf(p, from, to);
  });
  // Ends that meet become the very same point; a bridge is added to the earlier path.
  const joints = cut.map((p, i) => meetings[i]?.point ?? pathStart(cut[(i + 1) % n] ?? p));
  return cut.map((p, i) => {
    const from = joints[(i + n - 1) % n] ?? pathStart(p);
    const to = joints[i] ?? pathEnd(p);
    if (meetings[i]?.point) return pathWithEnds(p, from, to);
    const own = pathWithEnds(p, from, pathEnd(p));
    return { segments: [...own.segments, line(pathEnd(own), to)] };
  });
}

function meet(a: Path, b: Path, corner: Corner): Meeting {
  const lengthA = pathLength(a);
  const gap = distance(pathEnd(a), pathStart(b));
  if (gap <= WELD) return { endOfA: lengthA, startOfB: 0, point: midpoint(pathEnd(a), pathStart(b)) };
  if (corner.step) return { endOfA: lengthA, startOfB: 0, point: null };
  const limit = MITRE_LIMIT * corner.reach;
  const tip = tipAhead(a, b);
  if (tip !== null && distance(tip, corner.point) <= limit) {
    return {
      endOfA: lengthA + distance(pathEnd(a), tip),
      startOfB: -distance(pathStart(b), tip),
      point: tip,
    };
  }
  const far = limit + gap;
  let best: Meeting | null = null;
  let least = Number.POSITIVE_INFINITY;
  for (const hit of pathCrossings(pathExtend(a, { end: far }), pathExtend(b, { start: far }))) {
    const cost = Math.abs(hit.atA - lengthA) + Math.abs(hit.atB - far);
    if (cost < least && distance(hit.point, corner.point) <= limit) {
      least = cost;
      best = { endOfA: hit.atA, startOfB: hit.atB - far, point: hit.point };
    }
  }
  if (best !== null) return best;
  // Sharper than a right angle: squared off one reach beyond the corner. Otherwise a straight step.
  const turnsBack = dot(pathEndTangent(a), pathStartTangent(b)) < 0;
  const beyond = turnsBack ? corner.reach : 0;
  return { endOfA: lengthA + beyond, startOfB: -beyond, point: null };
}

/** Where both go on straight and meet ahead of `a` and before `b`: the ordinary outward corner. */
function tipAhead(a: Path, b: Path): Point | null {
  const [end, arriving] = [pathEnd(a), pathEndTangent(a)];
  const [start, leaving] = [pathStart(b), pathStartTangent(b)];
  const tip = lineCrossing(end, arriving, start, leaving);
  if (tip === null) return null;
  return dot(subtract(tip, end), arriving) >= 0 && dot(subtract(start, tip), leaving) >= 0 ? tip : null;
}

function stretchOf(p: Path, from: number, to: number): Path {
  const length = pathLength(p);
  const before = Math.max(0, -from);
  const longer = pathExtend(p, { start: before, end: Math.max(0, to - length) });
  if (to - from > 1e-6) return pathSlice(longer, from + before, to + before);
  // Swallowed by its neighbours.
  const place = (at: number) =>
    at < 0
      ? add(pathStart(p), scale(pathStartTangent(p), at))
      : add(pathEnd(p), scale(pathEndTangent(p), Math.max(0, at - length)));
  return { segments: [line(place(from), place(to))] };
}
