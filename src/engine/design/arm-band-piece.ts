import { linePath } from '../geometry/index.ts';
import { type Edge, grainThrough, type Piece, type PieceId } from '../piece/index.ts';
import type { Saying } from '../words/index.ts';

/** A band, cuff or frill of an arm: a straight strip that is sewn on along its top, one for each arm. Lengths in mm, without allowances. */
export interface ArmBandWish {
  readonly id: PieceId;
  readonly title: Saying;
  /** Sewn length, and what stands over beyond it (the underlap of a cuff). */
  readonly length: number;
  readonly overlap: number;
  /** Depth of the cloth: twice the finished depth where the strip is folded. */
  readonly depth: number;
  readonly top: Edge['kind'];
  readonly ends: Edge['kind'];
  readonly foot: Edge['kind'];
}

/** Edges of a strip: `attach` (left to right), [`underlap`], `end`, `foot`, `start`. */
export function armBandPiece(wish: ArmBandWish): Piece {
  const { length, overlap, depth } = wish;
  const width = length + overlap;
  const at = (x: number, y: number) => ({ x, y });
  const underlap: readonly Edge[] =
    overlap > 0 ? [{ name: 'underlap', kind: 'attach', path: linePath(at(length, 0), at(width, 0)) }] : [];
  return {
    id: wish.id,
    title: wish.title,
    edges: [
      { name: 'attach', kind: wish.top, path: linePath(at(0, 0), at(length, 0)) },
      ...underlap,
      { name: 'end', kind: wish.ends, path: linePath(at(width, 0), at(width, depth)) },
      { name: 'foot', kind: wish.foot, path: linePath(at(width, depth), at(0, depth)) },
      { name: 'start', kind: wish.ends, path: linePath(at(0, depth), at(0, 0)) },
    ],
    cloth: 'main',
    layer: 'shell',
    cutting: { as: 'pair', copies: 2 },
    grain: grainThrough(at(width / 2, depth / 2), depth * 0.6),
    notches: [],
    markings: [],
  };
}
