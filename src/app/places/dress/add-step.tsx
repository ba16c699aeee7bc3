import { type ReactNode, useEffect, useMemo, useState } from 'react';
import { type DressWish, designDress } from '../../../engine/design/index.ts';
import { type Saying, say } from '../../../engine/words/index.ts';
import { inTurns } from '../../device/in-turns.ts';
import { Sheet } from '../../parts/sheet.tsx';
import { TextField } from '../../parts/text-field.tsx';
import { toastDone } from '../../parts/toast.tsx';
import { useTell } from '../../session/use-session.ts';
import { addStep, nameForCopy } from './change-dress.ts';
import { didSaying, useDesk } from './dress-desk.ts';
import { keyText, type StepKey } from './dress-list.ts';
import { type Addable, addableSteps, GROUPS, isMeant } from './step-groups.ts';

/** All that can be added to the dress, grouped as she thinks of it, and found by typing. */
export function AddStep({
  open,
  onClose,
  onAdded,
}: {
  readonly open: boolean;
  readonly onClose: () => void;
  readonly onAdded: (key: StepKey) => void;
}): ReactNode {
  const desk = useDesk();
  const { units, scope, childName } = desk;
  return (
    <Sheet
      open={open}
      title={say('page.dress.add.title', {}, units)}
      close={say('page.close', {}, units)}
      onClose={onClose}
    >
      {scope !== 'party' && (
        <p className="small">{say('page.dress.add.for-child', { child: childName }, units)}</p>
      )}
      <Choices onAdded={onAdded} />
    </Sheet>
  );
}

function Choices({ onAdded }: { readonly onAdded: (key: StepKey) => void }): ReactNode {
  const desk = useDesk();
  const { units, session, scope, file, party, own } = desk;
  const tell = useTell();
  const [typed, setTyped] = useState('');
  const addable = useMemo(() => addableSteps(scope === 'party' ? party : own), [scope, party, own]);
  const refused = useRefusals(desk.wish, addable);
  const found = addable.filter(({ known }) => isMeant(known, typed));

  const add = ({ known }: Addable): void => {
    const key = { step: known.id, as: nameForCopy(file, known.id) };
    const run = session.change(didSaying(desk, scope, 'add-step', key), (draft) =>
      addStep(draft, scope, key),
    );
    toastDone(tell({ key: 'page.dress.added', values: { step: { word: `${known.id}.title` } } }), run);
    onAdded(key);
  };

  return (
    <>
      <TextField
        label={say('page.dress.add.find', {}, units)}
        value={typed}
        onChange={setTyped}
        autoFocus={matchMedia('(pointer: fine)').matches}
      />
      {found.length === 0 && <p>{say('page.dress.add.none', {}, units)}</p>}
      {GROUPS.map((group) => {
        const inGroup = found.filter((one) => one.group === group);
        return (
          inGroup.length > 0 && (
            <section key={group} className="add-group">
              <h3>{say(`page.dress.group.${group}`, {}, units)}</h3>
              <ul>
                {inGroup.map((one) => (
                  <li key={one.known.id}>
                    <OneStep one={one} why={refused.get(one.known.id) ?? null} onAdd={() => add(one)} />
                  </li>
                ))}
              </ul>
            </section>
          )
        );
      })}
    </>
  );
}

function OneStep({
  one: { known, instead },
  why,
  onAdd,
}: {
  readonly one: Addable;
  readonly why: Saying | null;
  readonly onAdd: () => void;
}): ReactNode {
  const tell = useTell();
  const word = (key: string): { readonly word: string } => ({ word: `${known.id}.${key}` });
  return (
    <button type="button" className="add-one" disabled={why !== null} onClick={onAdd} data-add={known.id}>
      <span className="add-name">
        {tell({ key: word('title').word, values: {} })}
        {instead !== null && (
          <span className="small quiet">
            {tell({ key: 'page.dress.add.instead', values: { step: { word: `${instead.step}.title` } } })}
          </span>
        )}
      </span>
      <span className="small quiet">
        {why === null
          ? tell({ key: word('about').word, values: {} })
          : tell({ key: 'page.dress.add.not-now', values: { why } })}
      </span>
    </button>
  );
}

/** Why a step can't be added to this dress as it is, found by trying it; null where it can. */
export function refusalOf(wish: DressWish, { known, instead }: Addable): Saying | null {
  // Her own changes begin with an example that need not suit this dress.
  if (known.stage === 'own') return null;
  const steps = wish.steps.filter(
    (step) => instead === null || keyText({ step: step.step, as: step.as ?? null }) !== keyText(instead),
  );
  const as = known.kind === null && steps.some(({ step }) => step === known.id) ? { as: TRIED } : {};
  const dress = designDress({ ...wish, steps: [...steps, { step: known.id, ...as, given: {} }] });
  if (dress.ok) return null;
  const problem = dress.problems.find((one) => one.of === 'body' && one.step === known.id);
  return problem?.of === 'body' ? problem.problem : null;
}

/** No maker writes this name. */
const TRIED = '(tried)';

/** Tries the steps one after another while she looks at the list. */
function useRefusals(wish: DressWish | null, addable: readonly Addable[]): ReadonlyMap<string, Saying> {
  const [refused, setRefused] = useState<ReadonlyMap<string, Saying>>(new Map());
  useEffect(() => {
    if (wish === null) return;
    const trying = function* (): Generator<undefined, void> {
      for (const one of addable) {
        const why = refusalOf(wish, one);
        if (why !== null) setRefused((before) => new Map(before).set(one.known.id, why));
        yield;
      }
    };
    return inTurns(trying(), 100);
  }, [wish, addable]);
  return refused;
}
