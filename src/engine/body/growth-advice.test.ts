import { describe, expect, it } from 'vitest';
import { averageMonthsBetween, daysBetween } from './calendar.ts';
import { type DressRoom, type GrowthInput, growBody, growthAdvice, growthBand } from './index.ts';

const GIRL: GrowthInput = {
  sex: 'girl',
  born: { year: 2021, month: 1, day: 12 },
  measured: {
    day: { year: 2027, month: 1, day: 12 },
    measures: { height: 1150, chestGirth: 575, waistGirth: 525 },
  },
  event: { year: 2027, month: 10, day: 12 },
};
const ROOM: DressRoom = { chestEase: 60, leastEase: 40, skirtLength: 600, isGrown: true };

function adviceOf(input: GrowthInput, room: DressRoom) {
  const advice = growthAdvice(input, room);
  if (advice === null) throw new Error('No advice');
  return advice;
}

describe('advice', () => {
  it('the hem takes what the skirt may lack, the side seams a quarter each of what the chest may', () => {
    const result = growBody(GIRL);
    if (!result.ok) throw new Error('Not grown');
    const { grown } = result;
    const advice = adviceOf(GIRL, ROOM);
    const { height } = grown.values;
    expect(advice.hem).toBeCloseTo(((growthBand(grown, 'height') ?? 0) * 600) / (height?.value ?? 1), 9);
    expect(advice.hem).toBeGreaterThan(3);
    expect(advice.hem).toBeLessThan(20);
    expect(advice.letOut.side * 4).toBeCloseTo(growthBand(grown, 'chestGirth') ?? 0, 9);
    const asMeasured = adviceOf(GIRL, { ...ROOM, isGrown: false });
    expect(asMeasured.hem).toBeCloseTo(
      advice.hem + (((height?.value ?? 0) - 1150) * 600) / (height?.value ?? 1),
      9,
    );
  });

  it('says from which day a measuring is sure enough: on it the band is under the ease, a week before it is not', () => {
    const { measureAgain } = adviceOf(GIRL, { ...ROOM, chestEase: 54 });
    expect(measureAgain.when).toBe('on-day');
    const bandFrom = (daysLater: number): number => {
      const days = daysBetween(GIRL.measured.day, measureAgain.day) + daysLater;
      const date = new Date(Date.UTC(2027, 0, 12 + days));
      const day = { year: date.getUTCFullYear(), month: date.getUTCMonth() + 1, day: date.getUTCDate() };
      const then = growBody({ ...GIRL, event: day });
      if (!then.ok) throw new Error('Not grown');
      const measures = Object.fromEntries(
        Object.entries(then.grown.values).map(([id, { value }]) => [id, value]),
      );
      const again = growBody({ ...GIRL, measured: { day, measures } });
      return again.ok ? (growthBand(again.grown, 'chestGirth') ?? 0) : 0;
    };
    expect(bandFrom(0)).toBeLessThanOrEqual(14);
    expect(bandFrom(-7)).toBeGreaterThan(14);
  });

  it('a roomy dress needs no second measuring, a tight one a last fitting', () => {
    expect(adviceOf(GIRL, { ...ROOM, chestEase: 120 }).measureAgain.when).toBe('close-enough');
    const tight = adviceOf(GIRL, { ...ROOM, chestEase: 42 }).measureAgain;
    expect(tight.when).toBe('last-fitting');
    expect(daysBetween(tight.day, GIRL.event)).toBe(14);
  });

  it('one size more is the next height, reached about a year later, and wider', () => {
    const { oneSizeMore } = adviceOf(GIRL, ROOM);
    // She will be 1190 mm tall: 116 to 122 cm, nearest 122.
    expect(oneSizeMore?.height).toBe(1220 + 60);
    expect(oneSizeMore?.wider.chestGirth).toBeGreaterThan(0);
    const months = oneSizeMore?.reached == null ? 0 : averageMonthsBetween(GIRL.event, oneSizeMore.reached);
    expect(months).toBeGreaterThan(2);
    expect(months).toBeLessThan(20);
  });

  it('nothing to advise on impossible days', () => {
    expect(growthAdvice({ ...GIRL, born: { year: 2028, month: 1, day: 1 } }, ROOM)).toBeNull();
  });
});
