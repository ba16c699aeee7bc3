import { tell } from '../../design/index.ts';
import type { Garment } from '../../piece/index.ts';
import { batchSteps, hoursAndMinutes, type PlannedStep, type TimedStep } from '../../sew/index.ts';
import {
  type FlowBlock,
  flowPages,
  type Ink,
  type Page,
  type Paper,
  type StepFigure,
  stepBlock,
  stepFigure,
} from '../../sheet/index.ts';
import { type Saying, say, type WordKey } from '../../words/index.ts';
import type { ChildReport } from '../check-order.ts';
import { sizeText } from '../cut-dress.ts';
import type { Order } from '../order.ts';
import { careLabel } from './care-label.ts';
import { cautionsOf } from './cautions.ts';
import { type ChildSewing, type CutGarment, childSewing } from './child-sewing.ts';

/** How much of the page the drawing of a step takes, mm. */
export const STEP_ROOM = { width: 62, height: 38 };

/**
 * The sewing plan of one child: cautions first, then the steps in their order, each with its drawing, its reason, its
 * minutes and a box to tick, and the text of the care label. Where the dress can't be sewn so, what to change. `timed`:
 * steps that she has timed in other orders.
 */
export function sewPages(
  order: Order,
  report: ChildReport,
  paper: Paper,
  ink: Ink,
  date: string,
  timed: readonly TimedStep[] = [],
): readonly Page[] {
  const told = (key: WordKey, values = {}): string => say(key, values, ink.units);
  const result = childSewing(order, reportDrawing(report), report.dress.child.sewing, timed);
  const name = told('sew.paper.name');
  const blocks: FlowBlock[] = [
    { kind: 'title', text: `${name}: ${report.name}` },
    {
      kind: 'paragraph',
      text: told('order.checks.about', { size: sizeText(report.dress.body, ink.units), date }),
    },
    { kind: 'heading', text: told('sew.paper.cautions') },
    { kind: 'ticks', items: cautionTexts(report, ink) },
    { kind: 'gap', height: 3 },
    ...(result.ok
      ? planBlocks(report, result.sewing, paper, ink)
      : result.problems.map(
          (problem): FlowBlock => ({ kind: 'paragraph', text: tell(problem, ink.units), weight: 'bold' }),
        )),
    { kind: 'heading', text: told('sew.paper.care') },
    ...careLabel(order, report.dress.garment).map(
      (line): FlowBlock => ({ kind: 'paragraph', text: tell(line, ink.units) }),
    ),
  ];
  return flowPages(blocks, { paper, ink, name, footer: `${name} - ${report.name} - ${date}` });
}

const cautionTexts = ({ findings, dress }: ChildReport, ink: Ink): readonly string[] =>
  cautionsOf(findings, dress.body).map(({ say: what, todo }) => sentences([what, todo], ink));

const sentences = (said: readonly (Saying | null)[], { units }: Ink): string =>
  said.flatMap((one) => (one === null ? [] : tell(one, units))).join(' ');

/** A report holds the drawing that the plan is made from. */
export const reportDrawing = ({ dress, pieces }: ChildReport): CutGarment => ({ drawn: dress, pieces });

function planBlocks(report: ChildReport, sewing: ChildSewing, paper: Paper, ink: Ink): readonly FlowBlock[] {
  const told = (key: WordKey, values = {}): string => say(key, values, ink.units);
  const steps = sewing.steps.filter(({ id }) => !sewing.leftOut.has(id));
  return [
    { kind: 'heading', text: told('sew.paper.cloths') },
    ...sewing.cloths.map(({ kind, stitch, press }): FlowBlock => {
      const cloth = told(`check.cloth.${kind}`);
      return { kind: 'paragraph', text: `${cloth}: ${sentences([stitch, press], ink)}` };
    }),
    ...sewing.broken.map(
      ({ say: what }): FlowBlock => ({ kind: 'paragraph', text: tell(what, ink.units), weight: 'bold' }),
    ),
    { kind: 'heading', text: told('sew.paper.steps', hoursAndMinutes(sewing.minutes)) },
    {
      kind: 'paragraph',
      text: told(
        sewing.steps.every(({ from }) => from === 'estimate') ? 'sew.paper.estimates' : 'sew.paper.own-times',
      ),
    },
    { kind: 'paragraph', text: told('sew.paper.legend') },
    ...steps.map((step, i) =>
      stepBlock(
        {
          number: i + 1,
          title: tell(step.title, ink.units),
          text: tell(step.say, ink.units),
          reason: sentences(step.reasons, ink),
          time: told('sew.paper.minutes', { minutes: step.minutes }),
          figure: figureOf(report.dress.garment, step, ink),
        },
        paper,
        ink,
      ),
    ),
    { kind: 'gap', height: 4 },
  ];
}

/** The drawing of a step from the pieces of this dress; null where the step handles none. */
export function figureOf(
  garment: Garment,
  step: Pick<PlannedStep, 'sideA' | 'sideB'>,
  ink: Ink,
): StepFigure | null {
  if (step.sideA.length + step.sideB.length === 0) return null;
  return stepFigure(garment, step, (piece) => tell(piece.title, ink.units), STEP_ROOM, ink);
}

/** The work of the whole party in batches: one step for every child who has it, then the next. */
export function partySewPages(
  order: Order,
  reports: readonly ChildReport[],
  paper: Paper,
  ink: Ink,
  date: string,
  timed: readonly TimedStep[] = [],
): readonly Page[] {
  const told = (key: WordKey, values = {}): string => say(key, values, ink.units);
  const name = told('sew.paper.party-name');
  const results = reports.map((report) =>
    childSewing(order, reportDrawing(report), report.dress.child.sewing, timed),
  );
  const lists = results.map((result) =>
    result.ok ? result.sewing.steps.filter(({ id }) => !result.sewing.leftOut.has(id)) : [],
  );
  const rows = batchSteps(lists).map(({ items, minutes }) => [
    items
      .slice(0, 1)
      .map(({ step }) => tell(step.title, ink.units))
      .join(''),
    items
      .map(({ child, step }) => `${reports[child]?.name ?? ''} (${(lists[child]?.indexOf(step) ?? 0) + 1})`)
      .join(', '),
    told('sew.paper.minutes', { minutes }),
  ]);
  const column = (key: 'step' | 'children' | 'time', share: number) =>
    ({ heading: told(`sew.paper.${key}`), share, align: 'left' }) as const;
  const blocks: FlowBlock[] = [
    { kind: 'title', text: `${name}: ${order.title}` },
    { kind: 'paragraph', text: told('sew.paper.party-about') },
    ...results.flatMap((result, i): FlowBlock[] =>
      result.ok
        ? []
        : [
            {
              kind: 'paragraph',
              weight: 'bold',
              text: `${reports[i]?.name ?? ''}: ${sentences(result.problems, ink)}`,
            },
          ],
    ),
    {
      kind: 'table',
      columns: [column('step', 3), column('children', 7), column('time', 2)],
      rows,
      ticked: true,
    },
    { kind: 'paragraph', text: told('sew.caution.pins') },
  ];
  return flowPages(blocks, { paper, ink, name, footer: `${name} - ${order.title} - ${date}` });
}
