import type { PlaceFinder } from './best-place.ts';
import type { Board } from './board.ts';
import type { Chance } from './chance.ts';
import type { Field } from './field.ts';

/** A layout as it is kept aside. */
export interface Snapshot {
  readonly variant: Int32Array;
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly loss: number;
}

export const snapshotOf = (field: Field): Snapshot => ({
  variant: field.variant.slice(),
  x: field.x.slice(),
  y: field.y.slice(),
  loss: field.total(),
});

export function restore(field: Field, kept: Snapshot): void {
  for (let i = 0; i < kept.x.length; i++) {
    field.put(i, kept.variant[i] as number, kept.x[i] as number, kept.y[i] as number);
  }
  field.refresh();
}

export interface Patience {
  /** Rounds without a marked gain before giving up. */
  readonly strikes: number;
  /** Sweeps without a gain that make a round. */
  readonly sweeps: number;
}

/** What one attempt learned about hard pairs helps the next, but must not drown what that one meets itself. */
const REMEMBERED = 100;

/** Beyond this a weight no longer grows, so that nothing overflows. */
const HEAVIEST = 1e12;

/**
 * Takes the overlaps out of the layout that lies in the field, within `length`, by moving one item at a time while the
 * weight of the pairs that keep overlapping grows (guided local search). Yields after every sweep; returns whether the
 * layout is free. On failure the field holds the least overlapping layout that was met.
 */
export function* separate(
  board: Board,
  field: Field,
  find: PlaceFinder,
  chance: Chance,
  length: number,
  patience: Patience,
): Generator<void, boolean> {
  const { count: n } = board;
  const order = new Int32Array(n);
  for (let k = 0; k < n * n; k++) field.weight[k] = Math.min(field.weight[k] as number, REMEMBERED);
  let best = snapshotOf(field);
  if (best.loss === 0) return true;
  for (let strikes = 0; strikes < patience.strikes; ) {
    const before = best.loss;
    for (let idle = 0; idle < patience.sweeps; ) {
      yield* sweep(board, field, find, chance, length, order);
      const loss = field.total();
      if (loss === 0) return true;
      if (loss < best.loss) {
        if (loss < best.loss * 0.98) idle = 0;
        else idle++;
        best = snapshotOf(field);
      } else idle++;
      raiseWeights(field, n);
      yield;
    }
    strikes = best.loss < before * 0.98 ? 0 : strikes + 1;
    restore(field, best);
  }
  return false;
}

/** Work between two chances to stop: some milliseconds. */
const BREATH = 4000;

/** Moves every item that overlaps, in chance order; yields now and then, since a sweep of many items takes long. */
function* sweep(
  board: Board,
  field: Field,
  find: PlaceFinder,
  chance: Chance,
  length: number,
  order: Int32Array,
): Generator<void, void> {
  let colliding = 0;
  for (let i = 0; i < board.count; i++) {
    if (board.free[i] === 1 && (field.lossOf[i] as number) > 0) order[colliding++] = i;
  }
  for (let k = colliding - 1; k > 0; k--) {
    const other = chance.below(k + 1);
    const kept = order[k] as number;
    order[k] = order[other] as number;
    order[other] = kept;
  }
  let since = field.evaluations();
  for (let k = 0; k < colliding; k++) {
    const item = order[k] as number;
    if ((field.lossOf[item] as number) > 0) find(item, length);
    if (field.evaluations() - since > BREATH) {
      since = field.evaluations();
      yield;
    }
  }
}

function raiseWeights(field: Field, n: number): void {
  const { loss, weight, lossOf } = field;
  let worst = 0;
  for (let i = 0; i < n; i++) {
    if ((lossOf[i] as number) === 0) continue;
    for (let k = i * n, end = k + n; k < end; k++) if ((loss[k] as number) > worst) worst = loss[k] as number;
  }
  if (worst === 0) return;
  for (let k = 0; k < n * n; k++) {
    const l = loss[k] as number;
    const w = weight[k] as number;
    if (l > 0) weight[k] = w < HEAVIEST ? w * (1.2 + (0.8 * l) / worst) : w;
    else if (w > 1) weight[k] = Math.max(w * 0.95, 1);
  }
}
