import type { Before, SewStep, StepKind } from './step.ts';

/**
 * The order in which a dressmaker takes up what could be done next: flat work, small parts and sleeves, skirts, the
 * bodice from the shoulders down, waist, opening, hand work, hem, trims (common practice, no source).
 */
const RANKS: Readonly<Record<StepKind, number>> = {
  staystitch: 0,
  dart: 1,
  elastic: 2,
  mount: 3,
  seam: 4,
  princess: 5,
  yoke: 6,
  'make-trim': 8,
  placket: 9,
  'sleeve-seam': 10,
  cuff: 12,
  neaten: 13,
  widths: 16,
  tuck: 17,
  tier: 18,
  shoulder: 22,
  collar: 24,
  frill: 25,
  'trim-edge': 25,
  layers: 26,
  neck: 27,
  face: 28,
  bind: 29,
  'bind-raw': 29,
  understitch: 30,
  armholes: 31,
  turn: 32,
  'shoulders-last': 33,
  'catch-trim': 34,
  side: 35,
  'sides-in-one': 35,
  studs: 36,
  'set-sleeve': 37,
  wrap: 38,
  gather: 40,
  pleats: 40,
  waist: 41,
  'net-waist': 42,
  'close-below': 43,
  opening: 44,
  zip: 44,
  'turn-edge': 45,
  fell: 46,
  hem: 48,
  'narrow-hem': 14,
  'trim-net': 47,
  'sew-on': 50,
  fasten: 51,
  press: 52,
};

/** A change between machine, iron and hand is worth waiting this much for, in ranks. */
const CHANGE = 0.6;

export type Ordered =
  | { readonly ok: true; readonly steps: readonly SewStep[] }
  /** These steps wait for each other in a circle. */
  | { readonly ok: false; readonly circle: readonly SewStep[] };

/** Puts steps into an order in which nothing comes before what it needs. */
export function orderSteps(steps: readonly SewStep[], pairs: readonly Before[]): Ordered {
  const rank = ranksOf(steps, pairs);
  const left = new Map(steps.map((step) => [step.id, step]));
  const needs = new Map<string, Set<string>>();
  for (const { earlier, later } of pairs) needs.set(later, (needs.get(later) ?? new Set()).add(earlier));
  const done: SewStep[] = [];
  while (left.size > 0) {
    const ready = [...left.values()].filter(({ id }) =>
      [...(needs.get(id) ?? [])].every((first) => !left.has(first)),
    );
    const last = done.at(-1);
    const cost = (step: SewStep): number =>
      rank(step) + (last !== undefined && last.station !== step.station ? CHANGE : 0);
    const [next] = ready.toSorted((a, b) => cost(a) - cost(b));
    if (next === undefined) return { ok: false, circle: circleAmong([...left.values()], needs) };
    done.push(next);
    left.delete(next.id);
  }
  return { ok: true, steps: done };
}

/** Fullness is drawn up right before its seam; linings and hidden net are hemmed while they lie flat. */
function ranksOf(steps: readonly SewStep[], pairs: readonly Before[]): (step: SewStep) => number {
  const kinds = new Map(steps.map(({ id, kind }) => [id, kind]));
  const held = new Map<string, number>();
  for (const { earlier, later } of pairs) {
    const kind = kinds.get(later);
    const seam = kind === undefined || kind === 'press' ? Number.POSITIVE_INFINITY : RANKS[kind];
    held.set(earlier, Math.min(held.get(earlier) ?? Number.POSITIVE_INFINITY, seam));
  }
  return (step) => {
    const own = RANKS[step.kind];
    if (step.kind === 'gather' || step.kind === 'pleats')
      return Math.min(own, held.get(step.id) ?? own) - 0.5;
    return step.kind === 'hem' && step.station === 'machine' ? RANKS.tuck : own;
  };
}

/** Some steps of which each waits for the one before. */
function circleAmong(
  left: readonly SewStep[],
  needs: ReadonlyMap<string, ReadonlySet<string>>,
): readonly SewStep[] {
  const walked: SewStep[] = [];
  let here = left[0];
  while (here !== undefined) {
    const from = walked.indexOf(here);
    if (from >= 0) return walked.slice(from);
    walked.push(here);
    const wanted = needs.get(here.id);
    here = left.find(({ id }) => wanted?.has(id) === true);
  }
  return walked;
}
