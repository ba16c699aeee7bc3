import type { Garment, Piece, PieceId, Seam, SeamEdge } from '../piece/index.ts';
import type { Saying } from '../words/index.ts';
import { stripPiece } from './strip.ts';

/** Straight, or cut at 45 degrees so that the fold ends in a point. */
export const ENDS = ['straight', 'slanted'] as const;

export interface LongStripWish {
  /** Id of the end pieces, and of the lengths between them when the cloth is too narrow for the whole. */
  readonly id: PieceId;
  readonly middleId: PieceId;
  readonly title: Saying;
  readonly middleTitle: Saying;
  /** Finished length of one strip without what slanted ends add, and finished width, mm. */
  readonly length: number;
  readonly width: number;
  readonly ends: (typeof ENDS)[number];
  /** `one`: a strip with two free ends. `two`: two strips that are sewn in at one end. */
  readonly strips: 'one' | 'two';
  /** Longest piece that the cloth gives, mm. */
  readonly most: number;
}

export interface LongStrip {
  readonly pieces: readonly Piece[];
  readonly seams: readonly Seam[];
  /** Lengths of cloth that make up one strip. */
  readonly lengths: number;
}

/**
 * A sash or bow of doubled cloth, drawn on its lengthwise fold, in as few equal lengths as the cloth allows. A slanted
 * end is cut at 45 degrees: the fold is longer there by the finished width.
 */
export function longStrip(wish: LongStripWish): LongStrip {
  const { width, strips, most } = wish;
  const slant = wish.ends === 'slanted' ? width : 0;
  const slants = strips === 'one' ? 2 : 1;
  if (wish.length + slants * slant <= most) {
    const whole = part(wish, wish.id, wish.length + slants * slant, {
      left: strips === 'one' ? slant : 0,
      right: slant,
    });
    return { pieces: [whole], seams: [], lengths: 1 };
  }
  const lengths = Math.max(2, Math.ceil(wish.length / (most - slant)));
  const each = wish.length / lengths;
  const end = part(wish, wish.id, each + slant, { left: 0, right: slant });
  const middles = strips === 'one' ? lengths - 2 : 2 * (lengths - 1);
  const pieces = middles === 0 ? [end] : [end, part(wish, wish.middleId, each, null, middles)];
  return { pieces, seams: joins(wish, lengths), lengths };
}

/** An end, or (without slants) a middle length; two ends are cut, or one piece with both. */
function part(
  wish: LongStripWish,
  id: PieceId,
  length: number,
  slant: { readonly left: number; readonly right: number } | null,
  middles = 0,
): Piece {
  const isWhole = wish.strips === 'one' && slant !== null && length > wish.length - 1e-9;
  const sewnIn = wish.strips === 'two' && slant !== null && length > wish.length - 1e-9;
  return stripPiece({
    id,
    title: slant === null ? wish.middleTitle : wish.title,
    length,
    width: wish.width,
    upper: 'fold',
    lower: 'free',
    left: isWhole ? 'free' : sewnIn ? 'attach' : 'join',
    right: slant === null ? 'join' : 'free',
    cutting: { as: 'fold', copies: slant === null ? middles : isWhole ? 1 : 2 },
    ...(slant === null ? {} : { slant }),
    grain: 'across',
  });
}

/** Both halves of a doubled strip meet in a join, so every edge counts twice. */
function joins(wish: LongStripWish, lengths: number): readonly Seam[] {
  const { id, middleId, strips } = wish;
  const seam = (name: string, a: readonly SeamEdge[], b: readonly SeamEdge[]): Seam => ({
    id: `${id}-${name}`,
    name: 'trim',
    a,
    b,
    join: { kind: 'flat' },
    smoothStart: false,
    smoothEnd: false,
  });
  const at = (piece: PieceId, edge: string, count: number): SeamEdge => ({ piece, edge, times: 2 * count });
  if (strips === 'one' && lengths === 2) return [seam('join', [at(id, 'left', 1)], [at(id, 'left', 1)])];
  const toEnds =
    strips === 'one' ? [at(middleId, 'left', 1), at(middleId, 'right', 1)] : [at(middleId, 'right', 2)];
  const between = strips === 'one' ? lengths - 3 : 2 * (lengths - 2);
  return [
    seam('join', [at(id, 'left', 2)], toEnds),
    ...(between > 0
      ? [seam('middle-join', [at(middleId, 'right', between)], [at(middleId, 'left', between)])]
      : []),
  ];
}

/** An id that no piece of the garment has yet: steps that stand several times number their pieces. */
export function freshId(garment: Garment, wish: PieceId): PieceId {
  const taken = new Set(garment.pieces.map((piece) => piece.id));
  if (!taken.has(wish)) return wish;
  let number = 2;
  while (taken.has(`${wish}-${number}`)) number++;
  return `${wish}-${number}`;
}
