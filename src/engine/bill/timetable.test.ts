import { describe, expect, it } from 'vitest';
import { type DaysWish, fullWeeks, type PlannedWork, planDays, weekOf } from './timetable.ts';

const day = (text: string) => {
  const [year = 0, month = 0, date = 0] = text.split('-').map(Number);
  return { year, month, day: date };
};
const text = ({ year, month, day: date }: { year: number; month: number; day: number }) =>
  `${year}-${String(month).padStart(2, '0')}-${String(date).padStart(2, '0')}`;

const WISH: DaysWish = {
  today: day('2027-04-01'),
  event: day('2027-06-12'),
  work: { measure: 90, toile: 120, cut: 150, sew: 1200, fitting: 60, finish: 240 },
  fittings: 2,
  // Monday to Friday four hours.
  week: { minutes: [240, 240, 240, 240, 240, 0, 0], off: [] },
  taken: new Map(),
};

const planned = (wish: DaysWish): readonly PlannedWork[] => {
  const result = planDays(wish);
  if (!result.ok) throw new Error(JSON.stringify(result.problem));
  return result.days;
};

describe('the days of an order', () => {
  const days = planned(WISH);

  it('stand in the order of the work', () => {
    expect(days.map(({ kind }) => kind)).toEqual([
      'measure',
      'buy',
      'toile',
      'toile-fitting',
      'cut',
      'sew',
      'last-fitting',
      'finish',
      'deliver',
    ]);
    for (const [i, one] of days.entries()) {
      expect(text(one.from) <= text(one.to)).toBe(true);
      const next = days[i + 1];
      if (next !== undefined) expect(text(one.to) <= text(next.from)).toBe(true);
    }
  });

  it('are working days, none fuller than her hours, and hold every minute of the work', () => {
    const load = new Map<string, number>();
    for (const { byDay, minutes } of days) {
      expect([...byDay.values()].reduce((a, b) => a + b, 0)).toBe(minutes);
      for (const [at, here] of byDay) load.set(at, (load.get(at) ?? 0) + here);
    }
    for (const [at, minutes] of load) {
      expect(minutes).toBeLessThanOrEqual(240);
      expect([0, 6]).not.toContain(new Date(`${at}T00:00:00Z`).getUTCDay());
    }
  });

  it('hand over before the day, and fit for the last time a week before it', () => {
    // 9 June 2027 is a Wednesday.
    expect(text(days.at(-1)?.to ?? WISH.event)).toBe('2027-06-09');
    const last = days.find(({ kind }) => kind === 'last-fitting');
    expect(text(last?.to ?? WISH.event) <= '2027-06-04').toBe(true);
  });

  it('pass over her days off', () => {
    const off = [{ from: day('2027-05-24'), to: day('2027-06-02') }];
    const rest = planned({ ...WISH, week: { ...WISH.week, off } });
    for (const { byDay } of rest)
      for (const at of byDay.keys()) expect(at < '2027-05-24' || at > '2027-06-02').toBe(true);
  });

  it('make room for other orders', () => {
    const taken = new Map(['2027-05-31', '2027-06-01', '2027-06-02', '2027-06-03'].map((at) => [at, 240]));
    const keys = planned({ ...WISH, taken }).flatMap(({ byDay }) => [...byDay.keys()]);
    expect(keys.filter((at) => taken.has(at))).toEqual([]);
  });
});

describe('what can not be planned', () => {
  it('an event that has passed', () => {
    expect(planDays({ ...WISH, today: day('2027-06-13') })).toEqual({
      ok: false,
      problem: { code: 'bill.days.event-past', event: '2027-06-12' },
    });
  });

  it('a week without hours', () => {
    const week = { minutes: [0, 0, 0, 0, 0, 0, 0], off: [] };
    expect(planDays({ ...WISH, week })).toMatchObject({ problem: { code: 'bill.days.no-hours' } });
  });

  it('too little time: with what it takes and what there is', () => {
    const result = planDays({ ...WISH, today: day('2027-06-02') });
    expect(result).toMatchObject({ ok: false, problem: { code: 'bill.days.too-late' } });
    if (result.ok || result.problem.code !== 'bill.days.too-late') return;
    expect(result.problem.begin < '2027-06-02').toBe(true);
    // Wednesday 2 June to Tuesday 8 June: five days of four hours.
    expect(result.problem.there).toBe(5 * 240);
  });

  it('a short time brings the last fitting nearer before it is refused', () => {
    expect(planDays({ ...WISH, today: day('2027-05-22') })).toMatchObject({ ok: true, tight: true });
    expect(planDays(WISH)).toMatchObject({ ok: true, tight: false });
  });
});

describe('two orders in one week', () => {
  const load = (title: string, minutes: number) => ({ title, byDay: new Map([['2027-06-02', minutes]]) });
  it('are told where together they take more than her hours', () => {
    expect(fullWeeks([load('A', 700), load('B', 600)], WISH.week)).toEqual([
      { monday: day('2027-05-31'), needed: 1300, there: 1200, titles: ['A', 'B'] },
    ]);
    expect(fullWeeks([load('A', 700), load('B', 500)], WISH.week)).toEqual([]);
  });
  it('a week begins on Monday', () => {
    expect(text(weekOf(day('2027-06-06')))).toBe('2027-05-31');
    expect(text(weekOf(day('2027-05-31')))).toBe('2027-05-31');
  });
});
