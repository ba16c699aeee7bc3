import { type ReactNode, useDeferredValue, useMemo } from 'react';
import { growthCharts, growthOf, growthSections, type OrderFile } from '../../../engine/order/index.ts';
import { say } from '../../../engine/words/index.ts';
import { today } from '../../device/today.ts';
import { Choice } from '../../parts/choice.tsx';
import { useChild, useOrderFile, useSession, useUnits } from '../../session/use-session.ts';
import { GrowthCurve } from './growth-curve.tsx';

/** Where the child stands, what it will measure on the day, what to leave for it, and its growth charts. */
export function GrowthPart(): ReactNode {
  const units = useUnits();
  return (
    <details className="part">
      <summary>{say('page.growth', {}, units)}</summary>
      <div className="stack">
        <GrowthChoices />
        <Told />
      </div>
    </details>
  );
}

function Told(): ReactNode {
  const { work } = useChild();
  const units = useUnits();
  const report = useDeferredValue(work.report);
  const told = useMemo(() => {
    if (report === null) return null;
    const { child } = report.dress;
    const growth = growthOf(child, report.dress, today());
    return {
      child,
      growth,
      sections: growthSections(child, growth, units),
      charts: growthCharts(child, growth),
    };
  }, [report, units]);
  if (told === null)
    return <p className="quiet">{say('page.growth.no-days', { child: work.name }, units)}</p>;
  const [first, ...rest] = told.sections;
  const isTold = told.growth.kind === 'told';
  return (
    <>
      {told.growth.kind === 'no-days' && <p>{say('page.growth.no-days', { child: work.name }, units)}</p>}
      {isTold && <p>{first?.heading}</p>}
      {told.growth.kind !== 'no-days' &&
        first?.sentences.map((sentence) => (
          <p key={sentence} className="doubt">
            {sentence}
          </p>
        ))}
      {told.charts.length > 0 && (
        <>
          <p className="small quiet">{say('growth.chart.about', {}, units)}</p>
          <div className="growth-charts">
            {told.charts.map((chart) => (
              <GrowthCurve key={chart.measure} chart={chart} />
            ))}
          </div>
        </>
      )}
      {rest.map(({ heading, rows, sentences }) => (
        <section key={heading} className="stack">
          <h3>{heading}</h3>
          {rows.length > 0 && (
            <dl className="pairs">
              {rows.map(({ name, text }) => (
                <div key={name}>
                  <dt>{name}</dt>
                  <dd>{text}</dd>
                </div>
              ))}
            </dl>
          )}
          {sentences.map((sentence) => (
            <p key={sentence}>{sentence}</p>
          ))}
        </section>
      ))}
      {isTold && (
        <details>
          <summary>{say('page.growth.limits', {}, units)}</summary>
          <p className="small">{say('growth.limits.girths', {}, units)}</p>
        </details>
      )}
    </>
  );
}

/** For which day the order is drafted, and by which charts; both hold for all children. */
function GrowthChoices(): ReactNode {
  const session = useSession();
  const units = useUnits();
  const growth = useOrderFile((file) => file.growth);
  const charts = useOrderFile((file) => file.growthCharts);
  const change = (key: 'page.did.growth' | 'page.did.charts', recipe: (file: OrderFile) => void): void =>
    void session.change({ key, values: {} }, recipe);
  return (
    <div className="fields">
      <Choice
        label={say('page.growth.draft', {}, units)}
        value={growth === undefined || growth === 'none' ? 'as-measured' : growth}
        options={(['as-measured', 'to-the-day', 'one-size-more'] as const).map((id) => ({
          id,
          text: say(`page.growth.draft.${id}`, {}, units),
        }))}
        onChange={(id) =>
          change('page.did.growth', (file) => {
            if (id === 'as-measured') delete file.growth;
            else file.growth = id;
          })
        }
      />
      <Choice
        label={say('page.growth.charts', {}, units)}
        value={charts ?? 'who'}
        options={(['who', 'us'] as const).map((id) => ({
          id,
          text: say(`page.growth.charts.${id}`, {}, units),
        }))}
        onChange={(id) =>
          change('page.did.charts', (file) => {
            if (id === 'us') file.growthCharts = id;
            else delete file.growthCharts;
          })
        }
      />
    </div>
  );
}
