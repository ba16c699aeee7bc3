import { type ReactNode, useState } from 'react';
import type { ChildSewing, ChildSewingResult } from '../../../engine/order/index.ts';
import { hoursAndMinutes } from '../../../engine/sew/index.ts';
import { say } from '../../../engine/words/index.ts';
import { Button } from '../../parts/button.tsx';
import { useOrderFile, useTell, useUnits } from '../../session/use-session.ts';
import { useEditSewing } from './edit-sewing.ts';
import { StepRow } from './step-row.tsx';

/** The steps of one child in her order, with what is done; or why the dress can't be sewn so. */
export function StepList({
  index,
  result,
}: {
  readonly index: number;
  readonly result: ChildSewingResult;
}): ReactNode {
  const units = useUnits();
  const tell = useTell();
  if (result.ok) return <Steps index={index} sewing={result.sewing} />;
  return (
    <section className="level">
      <h3>{say('page.sew.cannot', {}, units)}</h3>
      {result.problems.map((problem) => (
        <p key={problem.key} className="wrong">
          {tell(problem)}
        </p>
      ))}
    </section>
  );
}

function Steps({ index, sewing }: { readonly index: number; readonly sewing: ChildSewing }): ReactNode {
  const units = useUnits();
  const { steps, leftOut, done } = sewing;
  const next = steps.find(({ id }) => !done.has(id) && !leftOut.has(id))?.id ?? null;
  const [open, setOpen] = useState<string | null>(null);
  const shown = open ?? next;
  return (
    <>
      <Progress sewing={sewing} />
      <Cloths sewing={sewing} />
      <Broken index={index} sewing={sewing} />
      <section className="level">
        <h3>{say('page.sew.steps', {}, units)}</h3>
        <ol className="findings">
          {steps.map((step, i) => (
            <StepRow
              key={step.id}
              index={index}
              sewing={sewing}
              step={step}
              number={i + 1}
              open={shown === step.id}
              onOpen={(opened) => setOpen(opened ? step.id : '')}
            />
          ))}
        </ol>
      </section>
    </>
  );
}

function Progress({ sewing: { steps, leftOut, done } }: { readonly sewing: ChildSewing }): ReactNode {
  const units = useUnits();
  const going = steps.filter(({ id }) => !leftOut.has(id));
  const sewn = going.filter(({ id }) => done.has(id)).length;
  const left = going.reduce((sum, { id, minutes }) => sum + (done.has(id) ? 0 : minutes), 0);
  const text = say('page.sew.done', { done: sewn, all: going.length }, units);
  const toGo =
    sewn === going.length
      ? say('page.sew.all-done', {}, units)
      : say('page.sew.left', hoursAndMinutes(left), units);
  return (
    <div className="sew-progress">
      <progress value={sewn} max={going.length} aria-label={text} />
      <p aria-live="polite">
        <strong>{text}</strong>, {toGo}
      </p>
    </div>
  );
}

function Cloths({ sewing: { cloths } }: { readonly sewing: ChildSewing }): ReactNode {
  const units = useUnits();
  const tell = useTell();
  if (cloths.length === 0) return null;
  return (
    <details>
      <summary>{say('page.sew.cloths', {}, units)}</summary>
      <ul className="cautions">
        {cloths.map(({ kind, stitch, press }) => (
          <li key={kind} className="caution">
            <strong>{say(`check.cloth.${kind}`, {}, units)}</strong>: {tell(stitch)} {tell(press)}
          </li>
        ))}
      </ul>
    </details>
  );
}

/** What her own order breaks: all of it is told, none of it is forbidden. */
function Broken({ index, sewing }: { readonly index: number; readonly sewing: ChildSewing }): ReactNode {
  const units = useUnits();
  const tell = useTell();
  const edit = useEditSewing(index);
  const isHers = useOrderFile((file) => {
    const { order = [], leftOut = [] } = file.children[index]?.sewing ?? {};
    return order.length + leftOut.length > 0;
  });
  if (!isHers) return null;
  return (
    <section className="level" data-broken={sewing.broken.length}>
      {sewing.broken.length > 0 && (
        <>
          <h3>{say('page.sew.breaks', {}, units)}</h3>
          <ul className="cautions" aria-live="polite">
            {sewing.broken.map(({ say: what }) => {
              const said = tell(what);
              return (
                <li key={said} className="caution caution-warn">
                  {said}
                </li>
              );
            })}
          </ul>
        </>
      )}
      <p>
        <Button look="quiet" onPress={edit.planOrder}>
          {say('page.sew.plan-order', {}, units)}
        </Button>
      </p>
    </section>
  );
}
