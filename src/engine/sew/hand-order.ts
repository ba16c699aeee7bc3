import type { Saying } from '../words/index.ts';
import type { SewInput } from './look.ts';
import { lookAtSewing } from './look.ts';
import type { PlannedStep, SewPlan } from './sew-plan.ts';
import type { EdgeRef } from './step.ts';
import { edgesOf, tell } from './words-of.ts';

/** What the maker has changed in the order of work by hand. */
export interface HandOrder {
  /** Steps in her order, by id; steps that are not named keep their place behind the one before them. */
  readonly order: readonly string[];
  readonly leftOut: readonly string[];
}

/** Something that her order breaks, and at which step. */
export interface Broken {
  readonly step: string;
  readonly say: Saying;
}

export interface HandPlan {
  /** All steps in her order, those that she leaves out as well: nothing is lost. */
  readonly steps: readonly PlannedStep[];
  readonly leftOut: ReadonlySet<string>;
  readonly broken: readonly Broken[];
}

/**
 * A plan as the maker has ordered it. Everything is allowed and nothing thrown away: what comes before what it needs,
 * and what stays open because a step is left out, is told. Names of steps that the dress no longer has are passed over.
 */
export function handPlan(input: SewInput, plan: SewPlan, hand: HandOrder): HandPlan {
  const steps = inHerOrder(plan.steps, hand.order);
  const known = new Set(steps.map(({ id }) => id));
  const leftOut = new Set(hand.leftOut.filter((id) => known.has(id)));
  return { steps, leftOut, broken: brokenBy(input, steps, leftOut) };
}

function inHerOrder(planned: readonly PlannedStep[], order: readonly string[]): readonly PlannedStep[] {
  const byId = new Map(planned.map((step) => [step.id, step]));
  const named = [...new Set(order)].flatMap((id) => byId.get(id) ?? []);
  if (named.length === 0) return planned;
  const steps = [...named];
  for (const [i, step] of planned.entries()) {
    if (steps.includes(step)) continue;
    const before = planned[i - 1];
    steps.splice(before === undefined ? 0 : steps.indexOf(before) + 1, 0, step);
  }
  return steps;
}

function brokenBy(
  input: SewInput,
  steps: readonly PlannedStep[],
  leftOut: ReadonlySet<string>,
): readonly Broken[] {
  const look = lookAtSewing(input);
  const at = new Map(steps.map((step, i) => [step.id, { step, i }]));
  return steps.flatMap((step, i): readonly Broken[] => {
    if (leftOut.has(step.id)) {
      const open = openWithout(input, step);
      return [
        {
          step: step.id,
          say:
            open.length === 0
              ? tell('sew.breaks.left-out-plain', { step: step.title })
              : tell('sew.breaks.left-out', { step: step.title, edges: edgesOf(look, open) }),
        },
      ];
    }
    // Everything comes before the last pressing; that alone is no need worth telling.
    const needs = step.kind === 'press' ? [] : step.needs;
    return needs.flatMap((id): readonly Broken[] => {
      const need = at.get(id);
      if (need === undefined) return [];
      const values = { step: step.title, need: need.step.title };
      if (leftOut.has(id)) return [{ step: step.id, say: tell('sew.breaks.needed', values) }];
      return need.i < i ? [] : [{ step: step.id, say: tell('sew.breaks.later', values) }];
    });
  });
}

/** Edges that nothing sews or finishes when a step is left out. */
const openWithout = ({ garment }: SewInput, step: PlannedStep): readonly EdgeRef[] => [
  ...garment.seams.filter(({ id }) => step.sews.includes(id)).flatMap((seam) => [...seam.a, ...seam.b]),
  ...step.finishes,
];
