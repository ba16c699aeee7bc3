import { type ReactNode, useId } from 'react';
import type { ChildSewing } from '../../../engine/order/index.ts';
import type { PlannedStep } from '../../../engine/sew/index.ts';
import { say } from '../../../engine/words/index.ts';
import { Button } from '../../parts/button.tsx';
import { NumberField } from '../../parts/number-field.tsx';
import { useChild, useSession, useTell, useUnits } from '../../session/use-session.ts';
import { startClock, stopClock, useClock } from './clock.ts';
import { useEditSewing } from './edit-sewing.ts';
import { StepFigure } from './step-figure.tsx';

/** One step: a box to tick, what it is, how long it takes; opened, how it is done, its drawing and its clock. */
export function StepRow({
  index,
  sewing,
  step,
  number,
  open,
  onOpen,
}: {
  readonly index: number;
  readonly sewing: ChildSewing;
  readonly step: PlannedStep;
  readonly number: number;
  readonly open: boolean;
  readonly onOpen: (open: boolean) => void;
}): ReactNode {
  const units = useUnits();
  const tell = useTell();
  const edit = useEditSewing(index);
  const inside = useId();
  const title = tell(step.title);
  const isOut = sewing.leftOut.has(step.id);
  const isDone = sewing.done.has(step.id);
  const took = sewing.done.get(step.id) ?? null;
  const time =
    took !== null
      ? say('page.sew.minutes', { minutes: took }, units)
      : say(
          step.from === 'estimate' ? 'page.sew.estimate' : 'page.sew.minutes',
          { minutes: step.minutes },
          units,
        );
  return (
    <li
      className={`finding sew-step${open ? ' finding-open' : ''}${isDone ? ' sew-done' : ''}${isOut ? ' sew-out' : ''}`}
      data-step={step.id}
    >
      <div className="sew-head">
        <input
          type="checkbox"
          className="sew-tick"
          checked={isDone}
          disabled={isOut}
          aria-label={say('page.sew.check', { step: title }, units)}
          onChange={(event) => edit.mark(step, event.currentTarget.checked)}
        />
        <button
          type="button"
          className="finding-head"
          aria-expanded={open}
          aria-controls={inside}
          onClick={() => onOpen(!open)}
        >
          <span className="sew-title">
            {number}. {title}
          </span>
          <span className="quiet sew-time">{isOut ? say('page.sew.left-out', {}, units) : time}</span>
        </button>
      </div>
      {open && (
        <div className="sew-inside" id={inside}>
          <StepDrawing step={step} name={say('page.sew.drawing', { step: title }, units)} />
          <div className="stack sew-words">
            <p>{tell(step.say)}</p>
            {step.reasons.map((reason) => (
              <p key={reason.key} className="quiet">
                {tell(reason)}
              </p>
            ))}
            {!isOut && <StepTime index={index} step={step} took={took} title={title} />}
            <StepPlace index={index} sewing={sewing} step={step} title={title} />
          </div>
        </div>
      )}
    </li>
  );
}

function StepDrawing({ step, name }: { readonly step: PlannedStep; readonly name: string }): ReactNode {
  const { work } = useChild();
  const units = useUnits();
  const garment = work.drawing?.drawn.garment;
  return garment === undefined ? null : (
    <StepFigure garment={garment} step={step} units={units} name={name} />
  );
}

/** Her own minutes, typed or by the clock. */
function StepTime({
  index,
  step,
  took,
  title,
}: {
  readonly index: number;
  readonly step: PlannedStep;
  readonly took: number | null;
  readonly title: string;
}): ReactNode {
  const units = useUnits();
  const session = useSession();
  const edit = useEditSewing(index);
  const running = useClock(session.id, index, step.id);
  const stop = (): void => {
    edit.took(step, stopClock());
    session.settle();
  };
  return (
    <div className="sew-times">
      <NumberField
        label={say('page.sew.took', {}, units)}
        value={took ?? undefined}
        unit={say('page.sew.unit', {}, units)}
        about={say('page.sew.took.about', { minutes: step.estimate }, units)}
        notANumber={say('page.sew.not-minutes', {}, units)}
        problem={took !== null && took <= 0 ? say('page.sew.not-minutes', {}, units) : null}
        onChange={(minutes) => edit.took(step, minutes)}
        onDone={session.settle}
      />
      {running === null ? (
        <Button
          name={say('page.sew.clock.of', { step: title }, units)}
          onPress={() => startClock(session.id, index, step.id)}
        >
          {say('page.sew.clock', {}, units)}
        </Button>
      ) : (
        <Button onPress={stop}>{say('page.sew.clock.stop', { minutes: running }, units)}</Button>
      )}
    </div>
  );
}

/** Where the step stands, and whether at all. */
function StepPlace({
  index,
  sewing,
  step,
  title,
}: {
  readonly index: number;
  readonly sewing: ChildSewing;
  readonly step: PlannedStep;
  readonly title: string;
}): ReactNode {
  const units = useUnits();
  const edit = useEditSewing(index);
  const { steps, leftOut } = sewing;
  const at = steps.findIndex(({ id }) => id === step.id);
  return (
    <div className="sew-place">
      <Button
        look="quiet"
        name={say('page.sew.up.of', { step: title }, units)}
        disabled={at === 0}
        onPress={() => edit.move(steps, step, -1)}
      >
        {say('page.sew.up', {}, units)}
      </Button>
      <Button
        look="quiet"
        name={say('page.sew.down.of', { step: title }, units)}
        disabled={at === steps.length - 1}
        onPress={() => edit.move(steps, step, 1)}
      >
        {say('page.sew.down', {}, units)}
      </Button>
      {leftOut.has(step.id) ? (
        <Button
          look="quiet"
          name={say('page.sew.put-back.of', { step: title }, units)}
          onPress={() => edit.putBack(step)}
        >
          {say('page.sew.put-back', {}, units)}
        </Button>
      ) : (
        <Button
          look="quiet"
          name={say('page.sew.leave-out.of', { step: title }, units)}
          onPress={() => edit.leaveOut(step)}
        >
          {say('page.sew.leave-out', {}, units)}
        </Button>
      )}
    </div>
  );
}
