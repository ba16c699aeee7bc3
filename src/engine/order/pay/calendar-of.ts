import { calendarFile } from '../../bill/index.ts';
import { say } from '../../words/index.ts';
import { readDay } from '../day.ts';
import type { Order } from '../order.ts';
import { hoursOf } from './pay-words.ts';
import type { PayWork } from './pay-work.ts';

/**
 * What stands before every entry: the title of the order, or only its first letters. A calendar is often shared, so a
 * child's name goes into it only where she asks for it.
 */
export type CalendarNames = 'title' | 'letters' | 'children';

/** The days of an order as a calendar file; null where they can't be planned. `key` tells orders apart. */
export function calendarOf(
  order: Order,
  work: PayWork,
  names: CalendarNames,
  key: string,
  today: string,
): string | null {
  const [event, made] = [readDay(order.dueDay), readDay(today)];
  if (!work.days.ok || event === null || made === null) return null;
  return calendarFile({
    days: work.days.days,
    title: calendarTitle(order, names),
    word: (kind, minutes) => {
      const what = say(`day.${kind}`, {}, order.units);
      const hours = say('paper.days.hours-of', { hours: hoursOf(minutes) }, order.units);
      return minutes === 0 ? what : `${what} (${hours})`;
    },
    event: { day: event, word: say('day.event', {}, order.units) },
    key: key.replace(/[^A-Za-z0-9-]/g, '').slice(0, 64) || 'order',
    made,
  });
}

/** A title that names a child is shortened to letters, unless she wants the names. */
function calendarTitle({ title, children }: Order, names: CalendarNames): string {
  if (names === 'children') return `${title} (${children.map(({ name }) => name).join(', ')})`;
  const words = (text: string): readonly string[] => text.toLowerCase().match(/[\p{L}\p{M}]+/gu) ?? [];
  const own = new Set(children.flatMap(({ name }) => words(name).filter((word) => word.length > 1)));
  const telling = words(title).some((word) => own.has(word));
  return names === 'title' && !telling ? title : lettersOf(title);
}

const lettersOf = (title: string): string =>
  (title.match(/[\p{L}\p{N}][\p{L}\p{M}\p{N}]*/gu) ?? []).map((word) => [...word][0]?.toUpperCase()).join('');
