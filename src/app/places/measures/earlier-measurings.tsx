import type { ReactNode } from 'react';
import { MEASURE_IDS } from '../../../engine/body/index.ts';
import type { EarlierFile } from '../../../engine/order/index.ts';
import { say } from '../../../engine/words/index.ts';
import { dayText } from '../../device/today.ts';
import { Button } from '../../parts/button.tsx';
import { shownLength } from '../../parts/shown-length.ts';
import { toastDone } from '../../parts/toast.tsx';
import { useChild, useSession, useUnits } from '../../session/use-session.ts';

/** The measurings before the present one, kept as they were taken. */
export function EarlierMeasurings(): ReactNode {
  const { file } = useChild();
  const units = useUnits();
  const earlier = file.earlier ?? [];
  if (earlier.length === 0) return null;
  return (
    <details>
      <summary>{say('page.measures.earlier', {}, units)}</summary>
      <div className="stack">
        {earlier.map((old, place) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: measurings have no other name than their place.
          <OneMeasuring key={place} old={old} place={place} />
        ))}
      </div>
    </details>
  );
}

function OneMeasuring({ old, place }: { readonly old: EarlierFile; readonly place: number }): ReactNode {
  const session = useSession();
  const { index, file, work } = useChild();
  const units = useUnits();
  const day = old.measured === undefined ? say('page.measures.day.none', {}, units) : dayText(old.measured);
  const take = (): void => {
    const takeBack = session.change(
      { key: 'page.did.take-earlier', values: { child: work.name } },
      ({ children }) => {
        const draft = children[index];
        if (draft === undefined) return;
        const { measured, measures = {} } = draft;
        const now = measured === undefined ? { measures } : { measured, measures };
        draft.earlier = [now, ...(draft.earlier ?? []).filter((_, i) => i !== place)];
        draft.measures = { ...old.measures };
        if (old.measured === undefined) delete draft.measured;
        else draft.measured = old.measured;
      },
    );
    toastDone(say('page.measures.earlier.taken', { day }, units), takeBack);
  };
  return (
    <section className="part">
      <div className="part-head">
        <h3>{say('page.measures.earlier.of', { day }, units)}</h3>
        <Button look="quiet" onPress={take}>
          {say('page.measures.earlier.take', {}, units)}
        </Button>
      </div>
      <dl className="pairs">
        {MEASURE_IDS.filter((id) => old.measures[id] !== undefined).map((id) => {
          const [then, now] = [shownLength(old.measures[id], units), shownLength(file.measures?.[id], units)];
          return (
            <div key={id}>
              <dt>{say(`measure.${id}`, {}, units)}</dt>
              <dd>
                {then} {units}
                {now !== '' && now !== then && (
                  <span className="quiet">
                    {' '}
                    {say('page.measures.since', { now: `${now} ${units}` }, units)}
                  </span>
                )}
              </dd>
            </div>
          );
        })}
      </dl>
    </section>
  );
}
