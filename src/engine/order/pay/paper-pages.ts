import { dayAfter } from '../../body/index.ts';
import { type FlowBlock, flowPages, type Page } from '../../sheet/index.ts';
import { say, type WordKey, type WordValues } from '../../words/index.ts';
import type { Desk } from '../child-papers.ts';
import { readDay } from '../day.ts';
import type { IssuedPaper } from './pay-form.ts';
import { dayWords, shownDay } from './pay-words.ts';
import type { WorkroomFile } from './workroom-form.ts';

/** A quote, an invoice or a receipt on paper, as it was given out, in her words where she has set some. */
export function paperPages(
  issued: IssuedPaper,
  { order, paper, ink }: Desk,
  { maker = {} }: WorkroomFile,
): readonly Page[] {
  const told = (key: WordKey, values: WordValues = {}): string => say(key, values, ink.units);
  const { kind, number } = issued;
  const name = maker.titles?.[kind]?.trim() || told(`paper.${kind}.name`);
  const closing = maker.closing?.[kind]?.trim() ?? '';
  const shown = number === '' ? told('paper.pay.draft') : told('paper.pay.number', { number });
  const day = readDay(issued.day);
  const dayIn = (days: number): string => (day === null ? '' : dayWords(dayAfter(day, days)));
  const left = [maker.name ?? '', ...(maker.lines ?? [])].filter((text) => text.trim() !== '');
  const right = [
    shown,
    told('paper.pay.day', { day: shownDay(issued.day) }),
    ...(maker.taxNumber === undefined || maker.taxNumber.trim() === ''
      ? []
      : [told('paper.pay.tax-number', { number: maker.taxNumber })]),
    ...(order.customer === null ? [] : [told('paper.pay.to', { customer: order.customer })]),
    told('paper.pay.for-day', { title: order.title, due: shownDay(order.dueDay) }),
  ];
  const paragraph = (text: string): FlowBlock => ({ kind: 'paragraph', text });
  const blocks: FlowBlock[] = [
    { kind: 'title', text: name },
    { kind: 'sides', left, right },
    { kind: 'gap', height: 4 },
    linesTable(issued, told),
    ...(kind === 'quote' && issued.deposit !== undefined
      ? [paragraph(told('paper.pay.deposit', { amount: withCurrency(issued.deposit, issued) }))]
      : []),
    ...(kind === 'quote' && maker.quoteDays !== undefined
      ? [paragraph(told('paper.pay.quote-days', { day: dayIn(maker.quoteDays) }))]
      : []),
    ...(kind === 'invoice' && maker.payDays !== undefined
      ? [paragraph(told('paper.pay.pay-days', { day: dayIn(maker.payDays) }))]
      : []),
    ...(kind === 'quote' ? [paragraph(told('paper.pay.changes'))] : []),
    ...(kind !== 'receipt' ? (maker.payTo ?? []).map(paragraph) : []),
    ...(closing === '' ? [] : [paragraph(closing)]),
  ];
  return flowPages(blocks, { paper, ink, name, footer: `${name} ${number} - ${left[0] ?? order.title}` });
}

const withCurrency = (amount: string | number, { currency }: IssuedPaper): string => `${currency} ${amount}`;

/** The lines and the sums below them; sums that say nothing new are left out. */
function linesTable(
  { kind, lines, net, tax, total, received, due, currency }: IssuedPaper,
  told: (key: WordKey, values?: WordValues) => string,
): FlowBlock {
  const text = (amount: string | number): string => String(amount);
  const rows = lines.map(({ about, amount }) => [about, text(amount)]);
  const sums: (readonly string[])[] = [];
  const isReceipt = kind === 'receipt';
  if (net !== undefined) sums.push([told('paper.pay.net'), text(net)]);
  if (tax !== undefined) {
    const percent = tax.percent;
    sums.push([told('paper.pay.tax', { name: tax.name, percent }), text(tax.amount)]);
  }
  if (isReceipt) sums.push([told('paper.pay.received'), text(received)]);
  else sums.push([told('paper.pay.total'), text(total)]);
  const wasPaid = !/^[0.]*$/.test(text(received));
  if (kind === 'invoice' && wasPaid) sums.push([told('paper.pay.received'), text(received)]);
  if (isReceipt || wasPaid) sums.push([told('paper.pay.due'), text(due)]);
  return {
    kind: 'table',
    columns: [
      { heading: told('paper.pay.what'), share: 4, align: 'left' },
      { heading: told('paper.pay.amount', { currency }), share: 1.4, align: 'right' },
    ],
    rows: [...rows, ...sums],
    ticked: false,
    sumsFrom: rows.length,
  };
}
