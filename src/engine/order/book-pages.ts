import { type FlowBlock, flowPages, type Ink, type Page, type Paper } from '../sheet/index.ts';
import { say, type WordKey } from '../words/index.ts';
import { type ChildReport, mustNotBeCut } from './check-order.ts';
import { sizeText } from './cut-dress.ts';
import type { Order } from './order.ts';
import { shownDay } from './pay/pay-words.ts';

/** What a book is made with. */
interface BookDesk {
  readonly order: Order;
  readonly day: string;
  readonly paper: Paper;
  readonly ink: Ink;
}

/** Some papers that follow one another in a book. */
export interface BookPart {
  readonly about: string;
  readonly pages: readonly Page[];
}

/**
 * Everything to work by in one document: a cover that says whose it is, for which day, and on which page each part
 * begins, and then the parts as they are. The pattern itself stays apart, as it is printed at true size.
 */
export function bookPages(
  whose: string,
  reports: readonly ChildReport[],
  parts: readonly BookPart[],
  { order, day, paper, ink }: BookDesk,
): readonly Page[] {
  const { units } = ink;
  const told = (key: WordKey, values = {}): string => say(key, values, units);
  const name = told('order.book.name');
  const barred = reports.filter(mustNotBeCut).map((report) => report.name);
  let at = 2;
  const contents = parts.map(({ about, pages }) => {
    const row = [about, String(at)];
    at += pages.length;
    return row;
  });
  const blocks: FlowBlock[] = [
    { kind: 'title', text: whose },
    {
      kind: 'sides',
      left: [
        ...(whose === order.title ? [] : [order.title]),
        ...(order.customer === null ? [] : [told('paper.pay.to', { customer: order.customer })]),
        told('order.book.due', { day: shownDay(order.dueDay) }),
      ],
      right: [told('order.book.made', { day: shownDay(day) })],
    },
    ...(barred.length === 0
      ? []
      : [
          {
            kind: 'paragraph',
            text: told('order.readme.barred', { names: barred.join(', ') }),
            weight: 'bold',
          } as const,
        ]),
    {
      kind: 'table',
      columns: [
        { heading: told('order.checks.child'), share: 3, align: 'left' },
        { heading: told('order.book.size'), share: 4, align: 'left' },
        { heading: told('order.book.pieces'), share: 2, align: 'right' },
      ],
      rows: reports.map(({ name: child, dress, pieces }) => [
        child,
        sizeText(dress.body, units),
        String(pieces.length),
      ]),
      ticked: false,
    },
    { kind: 'heading', text: told('order.book.contents') },
    {
      kind: 'table',
      columns: [
        { heading: told('order.book.part'), share: 8, align: 'left' },
        { heading: told('order.book.page'), share: 1, align: 'right' },
      ],
      rows: contents,
      ticked: true,
    },
    { kind: 'paragraph', text: told('order.book.pattern') },
  ];
  const cover = flowPages(blocks, { paper, ink, name, footer: `${name} - ${whose} - ${day}` });
  return [...cover, ...parts.flatMap(({ pages }) => pages)];
}
