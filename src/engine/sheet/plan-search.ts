import type { Plan } from './fill-sheet.ts';
import type { Placement } from './placement.ts';

/** An arrangement that was tried, with what it is judged by: less is better in both. */
export interface Trial {
  readonly plan: Plan;
  readonly placements: readonly Placement[];
  readonly pages: number;
  /** Tells two with as many pages apart: how full the emptiest page is, or how far down the lowest shape reaches. */
  readonly rest: number;
}

export interface SearchSettings {
  /** By shape: how many turns it has. */
  readonly turns: readonly number[];
  /** Divided by the number of shapes: the most trials. */
  readonly trials: number;
  /** The search ends when no more pages than this are needed. */
  readonly goodEnough: number;
}

/**
 * Looks for a better plan near the best one so far: two shapes change places in the order, one goes first, or one is
 * laid in a certain turn only. What is as good is taken as well, so that the search does not stand still. The same
 * input gives the same plan.
 */
export function searchPlans(
  starts: readonly Trial[],
  attempt: (plan: Plan) => Trial,
  { turns, trials, goodEnough }: SearchSettings,
): Trial | null {
  const [first, ...others] = starts;
  if (first === undefined) return null;
  let best = others.reduce((a, b) => (compare(b, a) < 0 ? b : a), first);
  const random = randomNumbers(turns.length);
  const most = Math.floor(trials / Math.max(1, turns.length));
  for (let i = 0; i < most && best.pages > goodEnough; i++) {
    const found = attempt(varied(best.plan, turns, random));
    if (compare(found, best) <= 0) best = found;
  }
  return best;
}

function compare(a: Trial, b: Trial): number {
  return a.pages - b.pages || a.rest - b.rest;
}

/** Gives whole numbers below a limit. */
type Random = (below: number) => number;

function varied(plan: Plan, turnCounts: readonly number[], random: Random): Plan {
  const order = [...plan.order];
  const turns = [...plan.turns];
  const changes = 1 + random(2);
  for (let i = 0; i < changes; i++) {
    const [a, b] = [random(order.length), random(order.length)];
    const [shape, other] = [order[a], order[b]];
    if (shape === undefined || other === undefined) continue;
    switch (random(3)) {
      case 0:
        order[a] = other;
        order[b] = shape;
        break;
      case 1:
        order.splice(a, 1);
        order.splice(random(order.length + 1), 0, shape);
        break;
      default: {
        const turn = random((turnCounts[shape] ?? 0) + 1);
        turns[shape] = turn === 0 ? null : turn - 1;
      }
    }
  }
  return { ...plan, order, turns };
}

/** The same row of numbers for the same seed: a multiplicative generator (Lehmer; Park and Miller, 1988). */
function randomNumbers(seed: number): Random {
  let state = 1 + seed;
  return (below) => {
    state = (state * 48_271) % 2_147_483_647;
    return state % Math.max(1, below);
  };
}
