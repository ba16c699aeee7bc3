import { averageMonthsBetween, growthChart, type MeasuringDay } from '../body/index.ts';
import { type FlowBlock, flowPages, growthFigure, type Ink, type Page, type Paper } from '../sheet/index.ts';
import { say } from '../words/index.ts';
import { CHARTED, type GrowthReport } from './growth-report.ts';
import { type GrowthSection, growthSections } from './growth-words.ts';
import type { OrderChild } from './order.ts';

/** Where a child stands, what it will measure on the day, advice, and its growth charts. */
export function growthPages(
  child: OrderChild,
  report: GrowthReport,
  paper: Paper,
  ink: Ink,
  date: string,
): readonly Page[] {
  const { units } = ink;
  const name = say('growth.page.name', {}, units);
  const [first, ...sections] = growthSections(child, report, units);
  const blocks: readonly FlowBlock[] = [
    { kind: 'title', text: `${name}: ${child.name}` },
    ...(first === undefined
      ? []
      : [{ kind: 'paragraph', text: first.heading } as const, ...paragraphs(first)]),
    ...sections.flatMap(sectionBlocks),
    { kind: 'paragraph', text: say('growth.limits.girths', {}, units) },
    ...chartBlocks(child, report, ink),
  ];
  return flowPages(blocks, { paper, ink, name, footer: `${name} - ${child.name} - ${date}` });
}

function sectionBlocks(section: GrowthSection): readonly FlowBlock[] {
  const { heading, rows } = section;
  const table: FlowBlock = {
    kind: 'table',
    columns: [
      { heading: '', share: 2, align: 'left' },
      { heading: '', share: 8, align: 'left' },
    ],
    rows: rows.map(({ name, text }) => [name, text]),
    ticked: false,
  };
  return [{ kind: 'heading', text: heading }, ...(rows.length === 0 ? [] : [table]), ...paragraphs(section)];
}

const paragraphs = ({ sentences }: GrowthSection): readonly FlowBlock[] =>
  sentences.map((text) => ({ kind: 'paragraph', text }));

function chartBlocks({ growth }: OrderChild, report: GrowthReport, { units }: Ink): readonly FlowBlock[] {
  if (report.kind !== 'told' || growth === null) return [];
  const { grown } = report.told;
  const { born } = growth.input;
  const charts = CHARTED.flatMap((measure): FlowBlock[] => {
    const earlier = growth.earlier.flatMap((one) => {
      const value = chartedAt(one, measure);
      const age = averageMonthsBetween(born, one.day);
      return value === null || age < 0 ? [] : [{ age, value }];
    });
    const chart = growthChart(measure, grown, earlier);
    if (chart === null || chart.child.length === 0) return [];
    return [growthFigure(chart, units), { kind: 'gap', height: 4 }];
  });
  return charts.length === 0
    ? []
    : [
        { kind: 'heading', text: say('growth.chart.heading', {}, units) },
        { kind: 'paragraph', text: say('growth.chart.about', {}, units) },
        ...charts,
      ];
}

function chartedAt({ measures, weight }: MeasuringDay, measure: (typeof CHARTED)[number]): number | null {
  return (measure === 'weight' ? weight : measures[measure]) ?? null;
}
