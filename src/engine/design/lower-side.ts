import {
  angleBetween,
  cross,
  curveBetween,
  curveOfLength,
  curveThrough,
  distance,
  dot,
  type Path,
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
import { movedHollow } from './moved-hollow.ts';

/** The lines of a half, or of its lining, as they run on the side of the lower shoulder. */
export interface LowerSide {
  /** The shoulder, part by part where a dart parts it and as long as on the higher side. */
  readonly shoulder: readonly Path[];
  /** From the lowered tip to the old outer edge; null where the shoulder ends at an armhole. */
  readonly overarm: Path | null;
  /** The upper part of the armhole, from the lowered tip until it runs into the drawn one; null after an overarm. */
  readonly armhole: Path | null;
  /** How far along the drawn edge round the arm the lines meet it, mm, and how much shorter that edge becomes, mm. */
  readonly joins: number;
  readonly loss: number;
}

/** What both halves must have alike, mm. */
interface LowerAlike {
  readonly loss: number;
  readonly overarm: number;
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
 * Turns the shoulder about the neck point until its tip lies `by` mm lower, so that it keeps its length. An armhole is
 * drawn from there into the old one; an overarm ends `by` further down the outer edge. What both halves must have
 * `alike` is kept where a curve can. Ask `hasWholeShoulder` and `mostLowered` first.
 */
export function lowerSide(piece: Piece, by: number, alike: LowerAlike | null): LowerSide {
  const opening = openingOf(piece);
  if (opening === undefined) throw new Error(`Piece "${piece.id}" has no edge round the arm.`);
  const turned = turnedShoulder(
    shoulderEdges(piece).map(({ path }) => path),
    by,
  );
  const overarm = findEdge(piece, 'overarm')?.path;
  if (overarm !== undefined) {
    const drawn = lowerOverarm(overarm, opening.path, turned, by);
    const path = alike === null ? drawn : (curveOfLength(drawn, alike.overarm) ?? drawn);
    return { shoulder: turned.parts, overarm: path, armhole: null, joins: by, loss: by };
  }
  const room = upToCorner(opening.path);
  const joins = Math.min(room, Math.max(EASY_JOIN.share * room, EASY_JOIN.times * by));
  const drawn = lowerArmhole(opening.path, turned, joins);
  const armhole = alike === null ? drawn : (curveOfLength(drawn, joins - alike.loss) ?? drawn);
  return { shoulder: turned.parts, overarm: null, armhole, joins, loss: joins - pathLength(armhole) };
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

/** The overarm leaves along the lowered shoulder and meets the outer edge, further down, at the angle that it had. */
function lowerOverarm(overarm: Path, edge: Path, shoulder: TurnedShoulder, by: number): Path {
  const end = pathAt(edge, by);
  const [before, after] = [pathStartTangent(edge), end.tangent];
  const bend = Math.atan2(cross(before, after), dot(before, after));
  return curveBetween(
    pathEnd(shoulder.last),
    pathEndTangent(shoulder.last),
    end.point,
    rotate(pathEndTangent(overarm), bend),
  );
}

/** Where along the redrawn part its inner points lie, as shares of it. */
const SHAPED_AT = [0.25, 0.5, 0.75];

/** The old armhole, moved with the lowered tip, until it runs into the drawn one. */
function lowerArmhole(edge: Path, shoulder: TurnedShoulder, joins: number): Path {
  const into = pathAt(edge, joins);
  const inner = movedHollow(edge, joins, SHAPED_AT, shoulder.tip);
  return curveThrough([pathEnd(shoulder.last), ...inner, into.point], {
    start: rotate(pathStartTangent(edge), shoulder.turn),
    end: into.tangent,
  });
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

/** The lines as they are marked: what follows each other along the shoulder seam is one line. */
export function lowerLines({ shoulder, overarm, armhole }: LowerSide): readonly Path[] {
  const runs: Path[] = [];
  for (const path of overarm === null ? shoulder : [...shoulder, overarm]) {
    const last = runs.at(-1);
    if (last !== undefined && distance(pathEnd(last), pathStart(path)) < 1e-6)
      runs[runs.length - 1] = pathJoin(last, path);
    else runs.push(path);
  }
  return armhole === null ? runs : [...runs, armhole];
}

/**
 * The lines of a facing, which follows the half from the neck outward or from the arm inward: its part of the lowered
 * seam, and all of the arm edge or nothing.
 */
export function facingLines(facing: Piece, half: LowerSide): readonly Path[] {
  const own = [...shoulderEdges(facing), ...facing.edges.filter(({ name }) => name === 'overarm')];
  const length = own.reduce((sum, { path }) => sum + pathLength(path), 0);
  const [first, last] = [half.shoulder[0], half.overarm ?? half.shoulder.at(-1)];
  if (first === undefined || last === undefined || length === 0) return [];
  if (openingOf(facing) === undefined) return [pathSlice(first, 0, Math.min(length, pathLength(first)))];
  const whole = pathLength(last);
  const part = pathSlice(last, Math.max(0, whole - length), whole);
  return half.armhole === null ? [part] : [part, half.armhole];
}
