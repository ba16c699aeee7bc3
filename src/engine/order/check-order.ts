import type { Level } from '../check/index.ts';
import type { CutPiece } from '../cut/index.ts';
import type { WordKey } from '../words/index.ts';
import { cutDress } from './cut-dress.ts';
import type { Finding } from './finding.ts';
import { grainFindings } from './grain-findings.ts';
import { refusedByCloths } from './lay-cloths.ts';
import type { Order, OrderChild } from './order.ts';
import { fieldProblem, type OrderProblem } from './problem.ts';
import { type ChildDress, checkedDress, type DrawnDress, drawnDress, workChild } from './work-child.ts';

/** All that is known of one child's dress before anything is put on paper. */
export interface ChildReport {
  readonly name: string;
  readonly dress: ChildDress;
  readonly pieces: readonly CutPiece[];
  /** What was found, from the worst down. */
  readonly findings: readonly Finding[];
}

export type OrderReport =
  | { readonly ok: true; readonly children: readonly ChildReport[] }
  /** Some dress can't be drawn at all; every child was looked at. */
  | { readonly ok: false; readonly problems: readonly OrderProblem[] };

/** Draws, checks and cuts every dress of the order. `day` is what to print where the order names none. */
export function checkOrder(order: Order, day: string): OrderReport {
  const results = order.children.map((child) => workChild(order, child));
  const problems = results.flatMap((result) => (result.ok ? [] : result.problems));
  if (problems.length > 0) return { ok: false, problems: withoutUnitSlips(order, problems) };
  const dresses = results.flatMap((result) => (result.ok ? [result.dress] : []));
  const dayOnPieces = order.madeOn ?? day;
  const reports = dresses.map((dress) => reportOn(order, dress, cutDress(order, dress, dayOnPieces)));
  return { ok: true, children: reports };
}

/** All that is seen of one child's dress on a table, before it is known what fits. */
export interface ChildDrawing {
  readonly name: string;
  readonly drawn: DrawnDress;
  readonly pieces: readonly CutPiece[];
}

export type DrawingResult =
  | { readonly ok: true; readonly drawing: ChildDrawing }
  | { readonly ok: false; readonly problems: readonly OrderProblem[] };

/**
 * Draws and cuts the dress of one child of the order, for a page that follows every change of a number: half of the
 * work, of which `reportOnDrawing` is the other. `day` is what to print where the order names none; `before` an earlier
 * drawing of hers: pieces that did not change since are the same objects.
 */
export function drawChild(
  order: Order,
  child: OrderChild,
  day: string,
  before: ChildDrawing | null = null,
): DrawingResult {
  const result = drawnDress(order, child, before?.drawn ?? null);
  if (!result.ok) return result;
  const { drawn } = result;
  const pieces = cutDress(order, drawn, order.madeOn ?? day);
  return { ok: true, drawing: { name: child.name, drawn, pieces } };
}

/** Checks a drawn dress and lays it on its cloths; the report holds the same garment and pieces as the drawing. */
export function reportOnDrawing(order: Order, { drawn, pieces }: ChildDrawing): ChildReport {
  return reportOn(order, checkedDress(order, drawn), pieces);
}

export type ChildCheck =
  | { readonly ok: true; readonly report: ChildReport }
  | { readonly ok: false; readonly problems: readonly OrderProblem[] };

/** Draws, checks and cuts the dress of one child of the order. */
export function checkChild(order: Order, child: OrderChild, day: string): ChildCheck {
  const result = drawChild(order, child, day);
  return result.ok ? { ok: true, report: reportOnDrawing(order, result.drawing) } : result;
}

/** Slips of the unit from this many on are one slip: the order says cm, and all of it is written in inches. */
const ONE_SLIP = 6;

function withoutUnitSlips(order: Order, problems: readonly OrderProblem[]): readonly OrderProblem[] {
  const meant = order.units === 'cm' ? 'body.meant-inches' : 'body.meant-centimetres';
  const slips = problems.filter(({ code }) => code === meant);
  const measured = order.children.reduce((sum, { body }) => sum + Object.keys(body.measured).length, 0);
  if (slips.length < ONE_SLIP || slips.length < measured / 2) return problems;
  const other = order.units === 'cm' ? 'in' : 'cm';
  const words = { word: `order.units.${other}` satisfies WordKey };
  const values = { count: slips.length, measured, units: order.units, other, words };
  const slip = fieldProblem({ child: null, path: ['units'] }, 'order.other-units', values);
  return [slip, ...problems.filter(({ code }) => code !== meant)];
}

function reportOn(order: Order, dress: ChildDress, pieces: readonly CutPiece[]): ChildReport {
  const refused = refusedByCloths(order, pieces).map(
    ({ key, values, advice }): Finding => ({
      code: key,
      level: 'stop',
      say: { key, values },
      todo: advice[0] ?? null,
    }),
  );
  const findings = [...refused, ...dress.doubts, ...grainFindings(order, pieces), ...dress.checks];
  return {
    name: dress.child.name,
    dress,
    pieces,
    findings: LEVELS.flatMap((level) => findings.filter((finding) => finding.level === level)),
  };
}

/** From the worst down. */
export const LEVELS = ['stop', 'warn', 'note', 'ok'] as const satisfies readonly Level[];

export const countOf = (findings: readonly Finding[], level: Level): number =>
  findings.filter((finding) => finding.level === level).length;

export const mustNotBeCut = ({ findings }: ChildReport): boolean => countOf(findings, 'stop') > 0;
