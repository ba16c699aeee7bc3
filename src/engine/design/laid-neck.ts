import {
  add,
  curveBetween,
  type Path,
  type Point,
  pathAt,
  pathJoin,
  pathLength,
  pathMap,
  pathMirrorLine,
  pathReverse,
  pathRotate,
  pathSlice,
  pathStart,
  pathStartTangent,
  pathTranslate,
  subtract,
  type Vector,
} from '../geometry/index.ts';
import { edgeEnd, edgeOf, edgeStart, type Garment, type Piece, pieceOf } from '../piece/index.ts';
import { standPastCentre } from './neck-ring.ts';

/** Half the neck laid out flat, front and back together at the shoulder, in the coordinates of the front. */
export interface LaidNeck {
  /** From the centre front over the shoulder to the centre back, one smooth line. */
  readonly path: Path;
  /** From the neck down the centre back, unit. */
  readonly downBack: Vector;
  /** Outlines of the two halves as they lie, for the drawing. */
  readonly lines: readonly Path[];
}

/** Half the neck is at most so far from its shoulder drawn anew, where front and back meet at an angle, mm. */
const SMOOTHED = 20;

/**
 * Lays the back to the front at the shoulder, neck points together and the shoulder tips over each other by
 * `overlap` mm, and makes the neck `shorter` mm shorter than it is, evenly. Null when a half has no plain shoulder.
 */
export function layNeck(garment: Garment, overlap: number, shorter: number): LaidNeck | null {
  const [front, back] = [wholeHalf(garment, 'front'), wholeHalf(garment, 'back')];
  if (front === null || back === null) return null;
  const neckPoint = edgeStart(front, 'shoulder');
  const lay = backOnFront(front, back, overlap);
  const frontNeck = edgeOf(front, 'neckline').path;
  const laidBack = lay(backNeck(back));
  const path = smoothed(frontNeck, pathReverse(laidBack));
  const k = (pathLength(frontNeck) + pathLength(laidBack) - shorter) / pathLength(path);
  const shrink = { a: k, b: 0, c: 0, d: k, e: neckPoint.x * (1 - k), f: neckPoint.y * (1 - k) };
  const downBack = pathStartTangent(lay({ segments: [down(edgeEnd(back, 'centre'))] }));
  return {
    path: pathMap(path, shrink),
    downBack,
    lines: [...front.edges.map((edge) => edge.path), ...back.edges.map((edge) => lay(edge.path))],
  };
}

/** Overlapped by more than this share of its length, a shoulder makes a collar stand up (our own limit). */
const MOST_OVERLAP = 0.4;

export function mostOverlap(garment: Garment): number {
  const front = wholeHalf(garment, 'front');
  return front === null ? 0 : pathLength(edgeOf(front, 'shoulder').path) * MOST_OVERLAP;
}

const down = (from: Point) => ({ kind: 'line', from, to: add(from, { x: 0, y: 1 }) }) as const;

function wholeHalf(garment: Garment, half: 'front' | 'back'): Piece | null {
  const piece = garment.whole[half] ?? pieceOf(garment, half);
  const has = (name: string): boolean => piece.edges.some((edge) => edge.name === name);
  return has('neckline') && has('shoulder') && has('centre') ? piece : null;
}

function backNeck(back: Piece): Path {
  const neck = edgeOf(back, 'neckline').path;
  const stand = standPastCentre(neck);
  return stand === 0 ? neck : pathSlice(neck, stand, pathLength(neck));
}

function backOnFront(front: Piece, back: Piece, overlap: number): (path: Path) => Path {
  const [onto, from] = [edgeOf(front, 'shoulder').path, edgeOf(back, 'shoulder').path];
  const [neckPoint, backPoint] = [pathStart(onto), pathStart(from)];
  const [along, backAlong] = [pathStartTangent(onto), pathStartTangent(from)];
  const turn = Math.atan2(along.y, along.x) - Math.atan2(backAlong.y, backAlong.x);
  const over = overlap / pathLength(onto);
  return (path) =>
    pathRotate(
      pathTranslate(
        pathMirrorLine(path, backPoint, add(backPoint, backAlong)),
        subtract(neckPoint, backPoint),
      ),
      turn + over,
      neckPoint,
    );
}

/** Joins the two halves of the neck and draws the stretch over the shoulder anew, in one curve. */
function smoothed(front: Path, back: Path): Path {
  const [lengthFront, lengthBack] = [pathLength(front), pathLength(back)];
  const reach = Math.min(SMOOTHED, lengthFront / 3, lengthBack / 3);
  const [last, first] = [pathAt(front, lengthFront - reach), pathAt(back, reach)];
  return pathJoin(
    pathSlice(front, 0, lengthFront - reach),
    curveBetween(last.point, last.tangent, first.point, first.tangent),
    pathSlice(back, reach, lengthBack),
  );
}
