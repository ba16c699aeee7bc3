import type { ReactNode } from 'react';
import type { ChartPoint, GrowthChart } from '../../../engine/body/index.ts';
import { growthFigure, type Mark } from '../../../engine/sheet/index.ts';
import { formatLength, type UnitSystem } from '../../../engine/units/index.ts';
import { say } from '../../../engine/words/index.ts';
import { pathData } from '../../parts/path-data.ts';
import { useUnits } from '../../session/use-session.ts';

/** As wide as it is drawn, mm; the screen makes it larger or smaller. */
const WIDTH = 90;

/** One growth chart in the colours of the page: the same drawing as on paper. Its words tell all that it shows. */
export function GrowthCurve({ chart }: { readonly chart: GrowthChart }): ReactNode {
  const units = useUnits();
  const figure = growthFigure(chart, units);
  if (figure.kind !== 'figure') return null;
  return (
    <svg
      className="growth-curve"
      viewBox={`0 0 ${WIDTH} ${figure.height}`}
      role="img"
      aria-label={chartWords(chart, units)}
    >
      {figure.draw(WIDTH).map((mark, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: the lines of a chart keep their order.
        <OneMark key={i} mark={mark} />
      ))}
    </svg>
  );
}

const ANCHORS = { left: 'start', centre: 'middle', right: 'end' } as const;

function OneMark({ mark }: { readonly mark: Mark }): ReactNode {
  switch (mark.kind) {
    case 'stroke':
      return <path className={`mark-${mark.line}`} d={pathData(mark.path)} />;
    case 'fill':
      return <path className={`mark-${mark.fill}`} d={pathData(mark.outline)} />;
    case 'text':
      return (
        <text
          x={mark.at.x}
          y={mark.at.y}
          fontSize={mark.size}
          fontWeight={mark.weight === 'bold' ? 700 : 400}
          textAnchor={ANCHORS[mark.align]}
        >
          {mark.text}
        </text>
      );
    case 'hatch':
    case 'group':
      throw new Error('A growth chart is made of lines, fields and words.');
  }
}

function chartWords({ measure, reference, child, forecast }: GrowthChart, units: UnitSystem): string {
  const told = (value: number): string =>
    measure === 'weight'
      ? say('growth.report.kg', { value: Math.round(10 * value) / 10 }, units)
      : formatLength(Math.round(value), units);
  const day = ({ age, value }: ChartPoint): string =>
    say('page.growth.chart.day', { age: Math.floor(age), value: told(value) }, units);
  const ahead =
    forecast === null
      ? say('page.growth.chart.none', {}, units)
      : say(
          'page.growth.chart.forecast',
          {
            age: Math.floor(forecast.age),
            value: told(forecast.value),
            least: told(forecast.least),
            most: told(forecast.most),
          },
          units,
        );
  return say(
    'page.growth.chart',
    { title: { word: `growth.reference.${reference}` }, days: child.map(day).join(' '), forecast: ahead },
    units,
  );
}
