import {
  curveBetween,
  direction,
  distance,
  linePath,
  outward,
  type Point,
  pathEndTangent,
  scale,
} from '../geometry/index.ts';
import { edgeEnd, edgeOf, edgeStart, type Piece, reshape } from '../piece/index.ts';
import { turnEnd } from './turn-end.ts';

/**
 * Moves the foot of the side seam and, if wished, the waist at the centre of an uncut bodice half. The side is drawn
 * straight again, and waist and armhole so that both still meet it square.
 */
export function moveFoot(piece: Piece, foot: Point, waistCentre: Point = edgeEnd(piece, 'waist')): Piece {
  const offSide = outward(direction(edgeStart(piece, 'side'), foot));
  const waist = edgeOf(piece, 'waist').path;
  return reshape(piece, {
    side: linePath(edgeStart(piece, 'side'), foot),
    waist: curveBetween(foot, scale(offSide, -1), waistCentre, pathEndTangent(waist)),
    centre: linePath(waistCentre, edgeEnd(piece, 'centre')),
    armhole: turnEnd(edgeOf(piece, 'armhole').path, offSide),
  });
}

/** Steepest lean of a side seam, as a share of its length sideways. */
const MOST_LEAN = 0.7;

/**
 * Where the foot of the side seam lies when it is moved `by` mm away from the centre and the seam keeps its length,
 * so that it still agrees with the other half. Null when the seam would lean more than can be sewn.
 */
export function footMovedOut(piece: Piece, by: number): Point | null {
  const [underarm, foot] = [edgeStart(piece, 'side'), edgeEnd(piece, 'side')];
  const length = distance(underarm, foot);
  const across = foot.x + by - underarm.x;
  if (Math.abs(across) > MOST_LEAN * length) return null;
  return { x: foot.x + by, y: underarm.y + Math.sqrt(length * length - across * across) };
}
