import { averageMonthsBetween, type GrowthChart, growthChart, type MeasuringDay } from '../body/index.ts';
import { CHARTED, type GrowthReport } from './growth-report.ts';
import type { OrderChild } from './order.ts';

/** The charts of a child: of every measure that a reference knows, with all days on which it was measured. */
export function growthCharts({ growth }: OrderChild, report: GrowthReport): readonly GrowthChart[] {
  if (report.kind !== 'told' || growth === null) return [];
  const { grown } = report.told;
  const { born } = growth.input;
  return CHARTED.flatMap((measure): GrowthChart[] => {
    const earlier = growth.earlier.flatMap((one) => {
      const value = chartedAt(one, measure);
      const age = averageMonthsBetween(born, one.day);
      return value === null || age < 0 ? [] : [{ age, value }];
    });
    const chart = growthChart(measure, grown, earlier);
    return chart === null || chart.child.length === 0 ? [] : [chart];
  });
}

function chartedAt({ measures, weight }: MeasuringDay, measure: (typeof CHARTED)[number]): number | null {
  return (measure === 'weight' ? weight : measures[measure]) ?? null;
}
