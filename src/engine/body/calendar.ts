/** A day of the calendar without a time or a zone. */
export interface CalendarDay {
  readonly year: number;
  readonly month: number;
  readonly day: number;
}

/** An average month in days, as the WHO standards count ages. */
export const DAYS_PER_MONTH = 30.4375;

/** Days from one day to another; negative when the second comes first. */
export function daysBetween(from: CalendarDay, to: CalendarDay): number {
  return dayNumber(to) - dayNumber(from);
}

/** Average months from one day to another, with decimals; negative when the second comes first. */
export function averageMonthsBetween(from: CalendarDay, to: CalendarDay): number {
  return daysBetween(from, to) / DAYS_PER_MONTH;
}

/** A number of average months in days. */
export function monthsInDays(months: number): number {
  return Math.round(months * DAYS_PER_MONTH);
}

/** So many days later, or earlier. */
export function dayAfter(from: CalendarDay, days: number): CalendarDay {
  const date = new Date(dayNumber(from) * MS_PER_DAY + Math.round(days) * MS_PER_DAY);
  return { year: date.getUTCFullYear(), month: date.getUTCMonth() + 1, day: date.getUTCDate() };
}

/** The day as `2027-06-12` (ISO 8601). */
export function dayText({ year, month, day }: CalendarDay): string {
  const two = (n: number): string => String(n).padStart(2, '0');
  return `${String(year).padStart(4, '0')}-${two(month)}-${two(day)}`;
}

const MS_PER_DAY = 86_400_000;

function dayNumber({ year, month, day }: CalendarDay): number {
  return Date.UTC(year, month - 1, day) / MS_PER_DAY;
}
