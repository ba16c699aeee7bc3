import ICAL from 'ical.js';
import { type CalendarDay, dayAfter, dayText } from '../body/index.ts';
import { DAY_KINDS, type PlannedWork } from './timetable.ts';

export interface CalendarJob {
  readonly days: readonly PlannedWork[];
  /** Stands before every entry. No child's name should be in it: a calendar is often shared. */
  readonly title: string;
  /** What each sort of work is called there. */
  readonly word: (kind: PlannedWork['kind'], minutes: number) => string;
  /** The day of the event itself, and its word. */
  readonly event: { readonly day: CalendarDay; readonly word: string };
  /** Tells this order from any other in the same calendar; letters and digits. */
  readonly key: string;
  /** The day on which the file is made, for the stamp. */
  readonly made: CalendarDay;
}

/**
 * The days of an order as a calendar file (iCalendar, RFC 5545): whole days, which take no time from a diary that she
 * shares. An entry keeps its name (UID) when the file is made again, so that it takes the place of the older one.
 */
export function calendarFile({ days, title, word, event, key, made }: CalendarJob): string {
  const calendar = new ICAL.Component('vcalendar');
  calendar.addPropertyWithValue('prodid', '-//Frockwright//Days of an order//EN');
  calendar.addPropertyWithValue('version', '2.0');
  const add = (id: string, from: CalendarDay, to: CalendarDay, text: string): void => {
    const entry = new ICAL.Component('vevent');
    entry.addPropertyWithValue('uid', `${key}-${id}@frockwright.invalid`);
    entry.addPropertyWithValue('dtstamp', ICAL.Time.fromDateTimeString(`${dayText(made)}T00:00:00Z`));
    entry.addPropertyWithValue('dtstart', ICAL.Time.fromDateString(dayText(from)));
    // The end of a whole day is the day after it (RFC 5545, 3.6.1).
    entry.addPropertyWithValue('dtend', ICAL.Time.fromDateString(dayText(dayAfter(to, 1))));
    entry.addPropertyWithValue('summary', `${title}: ${text}`);
    entry.addPropertyWithValue('transp', 'TRANSPARENT');
    calendar.addSubcomponent(entry);
  };
  for (const kind of DAY_KINDS) {
    for (const day of days) if (day.kind === kind) add(kind, day.from, day.to, word(kind, day.minutes));
  }
  add('event', event.day, event.day, event.word);
  return `${calendar.toString()}\r\n`;
}
