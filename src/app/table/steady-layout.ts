import type { CutPiece } from '../../engine/cut/index.ts';
import type { Bounds } from '../../engine/geometry/index.ts';
import { type LaidPiece, layPieces } from './lay-pieces.ts';
import { movedBounds } from './motion.ts';

/**
 * Lays the pieces anew only where it must be: while the same pieces lie there and none touches another, each keeps its
 * place, so that a number can change under the hand without the whole table moving. A piece that did not change is the same
 * object as before.
 */
export function laidSteadily(
  before: readonly LaidPiece[],
  pieces: readonly CutPiece[],
  shape: number,
  withAllowances: boolean,
): readonly LaidPiece[] {
  const same = before.length === pieces.length && before.every(({ key }, i) => key === pieces[i]?.piece.id);
  if (same) {
    const kept = before.map((laid, i) => {
      const cut = pieces[i] ?? laid.cut;
      return cut === laid.cut ? laid : { ...laid, cut };
    });
    if (allClear(kept.map(({ cut, frame }) => movedBounds(cut.cuttingLine, frame)))) return kept;
  }
  return layPieces(pieces, shape, withAllowances);
}

const allClear = (boxes: readonly Bounds[]): boolean =>
  boxes.every((a, i) =>
    boxes.slice(i + 1).every((b) => a.maxX < b.minX || b.maxX < a.minX || a.maxY < b.minY || b.maxY < a.minY),
  );
