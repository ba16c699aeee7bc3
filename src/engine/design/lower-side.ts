import {
  add,
  angleBetween,
  curveBetween,
  curveOfLength,
  distance,
  type Path,
  type Point,
  pathAt,
  pathEnd,
  pathEndTangent,
  pathJoin,
  pathLength,
  pathOf,
  pathRotate,
  pathSlice,
  pathStart,
  pathStartTangent,
  pathTranslate,
  rotate,
  scale,
  subtract,
  type Vector,
} from '../geometry/index.ts';
import { type Edge, findEdge, type Piece } from '../piece/index.ts';

/** The lines of a half, or of its lining, as they run on the side of the lower shoulder. */
export interface LowerSide {
  /** The shoulder, part by part where a dart parts it, and the overarm, each as long as on the higher side. */
  readonly seam: readonly Path[];
  /** The upper part of the armhole or sleeve edge, from the lowered tip until it runs into the drawn edge. */
  readonly opening: Path;
  /** How far along the drawn edge that is, mm, and how much shorter the edge becomes, mm. */
  readonly joins: number;
  readonly loss: number;
}

/** The lowered arm edge runs into the old one at half its length, or so many times lower than the tip, where there is room. */
const EASY_JOIN = { share: 0.5, times: 2.5 } as const;
/** It needs at least this many times the drop to bend smoothly. */
const LEAST_JOIN = 2;
/** A turn of an edge that counts as a corner, radians. */
const CORNER = 0.1;

export const shoulderEdges = (piece: Piece): readonly Edge[] =>
  piece.edges.filter(({ name, kind }) => kind === 'shoulder' && name.startsWith('shoulder'));

const openingOf = (piece: Piece): Edge | undefined =>
  findEdge(piece, 'armhole') ?? findEdge(piece, 'sleeve-edge');

/** Whether the piece carries a shoulder from the neck to the arm, with the edge that follows it. */
export const hasWholeShoulder = (piece: Piece): boolean =>
  findEdge(piece, 'neckline') !== undefined &&
  shoulderEdges(piece).length > 0 &&
  openingOf(piece) !== undefined;

/** The most, mm, by which the shoulder of this piece can be lowered before its arm edge has no room to be redrawn. */
export function mostLowered(piece: Piece): number {
  const opening = openingOf(piece);
  return opening === undefined ? 0 : upToCorner(opening.path) / LEAST_JOIN;
}

/**
 * Turns the shoulder about the neck point until its tip lies `by` mm lower, so that it keeps its length; the overarm
 * goes down with the tip; the arm edge is drawn from there into the old one. With a `loss` the arm edge loses just that
 * much, where a curve can. Ask `hasWholeShoulder` and `mostLowered` first.
 */
export function lowerSide(piece: Piece, by: number, loss: number | null): LowerSide {
  const opening = openingOf(piece);
  const shoulder = turnedShoulder(
    shoulderEdges(piece).map(({ path }) => path),
    by,
  );
  if (opening === undefined) throw new Error(`Piece "${piece.id}" has no edge round the arm.`);
  const overarm = findEdge(piece, 'overarm')?.path;
  const lowered = overarm === undefined ? null : lowerOverarm(overarm, shoulder);
  const edge = opening.path;
  const start = pathEnd(lowered ?? shoulder.last);
  const leaving = lowered === null ? rotate(pathStartTangent(edge), shoulder.turn) : pathStartTangent(edge);
  const room = upToCorner(edge);
  const joins = Math.min(room, Math.max(EASY_JOIN.share * room, EASY_JOIN.times * by));
  const into = pathAt(edge, joins);
  const drawn = curveBetween(start, leaving, into.point, into.tangent);
  const redrawn = loss === null ? drawn : (curveOfLength(drawn, joins - loss) ?? drawn);
  return {
    seam: lowered === null ? shoulder.parts : [...shoulder.parts, lowered],
    opening: redrawn,
    joins,
    loss: joins - pathLength(redrawn),
  };
}

interface TurnedShoulder {
  readonly parts: readonly Path[];
  readonly last: Path;
  /** By which it was turned, radians, and how far the tip moved. */
  readonly turn: number;
  readonly tip: Vector;
}

function turnedShoulder(parts: readonly Path[], by: number): TurnedShoulder {
  const [first] = parts;
  if (first === undefined) throw new Error('There is no shoulder to lower.');
  const length = parts.reduce((sum, path) => sum + pathLength(path), 0);
  const along = pathStartTangent(first);
  const slope = Math.asin(along.y);
  const turn = Math.asin(Math.min(1, along.y + by / length)) - slope;
  // A part beyond a dart begins where the part before it ends once the dart is sewn.
  const moved = (sewn: number): Vector => subtract(scale(rotate(along, turn), sewn), scale(along, sewn));
  let sewn = 0;
  const turned = parts.map((path) => {
    const at = moved(sewn);
    sewn += pathLength(path);
    return pathTranslate(pathRotate(path, turn, pathStart(path)), at);
  });
  return { parts: turned, last: turned.at(-1) ?? first, turn, tip: moved(length) };
}

/** The overarm goes down with the tip, leaves along the lowered shoulder, and keeps its length and its other end's direction. */
function lowerOverarm(overarm: Path, shoulder: TurnedShoulder): Path {
  const from = pathEnd(shoulder.last);
  const to: Point = add(pathEnd(overarm), subtract(from, pathStart(overarm)));
  const drawn = curveBetween(from, pathEndTangent(shoulder.last), to, pathEndTangent(overarm));
  return (
    curveOfLength(drawn, pathLength(overarm)) ?? pathTranslate(overarm, subtract(from, pathStart(overarm)))
  );
}

/** Length of an edge from its start to its first corner, mm. */
function upToCorner(path: Path): number {
  let length = 0;
  let arriving: Vector | null = null;
  for (const segment of path.segments) {
    const own = pathOf(segment);
    // What no one could see has no direction.
    if (pathLength(own) < 1e-6) continue;
    if (arriving !== null && angleBetween(arriving, pathStartTangent(own)) > CORNER) return length;
    arriving = pathEndTangent(own);
    length += pathLength(own);
  }
  return length;
}

/** Runs that follow each other become one, for one line on paper. */
export function joined(paths: readonly Path[]): readonly Path[] {
  const runs: Path[] = [];
  for (const path of paths) {
    const last = runs.at(-1);
    if (last !== undefined && distance(pathEnd(last), pathStart(path)) < 1e-6)
      runs[runs.length - 1] = pathJoin(last, path);
    else runs.push(path);
  }
  return runs;
}

/**
 * The lines of a facing, which follows the half from the neck outward or from the arm inward: its part of the lowered
 * seam, and all of the arm edge or nothing.
 */
export function facingLines(facing: Piece, half: LowerSide): readonly Path[] {
  const own = [...shoulderEdges(facing), ...facing.edges.filter(({ name }) => name === 'overarm')];
  const length = own.reduce((sum, { path }) => sum + pathLength(path), 0);
  const [first, last] = [half.seam[0], half.seam.at(-1)];
  if (first === undefined || last === undefined || length === 0) return [];
  if (openingOf(facing) === undefined) return [pathSlice(first, 0, Math.min(length, pathLength(first)))];
  const whole = pathLength(last);
  return [pathSlice(last, Math.max(0, whole - length), whole), half.opening];
}
