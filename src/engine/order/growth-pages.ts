import { type FlowBlock, flowPages, growthFigure, type Ink, type Page, type Paper } from '../sheet/index.ts';
import { say } from '../words/index.ts';
import { growthCharts } from './growth-charts.ts';
import type { GrowthReport } from './growth-report.ts';
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

function chartBlocks(child: OrderChild, report: GrowthReport, { units }: Ink): readonly FlowBlock[] {
  const charts = growthCharts(child, report);
  if (charts.length === 0) return [];
  return [
    { kind: 'heading', text: say('growth.chart.heading', {}, units) },
    { kind: 'paragraph', text: say('growth.chart.about', {}, units) },
    ...charts.flatMap((chart): FlowBlock[] => [growthFigure(chart, units), { kind: 'gap', height: 4 }]),
  ];
}
