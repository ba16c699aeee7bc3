import * as v from 'valibot';
import { amount, flag, name, number, rows, table, text } from '../form-parts.ts';

/** The papers that have a number. */
export const PAPER_KINDS = ['quote', 'invoice', 'receipt'] as const;
export type PaperKind = (typeof PAPER_KINDS)[number];

/** Sorts of work that she notes her times by. */
export const WORK_KINDS = ['measure', 'paper', 'toile', 'cut', 'sew', 'fit', 'finish'] as const;
export type WorkKind = (typeof WORK_KINDS)[number];

const line = table({ about: text, amount });

/** A paper that was given out, as it was: later changes of prices or dresses do not change it. */
const paper = table({
  kind: v.picklist(PAPER_KINDS, 'choice'),
  number: name,
  day: text,
  currency: text,
  lines: rows(line, 120),
  tax: v.optional(table({ name: text, percent: number, amount })),
  net: v.optional(amount),
  total: amount,
  received: amount,
  due: amount,
  deposit: v.optional(amount),
});

/** What an order says of money and days. Every field may be left out. */
export const PAY_FORM = table({
  /** A code of ISO 4217; her own currency where it is not said. */
  currency: v.optional(text),
  /** Agreed before tax, in the place of what is reckoned. */
  agreed: v.optional(amount),
  /** Added for work in a hurry, in hundredths. */
  rush: v.optional(number),
  extras: v.optional(
    rows(table({ about: text, price: v.optional(amount), minutes: v.optional(number) }), 40),
  ),
  received: v.optional(rows(table({ day: text, amount, how: v.optional(text) }), 40)),
  /** Her own times, for what she earned in the end. */
  spent: v.optional(rows(table({ on: v.picklist(WORK_KINDS, 'choice'), minutes: number }), 400)),
  fittings: v.optional(number),
  /** Plan round the days of her other orders. */
  roundOthers: v.optional(flag),
  /** The days that she keeps free for this order: minutes by day. */
  kept: v.optional(rows(table({ day: text, minutes: number }), 400)),
  papers: v.optional(rows(paper, 60)),
});

export type PayFile = v.InferOutput<typeof PAY_FORM>;
export type IssuedPaper = NonNullable<PayFile['papers']>[number];
