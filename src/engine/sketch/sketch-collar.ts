import {
  add,
  cross,
  direction,
  distance,
  dot,
  linePath,
  outward,
  type Path,
  type Point,
  pathAt,
  pathEnd,
  pathFlatten,
  pathLength,
  pathMirrorX,
  pathNearest,
  pathStart,
  scale,
  subtract,
  type Vector,
} from '../geometry/index.ts';
import { type Edge, findEdge, type Garment, type Piece } from '../piece/index.ts';
import type { SketchLine, SketchSide } from './sketch.ts';
import { bothHalves } from './sketch-bodice.ts';
import { bothOn, type LaidOn, NOTHING_ON } from './sketch-cover.ts';
import { neckOf } from './sketch-neck.ts';
import { closedShape } from './sketch-path.ts';
import { ruffleOn } from './sketch-strip.ts';

/** So finely a collar is carried from its pattern to the neck, mm. */
const FINE = 0.1;
/** A collar stands up by no more than this share of its width; one that stands more is no flat collar. */
const MOST_STAND = 0.25;

/** A place of a collar: how far along the neck of its half, from the centre front, and where beside that place. */
interface BesideNeck {
  readonly at: number;
  readonly along: number;
  readonly away: number;
}

/** Half a collar by its edges. An end that lay on a fold is no edge any more once the maker has opened it out. */
interface Collar {
  readonly piece: Piece;
  /** From the centre front to the centre back. */
  readonly neck: Path;
  /** From the centre back to the front. */
  readonly outer: Path;
  readonly front: Edge | undefined;
  readonly back: Edge | undefined;
}

/** The collar that is sewn round the neck; null where there is none, or where it is in parts that no longer fit. */
function halfCollar(garment: Garment): Collar | null {
  const uses = garment.seams.filter(({ name }) => name === 'collar').flatMap(({ b }) => b);
  const piece = garment.pieces.find(({ id }) => uses.every((use) => use.piece === id));
  if (uses.length === 0 || piece === undefined) return null;
  const [neck, outer] = [findEdge(piece, 'neck'), findEdge(piece, 'outer')];
  if (neck === undefined || outer === undefined) return null;
  const [front, back] = [findEdge(piece, 'front'), findEdge(piece, 'back')];
  return { piece, neck: neck.path, outer: outer.path, front, back };
}

/**
 * The collar as it lies on the dress: each of its places keeps its place along the neck and its distance from it. At
 * the neck it stands up by what its outer edge is too short to lie flat, and falls over.
 */
export function sketchCollar(garment: Garment, side: SketchSide): LaidOn {
  const collar = halfCollar(garment);
  const [front, back] = [neckOf(garment, 'front'), neckOf(garment, 'back')];
  if (collar === null || front === null || back === null) return NOTHING_ON;
  const halves = { front: pathLength(front), back: pathLength(back) };
  const stand = standOf(collar, front, back);
  // It rises from nothing at the centre front to its full height at the shoulder.
  const rise = (at: number): number => {
    const share = Math.min(1, Math.max(0, at / halves.front));
    return stand * share * share * (3 - 2 * share);
  };
  const outer = outerEdge(collar, alongDress(collar.neck, front, halves.front + halves.back));
  const neck = side === 'front' ? front : back;
  const fromFront = (own: number): number => (side === 'front' ? own : halves.front + halves.back - own);
  const place = ({ at, along, away }: BesideNeck): Point => {
    // Drawn in straight toward its place on the neck, so that it stays in order with its neighbours round a corner.
    const off = Math.hypot(along, away);
    const near = off === 0 ? 0 : (off - 2 * rise(at)) / off;
    return beside(neck, fromFront(at), (side === 'front' ? along : -along) * near, away * near);
  };
  const fold = linePoints(placesOf(neck).map((own) => beside(neck, own, 0, -rise(fromFront(own)))));
  const edgeLine = linePoints(partOf(outer, side, halves.front).map(place));
  if (fold === null || edgeLine === null) return NOTHING_ON;
  const shape = closedShape(fold, edgeLine);
  return bothOn(
    {
      lines: [
        ...bothHalves('outline', fold),
        ...bothHalves('outline', edgeLine),
        ...endAtBack(collar, side, fold, edgeLine),
      ],
      covers: [shape, pathMirrorX(shape)],
    },
    ruffleOn(garment, collar.piece, 'outer', edgeLine, 'left'),
  );
}

/** Where the collar parts or is joined at the centre back. */
function endAtBack({ back }: Collar, side: SketchSide, fold: Path, rim: Path): readonly SketchLine[] {
  if (side === 'front' || back === undefined || back.kind === 'fold') return [];
  const stroke = back.kind === 'join' ? 'seam' : 'outline';
  return [{ stroke, path: linePath(pathStart(fold), pathEnd(rim)) }];
}

/** Outer edge and front end, from the centre back to the neck at the centre front; a fold is no edge. */
function outerEdge({ neck, outer, front }: Collar, onDress: (at: number) => number): readonly BesideNeck[] {
  const outline = [outer, ...(front === undefined || front.kind === 'fold' ? [] : [front.path])];
  return outline
    .flatMap((path) => pathFlatten(path, FINE))
    .map((p) => {
      const near = pathNearest(neck, p);
      const tangent = wayAt(neck, near.at);
      const off = subtract(p, near.point);
      return {
        at: onDress(near.at),
        along: dot(off, tangent),
        away: -dot(off, outward(tangent)),
      };
    });
}

/** At the corner of a square neck the way is that between both sides, so that the collar turns with the dress, mm. */
const CORNER = 3;

/** The direction of a line about a place of it. */
function wayAt(path: Path, at: number): Vector {
  const reach = Math.min(CORNER, at, pathLength(path) - at);
  if (reach < FINE) return pathAt(path, at).tangent;
  return direction(pathAt(path, at - reach).point, pathAt(path, at + reach).point);
}

/** A place beside a line: on along it, and away from it to the right hand, mm. */
function beside(path: Path, at: number, along: number, away: number): Point {
  const own = Math.min(Math.max(0, at), pathLength(path));
  const way = wayAt(path, own);
  return add(add(pathAt(path, own).point, scale(way, along)), scale(outward(way), -away));
}

/** Places along a line between which it is as good as straight, mm from its start. */
function placesOf(path: Path): readonly number[] {
  let at = 0;
  return pathFlatten(path, FINE).map((p, i, all) => {
    at += distance(all[i - 1] ?? p, p);
    return at;
  });
}

function linePoints(points: readonly Point[]): Path | null {
  const [a, b, ...more] = points;
  return a === undefined || b === undefined ? null : linePath(a, b, ...more);
}

/** The last stretch before the shoulder, where a collar is smoothed, mm. */
const SMOOTHED = 20;

/**
 * From a place on the neck edge of the collar to the place on the neck of the dress, both from the centre front. The
 * front of the collar is traced from the front and drawn in toward the neck point, so its corners stay corners.
 */
function alongDress(collarNeck: Path, front: Path, half: number): (at: number) => number {
  const [length, point] = [pathLength(collarNeck), pathEnd(front)];
  const drawnIn = distance(pathStart(collarNeck), point) / distance(pathStart(front), point);
  const traced = Math.max(0, pathLength(front) - SMOOTHED);
  const [from, rest] = [traced * drawnIn, half - traced];
  return (at) => (at < from ? at / drawnIn : traced + ((at - from) / (length - from)) * rest);
}

/** What of the edge lies on this side, from the shoulder to the centre; it is cut at the shoulder. */
function partOf(edge: readonly BesideNeck[], side: SketchSide, shoulder: number): readonly BesideNeck[] {
  const over = edge.findIndex(({ at }) => at <= shoulder);
  const [before, after] = [edge[over - 1], edge[over]];
  if (before === undefined || after === undefined) return [];
  const share = (before.at - shoulder) / (before.at - after.at);
  const mix = (p: number, q: number): number => p + (q - p) * share;
  const cut: BesideNeck = {
    at: shoulder,
    along: mix(before.along, after.along),
    away: mix(before.away, after.away),
  };
  return [cut, ...(side === 'front' ? edge.slice(over) : edge.slice(0, over).toReversed())];
}

/**
 * How high the collar stands above the seam at the shoulder and the back. Its outer edge lies where the dress is as
 * long round as it; what of the width is left goes up and down again.
 */
function standOf({ neck, outer }: Collar, front: Path, back: Path): number {
  const width = distance(pathEnd(neck), pathStart(outer));
  const onDress = pathLength(front) + pathLength(back);
  const turns = Math.abs(turning(front)) + Math.abs(turning(back));
  const reach = (pathLength(neck) - onDress + Math.abs(turning(neck)) * width) / turns;
  return Math.min(Math.max(0, (width - reach) / 2), width * MOST_STAND);
}

/** By how much a line turns in all, radians. */
function turning(path: Path): number {
  const points = pathFlatten(path, FINE);
  let sum = 0;
  for (let i = 2; i < points.length; i++) {
    const [a, b, c] = [points[i - 2], points[i - 1], points[i]];
    if (a === undefined || b === undefined || c === undefined) continue;
    const [u, v] = [subtract(b, a), subtract(c, b)];
    sum += Math.atan2(cross(u, v), dot(u, v));
  }
  return sum;
}
