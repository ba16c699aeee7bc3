import { moneyText } from '../../bill/index.ts';
import { type FlowBlock, flowPages, type Page } from '../../sheet/index.ts';
import { formatLength } from '../../units/index.ts';
import { say, speak, type WordKey, type WordValues } from '../../words/index.ts';
import type { Desk } from '../child-papers.ts';
import { WORK_KINDS } from './pay-form.ts';
import {
  buyText,
  daysSaying,
  dayWords,
  goodsName,
  hoursOf,
  priceText,
  shownDay,
  stashSaying,
  stashText,
} from './pay-words.ts';
import type { PayWork } from './pay-work.ts';

/** The shopping list of the party to tick off in the shop, and under it what is meant for which child. */
export function shoppingPages(work: PayWork, { order, day, paper, ink }: Desk): readonly Page[] {
  const { units } = ink;
  const told = (key: WordKey, values: WordValues = {}): string => say(key, values, units);
  const name = told('paper.shopping.name');
  const column = (key: WordKey, share: number, align: 'left' | 'right') =>
    ({ heading: told(key), share, align }) as const;
  const rows = work.shopping.map((row) => [
    goodsName(row.what, units),
    buyText(row),
    stashText(row, units),
    row.price === null ? '' : priceText(row.price, units),
    row.cost === null ? '' : moneyText(row.cost),
  ]);
  const notes = work.shopping.flatMap((row) =>
    row.notes
      .filter(({ code }) => code !== 'bill.stash.enough')
      .map((note) => `${goodsName(row.what, units)}: ${speak(stashSaying(note, work.names), units)}`),
  );
  const paragraph = (text: string): FlowBlock => ({ kind: 'paragraph', text });
  const blocks: FlowBlock[] = [
    { kind: 'title', text: `${name}: ${order.title}` },
    paragraph(told('paper.shopping.about', { due: shownDay(order.dueDay) })),
    {
      kind: 'table',
      columns: [
        column('paper.shopping.what', 4.4, 'left'),
        column('paper.shopping.buy', 1.8, 'right'),
        column('paper.shopping.have', 1.8, 'right'),
        column('paper.shopping.price', 2.8, 'right'),
        column('paper.shopping.cost', 2.2, 'right'),
      ],
      rows,
      ticked: true,
    },
    {
      kind: 'paragraph',
      text: `${told('paper.shopping.total')}: ${moneyText(work.materials)}`,
      weight: 'bold',
    },
    ...notes.map(paragraph),
    { kind: 'heading', text: told('paper.shopping.for') },
    ...work.names.map((child, i) =>
      paragraph(told('paper.shopping.child', { child, goods: goodsOf(work, i, units) })),
    ),
    ...(work.unpriced.length === 0 ? [] : [paragraph(unpricedText(work, units))]),
    paragraph(told('paper.shopping.spare')),
  ];
  return flowPages(blocks, { paper, ink, name, footer: `${name} - ${order.title} - ${day}` });
}

/** What one child takes of everything. */
function goodsOf({ shopping }: PayWork, child: number, units: 'in' | 'cm'): string {
  return shopping
    .filter(({ each }) => (each[child] ?? 0) > 0)
    .map(({ what, unit, each }) => {
      const amount = each[child] ?? 0;
      const shown = unit === null ? String(Math.ceil(10 * amount) / 10) : formatLength(amount, units);
      return `${goodsName(what, units)} ${shown}`;
    })
    .join('; ');
}

/** What still has no price, as a sentence. */
export function unpricedText({ unpriced }: PayWork, units: 'in' | 'cm'): string {
  const goods = unpriced.map(({ what }) => goodsName(what, units)).join('; ');
  return say('pay.unpriced', { goods }, units);
}

/** The days of the order to hang on the wall, and the hours by child and sort of work. */
export function daysPages(
  work: PayWork,
  weekMinutes: number,
  { order, day, paper, ink }: Desk,
): readonly Page[] {
  const { units } = ink;
  const told = (key: WordKey, values: WordValues = {}): string => say(key, values, units);
  const name = told('paper.days.name');
  const paragraph = (text: string): FlowBlock => ({ kind: 'paragraph', text });
  const due = shownDay(order.dueDay);
  const planned: readonly FlowBlock[] = work.days.ok
    ? [
        {
          kind: 'table',
          columns: [
            { heading: told('paper.days.when'), share: 4, align: 'left' },
            { heading: told('paper.days.work'), share: 5, align: 'left' },
            { heading: told('paper.days.hours'), share: 1.4, align: 'right' },
          ],
          rows: [
            ...work.days.days.map(({ kind, from, to, minutes }) => {
              const [first, last] = [dayWords(from), dayWords(to)];
              const when = first === last ? first : told('paper.days.from-to', { from: first, to: last });
              const hours = minutes === 0 ? '' : told('paper.days.hours-of', { hours: hoursOf(minutes) });
              return [when, told(`day.${kind}`), hours];
            }),
            [due, told('day.event'), ''],
          ],
          ticked: true,
        },
        ...(work.days.tight ? [paragraph(told('bill.days.tight'))] : []),
      ]
    : [{ kind: 'paragraph', text: speak(daysSaying(work.days.problem), units), weight: 'bold' }];
  const blocks: FlowBlock[] = [
    { kind: 'title', text: `${name}: ${order.title}` },
    paragraph(told('paper.days.about', { due, hours: hoursOf(weekMinutes) })),
    ...planned,
    paragraph(told('paper.days.growth')),
    paragraph(told('paper.days.bring')),
    { kind: 'heading', text: told('paper.days.times') },
    {
      kind: 'table',
      columns: [
        { heading: told('paper.days.child'), share: 3, align: 'left' },
        ...WORK_KINDS.map((kind) => ({
          heading: told(`work.${kind}.short`),
          share: 2,
          align: 'right' as const,
        })),
      ],
      rows: work.names.map((child, i) => [
        child,
        ...WORK_KINDS.map((kind) => String(hoursOf(work.times[i]?.[kind] ?? 0))),
      ]),
      ticked: false,
    },
  ];
  return flowPages(blocks, { paper, ink, name, footer: `${name} - ${order.title} - ${day}` });
}
