import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { monthsBetween, readDay } from '../../src/engine/order/day.ts';

/** Judge: the proleptic Gregorian calendar of the JavaScript engine (ECMA-262, Date in UTC). */
const isDay = (text: string): boolean => {
  const date = new Date(`${text}T00:00:00Z`);
  return !Number.isNaN(date.getTime()) && date.toISOString().slice(0, 10) === text;
};

const two = (n: number): string => String(n).padStart(2, '0');

describe('days of the calendar', () => {
  it('are those of the Gregorian calendar, from 1900 on', () => {
    for (let year = 1900; year <= 2110; year++) {
      for (let month = 0; month <= 13; month++) {
        for (const day of [0, 1, 28, 29, 30, 31, 32]) {
          const text = `${year}-${two(month)}-${two(day)}`;
          expect(readDay(text) !== null, text).toBe(isDay(text));
        }
      }
    }
  });

  it.each(['2027-6-12', '12-06-2027', '2027-06-12T00:00', ' 2027-06-12', '२०२७-०६-१२', '2027/06/12'])(
    '%s is not written as a day',
    (text) => expect(readDay(text)).toBeNull(),
  );

  it('months between two days: so many months on from the first, the second has not yet come', () => {
    const dayFrom = new Date('1990-01-01T00:00:00Z');
    const date = fc.date({ min: dayFrom, max: new Date('2060-12-31T00:00:00Z'), noInvalidDate: true });
    fc.assert(
      fc.property(date, date, (a, b) => {
        const [first, second] = a <= b ? [a, b] : [b, a];
        const read = (d: Date) => readDay(d.toISOString().slice(0, 10));
        const [from, to] = [read(first), read(second)];
        if (from === null || to === null) throw new Error('Not a day.');
        const months = monthsBetween(from, to);
        // A birthday on the 31st of a month with 30 days counts from the next day, as the engine rolls it over.
        const stepped = (n: number): number => Date.UTC(from.year, from.month - 1 + n, from.day);
        const end = Date.UTC(to.year, to.month - 1, to.day);
        expect(stepped(months)).toBeLessThanOrEqual(end);
        expect(stepped(months + 1)).toBeGreaterThan(end);
      }),
      { seed: 20270612, numRuns: 2000 },
    );
  });
});
