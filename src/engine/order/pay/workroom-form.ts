import * as v from 'valibot';
import { PRICE_UNITS } from '../../bill/index.ts';
import { amount, flag, length, number, rows, table, tableOf, text } from '../form-parts.ts';
import { PAPER_KINDS, WORK_KINDS } from './pay-form.ts';

/** Days of the week, Monday first (ISO 8601). */
export const WEEKDAYS = [
  'monday',
  'tuesday',
  'wednesday',
  'thursday',
  'friday',
  'saturday',
  'sunday',
] as const;

/** Who writes the bills, in her own words. Nothing of it is needed. */
const maker = table({
  name: v.optional(text),
  /** Address, telephone, mail; a line each. */
  lines: v.optional(rows(text, 8)),
  /** How she is paid: bank, terms; a line each. */
  payTo: v.optional(rows(text, 8)),
  taxNumber: v.optional(text),
  /** Days that a quote holds, and within which an invoice is paid. */
  quoteDays: v.optional(number),
  payDays: v.optional(number),
  /** What each paper is called, and a closing line for each. */
  titles: v.optional(tableOf(PAPER_KINDS, text)),
  closing: v.optional(tableOf(PAPER_KINDS, text)),
});

const rates = table({
  currency: v.optional(text),
  perHour: v.optional(amount),
  overhead: v.optional(number),
  profit: v.optional(number),
  sundries: v.optional(number),
  /** Threading, tea and interruptions, of the sewing time. */
  breaks: v.optional(number),
  deposit: v.optional(number),
  materialsFirst: v.optional(flag),
  taxName: v.optional(text),
  taxPercent: v.optional(number),
});

const week = table({
  hours: v.optional(tableOf(WEEKDAYS, number)),
  off: v.optional(rows(table({ from: text, to: v.optional(text) }), 100)),
});

/** Minutes for one child; `sew` in hundredths of the plan's time. */
const times = tableOf(WORK_KINDS, number);

const price = table({ what: text, price: amount, per: v.picklist(PRICE_UNITS, 'choice') });

const stashed = table({
  what: text,
  length: v.optional(length),
  width: v.optional(length),
  count: v.optional(number),
});

/**
 * What the maker knows of her own work, whatever the order: who she is, what she asks, when she works, what things
 * cost and what lies in her cupboard. It lies among the settings of her device, part by part, and in a file of its own
 * for the command line.
 */
export const WORKROOM_PARTS = {
  maker,
  rates,
  week,
  times,
  prices: rows(price, 2000),
  stash: rows(stashed, 2000),
} as const;
export type WorkroomPart = keyof typeof WORKROOM_PARTS;

export const WORKROOM_FORM = table(
  Object.fromEntries(
    Object.entries(WORKROOM_PARTS).map(([part, form]) => [part, v.optional(form)]),
  ) as unknown as {
    [P in WorkroomPart]: v.OptionalSchema<(typeof WORKROOM_PARTS)[P], undefined>;
  },
);

export type WorkroomFile = v.InferOutput<typeof WORKROOM_FORM>;

/** Whether something has the form of that part of a workroom. */
export const isWorkroomPart = (part: WorkroomPart, value: unknown): boolean =>
  v.is(WORKROOM_PARTS[part], value);
