import { tell } from '../engine/design/index.ts';
import {
  type ChildReport,
  type ChildSewing,
  cautionsOf,
  checkOrder,
  childSewing,
  type Order,
  partySewPages,
  reportDrawing,
  sewPages,
} from '../engine/order/index.ts';
import { batchSteps, hoursAndMinutes } from '../engine/sew/index.ts';
import { paperOf } from '../engine/sheet/index.ts';
import { say } from '../engine/words/index.ts';
import { createTextMeasure, writePdf } from '../pdf/index.ts';
import { loadFonts } from '../pdf/load-fonts.ts';
import { EXIT, type ExitCode, type Io } from './io.ts';
import { writeNewFile } from './new-file.ts';
import { openOrder } from './order-file.ts';
import { orderRefusal, type Refusal, refusal, sayRefusal } from './refusal.ts';

export interface SewWish {
  readonly child?: string;
  /** One step for all children, then the next. */
  readonly batches: boolean;
  /** A new PDF file to write the plan to. */
  readonly sheet?: string;
  readonly json: boolean;
}

interface Planned {
  readonly report: ChildReport;
  readonly result: ReturnType<typeof childSewing>;
}

/** Says in which order the dresses are sewn, step by step with minutes and reasons, and what can hurt. */
export async function sewCommand(io: Io, file: string, wish: SewWish): Promise<ExitCode> {
  const opened = await openOrder(io, file);
  if (!opened.ok) return sayRefusal(io, opened, wish.json);
  const { order } = opened;
  const { child, sheet, json } = wish;
  const known = order.children.map(({ name }) => name);
  if (child !== undefined && !known.includes(child))
    return sayRefusal(
      io,
      refusal(EXIT.unusable, 'cli.lay.no-child', { name: child, known: known.join(', ') }),
      json,
    );
  if (sheet !== undefined && !sheet.toLowerCase().endsWith('.pdf'))
    return sayRefusal(io, refusal(EXIT.unusable, 'cli.sew.bad-sheet', { found: sheet }), json);
  const report = checkOrder(order, io.today());
  if (!report.ok) return sayRefusal(io, orderRefusal(report.problems, order.units), json);
  const wanted = report.children.filter(({ name }) => child === undefined || name === child);
  const planned = wanted.map(
    (one): Planned => ({
      report: one,
      result: childSewing(order, reportDrawing(one), one.dress.child.sewing),
    }),
  );
  if (sheet !== undefined) {
    const refused = await writeSheet(io, order, wanted, wish, sheet);
    if (refused !== null) return sayRefusal(io, refused, json);
  }
  if (json) io.out(`${JSON.stringify(sewData(order, planned), null, 2)}\n`);
  else if (wish.batches) io.out(`${batchLines(order, planned).join('\n')}\n`);
  else for (const one of planned) io.out(`${childLines(order, one).join('\n')}\n\n`);
  if (sheet !== undefined && !json) io.out(`${say('cli.lay.drawn', { file: sheet }, order.units)}\n`);
  return planned.every(({ result }) => result.ok) ? EXIT.fine : EXIT.stop;
}

async function writeSheet(
  io: Io,
  order: Order,
  reports: readonly ChildReport[],
  { batches }: SewWish,
  sheet: string,
): Promise<Refusal | null> {
  const fonts = await loadFonts();
  const ink = { units: order.units, measure: createTextMeasure(fonts) };
  const paper = order.papers.find(({ format }) => format.joined) ?? paperOf('a4');
  const day = order.madeOn ?? io.today();
  const pages = batches
    ? partySewPages(order, reports, paper, ink, day)
    : reports.flatMap((report) => sewPages(order, report, paper, ink, day));
  const creationDate = new Date(`${day}T00:00:00Z`);
  return writeNewFile(io, sheet, await writePdf(pages, { title: order.title, creationDate, fonts }));
}

const going = ({ steps, leftOut }: ChildSewing): ChildSewing['steps'] =>
  steps.filter(({ id }) => !leftOut.has(id));

function childLines({ units }: Order, { report, result }: Planned): readonly string[] {
  const cautions = cautionsOf(report.findings, report.dress.body).map(({ say: what, todo }) =>
    [what, todo].flatMap((said) => (said === null ? [] : tell(said, units))).join(' '),
  );
  const head = [report.name, ...cautions.map((caution) => `  ! ${caution}`)];
  if (!result.ok) return [...head, ...result.problems.map((problem) => `  ${tell(problem, units)}`)];
  const { sewing } = result;
  return [
    ...head,
    ...sewing.broken.map(({ say: what }) => `  ! ${tell(what, units)}`),
    `  ${say('sew.paper.steps', hoursAndMinutes(sewing.minutes), units)}`,
    ...going(sewing).flatMap((step, i) => [
      `  ${i + 1}. ${tell(step.title, units)} (${say('sew.paper.minutes', { minutes: step.minutes }, units)})`,
      ...[step.say, ...step.reasons].map((said) => `     ${tell(said, units)}`),
    ]),
  ];
}

function batchLines({ units }: Order, planned: readonly Planned[]): readonly string[] {
  const lists = planned.map(({ result }) => (result.ok ? going(result.sewing) : []));
  const refused = planned.flatMap(({ report, result }) =>
    result.ok ? [] : result.problems.map((problem) => `${report.name}: ${tell(problem, units)}`),
  );
  const batches = batchSteps(lists).map(({ items, minutes }, i) => {
    const names = items.map(({ child }) => planned[child]?.report.name ?? '').join(', ');
    const step = items
      .slice(0, 1)
      .map((item) => tell(item.step.title, units))
      .join('');
    return `${i + 1}. ${step}: ${names} (${say('sew.paper.minutes', { minutes }, units)})`;
  });
  return [...refused, ...batches];
}

/** The same for other programs: seams and edges by name, minutes as numbers. */
const sewData = ({ units }: Order, planned: readonly Planned[]): object => ({
  ok: planned.every(({ result }) => result.ok),
  children: planned.map(({ report, result }) => ({
    name: report.name,
    cautions: cautionsOf(report.findings, report.dress.body).map(({ level, say: what, todo }) => ({
      level,
      sentence: tell(what, units),
      advice: todo === null ? null : tell(todo, units),
    })),
    ...(result.ok
      ? {
          minutes: result.sewing.minutes,
          broken: result.sewing.broken.map(({ step, say: what }) => ({ step, sentence: tell(what, units) })),
          steps: going(result.sewing).map((step) => ({
            id: step.id,
            kind: step.kind,
            title: tell(step.title, units),
            sentence: tell(step.say, units),
            reasons: step.reasons.map((reason) => tell(reason, units)),
            minutes: step.minutes,
            from: step.from,
            seams: step.sews,
            finishes: step.finishes,
            needs: step.needs,
          })),
        }
      : { problems: result.problems.map((problem) => tell(problem, units)) }),
  })),
});
