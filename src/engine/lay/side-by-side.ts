import { OUTLINE_TOLERANCE } from './grown-outline.ts';
import type { LayPlan } from './lay-plan.ts';
import type { PlacedStretch } from './run-lay.ts';

/** A lay that was found, with the plan that it was found for. */
interface Found {
  readonly plan: LayPlan;
  readonly placed: readonly PlacedStretch[];
}

/**
 * Lays put one behind the other, as a start for the lay of all their pieces together: `plan` must have the pieces of
 * the lays in their order. So all together never take more than each alone. Null where the cloth is not one plain
 * single stretch, since then a lay can't be moved along as it is.
 */
export function sideBySide(plan: LayPlan, lays: readonly Found[]): readonly PlacedStretch[] | null {
  const { repeat, flaws, longest, gap } = plan.cloth;
  if (repeat !== undefined || longest !== undefined || (flaws?.length ?? 0) > 0) return null;
  const wanted = plan.stretches[0];
  if (plan.stretches.length !== 1 || wanted?.folding !== 'single') return null;
  let end = 0;
  const places = lays.flatMap(({ plan: own, placed }) => {
    const one = placed[0];
    if (one === undefined || placed.length > 1 || own.stretches[0]?.folding !== 'single') return [];
    const moved = one.places.map((place) => ({ ...place, x: place.x + end }));
    end += one.length + gap + 2 * OUTLINE_TOLERANCE;
    return moved;
  });
  if (places.length !== wanted.items.length) return null;
  return [{ from: 0, places, length: Math.max(0, end - gap - 2 * OUTLINE_TOLERANCE) }];
}
