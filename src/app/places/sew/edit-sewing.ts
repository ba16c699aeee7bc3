import type { Draft } from 'immer';
import type { ChildFile } from '../../../engine/order/index.ts';
import type { PlannedStep } from '../../../engine/sew/index.ts';
import type { Saying, WordKey } from '../../../engine/words/index.ts';
import type { Session } from '../../session/session.ts';
import { useSession } from '../../session/use-session.ts';

type SewingDraft = NonNullable<Draft<ChildFile>['sewing']>;
type DoneDraft = NonNullable<SewingDraft['done']>[number];

/** What she does with the steps of one child; every change is one step of the undo history. */
export interface EditSewing {
  mark(step: PlannedStep, done: boolean): void;
  took(step: PlannedStep, minutes: number | undefined): void;
  /** Swaps a step with its neighbour in the list as it is shown. */
  move(steps: readonly PlannedStep[], step: PlannedStep, by: -1 | 1): void;
  leaveOut(step: PlannedStep): void;
  putBack(step: PlannedStep): void;
  /** Forgets her own order and what she left out; what is done stays done. */
  planOrder(): void;
}

export function useEditSewing(index: number): EditSewing {
  const session = useSession();
  const label = (key: WordKey, step?: PlannedStep): Saying => ({
    key,
    values: {
      child: session.state.getState().work.children[index]?.name ?? '',
      ...(step === undefined ? {} : { step: step.title }),
    },
  });
  const change = (said: Saying, recipe: (sewing: SewingDraft) => void, cause?: string): void => {
    session.change(
      said,
      (file) => {
        const child = file.children[index];
        if (child !== undefined) changeSewing(child, recipe);
      },
      cause === undefined ? {} : { cause },
    );
  };
  return {
    mark: (step, done) =>
      change(label(done ? 'page.did.sewn' : 'page.did.not-sewn', step), (sewing) =>
        done ? markDone(sewing, step) : notDone(sewing, step.id),
      ),
    took: (step, minutes) =>
      change(
        label('page.did.step-minutes', step),
        (sewing) => {
          const entry = markDone(sewing, step);
          if (minutes === undefined) delete entry.minutes;
          else entry.minutes = minutes;
        },
        `children[${index}].sewing.${step.id}`,
      ),
    move: (steps, step, by) =>
      change(label('page.did.sewing-moved', step), (sewing) => {
        const ids = steps.map(({ id }) => id);
        const [from, to] = [ids.indexOf(step.id), ids.indexOf(step.id) + by];
        if (from < 0 || to < 0 || to >= ids.length) return;
        ids.splice(to, 0, ...ids.splice(from, 1));
        sewing.order = ids;
      }),
    leaveOut: (step) =>
      change(label('page.did.step-left-out', step), (sewing) => {
        sewing.leftOut = [...(sewing.leftOut ?? []), step.id];
      }),
    putBack: (step) =>
      change(label('page.did.step-back', step), (sewing) => {
        sewing.leftOut = (sewing.leftOut ?? []).filter((id) => id !== step.id);
      }),
    planOrder: () =>
      change(label('page.did.order-back'), (sewing) => {
        delete sewing.order;
        delete sewing.leftOut;
      }),
  };
}

/** One step done for several children at once. */
export function markForAll(
  session: Session,
  items: readonly { readonly child: number; readonly step: PlannedStep }[],
): void {
  const [first] = items;
  if (first === undefined) return;
  session.change({ key: 'page.did.sewn-all', values: { step: first.step.title } }, (file) => {
    for (const { child, step } of items) {
      const draft = file.children[child];
      if (draft !== undefined) changeSewing(draft, (sewing) => markDone(sewing, step));
    }
  });
}

function changeSewing(child: Draft<ChildFile>, recipe: (sewing: SewingDraft) => void): void {
  const sewing = child.sewing ?? {};
  recipe(sewing);
  child.sewing = sewing;
}

/** The entry of a step that is done, with what it was reckoned at, so that its time tells about others of its kind. */
function markDone(sewing: SewingDraft, { id, kind, estimate }: PlannedStep): DoneDraft {
  const known = sewing.done?.find(({ step }) => step === id);
  if (known !== undefined) return known;
  sewing.done = [...(sewing.done ?? []), { step: id, kind, estimate }];
  return sewing.done.at(-1) as DoneDraft;
}

function notDone(sewing: SewingDraft, id: string): void {
  sewing.done = (sewing.done ?? []).filter(({ step }) => step !== id);
}
