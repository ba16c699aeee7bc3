import { type ReactNode, useMemo, useState } from 'react';
import { Link, useLocation } from 'wouter';
import { LIBRARY, tell } from '../../engine/design/index.ts';
import { say, speak } from '../../engine/words/index.ts';
import { useDevice } from '../device/device.tsx';
import { dayAhead, today } from '../device/today.ts';
import { Button } from '../parts/button.tsx';
import { Choice } from '../parts/choice.tsx';
import { LengthField } from '../parts/length-field.tsx';
import { MoreLink } from '../parts/more-link.tsx';
import { NumberField } from '../parts/number-field.tsx';
import { TextField } from '../parts/text-field.tsx';
import { toast } from '../parts/toast.tsx';
import { placeAddress } from '../places/address.ts';
import { fieldSentence } from '../session/use-session.ts';
import { createWorkbench } from '../session/work.ts';
import { FIRST_MEASURES, type FirstMeasure, newOrder, type Start as Told } from './new-order.ts';

/** A dress is ordered about this long before its day (common practice, no source). */
const DAYS_AHEAD = 56;

/** A new order from five numbers: age, height, chest, waist and back length. The dress is drawn when she says so. */
export function Start(): ReactNode {
  const { store, settings, set } = useDevice();
  const { units } = settings;
  const [, go] = useLocation();
  const [told, setTold] = useState<Told>(() => ({
    name: '',
    years: undefined,
    months: undefined,
    measures: {},
    dueDay: dayAhead(today(), DAYS_AHEAD),
    dress: 'clover',
  }));
  const [tried, setTried] = useState(false);
  const name = told.name.trim() === '' ? say('page.start.child.default', {}, units) : told.name.trim();
  const file = newOrder({ ...told, name }, units, today());
  const bench = useMemo(() => createWorkbench(today()), []);
  const { problems } = bench.work(file, 0);
  const problemAt = (path: string): string | null => {
    const problem = tried ? problems.find((other) => other.path === path) : undefined;
    return problem === undefined ? null : fieldSentence(problem, (saying) => tell(saying, units));
  };
  const draw = async (): Promise<void> => {
    setTried(true);
    if (problems.length > 0) return;
    const stored = await store.create({ file });
    if (!stored.ok) return toast(speak(stored.problem.say, units));
    void store.askToKeep();
    go(placeAddress(stored.value.id, 0, 'measures'));
  };
  const whole = problemAt('children[0]') ?? problemAt('');
  return (
    <main className="book start">
      <div className="book-head">
        <h1>{say('page.start', {}, units)}</h1>
        <div className="row">
          <Link href="/guide" className="button button-quiet">
            {say('page.guide', {}, units)}
          </Link>
          <Link href="/" className="button button-quiet">
            {say('page.to-book', {}, units)}
          </Link>
        </div>
      </div>
      <p>{say('page.start.about', {}, units)}</p>
      <Choice
        label={say('page.units', {}, units)}
        value={units}
        options={(['in', 'cm'] as const).map((id) => ({ id, text: say(`page.units.${id}`, {}, units) }))}
        onChange={(chosen) => set({ units: chosen })}
      />
      <form
        className="stack"
        onSubmit={(event) => {
          event.preventDefault();
          void draw();
        }}
      >
        <div className="fields">
          <TextField
            label={say('page.start.child', {}, units)}
            value={told.name}
            onChange={(text) => setTold({ ...told, name: text })}
          />
          <div className="age">
            <NumberField
              label={say('page.start.age', {}, units)}
              value={told.years}
              unit={say('page.start.age.years', {}, units)}
              notANumber={say('page.start.not-a-number', {}, units)}
              problem={problemAt('children[0].ageMonths')}
              onChange={(years) => setTold({ ...told, years })}
            />
            <NumberField
              label={say('page.start.age.more', {}, units)}
              value={told.months}
              unit={say('page.start.age.months', {}, units)}
              notANumber={say('page.start.not-a-number', {}, units)}
              onChange={(months) => setTold({ ...told, months })}
            />
          </div>
        </div>
        <div className="fields">
          {FIRST_MEASURES.map((id) => (
            <FirstLength
              key={id}
              id={id}
              value={told.measures[id]}
              problem={problemAt(`children[0].measures.${id}`)}
              onChange={(text) => {
                const { [id]: _, ...others } = told.measures;
                setTold({ ...told, measures: text === undefined ? others : { ...others, [id]: text } });
              }}
            />
          ))}
        </div>
        <div className="fields">
          <TextField
            kind="day"
            label={say('page.start.due', {}, units)}
            about={say('page.start.due.about', {}, units)}
            value={told.dueDay}
            problem={problemAt('dueDay')}
            onChange={(dueDay) => setTold({ ...told, dueDay })}
          />
          <Choice
            label={say('page.start.dress', {}, units)}
            value={told.dress}
            options={LIBRARY.map(({ id }) => ({
              id,
              text: tell({ key: `dress.${id}`, values: {} }, units),
              about: tell({ key: `dress.${id}.about`, values: {} }, units),
            }))}
            about={tell({ key: `dress.${told.dress}.about`, values: {} }, units)}
            onChange={(dress) => setTold({ ...told, dress })}
          />
        </div>
        {whole !== null && (
          <p role="alert" className="wrong">
            {whole}
          </p>
        )}
        <div>
          <Button look="main" onPress={() => void draw()}>
            {say('page.start.draw', {}, units)}
          </Button>
        </div>
      </form>
    </main>
  );
}

function FirstLength(props: {
  readonly id: FirstMeasure;
  readonly value: string | undefined;
  readonly problem: string | null;
  readonly onChange: (text: string | undefined) => void;
}): ReactNode {
  const { units } = useDevice().settings;
  const [howShown, setHowShown] = useState(false);
  const measure = say(`measure.${props.id}`, {}, units);
  return (
    <LengthField
      label={measure}
      value={props.value}
      units={units}
      problem={props.problem}
      about={howShown ? say(`measure.${props.id}.how`, {}, units) : null}
      onChange={props.onChange}
      aside={
        <MoreLink
          word={say('page.measures.how', {}, units)}
          name={say('page.measures.how.what', { measure }, units)}
          open={howShown}
          onChange={setHowShown}
        />
      }
    />
  );
}
