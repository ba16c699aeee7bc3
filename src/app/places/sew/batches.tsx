import { type ReactNode, useMemo } from 'react';
import type { ChildSewingResult } from '../../../engine/order/index.ts';
import { type Batch, batchSteps } from '../../../engine/sew/index.ts';
import { say } from '../../../engine/words/index.ts';
import { useSession, useSessionState, useTell, useUnits } from '../../session/use-session.ts';
import { markForAll, useEditSewing } from './edit-sewing.ts';

/** The work of the party: one step for every child who has it, then the next. */
export function Batches({ sewings }: { readonly sewings: readonly (ChildSewingResult | null)[] }): ReactNode {
  const units = useUnits();
  const tell = useTell();
  const names = useSessionState(({ work }) => work.children);
  const batches = useMemo(
    () =>
      batchSteps(
        sewings.map((result) =>
          result?.ok === true ? result.sewing.steps.filter(({ id }) => !result.sewing.leftOut.has(id)) : [],
        ),
      ),
    [sewings],
  );
  const refused = sewings.flatMap((result, i) =>
    result?.ok === false ? result.problems.map((problem) => `${names[i]?.name ?? ''}: ${tell(problem)}`) : [],
  );
  return (
    <section className="level">
      <p className="quiet">{say('page.sew.batches.about', {}, units)}</p>
      {refused.map((said) => (
        <p key={said} className="wrong">
          {said}
        </p>
      ))}
      <ol className="findings">
        {batches.map((batch) => (
          <BatchRow key={batch.id} batch={batch} sewings={sewings} />
        ))}
      </ol>
      <p className="quiet">{say('sew.caution.pins', {}, units)}</p>
    </section>
  );
}

function BatchRow({
  batch,
  sewings,
}: {
  readonly batch: Batch;
  readonly sewings: readonly (ChildSewingResult | null)[];
}): ReactNode {
  const units = useUnits();
  const tell = useTell();
  const session = useSession();
  const { items, minutes } = batch;
  const [first] = items;
  if (first === undefined) return null;
  const title = tell(first.step.title);
  const isDone = (child: number, step: string): boolean => {
    const result = sewings[child];
    return result?.ok === true && result.sewing.done.has(step);
  };
  const all = items.every(({ child, step }) => isDone(child, step.id));
  return (
    <li className={`finding sew-step${all ? ' sew-done' : ''}`} data-batch={batch.id}>
      <div className="sew-head">
        <input
          type="checkbox"
          className="sew-tick"
          checked={all}
          disabled={all}
          aria-label={say('page.sew.check.all', { step: title }, units)}
          onChange={() => markForAll(session, items)}
        />
        <span className="sew-title">{title}</span>
        <span className="quiet sew-time">{say('page.sew.estimate', { minutes }, units)}</span>
      </div>
      <ul className="sew-children">
        {items.map(({ child, step }) => (
          <li key={child}>
            <ChildTick child={child} step={step} title={title} done={isDone(child, step.id)} />
          </li>
        ))}
      </ul>
    </li>
  );
}

function ChildTick({
  child,
  step,
  title,
  done,
}: {
  readonly child: number;
  readonly step: Batch['items'][number]['step'];
  readonly title: string;
  readonly done: boolean;
}): ReactNode {
  const units = useUnits();
  const edit = useEditSewing(child);
  const name = useSessionState(({ work }) => work.children[child]?.name ?? '');
  return (
    <label className="sew-child">
      <input
        type="checkbox"
        className="sew-tick"
        checked={done}
        aria-label={say('page.sew.check.for', { child: name, step: title }, units)}
        onChange={(event) => edit.mark(step, event.currentTarget.checked)}
      />
      {name}
    </label>
  );
}
