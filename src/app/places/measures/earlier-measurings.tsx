import type { ReactNode } from 'react';
import { MEASURE_IDS } from '../../../engine/body/index.ts';
import { changeWords, type EarlierFile } from '../../../engine/order/index.ts';
import { parseLength, type UnitSystem } from '../../../engine/units/index.ts';
import { say } from '../../../engine/words/index.ts';
import { dayText } from '../../device/today.ts';
import { Button } from '../../parts/button.tsx';
import { shownLength } from '../../parts/shown-length.ts';
import { toastDone } from '../../parts/toast.tsx';
import { useChild, useSession, useUnits } from '../../session/use-session.ts';
import { presentMeasuring } from './edit-measures.ts';

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
        draft.earlier = [presentMeasuring(draft), ...(draft.earlier ?? []).filter((_, i) => i !== place)];
        draft.measures = { ...old.measures };
        if (old.weight === undefined) delete draft.weight;
        else draft.weight = old.weight;
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
                {now !== '' && (
                  <span className="quiet"> {nowWords(old.measures[id], file.measures?.[id], units)}</span>
                )}
              </dd>
            </div>
          );
        })}
      </dl>
    </section>
  );
}

/** What a measure is now and by how much it has changed since. */
function nowWords(
  then: string | number | undefined,
  now: string | number | undefined,
  units: UnitSystem,
): string {
  const [before, after] = [parseLength(then ?? '', units), parseLength(now ?? '', units)];
  if (!before.ok || !after.ok) return '';
  const change = changeWords(before.mm, after.mm, units);
  return say('page.measures.since', { now: { mm: after.mm }, change }, units);
}
