import { applyPatches, type Draft, enablePatches, type Patch, produceWithPatches } from 'immer';
import type { OrderFile } from '../../engine/order/index.ts';
import type { Saying } from '../../engine/words/index.ts';
import type { History, HistoryStep } from '../../store/index.ts';

enablePatches();

/** Steps beyond these are forgotten, the oldest first. */
const LONGEST_HISTORY = 300;

export interface Changed {
  readonly file: OrderFile;
  readonly history: History;
}

/**
 * The order after a change, and the history with the step that undoes it. A step with the same cause as the newest one
 * is joined to it when `join` is set: so a drag, or the typing of one number, is undone at once. Null when the recipe
 * changes nothing.
 */
export function recordChange(
  { file, history }: Changed,
  label: Saying,
  recipe: (draft: Draft<OrderFile>) => void,
  cause: string,
  join: boolean,
): Changed | null {
  const [next, patches, inverse] = produceWithPatches(file, recipe);
  if (next === file || patches.length === 0) return null;
  const made = history.steps.slice(0, history.position);
  const last = made.at(-1);
  const joined = join && last !== undefined && last.cause === cause && cause !== '';
  const step: HistoryStep = joined
    ? {
        label,
        cause,
        patches: shortened([...last.patches, ...patches]),
        inverse: first([...inverse, ...last.inverse]),
      }
    : { label, cause, patches, inverse };
  const steps = [...(joined ? made.slice(0, -1) : made), step].slice(-LONGEST_HISTORY);
  return { file: next, history: { steps, position: steps.length } };
}

/** The order as it was before the newest step in force; null when there is none. */
export function undone({ file, history }: Changed): Changed | null {
  const step = history.steps[history.position - 1];
  if (step === undefined) return null;
  return {
    file: applyPatches(file, step.inverse as readonly Patch[]),
    history: { ...history, position: history.position - 1 },
  };
}

/** The order with the step that was undone last; null when there is none. */
export function redone({ file, history }: Changed): Changed | null {
  const step = history.steps[history.position];
  if (step === undefined) return null;
  return {
    file: applyPatches(file, step.patches as readonly Patch[]),
    history: { ...history, position: history.position + 1 },
  };
}

/** Of a row of replacements at one place only the last matters; anything else is kept as it is. */
function shortened(patches: readonly unknown[]): readonly unknown[] {
  return onePlace(patches) ? patches.slice(-1) : patches;
}

/** The same going back: only the last applied matters, which brings the oldest value. */
function first(inverse: readonly unknown[]): readonly unknown[] {
  return onePlace(inverse) ? inverse.slice(-1) : inverse;
}

function onePlace(patches: readonly unknown[]): boolean {
  const place = (patch: unknown): string => JSON.stringify((patch as Patch).path);
  const [head] = patches;
  return patches.every((patch) => (patch as Patch).op === 'replace' && place(patch) === place(head));
}
