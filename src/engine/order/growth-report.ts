import {
  type Body,
  completeBody,
  type GrownBody,
  type GrowthAdvice,
  type GrowthMeasure,
  type GrowthProblem,
  type GrowthReferenceId,
  growBody,
  growthAdvice,
  growthReference,
  referenceZ,
  type SizeLabels,
  sizeLabels,
} from '../body/index.ts';
import { readDay } from './day.ts';
import type { Order, OrderChild } from './order.ts';
import { grownInput } from './read-growth.ts';
import { type ChildDress, workChild } from './work-child.ts';

/** Where a child stood on the day of measuring. */
export interface Standing {
  readonly measure: GrowthMeasure;
  /** mm, or kg for weight. */
  readonly value: number;
  readonly reference: GrowthReferenceId;
  /** Standard deviations from the middle. */
  readonly z: number;
}

/** What is known of a child's growth to the due day. */
export type GrowthReport =
  | { readonly kind: 'told'; readonly told: GrowthTold }
  /** The birthday or the day of measuring is missing; the nearest sizes are those of the child as measured. */
  | { readonly kind: 'no-days'; readonly labels: SizeLabels | null }
  | { readonly kind: 'refused'; readonly problems: readonly GrowthProblem[] };

export interface GrowthTold {
  readonly grown: GrownBody;
  readonly warnings: readonly GrowthProblem[];
  readonly standing: readonly Standing[];
  /** The ease of the dress at the chest, mm; null where it can't be drawn. */
  readonly chestEase: number | null;
  readonly advice: GrowthAdvice | null;
  /** The nearest sizes on the due day; null where too little was measured. */
  readonly labels: SizeLabels | null;
}

/** Flower-girl shops advise never to leave less than 2 cm round the body. */
const LEAST_EASE = 20;

/** The measures that are put on growth charts, in the order in which they are told. */
export const CHARTED = [
  'height',
  'weight',
  'headGirth',
  'upperArmGirth',
  'waistGirth',
  'hipGirth',
] as const satisfies readonly GrowthMeasure[];

/** Grows a child of the order to the due day, whether the dress is drafted for that day or not. `today`: ISO 8601. */
export function growthReport(order: Order, child: OrderChild, today: string): GrowthReport {
  const worked = child.growth === null ? null : workChild(order, child);
  return growthOf(child, worked?.ok ? worked.dress : null, today);
}

/**
 * The same of a child whose dress is drawn already; null where it can't be, and there is no advice then. Days that lie
 * wrong are told only where `today` is known.
 */
export function growthOf(child: OrderChild, dress: ChildDress | null, today: string | null): GrowthReport {
  const { growth } = child;
  if (growth === null) {
    const asMeasured = completeBody(child.body);
    return { kind: 'no-days', labels: asMeasured.ok ? sizeLabels(asMeasured.body) : null };
  }
  const now = today === null ? null : readDay(today);
  const input = now === null ? growth.input : { ...growth.input, today: now };
  const result = growBody(input);
  if (!result.ok) return { kind: 'refused', problems: result.problems };
  const { grown, warnings } = result;
  const completed = completeBody(grownInput(child.body, grown));
  const body = completed.ok ? completed.body : null;
  const chestEase = dress === null ? null : easeOf(dress);
  const isGrown = growth.drafted !== null;
  const advice =
    body === null || chestEase === null
      ? null
      : growthAdvice(input, { chestEase, leastEase: LEAST_EASE, skirtLength: toTheKnee(body), isGrown });
  return {
    kind: 'told',
    told: {
      grown,
      warnings,
      standing: standingOf(grown),
      chestEase,
      advice,
      labels: body === null ? null : sizeLabels(body),
    },
  };
}

/** What the checks of the drawn dress measure. */
function easeOf({ checks }: ChildDress): number | null {
  const measured = checks.find(({ code }) => code === 'chest-ease')?.measured;
  return measured != null && 'mm' in measured ? measured.mm : null;
}

/** A child's skirt goes to the knee or thereabouts; what a hem must give does not hang on the last centimetre. */
const toTheKnee = ({ values }: Body): number => values.waistHeight.mm - values.kneeHeight.mm;

function standingOf({ sex, charts, ages, values, weight }: GrownBody): readonly Standing[] {
  const age = ages.measured - ages.correction;
  return CHARTED.flatMap((measure): Standing[] => {
    const value = measure === 'weight' ? weight : values[measure];
    const reference = growthReference(measure, [age], charts);
    if (value === undefined || value === null || reference === null) return [];
    const z = referenceZ(reference, sex, age, value.measured);
    return [{ measure, value: value.measured, reference, z }];
  });
}
