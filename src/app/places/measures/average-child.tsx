import { type ReactNode, useDeferredValue, useState } from 'react';
import {
  MEASURE_IDS,
  NINETY_PERCENT,
  type StartingBody,
  type StartingWish,
  startingBody,
} from '../../../engine/body/index.ts';
import { say, type WordKey } from '../../../engine/words/index.ts';
import { Choice } from '../../parts/choice.tsx';
import { shownLength } from '../../parts/shown-length.ts';
import { useChild, useUnits } from '../../session/use-session.ts';

const WAYS = ['age', 'height', 'build'] as const;
type Way = (typeof WAYS)[number];

/** What children of her age, of her height, or of her height and weight measure on average, beside what she does. */
export function AverageChild(): ReactNode {
  const { file, work } = useChild();
  const units = useUnits();
  const [way, setWay] = useState<Way>('height');
  const report = useDeferredValue(work.report);
  const input = report?.dress.child.body;
  const sex = file.sex ?? 'girl';
  const wish = wishOf(way, sex, input);
  const body = wish === null ? null : startingBody(wish);
  const values = { child: work.name, who: { word: `page.average.${sex}s` satisfies WordKey } };
  return (
    <details className="part">
      <summary>{say('page.average', {}, units)}</summary>
      <div className="stack">
        <Choice
          label={say('page.average.by', {}, units)}
          value={way}
          options={WAYS.map((id) => ({ id, text: say(`page.average.by.${id}`, {}, units) }))}
          onChange={setWay}
        />
        {body === null ? <p>{say(`page.average.needs.${way}`, {}, units)}</p> : <Averages body={body} />}
        <p className="small quiet">{say('page.average.about', values, units)}</p>
        <p className="small quiet">{say('start.band', {}, units)}</p>
      </div>
    </details>
  );
}

function Averages({ body }: { readonly body: StartingBody }): ReactNode {
  const { file, work } = useChild();
  const units = useUnits();
  return (
    <dl className="pairs">
      {MEASURE_IDS.map((id) => {
        const { mm, spread, from } = body[id];
        const own = shownLength(file.measures?.[id], units);
        const values = {
          value: { mm: Math.round(mm) },
          spread: { mm: Math.round(NINETY_PERCENT * spread) },
          from: { word: `start.from.${from}` },
        };
        return (
          <div key={id}>
            <dt>{say(`measure.${id}`, {}, units)}</dt>
            <dd>
              {say(from === 'given' ? 'start.from.given' : 'start.value', values, units)}
              {own !== '' && (
                <>
                  <br />
                  <span className="quiet">
                    {say('page.average.own', { child: work.name, value: `${own} ${units}` }, units)}
                  </span>
                </>
              )}
            </dd>
          </div>
        );
      })}
    </dl>
  );
}

function wishOf(
  way: Way,
  sex: StartingWish['sex'],
  input:
    | {
        readonly ageMonths?: number | null;
        readonly weight?: number | null;
        readonly measured: { readonly height?: number };
      }
    | undefined,
): StartingWish | null {
  const { ageMonths = null, weight = null, measured = {} } = input ?? {};
  const height = measured.height ?? null;
  switch (way) {
    case 'age':
      return ageMonths === null ? null : { sex, ageMonths, height: null, weight: null };
    case 'height':
      return height === null ? null : { sex, ageMonths, height, weight: null };
    case 'build':
      return height === null || weight === null ? null : { sex, ageMonths, height, weight };
  }
}
