import type { CutPiece } from '../cut/index.ts';
import type { Point } from '../geometry/index.ts';
import { type ClothShape, clothShape, mirroredShape } from './cloth-shape.ts';
import { roundUpToUnit, type SellingUnit } from './selling-unit.ts';

/** A cloth as it is bought. */
export interface Cloth {
  /** 'ivory satin' */
  readonly name: string;
  /** Without the selvedges, mm, as it is after shrinking. */
  readonly usableWidth: number;
  /** The part of its length that it loses when washed or steamed before cutting: 0.03 is 3 %. */
  readonly shrinkage: number;
  readonly unit: SellingUnit;
}

/** One piece of cloth to cut out; `at` is the top left corner of its box, y along the cloth, mm. */
export interface LaidPiece {
  /** Which of the pieces that were given. */
  readonly index: number;
  readonly shape: ClothShape;
  readonly at: Point;
}

export interface RowLay {
  readonly laid: readonly LaidPiece[];
  /** Length of cloth that is covered, mm. */
  readonly length: number;
  /** With the shrinkage added and rounded up to the shop's unit, mm. */
  readonly lengthToBuy: number;
}

/** A piece that the cloth cannot hold with its grain along the length. `code` is the key of its sentence. */
export interface LayProblem {
  readonly code: 'lay.wider-than-cloth';
  readonly values: {
    readonly piece: string;
    readonly cloth: string;
    readonly width: { readonly mm: number };
    readonly usable: { readonly mm: number };
  };
}

export type RowLayResult =
  | { readonly ok: true; readonly lay: RowLay }
  | { readonly ok: false; readonly problems: readonly LayProblem[] };

/** Between two pieces, mm: room for the scissors (common practice, no source). */
const GAP = 10;

/**
 * Lays every copy of every piece on single cloth in rows: boxes side by side, the longest first, the grain along the
 * cloth and all heads the same way, as satin, velvet and one-way prints ask for. A piece cut on the fold is laid
 * opened out, and every second piece of a pair is turned over. Wasteful next to a real lay, but never short.
 * Refuses pieces wider than the cloth.
 */
export function layInRows(pieces: readonly CutPiece[], cloth: Cloth): RowLayResult {
  const shapes = pieces.map(clothShape);
  const problems = shapes.flatMap((shape, i) => tooWide(shape, pieces[i], cloth));
  if (problems.length > 0) return { ok: false, problems };
  const copies = pieces.flatMap((piece, index) => copiesOf(piece, index, shapes[index]));
  copies.sort(
    (a, b) => b.shape.length - a.shape.length || b.shape.width - a.shape.width || a.index - b.index,
  );

  const rows: { readonly top: number; readonly length: number; filled: number }[] = [];
  const laid = copies.map(({ index, shape }): LaidPiece => {
    let row = rows.find((r) => r.filled + GAP + shape.width <= cloth.usableWidth);
    if (row === undefined) {
      const last = rows.at(-1);
      row = {
        top: last === undefined ? 0 : last.top + last.length + GAP,
        length: shape.length,
        filled: -GAP,
      };
      rows.push(row);
    }
    const at = { x: row.filled + GAP, y: row.top };
    row.filled = at.x + shape.width;
    return { index, shape, at };
  });
  const last = rows.at(-1);
  const length = last === undefined ? 0 : last.top + last.length;
  return { ok: true, lay: { laid, length, lengthToBuy: lengthToBuy(length, cloth) } };
}

/** What to buy so that `length` mm are left after shrinking: L / (1 - s), rounded up to the shop's unit. */
export function lengthToBuy(length: number, { shrinkage, unit }: Pick<Cloth, 'shrinkage' | 'unit'>): number {
  if (!(shrinkage >= 0 && shrinkage < 1))
    throw new Error(`Cloth cannot shrink by ${shrinkage} of its length.`);
  return roundUpToUnit(length / (1 - shrinkage), unit);
}

interface Copy {
  readonly index: number;
  readonly shape: ClothShape;
}

function copiesOf({ piece }: CutPiece, index: number, shape: ClothShape | undefined): readonly Copy[] {
  if (shape === undefined) return [];
  const mirrored = piece.cutting.as === 'pair' ? mirroredShape(shape) : shape;
  return Array.from({ length: piece.cutting.copies }, (_, i) => ({
    index,
    shape: i % 2 === 0 ? shape : mirrored,
  }));
}

function tooWide(shape: ClothShape, piece: CutPiece | undefined, cloth: Cloth): readonly LayProblem[] {
  if (piece === undefined || shape.width <= cloth.usableWidth) return [];
  const values = {
    piece: piece.label.title,
    cloth: cloth.name,
    width: { mm: shape.width },
    usable: { mm: cloth.usableWidth },
  };
  return [{ code: 'lay.wider-than-cloth', values }];
}
