/** Today in the maker's own calendar, `2027-04-24`. */
export function today(): string {
  const now = new Date();
  const two = (n: number): string => String(n).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

/** A day as people write it, `12 June 2027`; what is no day stays as it was typed. */
export function dayText(day: string): string {
  const found = /^(\d{4})-(\d{2})-(\d{2})$/.exec(day);
  if (found === null) return day;
  const [year = 0, month = 1, date = 1] = found.slice(1).map(Number);
  // Noon in UTC, told in UTC: no zone can move the day.
  const noon = new Date(Date.UTC(year, month - 1, date, 12));
  return new Intl.DateTimeFormat('en-GB', { dateStyle: 'long', timeZone: 'UTC' }).format(noon);
}

/** The day that many days later. */
export function dayAhead(day: string, days: number): string {
  const date = new Date(`${day}T12:00:00Z`);
  date.setUTCDate(date.getUTCDate() + days);
  return date.toISOString().slice(0, 10);
}
