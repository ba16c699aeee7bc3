import type { ClothKind } from '../../check/index.ts';
import type { ClothRole } from '../../piece/index.ts';
import {
  type Broken,
  type ClothAdvice,
  handPlan,
  type PlannedStep,
  type SewInput,
  sewPlan,
  stepTimes,
  type TimedStep,
} from '../../sew/index.ts';
import type { Saying } from '../../words/index.ts';
import type { ChildDrawing } from '../check-order.ts';
import type { Order } from '../order.ts';
import { clothOf } from '../read-cloths.ts';
import { CLOTH_ROLES } from '../schema.ts';
import type { SewingFile } from './sewing-form.ts';
import { timedSteps } from './timed-steps.ts';

/** The sewing of one child's dress as it stands: her order of work, what is done, what her changes break. */
export interface ChildSewing {
  readonly steps: readonly PlannedStep[];
  readonly leftOut: ReadonlySet<string>;
  readonly broken: readonly Broken[];
  /** Steps that are done, with her minutes where she has timed them. */
  readonly done: ReadonlyMap<string, number | null>;
  readonly cloths: readonly ClothAdvice[];
  /** Of all steps that are not left out. */
  readonly minutes: number;
}

export type ChildSewingResult =
  | { readonly ok: true; readonly sewing: ChildSewing }
  /** What can't be sewn so, and what to change. */
  | { readonly ok: false; readonly problems: readonly Saying[] };

/** As much of a drawing as is sewn. */
export interface CutGarment extends Pick<ChildDrawing, 'pieces'> {
  readonly drawn: Pick<ChildDrawing['drawn'], 'garment'>;
}

/**
 * The sewing plan of a child's dress with what the maker has done and changed. Minutes follow her own times in this
 * order and in `others`, as far as she has any.
 */
export function childSewing(
  order: Order,
  { drawn, pieces }: CutGarment,
  kept: SewingFile,
  others: readonly TimedStep[] = [],
): ChildSewingResult {
  const input: SewInput = { garment: drawn.garment, cut: pieces, clothKinds: clothKindsOf(order) };
  const files = order.children.map(({ sewing }) => sewing);
  const planned = sewPlan(input, stepTimes([...files.flatMap(timedSteps), ...others]));
  if (!planned.ok) return planned;
  const hand = { order: kept.order ?? [], leftOut: kept.leftOut ?? [] };
  const { steps, leftOut, broken } = handPlan(input, planned.plan, hand);
  const known = new Set(steps.map(({ id }) => id));
  const done = (kept.done ?? []).filter(({ step }) => known.has(step));
  return {
    ok: true,
    sewing: {
      steps,
      leftOut,
      broken,
      done: new Map(done.map(({ step, minutes }) => [step, minutes ?? null])),
      cloths: planned.plan.cloths,
      minutes: steps.reduce((sum, { id, minutes }) => sum + (leftOut.has(id) ? 0 : minutes), 0),
    },
  };
}

function clothKindsOf(order: Order): Readonly<Partial<Record<ClothRole, ClothKind | null>>> {
  return Object.fromEntries(CLOTH_ROLES.map((role) => [role, clothOf(order.cloths, role).kind]));
}
