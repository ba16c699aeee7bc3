import { type ReactNode, useEffect, useRef } from 'react';
import { Switch as AriaSwitch } from 'react-aria-components';
import { say } from '../../../engine/words/index.ts';
import { useTell } from '../../session/use-session.ts';
import { switchStep } from './change-dress.ts';
import { type DressDesk, didSaying, scopeOfStep, titleOf, useDesk, useSentenceAt } from './dress-desk.ts';
import { keyText, type ListedStep, pathOfStep, type StepKey, sameStep } from './dress-list.ts';
import { StepFields } from './step-fields.tsx';

/** One step of the dress: its name, whether it is worn, what is special for this child; opened, its numbers. */
export function StepRow({
  listed,
  open,
  onOpen,
}: {
  readonly listed: ListedStep;
  readonly open: boolean;
  /** The step that is open from now on; null for none. */
  readonly onOpen: (key: StepKey | null) => void;
}): ReactNode {
  const desk = useDesk();
  const tell = useTell();
  const { session } = desk;
  const scope = scopeOfStep(desk, listed);
  const title = tell(titleOf(listed));
  const problem = useSentenceAt(pathOfStep(listed));
  const id = `step-${keyText(listed).replaceAll(' ', '-')}`;
  const row = useRef<HTMLLIElement>(null);
  useEffect(() => {
    if (open) row.current?.scrollIntoView({ block: 'start' });
  }, [open]);
  // A step that only this child wears is not kept switched off: it is taken out.
  const canSwitch = scope === 'party' || listed.layers.some(({ from }) => from !== 'child');
  return (
    <li ref={row} className={open ? 'step step-open' : 'step'} data-step={keyText(listed)}>
      <div className="step-head">
        <button
          type="button"
          className="step-title"
          aria-expanded={open}
          aria-controls={id}
          onClick={() => onOpen(open ? null : listed)}
        >
          <svg className="icon-small step-sign" viewBox="0 0 12 12" aria-hidden="true">
            <path d={open ? 'M2 4l4 4 4-4' : 'M4 2l4 4-4 4'} />
          </svg>
          <span className={listed.on ? undefined : 'step-off'}>{title}</span>
          <Marks listed={listed} />
        </button>
        {canSwitch && (
          <AriaSwitch
            className="switch"
            aria-label={tell({ key: 'page.dress.step.worn', values: { step: titleOf(listed) } })}
            isSelected={listed.on}
            onChange={(on) => {
              session.change(didSaying(desk, scope, on ? 'step-on' : 'step-off', listed), (file) =>
                switchStep(file, scope, listed, on),
              );
            }}
          >
            <span className="switch-track" aria-hidden="true">
              <span className="switch-knob" />
            </span>
          </AriaSwitch>
        )}
      </div>
      {problem !== null && <p className="small wrong">{problem}</p>}
      <div id={id} hidden={!open}>
        {open && <StepFields listed={listed} scope={scope} onOpen={onOpen} />}
      </div>
    </li>
  );
}

/** What differs for the child whose dress lies on the table. */
function Marks({ listed }: { readonly listed: ListedStep }): ReactNode {
  const desk = useDesk();
  const said = markOf(desk, listed);
  return (
    <>
      {said !== null && <span className="mark">{said}</span>}
      {!listed.on && <span className="small quiet">{say('page.dress.step.left-out', {}, desk.units)}</span>}
    </>
  );
}

function markOf({ party, own, childName: child, units, file }: DressDesk, listed: ListedStep): string | null {
  if (file.children.length < 2) return null;
  const ofAll = party.find((other) => sameStep(other, listed));
  const ofChild = own.find((other) => sameStep(other, listed));
  if (ofAll === undefined) return say('page.dress.step.only', { child }, units);
  if (ofChild === undefined || (ofAll.on && !ofChild.on))
    return say('page.dress.step.not-for', { child }, units);
  if (!ofAll.on && ofChild.on) return say('page.dress.step.only', { child }, units);
  const differs = ofChild.layers.some(({ from, given }) => from === 'child' && Object.keys(given).length > 0);
  return differs ? say('page.dress.step.changed', { child }, units) : null;
}
