import type { Saying } from '../words/index.ts';
import { mustComeBefore } from './before.ts';
import { bodiceSteps } from './bodice-steps.ts';
import { closingSteps } from './closing-steps.ts';
import { type ClothAdvice, clothAdvice } from './cloth-advice.ts';
import { edgeSteps } from './edge-steps.ts';
import { withFinishing } from './finish-steps.ts';
import { flatSteps } from './flat-steps.ts';
import { withFullness } from './fullness-steps.ts';
import { lookAtSewing, type SewInput, type SewLook } from './look.ts';
import { makeStep } from './make-step.ts';
import { estimateOf, type StepTimes } from './minutes.ts';
import { orderSteps } from './order-steps.ts';
import { allowanceProblems, circleProblem } from './problems.ts';
import { skirtSteps } from './skirt-steps.ts';
import { sleeveSteps } from './sleeve-steps.ts';
import type { SewStep } from './step.ts';
import { tell } from './words-of.ts';

/** A step in its place. */
export interface PlannedStep extends SewStep {
  /** Steps that must be done before it, by id. */
  readonly needs: readonly string[];
  /** Minutes, from her own times where she has any, else the estimate. */
  readonly minutes: number;
  readonly estimate: number;
  readonly from: 'own-times' | 'estimate';
}

export interface SewPlan {
  readonly steps: readonly PlannedStep[];
  readonly minutes: number;
  readonly cloths: readonly ClothAdvice[];
}

export type SewPlanResult =
  | { readonly ok: true; readonly plan: SewPlan }
  /** What can't be sewn so, and what to change. */
  | { readonly ok: false; readonly problems: readonly Saying[] };

/**
 * The order of work for a dress, from its seams, its closing and its trims: every seam once, every raw edge finished,
 * no step before one that it needs. Refuses edges without cloth to sew or turn, and seams that wait for each other.
 */
export function sewPlan(input: SewInput, times: StepTimes = {}): SewPlanResult {
  const look = lookAtSewing(input);
  const short = allowanceProblems(look);
  if (short.length > 0) return { ok: false, problems: short };
  const steps = allSteps(look);
  const pairs = mustComeBefore(look, steps);
  const ordered = orderSteps(steps, pairs);
  if (!ordered.ok) return { ok: false, problems: [circleProblem(look, ordered.circle)] };
  const planned = ordered.steps.map((step): PlannedStep => {
    const estimate = estimateOf(look, step);
    const own = times[step.kind];
    return {
      ...step,
      needs: pairs.filter(({ later }) => later === step.id).map(({ earlier }) => earlier),
      minutes: own === undefined ? estimate : Math.max(1, Math.round(estimate * own.factor)),
      estimate,
      from: own === undefined ? 'estimate' : 'own-times',
    };
  });
  const minutes = planned.reduce((sum, step) => sum + step.minutes, 0);
  return { ok: true, plan: { steps: planned, minutes, cloths: clothAdvice(look) } };
}

function allSteps(look: SewLook): readonly SewStep[] {
  const steps = withFinishing(look, [
    ...flatSteps(look),
    ...bodiceSteps(look),
    ...edgeSteps(look),
    ...sleeveSteps(look),
    ...skirtSteps(look),
    ...closingSteps(look),
  ]);
  const last = makeStep(look, {
    id: 'finish',
    kind: 'press',
    station: 'iron',
    say: tell('sew.do.finish'),
    reasons: [tell('sew.why.finish')],
  });
  return [...withFullness(look, steps), last];
}
