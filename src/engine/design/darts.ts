import {
  curveBetween,
  direction,
  linePath,
  outward,
  type Point,
  pathAt,
  pathEnd,
  pathEndTangent,
  pathLength,
  pathStart,
  pathStartTangent,
  scale,
} from '../geometry/index.ts';
import { type Edge, type EdgeName, edgeOf, type Piece, replaceEdge, type Seam } from '../piece/index.ts';

/** A dart in the waist: its middle lies this far from the centre line, its mouth is so wide, its tip so high. */
export interface WaistDart {
  readonly middle: number;
  readonly width: number;
  readonly tipLevel: number;
}

/**
 * Cuts a dart into a waist edge. Both legs are equally long and straight up on either side of the tip; the waist is
 * drawn again so that it meets both legs square, and so runs through when the dart is sewn. The edge that is cut
 * keeps its name on the side of the side seam; what lies toward the centre is called `waist-2`, `waist-3`, ...
 */
export function cutWaistDart(piece: Piece, dart: WaistDart): Piece {
  const waist = waistEdgeAt(piece, dart.middle);
  const tip = { x: dart.middle, y: dart.tipLevel };
  const level = levelAt(waist, dart.middle);
  const outerMouth = { x: dart.middle + dart.width / 2, y: level };
  const innerMouth = { x: dart.middle - dart.width / 2, y: level };
  const count = piece.edges.filter((edge) => edge.kind === 'dart').length / 2 + 1;
  const [up, down] = [direction(outerMouth, tip), direction(tip, innerMouth)];
  const { path } = waist;
  return replaceEdge(piece, waist.name, [
    { ...waist, path: curveBetween(pathStart(path), pathStartTangent(path), outerMouth, outward(up)) },
    { name: dartLeg(count, 'outer'), kind: 'dart', path: linePath(outerMouth, tip) },
    { name: dartLeg(count, 'inner'), kind: 'dart', path: linePath(tip, innerMouth) },
    {
      ...waist,
      name: `waist-${count + 1}`,
      path: curveBetween(innerMouth, scale(outward(down), -1), pathEnd(path), pathEndTangent(path)),
    },
  ]);
}

/** Name of a leg: `outer` lies toward the side seam, `inner` toward the centre. */
export const dartLeg = (number: number, leg: 'outer' | 'inner'): EdgeName => `dart-${number}-${leg}`;

/** The seams that close the darts of a piece, each from its mouth to its tip. */
export function dartSeams(piece: Piece): readonly Seam[] {
  const count = piece.edges.filter((edge) => edge.kind === 'dart' && edge.name.endsWith('-outer')).length;
  return Array.from({ length: count }, (_, i) => ({
    id: `dart-${piece.id}-${i + 1}`,
    name: 'dart',
    a: [{ piece: piece.id, edge: dartLeg(i + 1, 'outer'), times: 2 }],
    b: [{ piece: piece.id, edge: dartLeg(i + 1, 'inner'), times: 2, reversed: true }],
    join: { kind: 'flat' },
    smoothStart: true,
    smoothEnd: false,
  }));
}

/** The waist edge that runs past this distance from the centre line. */
function waistEdgeAt(piece: Piece, x: number): Edge {
  const found = piece.edges.find(
    (edge) => edge.kind === 'waist' && pathStart(edge.path).x >= x && pathEnd(edge.path).x <= x,
  );
  return found ?? edgeOf(piece, 'waist');
}

/** How far down the waist lies at this distance from the centre line; it runs inward all the way. */
function levelAt(waist: Edge, x: number): number {
  let [low, high] = [0, pathLength(waist.path)];
  let at: Point = pathStart(waist.path);
  for (let i = 0; i < 50; i++) {
    const middle = (low + high) / 2;
    at = pathAt(waist.path, middle).point;
    if (at.x > x) low = middle;
    else high = middle;
  }
  return at.y;
}
