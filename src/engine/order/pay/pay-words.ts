import type { DaysProblem, FullWeek } from '../../bill/index.ts';
import {
  type Goods,
  moneyText,
  type Price,
  type ShoppingRow,
  type StashNote,
  toBuyText,
} from '../../bill/index.ts';
import { type CalendarDay, dayText } from '../../body/index.ts';
import type { UnitSystem } from '../../units/index.ts';
import { formatLength } from '../../units/index.ts';
import { type Saying, say, type WordKey } from '../../words/index.ts';
import { readDay } from '../day.ts';

/** What a good is called in a shop. */
export function goodsName(what: Goods, units: UnitSystem): string {
  if (what.kind === 'cloth') return what.name;
  return say(`good.${what.kind}`, { size: { mm: what.size } }, units);
}

/** What she has of a good. */
export function stashText({ unit, fromStash }: ShoppingRow, units: UnitSystem): string {
  if (fromStash === 0) return '';
  return unit === null ? String(Math.round(fromStash * 10) / 10) : formatLength(fromStash, units);
}

export const buyText = (row: ShoppingRow): string => (row.toBuy === 0 ? '0' : toBuyText(row));

export const priceText = ({ amount, per }: Price, units: UnitSystem): string =>
  say(`paper.shopping.per.${per}` satisfies WordKey, { amount: moneyText(amount) }, units);

/** A note about what she has, with the names of the children. */
export function stashSaying(note: StashNote, names: readonly string[]): Saying {
  switch (note.code) {
    case 'bill.stash.too-small': {
      const { length, width, needsLength, needsWidth } = note;
      const sizes = { length, width, needsLength, needsWidth };
      return {
        key: note.code,
        values: Object.fromEntries(Object.entries(sizes).map(([name, mm]) => [name, { mm: Math.round(mm) }])),
      };
    }
    case 'bill.stash.cuts': {
      const whose = note.children.map((child) => names[child] ?? '').join(', ');
      return { key: note.code, values: { length: { mm: note.length }, names: whose } };
    }
    case 'bill.stash.enough':
      return { key: note.code, values: {} };
  }
}

/** Minutes as hours to a quarter: 2.25. */
export const hoursOf = (minutes: number): number => Math.round(minutes / 15) / 4;

export function daysSaying(problem: DaysProblem): Saying {
  const { code, ...values } = problem;
  if (problem.code !== 'bill.days.too-late') return { key: code, values };
  const { begin, needed, there } = problem;
  return { key: code, values: { begin, needed: hoursOf(needed), there: hoursOf(there) } };
}

export const fullWeekSaying = ({ monday, needed, there, titles }: FullWeek): Saying => ({
  key: 'bill.days.full-week' satisfies WordKey,
  values: {
    monday: dayText(monday),
    titles: titles.map((title) => `“${title}”`).join(', '),
    needed: hoursOf(needed),
    there: hoursOf(there),
  },
});

const MONTHS = 'January February March April May June July August September October November December'.split(
  ' ',
);
const WEEKDAYS = 'Mon Tue Wed Thu Fri Sat Sun'.split(' ');

/** `Wed 9 June 2027`: the weekday tells a slip of the date. */
export function dayWords(day: CalendarDay): string {
  const weekday = (new Date(Date.UTC(day.year, day.month - 1, day.day)).getUTCDay() + 6) % 7;
  return `${WEEKDAYS[weekday]} ${day.day} ${MONTHS[day.month - 1]} ${day.year}`;
}

/** A day as it is written in a file, in words; what is no day stays as it was typed. */
export function shownDay(text: string): string {
  const day = readDay(text);
  return day === null ? text : dayWords(day);
}
