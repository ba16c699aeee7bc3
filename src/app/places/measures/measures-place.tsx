import { type ReactNode, useDeferredValue, useMemo } from 'react';
import { MEASURE_IDS, type MeasureId, type NextMeasure } from '../../../engine/body/index.ts';
import { neededMeasures, nextWords } from '../../../engine/order/index.ts';
import { say } from '../../../engine/words/index.ts';
import { useChild, useProblemAt, useSessionState, useUnits } from '../../session/use-session.ts';
import { ChildFacts } from '../order/child-facts.tsx';
import { UnitsChoice } from '../units-choice.tsx';
import { useDoubt } from '../use-doubt.ts';
import { AverageChild } from './average-child.tsx';
import { EarlierMeasurings } from './earlier-measurings.tsx';
import { GrowthPart } from './growth-part.tsx';
import { MeasureField } from './measure-field.tsx';
import { MeasuringDay, WeeksEarly } from './measuring-day.tsx';
import { SheetToPrint } from './sheet-to-print.tsx';
import { WeightField } from './weight-field.tsx';
import '../../look/measures.css';

/** One child's measures: those that her dress rests on first, each with where its value comes from. */
export function MeasuresPlace(): ReactNode {
  const { index, work } = useChild();
  const units = useUnits();
  const problem = useProblemAt(`children[${index}]`);
  const ageDoubt = useDoubt(index, 'age');
  const { needed, next } = useNeeded();
  const others = MEASURE_IDS.filter((id) => !needed.includes(id));
  const field = (id: MeasureId): ReactNode => <MeasureField key={`${index} ${id}`} id={id} />;
  return (
    <div className="stack">
      <h2>{say('page.measures.of', { child: work.name }, units)}</h2>
      {problem !== null && <p className="wrong">{problem}</p>}
      <UnitsChoice />
      {ageDoubt !== null && <p className="doubt">{ageDoubt}</p>}
      <details className="part">
        <summary>{say('page.measures.facts', {}, units)}</summary>
        <div className="fields">
          <ChildFacts key={index} index={index} />
        </div>
        <MeasuringDay key={`day ${index}`} />
        <WeeksEarly key={`early ${index}`} />
      </details>
      <SheetToPrint key={`sheet ${index}`} />
      <h3>{say('page.measures.needed', {}, units)}</h3>
      {next !== null && <p className="small">{nextWords(next, units)}</p>}
      <div className="fields">
        {needed.map(field)}
        <WeightField key={`${index} weight`} />
      </div>
      {others.length > 0 && (
        <details>
          <summary>{say('page.measures.more', {}, units)}</summary>
          <div className="fields">{others.map(field)}</div>
        </details>
      )}
      <EarlierMeasurings key={`earlier ${index}`} />
      <GrowthPart key={`growth ${index}`} />
      <AverageChild key={`average ${index}`} />
    </div>
  );
}

/** The measures that her dress rests on, all of them while it can't be drawn for the first time; which to take next. */
function useNeeded(): { readonly needed: readonly MeasureId[]; readonly next: NextMeasure | null } {
  const { work } = useChild();
  const order = useSessionState((state) => state.work.order);
  const report = useDeferredValue(work.report);
  // The list changes with the dress, not with each number: it is found anew when the drawing was.
  // biome-ignore lint/correctness/useExhaustiveDependencies: the order that belongs to this drawing is meant.
  return useMemo(() => {
    const all = { needed: MEASURE_IDS, next: null };
    if (report === null || order === null) return all;
    const found = neededMeasures(order, report.dress.child);
    return found.ok ? { needed: found.needed.map(({ id }) => id), next: found.next } : all;
  }, [report]);
}
