import type { Board } from './board.ts';
import type { Chance } from './chance.ts';
import { clamp } from './clamp.ts';
import type { Field } from './field.ts';

/** Trial places of one search: near the present one, anywhere, and how many of the best are followed downhill. */
const NEAR = 15;
const ANYWHERE = 35;
const FOLLOWED = 1;

/** Moves one item to the place with the least weighted loss that a short search finds. True if it moved. */
export type PlaceFinder = (item: number, length: number) => boolean;

export function placeFinder(board: Board, field: Field, chance: Chance): PlaceFinder {
  const poolG = new Int32Array(FOLLOWED);
  const poolX = new Float64Array(FOLLOWED);
  const poolY = new Float64Array(FOLLOWED);
  const poolF = new Float64Array(FOLLOWED);
  let pooled = 0;
  // The place that is being followed.
  let bestX = 0;
  let bestY = 0;
  let bestF = 0;

  const offer = (g: number, x: number, y: number, f: number, apart: number): void => {
    for (let k = 0; k < pooled; k++) {
      const near =
        poolG[k] === g &&
        Math.abs((poolX[k] as number) - x) < apart &&
        Math.abs((poolY[k] as number) - y) < apart;
      if (near) {
        if (f < (poolF[k] as number)) {
          poolX[k] = x;
          poolY[k] = y;
          poolF[k] = f;
          sink(k);
        }
        return;
      }
    }
    if (pooled < FOLLOWED) pooled++;
    else if (f >= (poolF[pooled - 1] as number)) return;
    poolG[pooled - 1] = g;
    poolX[pooled - 1] = x;
    poolY[pooled - 1] = y;
    poolF[pooled - 1] = f;
    sink(pooled - 1);
  };

  /** Keeps the pool in order, the least loss first. */
  const sink = (from: number): void => {
    for (let k = from; k > 0 && (poolF[k] as number) < (poolF[k - 1] as number); k--) {
      swap(poolG, k);
      swap(poolX, k);
      swap(poolY, k);
      swap(poolF, k);
    }
  };

  const bound = (): number =>
    pooled < FOLLOWED ? Number.POSITIVE_INFINITY : (poolF[FOLLOWED - 1] as number);

  const xIn = (g: number, x: number, length: number): number =>
    clamp(
      x,
      board.fromX[g] as number,
      Math.min(board.toX[g] as number, length - (board.w[g] as number)),
      board.stepX[g] as number,
    );
  const yIn = (g: number, y: number): number =>
    clamp(y, board.fromY[g] as number, board.toY[g] as number, board.stepY[g] as number);

  /** Tries a place while following; keeps it if it is better. */
  const tryPlace = (item: number, g: number, x: number, y: number, length: number): boolean => {
    const px = xIn(g, x, length);
    const py = yIn(g, y);
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
    const g0 = field.variant[item] as number;
    const x0 = field.x[item] as number;
    const y0 = field.y[item] as number;
    const first = board.firstVariant[item] as number;
    const variants = board.variantCount[item] as number;
    const small = Math.min(board.w[g0] as number, board.h[g0] as number);
    const apart = 0.05 * small;
    pooled = 0;
    const f0 = field.cost(item, g0, x0, y0, Number.POSITIVE_INFINITY);
    offer(g0, x0, y0, f0, apart);
    for (let k = 0; k < NEAR + ANYWHERE; k++) {
      const g = first + chance.below(variants);
      const w = board.w[g] as number;
      const h = board.h[g] as number;
      const from = board.fromX[g] as number;
      const to = Math.min(board.toX[g] as number, length - w);
      const a = chance.next();
      const b = chance.next();
      const x = xIn(g, k < NEAR ? x0 + (2 * a - 1) * w * 0.5 : from + a * Math.max(0, to - from), length);
      const top = board.fromY[g] as number;
      const y = yIn(g, k < NEAR ? y0 + (2 * b - 1) * h * 0.5 : top + b * ((board.toY[g] as number) - top));
      const limit = bound();
      const f = field.cost(item, g, x, y, limit);
      if (f < limit) offer(g, x, y, f, apart);
    }
    let endG = g0;
    let endX = x0;
    let endY = y0;
    let endF = f0;
    for (let k = 0; k < pooled; k++) {
      const g = poolG[k] as number;
      bestX = poolX[k] as number;
      bestY = poolY[k] as number;
      bestF = poolF[k] as number;
      follow(item, g, length, 0.25 * small, 0.002 * small);
      if (bestF < endF) {
        endG = g;
        endX = bestX;
        endY = bestY;
        endF = bestF;
        if (endF === 0) break;
      }
    }
    if (endF >= f0) return false;
    field.move(item, endG, endX, endY);
    return true;
  };
}

function swap(numbers: Int32Array | Float64Array, k: number): void {
  const kept = numbers[k] as number;
  numbers[k] = numbers[k - 1] as number;
  numbers[k - 1] = kept;
}
