import { type ReactNode, useState } from 'react';
import { say } from '../../../engine/words/index.ts';
import { Button } from '../../parts/button.tsx';
import { Choice } from '../../parts/choice.tsx';
import { AddStep } from './add-step.tsx';
import { BeginFrom } from './begin-from.tsx';
import { DeskProvider, type DressDesk, useDesk, useNewDesk, useSentenceAt } from './dress-desk.ts';
import { keyText, type ListedStep, type StepKey, sameStep } from './dress-list.ts';
import { StepRow } from './step-row.tsx';
import '../../look/dress.css';

/** The dress as a list of steps with their numbers, for everyone or for the child that is shown. */
export function DressPlace(): ReactNode {
  const [alone, setAlone] = useState(false);
  const desk = useNewDesk(alone);
  return (
    <DeskProvider value={desk}>
      <Steps onAlone={setAlone} />
    </DeskProvider>
  );
}

function Steps({ onAlone }: { readonly onAlone: (alone: boolean) => void }): ReactNode {
  const desk = useDesk();
  const { units, scope, childName, file } = desk;
  const [opened, setOpened] = useState<string | null>(null);
  const [adding, setAdding] = useState(false);
  const rows = rowsOf(desk);
  const problem = useSentenceAt('dress');
  const begunProblem = useSentenceAt('startFrom');
  const open = (key: StepKey | null): void => setOpened(key === null ? null : keyText(key));
  const sewn = rows.filter(({ known }) => known.stage !== 'own');
  const changes = rows.filter(({ known }) => known.stage === 'own');
  const row = (listed: ListedStep): ReactNode => (
    <StepRow key={keyText(listed)} listed={listed} open={opened === keyText(listed)} onOpen={open} />
  );
  return (
    <div className="stack">
      <div className="part-head">
        <h2>{say('page.place.dress', {}, units)}</h2>
        <Button look="main" onPress={() => setAdding(true)}>
          {say('page.dress.add', {}, units)}
        </Button>
      </div>
      <BeginFrom onBegun={() => open(null)} />
      {begunProblem !== null && <p className="wrong">{begunProblem}</p>}
      {file.children.length > 1 && (
        <div className="for-whom">
          <Choice
            label={say('page.dress.for', {}, units)}
            value={scope === 'party' ? 'party' : 'child'}
            options={(['party', 'child'] as const).map((id) => ({
              id,
              text: say(`page.dress.for.${id}`, { child: childName }, units),
            }))}
            onChange={(chosen) => onAlone(chosen === 'child')}
          />
        </div>
      )}
      {problem !== null && <p className="wrong">{problem}</p>}
      {rows.length === 0 && <p>{say('page.dress.none', {}, units)}</p>}
      <ul className="steps" aria-label={say('page.dress.steps', {}, units)}>
        {sewn.map(row)}
      </ul>
      <p className="small quiet">{say('page.dress.order', {}, units)}</p>
      {changes.length > 0 && (
        <>
          <h3>{say('page.dress.group.own', {}, units)}</h3>
          <ul className="steps" aria-label={say('page.dress.group.own', {}, units)}>
            {changes.map(row)}
          </ul>
          <p className="small quiet">{say('page.dress.order.own', {}, units)}</p>
        </>
      )}
      <AddStep
        open={adding}
        onClose={() => setAdding(false)}
        onAdded={(key) => {
          setAdding(false);
          open(key);
        }}
      />
    </div>
  );
}

/** What is listed: the dress for whom she changes it, and with everyone's what only this child wears. */
function rowsOf({ scope, party, own }: DressDesk): readonly ListedStep[] {
  if (scope !== 'party') return own;
  return [...party, ...own.filter((listed) => !party.some((other) => sameStep(other, listed)))];
}
