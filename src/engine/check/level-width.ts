import { linePath, pathBounds, pathCrossings } from '../geometry/index.ts';
import type { Piece } from '../piece/index.ts';

/** Crossings nearer than this are one, mm: a level through a corner meets both its edges. */
const SAME = 1e-4;

/** Width of the cloth of a piece along the level line at `y`, as far out as `upTo`, mm; 0 where the line misses it. */
export function widthAtLevel(piece: Piece, y: number, upTo: number): number {
  const xs = piece.edges
    .flatMap(({ path }) => {
      const { minX, maxX, minY, maxY } = pathBounds(path);
      if (y < minY || y > maxY) return [];
      const level = linePath({ x: minX - 1, y }, { x: maxX + 1, y });
      return pathCrossings(level, path).map((hit) => hit.point.x);
    })
    .sort((a, b) => a - b)
    .filter((x, i, all) => x - (all[i - 1] ?? Number.NEGATIVE_INFINITY) > SAME);
  // What lies beyond the centre wraps over the other half, unless the piece is cut whole for both.
  const inner = piece.cutting.as === 'single' ? -upTo : 0;
  let width = 0;
  for (let i = 0; i + 1 < xs.length; i += 2) {
    const [from, to] = [Math.max(xs[i] ?? 0, inner), xs[i + 1] ?? 0];
    width += Math.max(Math.min(to, upTo + SAME) - from, 0);
  }
  return width;
}
