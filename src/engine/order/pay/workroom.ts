import {
  type Currency,
  currencyOf,
  type Money,
  type MoneyProblem,
  money,
  type Price,
  type Rates,
  readMoney,
  type StashItem,
  type WorkWeek,
} from '../../bill/index.ts';
import type { CalendarDay } from '../../body/index.ts';
import { parseLength, type UnitSystem } from '../../units/index.ts';
import type { Saying, WordKey, WordValues } from '../../words/index.ts';
import { readDay } from '../day.ts';
import type { WorkKind } from './pay-form.ts';
import { WEEKDAYS, type WorkroomFile } from './workroom-form.ts';

/** A field of money or days that can't be used, and why. The rest goes on without it. */
export interface PayProblem {
  /** `pay.extras[0].price` of the order, `rates.perHour` of the workroom. */
  readonly path: string;
  readonly say: Saying;
}

/** What the maker asks and when she works, ready to reckon with. */
export interface Workroom {
  readonly currency: Currency;
  /** Null while she has not said what an hour costs. */
  readonly rates: Rates | null;
  readonly week: WorkWeek;
  readonly times: Readonly<Record<WorkKind, number>>;
  /** On top of the sewing time, in hundredths. */
  readonly breaks: number;
  readonly priceOf: (key: string, kind: string) => Price | null;
  readonly stash: readonly StashItem[];
  readonly problems: readonly PayProblem[];
}

/**
 * Minutes for one child until she has times of her own: estimates (common practice, no source), of a lined child's
 * dress that takes 11 to 15 hours in all. `sew` is in hundredths of the sewing plan.
 */
export const USUAL_TIMES: Readonly<Record<WorkKind, number>> = {
  measure: 45,
  paper: 30,
  toile: 60,
  cut: 75,
  sew: 100,
  fit: 30,
  finish: 15,
};

/** Half of the price is paid before work begins (three dressmakers' terms ask from 25 % of the labour to 60 % of all). */
export const USUAL_DEPOSIT = 50;
/** Of her labour, for one maker alone (a pricing page). */
export const USUAL_OVERHEAD = 10;

const MOST_PERCENT = 500;
const MOST_MINUTES = 6000;

/** Reads what the maker has set. What can't be read is told and left out; nothing is thrown away. */
export function readWorkroom(file: WorkroomFile, wanted: Currency | null, units: UnitSystem): Workroom {
  const problems: PayProblem[] = [];
  const desk: PayDesk = {
    problems,
    units,
    currency: money(0, workroomCurrency(file, wanted, problems)).currency,
  };
  return {
    currency: desk.currency,
    rates: readRates(file, desk),
    week: readWeek(file, desk),
    times: readTimes(file, desk),
    breaks: numberAt('rates.breaks', file.rates?.breaks, [0, MOST_PERCENT], 0, desk),
    priceOf: readPrices(file, desk),
    stash: readStash(file, desk),
    problems,
  };
}

/** Reckoned in where she says nothing: the currency that most price lists know. */
export const USUAL_CURRENCY = currencyOf('USD') as Currency;

function workroomCurrency(
  { rates }: WorkroomFile,
  wanted: Currency | null,
  problems: PayProblem[],
): Currency {
  const given = rates?.currency;
  const own = given === undefined ? null : currencyOf(given);
  if (given !== undefined && own === null)
    problems.push(problem('rates.currency', 'pay.not-a-currency', { found: given }));
  if (wanted !== null && own !== null && wanted !== own)
    problems.push(problem('pay.currency', 'pay.two-currencies', { order: wanted, workroom: own }));
  return wanted ?? own ?? USUAL_CURRENCY;
}

/** What is read, and in whose units and currency. */
export interface PayDesk {
  readonly problems: PayProblem[];
  readonly units: UnitSystem;
  readonly currency: Currency;
}

export const problem = (path: string, key: WordKey, values: WordValues = {}): PayProblem => ({
  path,
  say: { key, values },
});

const PLAIN_AMOUNT = /^[^\p{L}\p{Sc}]*$/u;

/** An amount, or null after a problem. `below`: a reduction may be below zero. */
export function amountAt(
  path: string,
  given: string | number,
  { problems, currency }: PayDesk,
  below = false,
): Money | null {
  const text = String(given).trim();
  const minus = below && /^[-−]/.test(text);
  const read = readMoney(minus ? text.slice(1) : text, currency);
  if (read.ok) return minus ? money(-read.money.minor, currency) : read.money;
  problems.push({ path, say: moneySaying(read.problem, PLAIN_AMOUNT.test(text)) });
  return null;
}

function moneySaying(found: MoneyProblem, plain: boolean): Saying {
  const { code, ...values } = found;
  if (code === 'bill.money.unreadable' && !plain)
    return { key: 'bill.money.unreadable-word' satisfies WordKey, values };
  return { key: code, values };
}

/** A number within bounds, or `otherwise`. */
export function numberAt(
  path: string,
  given: number | undefined,
  [least, most]: readonly [number, number],
  otherwise: number,
  { problems }: PayDesk,
): number {
  if (given === undefined) return otherwise;
  if (given >= least && given <= most) return given;
  problems.push(problem(path, 'pay.number-out-of-range', { found: given, least, most }));
  return otherwise;
}

function readRates({ rates = {} }: WorkroomFile, desk: PayDesk): Rates | null {
  const percent = (field: 'overhead' | 'profit' | 'sundries' | 'deposit' | 'taxPercent', usual: number) =>
    numberAt(`rates.${field}`, rates[field], [0, field === 'deposit' ? 100 : MOST_PERCENT], usual, desk);
  const { currency } = desk;
  const perHour = rates.perHour === undefined ? null : amountAt('rates.perHour', rates.perHour, desk);
  const tax = percent('taxPercent', 0);
  if (perHour === null) return null;
  return {
    currency,
    perHour,
    overhead: percent('overhead', USUAL_OVERHEAD),
    profit: percent('profit', 0),
    sundries: percent('sundries', 0),
    deposit: { percent: percent('deposit', USUAL_DEPOSIT), materialsFirst: rates.materialsFirst ?? false },
    tax: tax === 0 ? null : { name: rates.taxName?.trim() || 'VAT', percent: tax },
  };
}

function readWeek({ week = {} }: WorkroomFile, desk: PayDesk): WorkWeek {
  const minutes = WEEKDAYS.map((day) => {
    const hours = numberAt(`week.hours.${day}`, week.hours?.[day], [0, 24], 0, desk);
    return Math.round(60 * hours);
  });
  const off = (week.off ?? []).flatMap(({ from, to }, i) => {
    const [first, last] = [
      dayAt(`week.off[${i}].from`, from, desk),
      dayAt(`week.off[${i}].to`, to ?? from, desk),
    ];
    return first === null || last === null ? [] : [{ from: first, to: last }];
  });
  return { minutes, off };
}

export function dayAt(path: string, given: string, { problems }: PayDesk): CalendarDay | null {
  const day = readDay(given);
  if (day === null) problems.push(problem(path, 'pay.not-a-day', { found: given }));
  return day;
}

function readTimes({ times = {} }: WorkroomFile, desk: PayDesk): Workroom['times'] {
  const all = Object.entries(USUAL_TIMES).map(([kind, usual]) => [
    kind,
    numberAt(`times.${kind}`, times[kind as WorkKind], [0, MOST_MINUTES], usual, desk),
  ]);
  return Object.fromEntries(all) as Workroom['times'];
}

function readPrices({ prices = [] }: WorkroomFile, desk: PayDesk): Workroom['priceOf'] {
  const known = new Map<string, Price>();
  for (const [i, { what, price, per }] of prices.entries()) {
    const amount = amountAt(`prices[${i}].price`, price, desk);
    if (amount !== null) known.set(what.trim().toLowerCase(), { amount, per });
  }
  return (key, kind) => known.get(key) ?? known.get(kind) ?? null;
}

function readStash({ stash = [] }: WorkroomFile, desk: PayDesk): readonly StashItem[] {
  const lengthAt = (path: string, given: string | number | undefined): number | null => {
    if (given === undefined || given === '') return null;
    const read = parseLength(given, desk.units);
    if (read.ok && read.mm > 0) return read.mm;
    desk.problems.push(problem(path, 'pay.not-a-length', { found: String(given) }));
    return null;
  };
  return stash.map(({ what, length, width, count }, i) => ({
    key: what.trim().toLowerCase(),
    length: lengthAt(`stash[${i}].length`, length) ?? 0,
    width: lengthAt(`stash[${i}].width`, width),
    count: numberAt(`stash[${i}].count`, count, [0, 100_000], 0, desk),
  }));
}
