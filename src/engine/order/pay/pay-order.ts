import type { TimedStep } from '../../sew/index.ts';
import { say } from '../../words/index.ts';
import { type ChildReport, checkOrder } from '../check-order.ts';
import { deskOf, type PackDocument, type PaperTools } from '../child-papers.ts';
import { type LaidCloths, layChild, layParty } from '../lay-cloths.ts';
import type { Order } from '../order.ts';
import type { OrderProblem } from '../problem.ts';
import { childSewing } from '../sew/child-sewing.ts';
import { reportDrawing } from '../sew/sew-pages.ts';
import { daysPages, shoppingPages } from './list-pages.ts';
import { paperPages } from './paper-pages.ts';
import type { IssuedPaper } from './pay-form.ts';
import { type PayWork, payWork } from './pay-work.ts';
import { readWorkroom } from './workroom.ts';
import type { WorkroomFile } from './workroom-form.ts';

/** The dresses of an order checked and laid: what is long to work out, and rests on no price. */
export interface LaidOrder {
  readonly children: readonly ChildReport[];
  readonly alone: readonly LaidCloths[];
  readonly party: LaidCloths;
}

export type LaidOrderResult =
  | { readonly ok: true; readonly laid: LaidOrder }
  | { readonly ok: false; readonly problems: readonly OrderProblem[] };

/** Draws, checks and lays an order as its pack does. Refuses one with a dress that can't be drawn. */
export function laidOrder(order: Order, today: string): LaidOrderResult {
  const report = checkOrder(order, today);
  if (!report.ok) return report;
  const { children } = report;
  const alone = children.map(({ pieces }) => layChild(order, pieces));
  const party = layParty(
    order,
    children.flatMap(({ pieces }) => pieces),
    alone,
  );
  return { ok: true, laid: { children, alone, party } };
}

/** What her other orders tell of this one. */
interface Elsewhere {
  /** Minutes that they keep, by day. */
  readonly taken: ReadonlyMap<string, number>;
  /** The steps of sewing that she has timed in them. */
  readonly timed: readonly TimedStep[];
}

const NOTHING: Elsewhere = { taken: new Map(), timed: [] };

/** Shopping list, price and days of an order that is drawn and laid. */
export function payOfOrder(
  order: Order,
  laid: LaidOrder,
  workroom: WorkroomFile,
  today: string,
  { taken, timed }: Elsewhere = NOTHING,
): PayWork {
  const sewMinutes = laid.children.map((report, i) => {
    const sewing = childSewing(order, reportDrawing(report), order.children[i]?.sewing ?? {}, timed);
    return sewing.ok ? sewing.sewing.minutes : null;
  });
  return payWork({ order, ...laid, workroom, today, taken, sewMinutes });
}

/** The lists that a pack of money and days holds. */
export type PayList = 'shopping' | 'timetable';

/** A list on paper, as a file of its own. */
export function payListDocument(
  list: PayList,
  order: Order,
  work: PayWork,
  workroom: WorkroomFile,
  tools: PaperTools,
): Extract<PackDocument, { kind: 'pages' }> {
  const desk = deskOf(order, tools);
  const { minutes } = readWorkroom(workroom, null, order.units).week;
  const weekMinutes = minutes.reduce((sum, day) => sum + day, 0);
  const pages = list === 'shopping' ? shoppingPages(work, desk) : daysPages(work, weekMinutes, desk);
  const name = say(list === 'shopping' ? 'paper.shopping.name' : 'paper.days.name', {}, order.units);
  return { path: `${list}.pdf`, kind: 'pages', title: `${name}: ${order.title}`, pages };
}

/** A quote, an invoice or a receipt on paper, as a file of its own. */
export function issuedDocument(
  issued: IssuedPaper,
  order: Order,
  workroom: WorkroomFile,
  tools: PaperTools,
): Extract<PackDocument, { kind: 'pages' }> {
  const pages = paperPages(issued, deskOf(order, tools), workroom);
  const name = say(`paper.${issued.kind}.name`, {}, order.units);
  return { path: `${issued.kind}.pdf`, kind: 'pages', title: `${name} ${issued.number}`.trim(), pages };
}
