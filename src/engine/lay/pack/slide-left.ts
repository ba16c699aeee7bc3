import type { Board } from './board.ts';
import type { Field } from './field.ts';
import { RECORD_HEAD } from './pair-table.ts';

/**
 * Slides every free item of a valid layout to the left until it touches another or the edge, those on the left first.
 * Exact: how far an item can go is where its offset enters one of the convex outlines that its pairs must keep out of.
 * An item that may only lie on steps stays.
 */
export function slideLeft(board: Board, field: Field): void {
  const order = Array.from(board.free, (free, i) => (free === 1 ? i : -1)).filter((i) => i >= 0);
  order.sort((a, b) => (field.x[a] as number) - (field.x[b] as number));
  for (const item of order) {
    const g = field.variant[item] as number;
    if ((board.stepX[g] as number) > 0) continue;
    const x = field.x[item] as number;
    const y = field.y[item] as number;
    let least = board.fromX[g] as number;
    for (let j = board.count - 1; j >= 0 && least < x; j--) {
      if (j !== item) least = Math.max(least, stopAt(board, field, item, j, x, y, least));
    }
    if (least < x) field.move(item, g, least, y);
  }
}

/** The x at which `item`, coming from `x`, meets item `j`; `least` where it does not meet it before. */
function stopAt(
  board: Board,
  field: Field,
  item: number,
  j: number,
  x: number,
  y: number,
  least: number,
): number {
  const gj = field.variant[j] as number;
  const g = field.variant[item] as number;
  const xj = field.x[j] as number;
  const yj = field.y[j] as number;
  if (yj >= y + (board.h[g] as number) || yj + (board.h[gj] as number) <= y) return least;
  if (xj + (board.w[gj] as number) <= least || xj >= x + (board.w[g] as number)) return least;
  const start = board.table.recordOf(board.shapeOf[gj] as number, board.shapeOf[g] as number);
  const numbers = board.table.numbers();
  let stop = least;
  const heads = start + 1 + RECORD_HEAD * (numbers[start] as number);
  for (let p = start + 1; p < heads; p += RECORD_HEAD) {
    const end = numbers[p + 5] as number;
    // Along the line of this y the offsets that overlap are an interval; the item comes from its right end.
    let from = Number.NEGATIVE_INFINITY;
    let to = Number.POSITIVE_INFINITY;
    for (let q = numbers[p + 4] as number; q < end && from < to; q += 3) {
      const nx = numbers[q] as number;
      const room = (numbers[q + 2] as number) - (numbers[q + 1] as number) * (y - yj);
      if (nx > 1e-12) to = Math.min(to, room / nx);
      else if (nx < -1e-12) from = Math.max(from, room / nx);
      else if (room <= board.touch) to = Number.NEGATIVE_INFINITY;
    }
    // Intervals on the right of where it stands now do not stop it; touching ones do.
    if (to > from + board.touch && to + xj > stop && from + xj < x) stop = Math.min(x, to + xj);
  }
  return stop;
}
