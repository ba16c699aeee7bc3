import { cubic, linePath, type Path, type Point, pathLength, pathOf } from '../geometry/index.ts';
import { grainThrough, type Piece } from '../piece/index.ts';

/** What a straight sleeve has to fit. Lengths in mm. */
export interface SleeveWish {
  readonly frontArmhole: number;
  readonly backArmhole: number;
  /** How much longer the cap's seam is than the armhole. */
  readonly capEase: number;
  /** Width of the sleeve at the foot of the cap. */
  readonly width: number;
  /** Length from the shoulder tip to the hem. */
  readonly length: number;
}

export type SleeveDraft =
  | { readonly ok: true; readonly piece: Piece; readonly capHeight: number }
  /** The cap can't be made: the sleeve is as wide as the seam is long, or longer than the cap leaves room for. */
  | { readonly ok: false; readonly code: 'too-wide' | 'too-short'; readonly limit: number };

/**
 * A straight sleeve whose cap is as long as the armhole plus its ease, front and back each. The width is kept
 * and the cap height found: published heights run from a quarter (easy) to a third (close) of the armhole
 * (common practice), and what fits the armhole is what can be sewn.
 * Drawn with the fold of the arm on x = 0, the back to the left, y = 0 at the top of the cap.
 */
export function draftSleeve(wish: SleeveWish): SleeveDraft {
  const front = wish.frontArmhole + wish.capEase / 2;
  const back = wish.backArmhole + wish.capEase / 2;
  const widest = front + back;
  if (wish.width >= widest * 0.98) return { ok: false, code: 'too-wide', limit: widest * 0.98 };
  const widthAt = (height: number): number => capHalfWidth(height, front) + capHalfWidth(height, back);
  const height = bisect(0, Math.min(front, back) * 0.95, (h) => widthAt(h) - wish.width);
  if (wish.length <= height + 10) return { ok: false, code: 'too-short', limit: height + 10 };

  const top: Point = { x: 0, y: 0 };
  const frontFoot: Point = { x: capHalfWidth(height, front), y: height };
  const backFoot: Point = { x: -capHalfWidth(height, back), y: height };
  const hemFront: Point = { x: frontFoot.x, y: wish.length };
  const hemBack: Point = { x: backFoot.x, y: wish.length };
  const piece: Piece = {
    id: 'sleeve',
    title: { key: 'piece.sleeve', values: {} },
    edges: [
      { name: 'cap-back', kind: 'cap', path: capHalf(backFoot, top) },
      { name: 'cap-front', kind: 'cap', path: capHalf(top, frontFoot) },
      { name: 'underarm-front', kind: 'side', path: linePath(frontFoot, hemFront) },
      { name: 'sleeve-edge', kind: 'sleeve-hem', path: linePath(hemFront, hemBack) },
      { name: 'underarm-back', kind: 'side', path: linePath(hemBack, backFoot) },
    ],
    cloth: 'main',
    layer: 'shell',
    cutting: { as: 'pair', copies: 2 },
    grain: grainThrough({ x: 0, y: (height + wish.length) / 2 }, (wish.length - height) * 0.7),
    notches: [],
    markings: [],
  };
  return { ok: true, piece, capHeight: height };
}

/** The run of each handle as a share of the half cap's width: flat at the top, gently hollow at the foot. */
const CAP_FULLNESS = 0.5;

/** Half a cap, level at the top and at the foot, so that the two halves and the underarms run through. */
function capHalf(from: Point, to: Point): Path {
  const run = (to.x - from.x) * CAP_FULLNESS;
  return pathOf(cubic(from, { x: from.x + run, y: from.y }, { x: to.x - run, y: to.y }, to));
}

/** The width at which half a cap of this height has the wished seam length. */
function capHalfWidth(height: number, seam: number): number {
  const lengthAt = (width: number): number => pathLength(capHalf({ x: 0, y: 0 }, { x: width, y: height }));
  return bisect(0, seam, (width) => seam - lengthAt(width));
}

/** The root of a function that falls from positive at `low` to negative at `high`. */
function bisect(low: number, high: number, falls: (x: number) => number): number {
  let [a, b] = [low, high];
  for (let i = 0; i < 60 && b - a > 1e-10; i++) {
    const middle = (a + b) / 2;
    if (falls(middle) > 0) a = middle;
    else b = middle;
  }
  return (a + b) / 2;
}
