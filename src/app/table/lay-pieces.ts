import type { CutPiece } from '../../engine/cut/index.ts';
import type { Affine } from '../../engine/geometry/index.ts';
import { pathBounds } from '../../engine/geometry/index.ts';
import { outlineOf } from '../../engine/piece/index.ts';
import { shift } from './motion.ts';

/** A piece as it lies on the table; `key` tells two halves of one piece apart. */
export interface LaidPiece {
  readonly key: string;
  readonly cut: CutPiece;
  readonly frame: Affine;
}

interface Size {
  readonly width: number;
  readonly height: number;
}

interface Spot {
  readonly x: number;
  readonly y: number;
}

/** Clear table between two pieces, mm: enough for a name at the size at which the whole table is seen. */
const betweenFor = (sizes: readonly Size[]): number =>
  15 + 0.035 * Math.sqrt(sizes.reduce((sum, { width, height }) => sum + width * height, 0));

/** Lays pieces side by side at true size so that none touches another, as large as a screen of this shape shows them. */
export function layPieces(
  pieces: readonly CutPiece[],
  shape: number,
  withAllowances: boolean,
): readonly LaidPiece[] {
  const boxes = pieces.map((cut) => pathBounds(withAllowances ? cut.cuttingLine : outlineOf(cut.piece)));
  const spots = arrange(
    boxes.map((box) => ({ width: box.maxX - box.minX, height: box.maxY - box.minY })),
    shape,
  );
  return pieces.map((cut, i) => {
    const [box, spot] = [boxes[i], spots[i]];
    const frame =
      box === undefined || spot === undefined ? shift(0, 0) : shift(spot.x - box.minX, spot.y - box.minY);
    return { key: cut.piece.id, cut, frame };
  });
}

/** Tries table widths from the widest piece to all in one row, and keeps the one that shows everything largest. */
export function arrange(sizes: readonly Size[], shape: number): readonly Spot[] {
  const widest = Math.max(1, ...sizes.map(({ width }) => width));
  const between = betweenFor(sizes);
  const all = sizes.reduce((sum, { width }) => sum + width + between, 0);
  let best: { readonly spots: readonly Spot[]; readonly reach: number } | null = null;
  for (let width = widest; ; width *= 1.12) {
    const laid = layWithin(sizes, width, between);
    const reach = Math.max(laid.width / shape, laid.height);
    if (best === null || reach < best.reach - 1e-9) best = { spots: laid.spots, reach };
    if (width >= all) return best.spots;
  }
}

/** In the given order, each as far up as it can lie, then as far left. */
function layWithin(
  sizes: readonly Size[],
  width: number,
  between: number,
): Size & { readonly spots: readonly Spot[] } {
  // The lower edge of what lies there already: runs from left to right, each starting at `x`.
  let floor: { readonly x: number; readonly y: number }[] = [{ x: 0, y: 0 }];
  const spots: Spot[] = [];
  for (const size of sizes) {
    const [w, h] = [size.width + between, size.height + between];
    let spot: Spot | null = null;
    for (const { x } of floor) {
      if (x + size.width > width + 1e-9 && x > 0) continue;
      const y = Math.max(...runsUnder(floor, x, x + w).map((run) => run.y));
      if (spot === null || y < spot.y - 1e-9) spot = { x, y };
    }
    const at = spot ?? { x: 0, y: Math.max(...floor.map((run) => run.y)) };
    spots.push(at);
    const end = at.x + w;
    const resumes = runsUnder(floor, at.x, end).at(-1)?.y ?? 0;
    floor = [
      ...floor.filter((run) => run.x < at.x),
      { x: at.x, y: at.y + h },
      ...(floor.some((run) => run.x === end) ? [] : [{ x: end, y: resumes }]),
      ...floor.filter((run) => run.x >= end),
    ];
  }
  return {
    spots,
    width: Math.max(0, ...spots.map(({ x }, i) => x + (sizes[i]?.width ?? 0))),
    height: Math.max(0, ...spots.map(({ y }, i) => y + (sizes[i]?.height ?? 0))),
  };
}

function runsUnder<R extends { readonly x: number }>(
  floor: readonly R[],
  from: number,
  to: number,
): readonly R[] {
  return floor.filter((run, i) => run.x < to && (floor[i + 1]?.x ?? Number.POSITIVE_INFINITY) > from);
}
