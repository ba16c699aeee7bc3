import { type FocusEvent, type ReactNode, useEffect, useRef, useState } from 'react';
import { say } from '../../../engine/words/index.ts';
import { Button } from '../../parts/button.tsx';
import { inUnits } from '../../parts/shown-length.ts';
import { TextField } from '../../parts/text-field.tsx';
import { toastDone } from '../../parts/toast.tsx';
import { useChild, useTell } from '../../session/use-session.ts';
import { useLook } from '../../shell/looking.ts';
import { type OnDragParam, type ParamRef, useGoverned } from '../../table/index.ts';
import type { Scope } from '../scope.ts';
import {
  canMove,
  canTakeOut,
  childrenWithOwn,
  forAllAgain,
  isFreeName,
  moveStep,
  removeStep,
  renameStep,
} from './change-dress.ts';
import { didSaying, titleOf, useDesk, useStepContext } from './dress-desk.ts';
import { givenAt, keyText, type ListedStep, pathOfStep, type StepKey, sameStep } from './dress-list.ts';
import { ParamField, writeParam } from './param-field.tsx';

interface StepFieldsProps {
  readonly listed: ListedStep;
  readonly scope: Scope;
  readonly onOpen: (key: StepKey | null) => void;
}

/** An open step: what it is, its numbers, and what can be done with it as a whole. */
export function StepFields(props: StepFieldsProps): ReactNode {
  const { listed, scope } = props;
  const { units, childName } = useDesk();
  const tell = useTell();
  const context = useStepContext(listed);
  const { live, onFocus } = useLiveParam(listed, scope);
  const skipped = useSkipped(listed);
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: it only follows which of its fields has the focus.
    <div className="step-inside" onFocus={onFocus}>
      <p className="small quiet">{tell({ key: `${listed.step}.about`, values: {} })}</p>
      {listed.instead !== null && (
        <p className="small">
          {tell({ key: 'page.dress.step.instead', values: { step: { word: `${listed.instead}.title` } } })}
        </p>
      )}
      {skipped !== null && (
        <p className="small wrong">
          {say('page.dress.step.skipped', { child: childName, why: skipped }, units)}
        </p>
      )}
      {listed.on ? (
        <>
          {listed.as !== null && <NameField key={keyText(listed)} {...props} />}
          <div className="fields">
            {Object.entries(listed.known.params).map(([name, param]) => (
              <ParamField
                key={`${scope} ${keyText(listed)} ${name}`}
                listed={listed}
                scope={scope}
                name={name}
                param={param}
                context={context}
              />
            ))}
          </div>
          {live && (
            <p className="small quiet" role="status">
              {say('page.dress.drag', {}, units)}
            </p>
          )}
        </>
      ) : (
        <p className="small">{say('page.dress.step.off.about', {}, units)}</p>
      )}
      <StepActions {...props} />
    </div>
  );
}

/** A change of hers that can't be made on this child, and why. */
function useSkipped(listed: ListedStep): string | null {
  const { work } = useChild();
  const tell = useTell();
  const path = pathOfStep(listed);
  const found = work.report?.findings.find(
    ({ level, say: { values } }) => level === 'warn' && values.path === path,
  );
  const sentence = found?.say.values.sentence;
  if (typeof sentence !== 'object' || !('key' in sentence)) return null;
  const { what } = sentence.values;
  return typeof what === 'object' && 'key' in what ? tell(what) : tell(sentence);
}

/** The number that she touched last lights up on the table and can be dragged there. */
function useLiveParam(listed: ListedStep, scope: Scope) {
  const desk = useDesk();
  const look = useLook();
  const [name, setName] = useState<string | null>(null);
  const [held, setHeld] = useState(false);
  const isDrawn = desk.wish?.steps.some(
    (step) => step.step === listed.step && (step.as ?? null) === listed.as,
  );
  const { step, as } = listed;
  const ref: ParamRef | null =
    name === null || isDrawn !== true ? null : { of: 'step', step, as, param: name };
  const governed = useGoverned(desk.wish, ref, held);
  const now = useRef({ desk, listed, scope });
  now.current = { desk, listed, scope };

  // biome-ignore lint/correctness/useExhaustiveDependencies: the name and the step stand for the reference.
  useEffect(() => {
    const drag: OnDragParam = (dragged, value, phase) => {
      const { desk: here, listed: of, scope: whose } = now.current;
      const param = of.known.params[dragged.param];
      if (param === undefined) return;
      const text = param.kind === 'length' ? inUnits(value, here.units) : value;
      // What this child has of its own is what is seen to move.
      const theirs = here.own.find((other) => sameStep(other, of));
      const isOwn = theirs !== undefined && givenAt(theirs, here.child, dragged.param).own !== undefined;
      if (phase === 'move') here.session.drag();
      writeParam(here, isOwn ? here.child : whose, of, dragged.param, text, true);
      setHeld(phase === 'move');
      if (phase === 'end') here.session.settle();
    };
    look({ governed, liveParam: ref, onDragParam: drag });
  }, [governed, name, step, as, isDrawn, look]);
  useEffect(() => () => look({ governed: [], liveParam: null, onDragParam: null }), [look]);

  const onFocus = ({ target }: FocusEvent): void => {
    const touched = target.closest('[data-param]')?.getAttribute('data-param') ?? null;
    if (touched === null) return;
    const kind = listed.known.params[touched]?.kind;
    setName(kind === 'length' || kind === 'ratio' ? touched : null);
  };
  return { live: governed.some(({ handles }) => handles.length > 0), onFocus };
}

/** Her name for one of several copies. It is written when she leaves the field, since every list finds it by that. */
function NameField({ listed, onOpen }: StepFieldsProps): ReactNode {
  const { units, session, file } = useDesk();
  const [text, setText] = useState(listed.as ?? '');
  const isTaken = !isFreeName(file, listed, text);
  return (
    <TextField
      label={say('page.dress.step.name', {}, units)}
      value={text}
      needed={say('page.dress.needed', {}, units)}
      problem={isTaken ? say('page.dress.step.name.taken', {}, units) : null}
      onChange={setText}
      onDone={() => {
        if (text.trim() === listed.as || text.trim() === '' || isTaken) return;
        session.change(
          { key: 'page.did.step-renamed', values: { step: { word: `${listed.step}.title` } } },
          (draft) => renameStep(draft, listed, text),
        );
        onOpen({ step: listed.step, as: text.trim().normalize('NFC') });
      }}
    />
  );
}

function StepActions({ listed, scope, onOpen }: StepFieldsProps): ReactNode {
  const desk = useDesk();
  const { file, units, session, child, childName } = desk;
  const tell = useTell();
  const title = titleOf(listed);
  const name = (key: string): string => tell({ key, values: { step: title, child: childName } });
  const takesOut = canTakeOut(file, scope, listed);
  const theirs = childrenWithOwn(file, listed);
  const hasOwn = theirs.includes(child) && !(scope !== 'party' && takesOut);
  const others = theirs.filter((i) => i !== child).flatMap((i) => file.children[i]?.name ?? []);
  return (
    <>
      {others.length > 0 && (
        <p className="small quiet">{say('page.dress.step.others', { children: others.join(', ') }, units)}</p>
      )}
      <div className="row row-wrap">
        {listed.known.stage === 'own' &&
          ([-1, 1] as const).map((by) => (
            <Button
              key={by}
              look="quiet"
              name={name(by < 0 ? 'page.dress.step.earlier.what' : 'page.dress.step.later.what')}
              disabled={!canMove(file, scope, listed, by)}
              onPress={() => {
                session.change({ key: 'page.did.step-moved', values: { step: title } }, (draft) =>
                  moveStep(draft, scope, listed, by),
                );
              }}
            >
              {say(by < 0 ? 'page.dress.step.earlier' : 'page.dress.step.later', {}, units)}
            </Button>
          ))}
        {hasOwn && (
          <Button
            look="quiet"
            name={name('page.dress.step.for-all.what')}
            onPress={() => {
              session.change(
                { key: 'page.did.step-all', values: { step: title, child: childName } },
                (draft) => forAllAgain(draft, child, listed),
              );
            }}
          >
            {say('page.dress.step.for-all', {}, units)}
          </Button>
        )}
        {takesOut && (
          <Button
            look="wrong"
            name={name('page.dress.step.remove.what')}
            onPress={() => {
              const run = session.change(didSaying(desk, scope, 'remove-step', listed), (draft) =>
                removeStep(draft, scope, listed),
              );
              onOpen(null);
              toastDone(name('page.dress.step.removed'), run);
            }}
          >
            {say('page.dress.step.remove', {}, units)}
          </Button>
        )}
      </div>
      {!takesOut && scope === 'party' && listed.on && (
        <p className="small quiet">{say('page.dress.step.of-library', { dress: desk.libraryName }, units)}</p>
      )}
    </>
  );
}
