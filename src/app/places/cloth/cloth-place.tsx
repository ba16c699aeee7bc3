import { type ReactNode, useEffect, useState } from 'react';
import { say } from '../../../engine/words/index.ts';
import { today } from '../../device/today.ts';
import { Button } from '../../parts/button.tsx';
import { Choice } from '../../parts/choice.tsx';
import { UnderWay } from '../../parts/under-way.tsx';
import { fieldSentence, useChild, useOrderFile, useTell, useUnits } from '../../session/use-session.ts';
import { enoughLaid, layCloths, stopLaying } from '../../work/lay.ts';
import type { LayAnswer, LayProgress } from '../../work/lay-wish.ts';
import { LaidCloths } from './laid-cloths.tsx';
import '../../look/paper.css';

const TIMES = ['10', '60', '300'] as const;
type Whom = 'child' | 'party';

/** How the pieces lie on the cloth: she says how long to search, sees what to buy, and the lay drawn to scale. */
export function ClothPlace(): ReactNode {
  const units = useUnits();
  const tell = useTell();
  const file = useOrderFile((order) => order);
  const { index, work } = useChild();
  const [whom, setWhom] = useState<Whom>(file.children.length > 1 ? 'party' : 'child');
  const [time, setTime] = useState<(typeof TIMES)[number]>('10');
  const [step, setStep] = useState<LayProgress | 'begun' | null>(null);
  const [answer, setAnswer] = useState<LayAnswer | null>(null);
  const [laidFrom, setLaidFrom] = useState(file);
  const [failed, setFailed] = useState<string | null>(null);
  useEffect(() => stopLaying, []);

  const lay = async (): Promise<void> => {
    setStep('begun');
    setFailed(null);
    const of = whom === 'party' ? whom : index;
    const wish = { file, today: today(), of, seconds: Number(time), seed: 1 };
    const ended = await layCloths(wish, setStep);
    setStep(null);
    if (ended.ok) {
      setAnswer(ended.value);
      setLaidFrom(file);
    }
    if (!ended.ok && ended.code === 'failed') setFailed(ended.why);
  };

  return (
    <div className="stack">
      <h2>{say('page.cloth.title', {}, units)}</h2>
      <section className="part">
        {file.children.length > 1 && (
          <Choice
            label={say('page.cloth.for', {}, units)}
            value={whom}
            options={[
              { id: 'party', text: say('page.cloth.for.party', {}, units) },
              { id: 'child', text: work.name },
            ]}
            onChange={setWhom}
          />
        )}
        <Choice
          label={say('page.cloth.time', {}, units)}
          value={time}
          options={TIMES.map((id) => ({ id, text: say(`page.cloth.time.${id}`, {}, units) }))}
          onChange={setTime}
        />
        {step === null ? (
          <Button look="main" onPress={() => void lay()}>
            {say('page.cloth.lay', {}, units)}
          </Button>
        ) : (
          <Searching step={step} />
        )}
        {failed !== null && (
          <p role="alert" className="wrong">
            {say('page.cloth.failed', { why: failed }, units)}
          </p>
        )}
        {answer?.ok === false &&
          answer.problems.slice(0, 3).map((problem) => (
            <p key={problem.path} className="wrong">
              {fieldSentence(problem, tell)}
            </p>
          ))}
      </section>
      {answer?.ok === true && laidFrom !== file && (
        <p role="status">{say('page.cloth.changed', {}, units)}</p>
      )}
      {answer?.ok === true && <LaidCloths answer={answer} />}
    </div>
  );
}

function Searching({ step }: { readonly step: LayProgress | 'begun' }): ReactNode {
  const units = useUnits();
  const words =
    step === 'begun' || step.length === null
      ? say('page.cloth.first', {}, units)
      : say('page.cloth.searching', { cloth: step.cloth, length: { mm: Math.round(step.length) } }, units);
  return (
    <UnderWay
      words={words}
      far={step === 'begun' ? null : { value: step.gone, max: 1 }}
      stop={say('page.cloth.enough', {}, units)}
      onStop={() => void enoughLaid()}
    />
  );
}
