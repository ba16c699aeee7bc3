import type { PlannedStep } from './sew-plan.ts';

/** One step for several children at once: all shoulders, then all necks. */
export interface Batch {
  readonly id: string;
  readonly items: readonly { readonly child: number; readonly step: PlannedStep }[];
  readonly minutes: number;
}

/**
 * Puts the work of several children into batches. Steps of one name are done together wherever no child has to wait
 * for something else first; no child's own order is broken by it. Takes each child's steps in her order.
 */
export function batchSteps(children: readonly (readonly PlannedStep[])[]): readonly Batch[] {
  const left = children.map((steps) => [...steps]);
  const batches: Batch[] = [];
  for (;;) {
    const ready = readyIn(left);
    const next = bestOf(ready, left);
    if (next === null) return batches;
    const items = ready.get(next) ?? [];
    for (const { child, step } of items) left[child] = left[child]?.filter((other) => other !== step) ?? [];
    batches.push({ id: next, items, minutes: items.reduce((sum, { step }) => sum + step.minutes, 0) });
  }
}

/** An armhole that is bagged and one that is felled are not the same work. */
const keyOf = ({ kind, id }: PlannedStep): string => `${kind} ${id}`;

type Ready = ReadonlyMap<string, Batch['items']>;

/** By name, the steps whose needs are done, each child's own. */
function readyIn(left: readonly (readonly PlannedStep[])[]): Ready {
  const ready = new Map<string, { readonly child: number; readonly step: PlannedStep }[]>();
  for (const [child, steps] of left.entries()) {
    const open = new Set(steps.map(({ id }) => id));
    for (const step of steps) {
      if (step.needs.some((id) => open.has(id))) continue;
      ready.set(keyOf(step), [...(ready.get(keyOf(step)) ?? []), { child, step }]);
    }
  }
  return ready;
}

/** The step that comes first in the lists and for which nobody who still has it must wait; else simply the first. */
function bestOf(ready: Ready, left: readonly (readonly PlannedStep[])[]): string | null {
  const having = (id: string): number =>
    left.filter((steps) => steps.some((step) => keyOf(step) === id)).length;
  const place = (id: string): number =>
    Math.min(...left.map((steps) => steps.findIndex((step) => keyOf(step) === id)).filter((i) => i >= 0));
  const [best] = [...ready]
    .map(([id, items]) => ({ id, waits: having(id) > items.length ? 1 : 0, place: place(id) }))
    .toSorted((a, b) => a.waits - b.waits || a.place - b.place);
  return best?.id ?? null;
}
