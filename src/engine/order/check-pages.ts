import { MEASURE_IDS } from '../body/index.ts';
import type { Level } from '../check/index.ts';
import { tell } from '../design/index.ts';
import { type FlowBlock, flowPages, type Ink, type Page, type Paper } from '../sheet/index.ts';
import { formatLength } from '../units/index.ts';
import { say } from '../words/index.ts';
import { type ChildReport, countOf, LEVELS, type OrderReport } from './check-order.ts';
import { sizeText } from './cut-dress.ts';
import type { Finding } from './finding.ts';
import { grownWords } from './growth-findings.ts';
import type { Order } from './order.ts';

/** What was found about one child's dress, the worst first, and the measurements that it is drawn from. */
export function checkPages(report: ChildReport, paper: Paper, ink: Ink, date: string): readonly Page[] {
  const { units } = ink;
  const name = say('order.checks.name', {}, units);
  const blocks: FlowBlock[] = [
    { kind: 'title', text: `${name}: ${report.name}` },
    {
      kind: 'paragraph',
      text: say('order.checks.about', { size: sizeText(report.dress.body, units), date }, units),
    },
    { kind: 'paragraph', text: summary(report.findings, ink), weight: 'bold' },
    ...LEVELS.flatMap((level) => levelBlocks(report.findings, level, ink)),
    ...measureBlocks(report, ink),
  ];
  return flowPages(blocks, { paper, ink, name, footer: `${name} - ${report.name} - ${date}` });
}

/** All children at a glance: how many findings of each level, and those that ask for something. */
export function partyCheckPages(
  order: Order,
  { children }: Extract<OrderReport, { ok: true }>,
  paper: Paper,
  ink: Ink,
  date: string,
): readonly Page[] {
  const { units } = ink;
  const name = say('order.checks.name', {}, units);
  const blocks: FlowBlock[] = [
    { kind: 'title', text: `${name}: ${order.title}` },
    {
      kind: 'table',
      columns: [
        { heading: say('order.checks.child', {}, units), share: 5, align: 'left' },
        ...LEVELS.map((level) => ({
          heading: say(`order.level.${level}.short`, {}, units),
          share: 2,
          align: 'right' as const,
        })),
      ],
      rows: children.map((child) => [
        child.name,
        ...LEVELS.map((level) => `${countOf(child.findings, level)}`),
      ]),
      ticked: false,
    },
    ...(children.every(({ findings }) => findings.every(({ level }) => level === 'ok' || level === 'note'))
      ? [{ kind: 'paragraph', text: say('order.checks.party-fine', {}, units) } as const]
      : []),
    ...children.flatMap((child): FlowBlock[] => {
      const urgent = child.findings.filter(({ level }) => level === 'stop' || level === 'warn');
      if (urgent.length === 0) return [];
      return [
        { kind: 'heading', text: child.name },
        { kind: 'ticks', items: urgent.map((finding) => sentenceOf(finding, ink)) },
        { kind: 'gap', height: 3 },
      ];
    }),
  ];
  return flowPages(blocks, { paper, ink, name, footer: `${name} - ${order.title} - ${date}` });
}

function summary(findings: readonly Finding[], { units }: Ink): string {
  const [stops, warnings, notes] = [
    countOf(findings, 'stop'),
    countOf(findings, 'warn'),
    countOf(findings, 'note'),
  ];
  if (stops > 0) return say('order.checks.stops', { stops }, units);
  return warnings > 0
    ? say('order.checks.warnings', { warnings }, units)
    : say('order.checks.fine', { notes }, units);
}

function levelBlocks(findings: readonly Finding[], level: Level, ink: Ink): readonly FlowBlock[] {
  const own = findings.filter((finding) => finding.level === level);
  if (own.length === 0) return [];
  const heading: FlowBlock = { kind: 'heading', text: say(`order.level.${level}`, {}, ink.units) };
  if (level === 'ok') {
    return [
      heading,
      ...own.map((finding): FlowBlock => ({ kind: 'paragraph', text: tell(finding.say, ink.units) })),
    ];
  }
  return [
    heading,
    { kind: 'ticks', items: own.map((finding) => sentenceOf(finding, ink)) },
    { kind: 'gap', height: 3 },
  ];
}

function sentenceOf({ say: what, todo }: Finding, { units }: Ink): string {
  return todo === null ? tell(what, units) : `${tell(what, units)} ${tell(todo, units)}`;
}

function measureBlocks({ dress: { body, child } }: ChildReport, { units }: Ink): readonly FlowBlock[] {
  const column = (key: 'measure' | 'value' | 'from', share: number) =>
    ({ heading: say(`order.measures.${key}`, {}, units), share, align: 'left' }) as const;
  const rows = MEASURE_IDS.map((id) => {
    const value = body.values[id];
    const measured = (): string => grownWords(child, id, units) ?? say('order.measures.measured', {}, units);
    const from = value.from === 'measured' ? measured() : say(value.rule, {}, units);
    return [say(`measure.${id}`, {}, units), formatLength(value.mm, units), from];
  });
  return [
    { kind: 'heading', text: say('order.measures.heading', {}, units) },
    { kind: 'paragraph', text: say('order.measures.about', {}, units) },
    {
      kind: 'table',
      columns: [column('measure', 3), column('value', 2), column('from', 8)],
      rows,
      ticked: false,
    },
  ];
}
