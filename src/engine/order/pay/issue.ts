import { type Bill, type Money, noMoney, plainMoney, totalsOf } from '../../bill/index.ts';
import { type Saying, say, type WordKey } from '../../words/index.ts';
import type { Order } from '../order.ts';
import type { IssuedPaper, PaperKind } from './pay-form.ts';
import { shownDay } from './pay-words.ts';
import type { PayWork } from './pay-work.ts';
import { amountAt, type PayDesk } from './workroom.ts';

export interface IssueWish {
  readonly order: Order;
  readonly work: PayWork;
  readonly kind: PaperKind;
  /** Given by the store, never twice; empty for a draft to look at. */
  readonly number: string;
  readonly day: string;
  /** For a receipt: which of the payments; the last one where it is not said. */
  readonly payment?: number;
}

export type IssueResult =
  | { readonly ok: true; readonly paper: IssuedPaper }
  | { readonly ok: false; readonly why: Saying };

/**
 * A quote, an invoice or a receipt as it will stand in the order: every figure as it is printed, so that later changes
 * of prices leave it alone. Refuses where nothing can be reckoned, and a receipt where nothing was paid.
 */
export function issuePaper({ order, work, kind, number, day, payment }: IssueWish): IssueResult {
  const { bill, currency } = work;
  if (bill === null) return refused('pay.no-rate');
  const units = order.units;
  const common = { kind, number, day, currency };
  if (kind !== 'receipt') {
    const { totals } = bill;
    const tax =
      work.tax === null
        ? {}
        : { net: plainMoney(totals.net), tax: { ...work.tax, amount: plainMoney(totals.tax) } };
    const paper: IssuedPaper = {
      ...common,
      lines: linesOf(bill, order).map(({ about, amount }) => ({ about, amount: plainMoney(amount) })),
      ...tax,
      total: plainMoney(totals.total),
      received: plainMoney(kind === 'quote' ? noMoney(currency) : totals.received),
      due: plainMoney(kind === 'quote' ? totals.total : totals.due),
      ...(kind === 'quote' ? { deposit: plainMoney(bill.deposit) } : {}),
    };
    return { ok: true, paper };
  }
  const payments = order.pay.received ?? [];
  const which = payment ?? payments.length - 1;
  const paid = payments[which];
  const desk: PayDesk = { problems: [], units, currency };
  const amount = paid === undefined ? null : amountAt('', paid.amount, desk);
  if (paid === undefined || amount === null) return refused('pay.no-payment');
  const before = payments.slice(0, which + 1).flatMap((one) => amountAt('', one.amount, desk) ?? []);
  const left = totalsOf([bill.totals.total], 0, before, currency).due;
  const values = { day: shownDay(paid.day), how: paid.how?.trim() ?? '' };
  const about = values.how === '' ? 'paper.pay.line.payment' : 'paper.pay.line.payment-how';
  return {
    ok: true,
    paper: {
      ...common,
      lines: [{ about: say(about, values, units), amount: plainMoney(amount) }],
      total: plainMoney(amount),
      received: plainMoney(amount),
      due: plainMoney(left),
    },
  };
}

const refused = (key: WordKey): IssueResult => ({ ok: false, why: { key, values: {} } });

interface Line {
  readonly about: string;
  readonly amount: Money;
}

/** What the customer reads: a line for each dress, each extra, the rush, and what was agreed. */
function linesOf(bill: Bill, { units, pay }: Order): readonly Line[] {
  const told = (key: WordKey, values = {}): string => say(key, values, units);
  return [
    ...bill.children.map(({ name, price }) => ({
      about: told('paper.pay.line.child', { child: name }),
      amount: price,
    })),
    ...bill.extras.map(({ about, price }) => ({ about, amount: price })),
    ...(bill.rush.minor === 0
      ? []
      : [{ about: told('paper.pay.line.rush', { percent: pay.rush ?? 0 }), amount: bill.rush }]),
    ...(bill.difference.minor === 0
      ? []
      : [{ about: told('paper.pay.line.agreed'), amount: bill.difference }]),
  ];
}
