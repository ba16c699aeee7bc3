/** A day of the calendar without a time or a zone. */
export interface Day {
  readonly year: number;
  readonly month: number;
  readonly day: number;
}

/** Reads `2027-06-12` (ISO 8601); null when it is not written so or there is no such day. */
export function readDay(text: string): Day | null {
  const found = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text);
  if (found === null) return null;
  const [year = 0, month = 0, day = 0] = found.slice(1).map(Number);
  const exists = month >= 1 && month <= 12 && day >= 1 && day <= daysIn(year, month) && year >= 1900;
  return exists ? { year, month, day } : null;
}

/** Whole months from one day to a later one; negative when the second comes first. */
export function monthsBetween(from: Day, to: Day): number {
  const months = (to.year - from.year) * 12 + to.month - from.month;
  return to.day < from.day ? months - 1 : months;
}

function daysIn(year: number, month: number): number {
  if (month === 2) return year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0) ? 29 : 28;
  return month === 4 || month === 6 || month === 9 || month === 11 ? 30 : 31;
}
