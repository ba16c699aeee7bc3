import { allowedX, allowedY, xAtShare, yAtShare } from './allowed.ts';
import type { Board } from './board.ts';
import type { Chance } from './chance.ts';
import type { Field } from './field.ts';

/** Trial places of one search: near the present one, and anywhere. The best of them is followed downhill. */
const NEAR = 15;
const ANYWHERE = 35;

/** Steps in chance directions, as parts of the item's small side: the first, and where they are too short to go on. */
const FIRST_STEP = 0.25;
const LAST_STEP = 0.002;

/** Moves one item to the place with the least weighted loss that a short search finds. True if it moved. */
export type PlaceFinder = (item: number, length: number) => boolean;

export function placeFinder(board: Board, field: Field, chance: Chance): PlaceFinder {
  // The best place so far.
  let bestX = 0;
  let bestY = 0;
  let bestF = 0;

  /** Tries a place; keeps it if it is better. */
  const tryPlace = (item: number, g: number, x: number, y: number, length: number): boolean => {
    const px = allowedX(board, g, x, length);
    const py = allowedY(board, g, y);
    if (px === bestX && py === bestY) return false;
    const f = field.cost(item, g, px, py, bestF);
    if (f >= bestF) return false;
    bestX = px;
    bestY = py;
    bestF = f;
    return true;
  };

  /** Out of the worst pair, or down the common slope, as long as that helps; then steps in chance directions. */
  const follow = (item: number, g: number, length: number, firstStep: number, lastStep: number): void => {
    slide(item, g, length);
    if (bestF === 0) return;
    for (let step = firstStep, round = 0; step > lastStep && round < 40; round++) {
      const way = chance.below(4);
      const dx = way === 1 ? 0 : step;
      const dy = way === 0 ? 0 : way === 3 ? -step : step;
      const better =
        tryPlace(item, g, bestX + dx, bestY + dy, length) ||
        tryPlace(item, g, bestX - dx, bestY - dy, length);
      if (bestF === 0) return;
      step = better ? step * 1.1 : step * 0.5;
    }
    slide(item, g, length);
  };

  const slide = (item: number, g: number, length: number): void => {
    const { pull } = field;
    for (let round = 0; round < 12 && bestF > 0; round++) {
      const f = field.costAndPull(item, g, bestX, bestY);
      const gx = pull[0] as number;
      const gy = pull[1] as number;
      const outX = pull[2] as number;
      const outY = pull[3] as number;
      if (tryPlace(item, g, bestX + outX, bestY + outY, length)) continue;
      const steep = gx * gx + gy * gy;
      if (steep < 1e-12) return;
      // Losses fall evenly down the slope: this step would bring them to nothing if nothing else stood in the way.
      const step = f / steep;
      if (tryPlace(item, g, bestX + gx * step, bestY + gy * step, length)) continue;
      if (tryPlace(item, g, bestX + gx * step * 0.3, bestY + gy * step * 0.3, length)) continue;
      return;
    }
  };

  return (item, length) => {
    const x0 = field.x[item] as number;
    const y0 = field.y[item] as number;
    const first = board.firstVariant[item] as number;
    const variants = board.variantCount[item] as number;
    let bestG = field.variant[item] as number;
    const small = Math.min(board.w[bestG] as number, board.h[bestG] as number);
    bestX = x0;
    bestY = y0;
    const before = field.cost(item, bestG, x0, y0, Number.POSITIVE_INFINITY);
    bestF = before;
    for (let k = 0; k < NEAR + ANYWHERE; k++) {
      const g = first + chance.below(variants);
      const a = chance.next();
      const b = chance.next();
      const near = k < NEAR;
      const x = near
        ? allowedX(board, g, x0 + (2 * a - 1) * (board.w[g] as number) * 0.5, length)
        : xAtShare(board, g, a, length);
      const y = near
        ? allowedY(board, g, y0 + (2 * b - 1) * (board.h[g] as number) * 0.5)
        : yAtShare(board, g, b);
      const f = field.cost(item, g, x, y, bestF);
      if (f < bestF) {
        bestG = g;
        bestX = x;
        bestY = y;
        bestF = f;
      }
    }
    follow(item, bestG, length, FIRST_STEP * small, LAST_STEP * small);
    if (bestF >= before) return false;
    field.move(item, bestG, bestX, bestY);
    return true;
  };
}
