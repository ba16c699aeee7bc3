import type { Half } from '../block/index.ts';
import {
  add,
  curveBetween,
  curveOfLength,
  curveThrough,
  type Path,
  type Point,
  pathAt,
  pathEnd,
  pathEndTangent,
  pathJoin,
  pathLength,
  pathMirrorX,
  pathReverse,
  pathRotate,
  pathSlice,
  pathStart,
  pathStartTangent,
  pathTranslate,
  rotate,
  subtract,
  type Vector,
} from '../geometry/index.ts';
import { edgeOf, type Piece, reshape } from '../piece/index.ts';

/** How far a straight sleeve is slashed and spread; lengths in mm. */
export interface SpreadWish {
  /** Added to the width between the notches of the cap, which is then gathered; 0 keeps the seam of the cap. */
  readonly top: number;
  /** Added to the length of the hem. */
  readonly hem: number;
  /** How much higher the top of the cap is drawn, where it is gathered. */
  readonly raise: number;
  /** Length of the cap below the notch, front and back: kept. */
  readonly plain: Readonly<Record<Half, number>>;
}

export type SpreadSleeve =
  | {
      readonly ok: true;
      readonly piece: Piece;
      /** Cap seam of each half, and how much of it lies above the notch. */
      readonly gathered: Readonly<Record<Half, number>>;
      readonly hemLength: number;
    }
  /** The parts below the notches would turn too far: top and hem are spread too unlike. */
  | { readonly ok: false };

/** Beyond this turn of the outer parts the sleeve can't be drawn as one piece any more. */
const MOST_TURN = (40 * Math.PI) / 180;

const ALONG: Vector = { x: 1, y: 0 };

/**
 * Slashes a straight sleeve from cap to hem between its notches and spreads it, hinged where top and hem spread
 * unlike. The parts below the notches move as they are, so they still fit the armhole and each other; the top of
 * the cap and the hem are drawn anew, the hem square to the underarm seams so that it runs through.
 */
export function spreadSleeve(straight: Piece, wish: SpreadWish): SpreadSleeve {
  const [front, back] = [spreadHalf(straight, 'front', wish), spreadHalf(straight, 'back', wish)];
  if (front === null || back === null) return { ok: false };
  const [frontTop, backTop] = [front.top, back.top];
  const backUnderarm = pathMirrorX(back.underarm);
  const hem = curveBetween(
    pathEnd(front.underarm),
    rotate(pathEndTangent(front.underarm), Math.PI / 2),
    pathEnd(backUnderarm),
    rotate(pathEndTangent(backUnderarm), Math.PI / 2),
  );
  const paths = {
    'cap-back': pathReverse(pathMirrorX(pathJoin(backTop, back.lower))),
    'cap-front': pathJoin(frontTop, front.lower),
    'underarm-front': front.underarm,
    'sleeve-edge': hem,
    'underarm-back': pathReverse(backUnderarm),
  };
  return {
    ok: true,
    piece: reshape(straight, paths),
    gathered: { front: pathLength(frontTop), back: pathLength(backTop) },
    hemLength: pathLength(hem),
  };
}

/** One half of the spread sleeve, drawn as the front half: x away from the fold of the arm. */
interface SpreadHalf {
  /** Cap from the fold of the arm to the notch, from there to the underarm, and the underarm seam to the hem. */
  readonly top: Path;
  readonly lower: Path;
  readonly underarm: Path;
}

/** Moves the part below the notch out and turns it, until the hem is as long as wished. */
function spreadHalf(straight: Piece, half: Half, wish: SpreadWish): SpreadHalf | null {
  const own = (name: string): Path => {
    const path = edgeOf(straight, name).path;
    return half === 'front' ? path : pathReverse(pathMirrorX(path));
  };
  const [cap, seam] = [own(`cap-${half}`), own(`underarm-${half}`)];
  const topLength = pathLength(cap) - wish.plain[half];
  const upper = pathSlice(cap, 0, topLength);
  const [notch, hem] = [pathEnd(upper), pathEnd(seam)];
  const gathered = wish.top > 0;
  const notchAt = (turn: number): Point =>
    gathered ? { x: notch.x + wish.top / 2, y: notch.y } : lastOf(unbent(upper, turn));
  const hemAt = (turn: number): Point => add(notchAt(turn), rotate(subtract(hem, notch), -turn));
  const turn = turnFor((angle) => hemAt(angle).x * bow(angle) - hem.x - wish.hem / 2);
  if (turn === null) return null;
  // Hinged at the hem, the middle of the sleeve keeps its length: the hem bows up between its ends.
  const sag = gathered ? hem.y - hemAt(turn).y - hemAt(turn).x * Math.tan(turn / 2) : 0;
  const by = add(subtract(notchAt(turn), notch), { x: 0, y: sag });
  const move = (path: Path): Path => pathTranslate(pathRotate(path, -turn, notch), by);
  const lower = move(pathSlice(cap, topLength, pathLength(cap)));
  const ends = { start: ALONG, end: pathStartTangent(lower) };
  const top = gathered
    ? curveBetween({ x: 0, y: -wish.raise }, ends.start, pathStart(lower), ends.end)
    : keepingLength(curveThrough(unbent(upper, turn), ends), topLength);
  return { top, lower, underarm: move(seam) };
}

const keepingLength = (path: Path, length: number): Path => curveOfLength(path, length) ?? path;

/** Strips into which half the top of a cap is slashed. */
const STRIPS = 8;

/** The corners of the strips when each is turned out a little more than the one before, hinged at the cap. */
function unbent(upper: Path, turn: number): readonly Point[] {
  const step = pathLength(upper) / STRIPS;
  const corners = Array.from(
    { length: STRIPS + 1 },
    (_, i) => pathAt(upper, Math.min(i * step, pathLength(upper))).point,
  );
  const placed: Point[] = [pathStart(upper)];
  for (const [i, corner] of corners.entries()) {
    const next = corners[i + 1];
    if (next === undefined) break;
    placed.push(add(lastOf(placed), rotate(subtract(next, corner), (-turn * (i + 0.5)) / STRIPS)));
  }
  return placed;
}

function lastOf(points: readonly Point[]): Point {
  const last = points.at(-1);
  if (last === undefined) throw new Error('A cap has at least one strip.');
  return last;
}

/** A hem square to two underarm seams turned out by an angle is an arc: this much longer than its chord. */
const bow = (turn: number): number => (Math.abs(turn) < 1e-6 ? 1 : turn / Math.sin(turn));

/** The turn at which a function that grows with it comes to nothing; null beyond the most that can be drawn. */
function turnFor(grows: (turn: number) => number): number | null {
  let [low, high] = [-MOST_TURN, MOST_TURN];
  if (grows(low) > 0 || grows(high) < 0) return null;
  for (let i = 0; i < 45; i++) {
    const middle = (low + high) / 2;
    if (grows(middle) > 0) high = middle;
    else low = middle;
  }
  return (low + high) / 2;
}
