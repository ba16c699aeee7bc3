import {
  add,
  curveBetween,
  curveOfLength,
  curveThrough,
  dot,
  linePath,
  outlineContains,
  outlineSelfCrossings,
  outward,
  type Path,
  type Point,
  pathAt,
  pathEnd,
  pathEndTangent,
  pathLength,
  pathNearest,
  pathRotate,
  pathSlice,
  pathStart,
  pathStartTangent,
  rotate,
  scale,
  subtract,
} from '../geometry/index.ts';
import {
  type EdgeName,
  edgeOf,
  type Garment,
  outlineOf,
  type Piece,
  replaceEdge,
  reshape,
  withPiece,
} from '../piece/index.ts';
import { movedHollow } from './moved-hollow.ts';
import { foldedSeam, seamsOverParts } from './own-seams.ts';

/** A dart in the shoulder: its middle lies this far from the neck point, its mouth is so wide, its legs so long. */
export interface ShoulderDart {
  readonly middle: number;
  readonly width: number;
  readonly length: number;
}

/** What lies beyond the dart, toward the arm; what lies toward the neck keeps the name of the shoulder. */
const OUTER_SHOULDER: EdgeName = 'shoulder-2';
/** The legs in the order in which the outline is walked: first the one toward the neck. */
const LEGS: readonly [EdgeName, EdgeName] = ['shoulder-dart-inner', 'shoulder-dart-outer'];

/** Nearest that the tip of a dart may come to any other edge, mm. */
const CLEAR = 10;
/** Places by which the armhole is drawn again, as shares of its length. */
const PLACES = [0.2, 0.4, 0.6, 0.8] as const;

type Darted =
  | { readonly ok: true; readonly piece: Piece }
  | { readonly ok: false; readonly why: 'tip-outside' | 'armhole' };

/**
 * Cuts a dart into the shoulder, opened by turning what lies beyond it about the tip. Both parts of the shoulder meet
 * their leg square, so that it runs through when the dart is sewn, and together are as long as before. The armhole
 * keeps its length and still meets the shoulder at the same angle: what is sewn to it fits.
 */
export function cutShoulderDart(piece: Piece, dart: ShoulderDart): Darted {
  const path = edgeOf(piece, 'shoulder').path;
  const { point: from, tangent } = pathAt(path, dart.middle);
  const tip = add(from, scale(outward(tangent), -dart.length));
  if (!hasRoom(piece, tip)) return { ok: false, why: 'tip-outside' };
  const angle = 2 * Math.asin(dart.width / 2 / dart.length);
  const outer = outerPart(pathSlice(path, dart.middle, pathLength(path)), angle, tip);
  if (outer === null) return { ok: false, why: 'armhole' };
  const armhole = armholeFrom(edgeOf(piece, 'armhole').path, pathEnd(outer));
  if (armhole === null) return { ok: false, why: 'armhole' };
  const edge = edgeOf(piece, 'shoulder');
  // The piece is open at the shoulder tip until both of its edges there are in place.
  const opened = reshape(piece, { armhole, shoulder: linePath(pathStart(path), pathEnd(outer)) });
  const darted = replaceEdge(opened, 'shoulder', [
    { ...edge, path: pathSlice(path, 0, dart.middle) },
    { name: LEGS[0], kind: 'dart', path: linePath(from, tip) },
    { name: LEGS[1], kind: 'dart', path: linePath(tip, pathStart(outer)) },
    { ...edge, name: OUTER_SHOULDER, path: outer },
  ]);
  return outlineSelfCrossings(outlineOf(darted)).length > 0
    ? { ok: false, why: 'armhole' }
    : { ok: true, piece: darted };
}

/** The piece with its shoulder drawn on by so much at the arm; the armhole keeps its length. Null where it can't. */
export function lengthenShoulder(piece: Piece, by: number): Piece | null {
  const path = edgeOf(piece, 'shoulder').path;
  const tip = add(pathEnd(path), scale(pathEndTangent(path), by));
  const armhole = armholeFrom(edgeOf(piece, 'armhole').path, tip);
  if (armhole === null) return null;
  const longer = reshape(piece, { shoulder: linePath(pathStart(path), tip), armhole });
  return outlineSelfCrossings(outlineOf(longer)).length > 0 ? null : longer;
}

/** The garment with the darted piece in it; its shoulder seams run over both parts, and the dart is sewn. */
export function withShoulderDart(garment: Garment, piece: Piece): Garment {
  const dress = withPiece(garment, piece);
  const seams = seamsOverParts(dress.seams, piece.id, 'shoulder', ['shoulder', OUTER_SHOULDER]);
  const closed = foldedSeam(`shoulder-dart-${piece.id}`, 'dart', piece.id, LEGS, 2);
  return { ...dress, seams: [...seams, { ...closed, smoothStart: true }] };
}

/** The lines of a piece that a dart in its shoulder, or a longer shoulder, has changed. */
export const shoulderLines = (piece: Piece): readonly Path[] =>
  piece.edges.filter((edge) => ['shoulder', 'armhole', 'dart'].includes(edge.kind)).map((edge) => edge.path);

/**
 * What lies beyond the dart, as long as it was: it leaves the turned leg square and bends back until it arrives at the
 * tip in the direction of the plain shoulder. Turned as a whole it would bring the tip down by twice as much, and
 * the armhole, to be as long as before, would have to be hollowed far into the back.
 */
function outerPart(plain: Path, angle: number, tip: Point): Path | null {
  const length = pathLength(plain);
  const along = pathStartTangent(plain);
  const mouth = pathStart(pathRotate(plain, angle, tip));
  const chord = (length * Math.sin(angle / 2)) / (angle / 2);
  const end = add(mouth, scale(rotate(along, angle / 2), chord));
  return curveOfLength(curveBetween(mouth, rotate(along, angle), end, pathEndTangent(plain)), length);
}

/** The armhole brought to another shoulder tip, which it leaves as before; its length stays what it was. */
function armholeFrom(armhole: Path, tip: Point): Path | null {
  const length = pathLength(armhole);
  const start = pathStartTangent(armhole);
  const inner = movedHollow(armhole, length, PLACES, subtract(tip, pathStart(armhole)));
  const drawn = curveThrough([tip, ...inner, pathEnd(armhole)], { start, end: pathEndTangent(armhole) });
  const found = curveOfLength(drawn, length);
  return found !== null && dot(pathStartTangent(found), start) > 0.999 ? found : null;
}

function hasRoom(piece: Piece, tip: Point): boolean {
  return (
    outlineContains(outlineOf(piece), tip) &&
    piece.edges.every(({ name, path }) => name === 'shoulder' || pathNearest(path, tip).distance >= CLEAR)
  );
}
