import { type CalendarDay, dayAfter, daysBetween, dayText } from '../body/index.ts';

/** When she works. Minutes by weekday, Monday first; days off are whole days, both ends counted. */
export interface WorkWeek {
  readonly minutes: readonly number[];
  readonly off: readonly { readonly from: CalendarDay; readonly to: CalendarDay }[];
}

/** What is done on the way to the day, in the order in which it is done. */
export const DAY_KINDS = [
  'measure',
  'buy',
  'toile',
  'toile-fitting',
  'cut',
  'sew',
  'middle-fitting',
  'sew-on',
  'last-fitting',
  'finish',
  'deliver',
] as const;
export type DayKind = (typeof DAY_KINDS)[number];

/** Minutes of the whole party for each sort of work. */
export interface WorkMinutes {
  readonly measure: number;
  readonly toile: number;
  readonly cut: number;
  readonly sew: number;
  /** One fitting of all children. */
  readonly fitting: number;
  /** Hem, press, count pins and pack. */
  readonly finish: number;
}

export interface DaysWish {
  readonly today: CalendarDay;
  readonly event: CalendarDay;
  readonly work: WorkMinutes;
  /** 1: the last one only; 2: one in the toile before; 3: one half-way as well. 0: none. */
  readonly fittings: number;
  readonly week: WorkWeek;
  /** Minutes that other orders take, by day; nothing where she plans this order alone. */
  readonly taken: ReadonlyMap<string, number>;
}

export interface PlannedWork {
  readonly kind: DayKind;
  readonly from: CalendarDay;
  readonly to: CalendarDay;
  readonly minutes: number;
  /** Minutes by day, `2027-06-12`. */
  readonly byDay: ReadonlyMap<string, number>;
}

export type DaysProblem =
  | { readonly code: 'bill.days.event-past'; readonly event: string }
  | { readonly code: 'bill.days.no-hours' }
  /** The work would have had to begin before today. */
  | {
      readonly code: 'bill.days.too-late';
      readonly begin: string;
      readonly needed: number;
      readonly there: number;
    };

export type DaysResult =
  /** `tight`: the last fitting had to come nearer to the day than a week. */
  | { readonly ok: true; readonly days: readonly PlannedWork[]; readonly tight: boolean }
  | { readonly ok: false; readonly problem: DaysProblem };

/** Handed over so many days before the day, so that a last mishap can be mended (common practice, no source). */
const DELIVER_BEFORE = 3;
/** The last fitting is one to two weeks before the day; hem and zip are finished after it (a bridal shop's calendar). */
const LAST_FITTING_BEFORE = 8;
/** A trip to the shop, min (common practice, no source). */
const BUYING = 90;
/** Nobody begins earlier; a week of a few minutes would run on for ever. */
const LONGEST_DAYS = 1000;

/**
 * The days of an order, reckoned back from the event: what must be done last is placed first, each sort of work on the
 * latest days that have room for it. Refuses a day that has passed, a week without hours, and a way that would have had
 * to begin before today.
 */
export function planDays(wish: DaysWish): DaysResult {
  const { today, event, week } = wish;
  if (daysBetween(today, event) < 0) return refused({ code: 'bill.days.event-past', event: dayText(event) });
  if (!week.minutes.some((minutes) => minutes > 0)) return refused({ code: 'bill.days.no-hours' });
  for (const before of [LAST_FITTING_BEFORE, 1]) {
    const days = placeAll(wish, before);
    const first = days[0]?.from ?? event;
    if (daysBetween(today, first) >= 0) return { ok: true, days, tight: before === 1 };
  }
  const days = placeAll(wish, 1);
  const deliver = days.at(-1)?.from ?? event;
  let there = 0;
  for (let day = today; daysBetween(day, deliver) > 0; day = dayAfter(day, 1)) there += freeOn(day, wish);
  return refused({
    code: 'bill.days.too-late',
    begin: dayText(days[0]?.from ?? event),
    needed: days.reduce((sum, { minutes }) => sum + minutes, 0),
    there,
  });
}

function placeAll(wish: DaysWish, fittingBefore: number): readonly PlannedWork[] {
  const { today, event, work, fittings } = wish;
  const room = roomBy(wish);
  const days: PlannedWork[] = [];
  let end = dayAfter(event, -Math.min(DELIVER_BEFORE, Math.max(0, daysBetween(today, event) - 1)));
  const place = (kind: DayKind, minutes: number, before = end): void => {
    const placed = placeBack(kind, minutes, before, room);
    if (placed === null) return;
    days.unshift(placed);
    end = placed.from;
  };
  place('deliver', 0);
  place('finish', work.finish, dayAfter(end, -1));
  const latest = dayAfter(event, -fittingBefore);
  if (fittings >= 1) place('last-fitting', work.fitting, earlier(dayAfter(end, -1), latest));
  const half = fittings >= 3 ? work.sew / 2 : 0;
  if (fittings >= 3) {
    place('sew-on', half, dayAfter(end, -1));
    place('middle-fitting', work.fitting, dayAfter(end, -1));
  }
  place('sew', work.sew - half, dayAfter(end, -1));
  place('cut', work.cut);
  if (fittings >= 2) {
    place('toile-fitting', work.fitting, dayAfter(end, -1));
    place('toile', work.toile, dayAfter(end, -1));
  }
  place('buy', BUYING, dayAfter(end, -1));
  place('measure', work.measure, dayAfter(end, -1));
  return days;
}

const refused = (problem: DaysProblem): DaysResult => ({ ok: false, problem });

const earlier = (a: CalendarDay, b: CalendarDay): CalendarDay => (daysBetween(a, b) < 0 ? b : a);

/** What is left of a day, counted down as work is placed on it. */
function roomBy(wish: DaysWish): {
  left(day: CalendarDay): number;
  use(day: CalendarDay, minutes: number): void;
} {
  const used = new Map<string, number>();
  return {
    left: (day) => Math.max(0, freeOn(day, wish) - (used.get(dayText(day)) ?? 0)),
    use: (day, minutes) => used.set(dayText(day), (used.get(dayText(day)) ?? 0) + minutes),
  };
}

const freeOn = (day: CalendarDay, { week, taken }: Pick<DaysWish, 'week' | 'taken'>): number =>
  Math.max(0, minutesOn(week, day) - (taken.get(dayText(day)) ?? 0));

/** How many minutes she works on a day. */
export function minutesOn(week: WorkWeek, day: CalendarDay): number {
  if (week.off.some(({ from, to }) => daysBetween(from, day) >= 0 && daysBetween(day, to) >= 0)) return 0;
  return Math.max(0, week.minutes[weekdayOf(day)] ?? 0);
}

/** 0 for Monday (ISO 8601). */
const weekdayOf = (day: CalendarDay): number => ((daysBetween(MONDAY, day) % 7) + 7) % 7;
/** Some Monday: 1 January 2024. */
const MONDAY: CalendarDay = { year: 2024, month: 1, day: 1 };

/** The Monday of a day's week. */
export const weekOf = (day: CalendarDay): CalendarDay => dayAfter(day, -weekdayOf(day));

/** Fills the latest days up to `last`; work of no minutes stands on the last working day. */
function placeBack(
  kind: DayKind,
  minutes: number,
  last: CalendarDay,
  room: ReturnType<typeof roomBy>,
): PlannedWork | null {
  const byDay = new Map<string, number>();
  let left = minutes;
  let to: CalendarDay | null = null;
  for (let day = last, tried = 0; tried < LONGEST_DAYS; day = dayAfter(day, -1), tried++) {
    const free = room.left(day);
    if (free <= 0) continue;
    to ??= day;
    const here = Math.min(left, free);
    if (here > 0) byDay.set(dayText(day), here);
    room.use(day, here);
    left -= here;
    if (left <= 0) return { kind, from: day, to, minutes, byDay };
  }
  return to === null ? null : { kind, from: dayAfter(last, -LONGEST_DAYS), to, minutes, byDay };
}

/** The minutes that an order's work takes on each day. */
export interface OrderLoad {
  readonly title: string;
  readonly byDay: ReadonlyMap<string, number>;
}

/** A week into which more was put than she works in it. */
export interface FullWeek {
  readonly monday: CalendarDay;
  readonly needed: number;
  readonly there: number;
  /** In the order in which they were given; only those that take time in this week. */
  readonly titles: readonly string[];
}

/** The weeks for which several orders together ask for more than her hours. One order alone never does. */
export function fullWeeks(loads: readonly OrderLoad[], week: WorkWeek): readonly FullWeek[] {
  const weeks = new Map<string, { monday: CalendarDay; needed: number; titles: string[] }>();
  for (const { title, byDay } of loads) {
    for (const [text, minutes] of byDay) {
      const monday = weekOf(dayOf(text));
      const entry = weeks.get(dayText(monday)) ?? { monday, needed: 0, titles: [] };
      entry.needed += minutes;
      if (!entry.titles.includes(title)) entry.titles.push(title);
      weeks.set(dayText(monday), entry);
    }
  }
  return [...weeks.values()]
    .map((entry) => ({ ...entry, there: hoursOfWeek(entry.monday, week) }))
    .filter(({ needed, there }) => needed > there)
    .sort((a, b) => daysBetween(b.monday, a.monday));
}

const hoursOfWeek = (monday: CalendarDay, week: WorkWeek): number =>
  [0, 1, 2, 3, 4, 5, 6].reduce((sum, n) => sum + minutesOn(week, dayAfter(monday, n)), 0);

function dayOf(text: string): CalendarDay {
  const [year = 0, month = 0, day = 0] = text.split('-').map(Number);
  return { year, month, day };
}
