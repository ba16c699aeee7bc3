import { describe, expect, it } from 'vitest';
import { speak } from '../words/index.ts';
import {
  type CalendarDay,
  dayAfter,
  type GrownBody,
  type GrowthInput,
  growBody,
  growthBand,
  growthProblemSaying,
  type MeasureId,
  referenceValue,
} from './index.ts';

const day = (text: string): CalendarDay => {
  const [year = 0, month = 0, date = 0] = text.split('-').map(Number);
  return { year, month, day: date };
};

/** A girl of six years, five months before the event. */
const SIX: GrowthInput = {
  sex: 'girl',
  born: day('2021-01-12'),
  measured: {
    day: day('2027-01-12'),
    measures: {
      height: 1150,
      chestGirth: 575,
      waistGirth: 525,
      hipGirth: 600,
      headGirth: 510,
      backNeckToWaist: 265,
      wristGirth: 130,
    },
    weight: 20.5,
  },
  event: day('2027-06-12'),
};

function grownOf(input: GrowthInput): GrownBody {
  const result = growBody(input);
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.grown;
}

function codesOf(input: GrowthInput): readonly string[] {
  const result = growBody(input);
  return (result.ok ? result.warnings : result.problems).map(({ code }) => code.slice(15));
}

const ofAge = (months: number, measures: GrowthInput['measured']['measures'], ahead = 6): GrowthInput => {
  const measured = dayAfter(SIX.born, Math.round(months * 30.4375));
  return {
    ...SIX,
    measured: { day: measured, measures },
    event: dayAfter(measured, Math.round(ahead * 30.4375)),
  };
};

describe('growing to the day', () => {
  it('adds about half a centimetre a month to a girl of six (shops ask for that)', () => {
    const { height } = grownOf(SIX).values;
    expect((height?.value ?? 0) - 1150).toBeGreaterThan(20);
    expect((height?.value ?? 0) - 1150).toBeLessThan(30);
  });

  it('the chest goes with the height: 2 cm for 6 cm (size steps of a published table, 104 to 116 cm)', () => {
    const { height, chestGirth } = grownOf(SIX).values;
    const perHeight = ((chestGirth?.value ?? 0) - 575) / ((height?.value ?? 0) - 1150);
    expect(perHeight).toBeGreaterThan(1 / 4);
    expect(perHeight).toBeLessThan(1 / 2);
  });

  it('says how each measure was grown, and keeps what was measured', () => {
    const { values } = grownOf(SIX);
    const ways = Object.fromEntries(
      Object.entries(values).map(([id, { from }]) => [
        id,
        from.kind === 'centile' ? from.reference : from.kind,
      ]),
    );
    expect(ways).toEqual({
      height: 'who-height',
      chestGirth: 'with-height',
      waistGirth: 'german-waist',
      hipGirth: 'german-hip',
      headGirth: 'german-head',
      backNeckToWaist: 'with-height',
      wristGirth: 'with-height',
    });
    expect(values.chestGirth?.measured).toBe(575);
  });

  it('a measure that was not taken is not made up', () => {
    expect(Object.keys(grownOf(ofAge(72, { chestGirth: 570 })).values)).toEqual(['chestGirth']);
  });

  it('goes by American charts when asked to', () => {
    const from = grownOf({ ...SIX, charts: 'us' }).values;
    expect(from.height?.from).toMatchObject({ reference: 'cdc-height' });
    expect(from.waistGirth?.from).toMatchObject({ reference: 'us-waist' });
  });

  it('weight goes to the American chart where the WHO ends at ten years', () => {
    const near = {
      ...ofAge(117, { height: 1370 }),
      measured: { ...ofAge(117, { height: 1370 }).measured, weight: 31 },
    };
    expect(grownOf(near).weight?.from).toMatchObject({ reference: 'cdc-weight' });
  });

  it('the further the day, the wider the band, and never narrower than a tape is sure', () => {
    let last = 0;
    for (let months = 0.5; months <= 24; months += 0.5) {
      const band =
        growthBand(grownOf(ofAge(60, { height: 1090, chestGirth: 560 }, months)), 'chestGirth') ?? 0;
      // The least that a scale misses by weighs less on a heavier child: a tenth of a mm back is nothing.
      expect(band).toBeGreaterThan(last - 0.1);
      last = band;
    }
    expect(
      growthBand(grownOf(ofAge(60, { height: 1090, chestGirth: 560 }, 0.5)), 'chestGirth'),
    ).toBeGreaterThan(8);
  });

  it('a tall baby goes back towards the middle, a tall girl of four keeps her place', () => {
    const tall = (months: number): number => referenceValue('who-height', 'girl', months, 2);
    const baby = grownOf(ofAge(9, { height: tall(9) })).values.height?.from;
    const girl = grownOf(ofAge(48, { height: tall(48) })).values.height?.from;
    // Correlation of 9 and 15 months in the Berkeley girls: 0.844.
    expect(baby?.kind === 'centile' ? baby.zEvent / baby.zMeasured : 0).toBeCloseTo(0.844, 2);
    expect(girl?.kind === 'centile' ? girl.zEvent / girl.zMeasured : 0).toBeCloseTo(1, 9);
  });

  it('no child shrinks, but one that stands up at two is measured 7 mm less', () => {
    for (let months = 6; months <= 160; months += 2) {
      const height = referenceValue('who-height', 'girl', months, 2.5);
      const { values } = grownOf(ofAge(months, { height }, 0.25));
      const least = months < 24 && months + 0.25 >= 24 ? height - 7 : height;
      expect(values.height?.value).toBeGreaterThanOrEqual(least);
    }
    const twoSoon = ofAge(23.9, { height: 860, chestGirth: 480 }, 0.2);
    expect(codesOf(twoSoon)).toContain('stands-up');
    expect(grownOf(twoSoon).values.height?.value).toBeGreaterThan(853);
    expect(grownOf(twoSoon).values.height?.value).toBeLessThan(858);
    expect(grownOf(twoSoon).values.chestGirth?.value).toBeGreaterThanOrEqual(480);
  });

  it('boys have references of their own', () => {
    const girl = grownOf(ofAge(130, { height: 1430 })).values.height?.value;
    const boy = grownOf({ ...ofAge(130, { height: 1430 }), sex: 'boy' }).values.height?.value;
    expect(Math.abs((girl ?? 0) - (boy ?? 0))).toBeGreaterThan(1);
  });

  it('a premature baby grows as one of its corrected age, up to two years', () => {
    const early = { ...ofAge(9, { height: 680 }), weeksEarly: 8 };
    const same = ofAge(9 - (8 * 7) / 30.4375, { height: 680 });
    expect(codesOf(early)).toContain('corrected');
    expect(grownOf(early).values.height?.value).toBeCloseTo(grownOf(same).values.height?.value ?? 0, 0);
    const older = ofAge(30, { height: 900 });
    expect(grownOf({ ...older, weeksEarly: 8 })).toEqual(grownOf(older));
    expect(codesOf({ ...older, weeksEarly: 30 })).toEqual(['weeks-early']);
  });
});

describe('bad input gets a clear sentence and the nearest sound thing', () => {
  const today = day('2027-01-20');
  const withHeight = (height: number): GrowthInput => ({
    ...SIX,
    measured: { day: SIX.measured.day, measures: { height } },
  });
  const withWeight = (weight: number): GrowthInput => ({ ...SIX, measured: { ...SIX.measured, weight } });

  it.each<[string, GrowthInput, string[]]>([
    ['all is well', { ...SIX, today }, []],
    ['born tomorrow', { ...SIX, born: day('2027-01-21'), today }, ['born-in-future']],
    ['born after the measuring', { ...SIX, born: day('2027-01-13') }, ['born-after-measured']],
    ['measured tomorrow', { ...SIX, today: day('2027-01-11') }, ['measured-in-future']],
    ['event before today', { ...SIX, event: day('2027-01-19'), today }, ['event-passed']],
    ['event before the measuring', { ...SIX, event: day('2026-06-12'), today }, ['event-before-measured']],
    ['3 m tall', withHeight(3000), ['height-impossible']],
    ['3 m tall, written in cm', { ...withHeight(3000), units: 'cm' }, ['height-impossible']],
    ['inches written as cm', { ...withHeight(455), units: 'cm' }, ['height-other-unit']],
    ['cm written as inches', { ...withHeight(115 * 25.4), units: 'in' }, ['height-other-unit']],
    ['tall for six', withHeight(1340), ['unlikely-height']],
    ['pounds typed as kilos', withWeight(45), ['weight-in-pounds']],
    ['kilos typed as pounds', withWeight(20 * 0.4536), ['weight-in-kilos']],
    ['no weight at all', withWeight(-1), ['weight-impossible']],
    ['far ahead', { ...SIX, event: day('2029-06-12') }, ['far-ahead']],
    ['grown past the tables', ofAge(166, { height: 1600 }), ['ends-before-event']],
    ['older than the tables', ofAge(180, { height: 1650 }), ['too-old']],
    ['nothing measured', { ...SIX, measured: { day: SIX.measured.day, measures: {} } }, ['nothing-measured']],
  ])('%s', (_, input, codes) => {
    expect(codesOf(input)).toEqual(codes);
    const result = growBody(input);
    for (const problem of result.ok ? result.warnings : result.problems) {
      const sentence = speak(growthProblemSaying(problem, 'Ada'), 'cm');
      expect(sentence).toMatch(/^Ada: .{30,}\.$/);
      expect(sentence).not.toMatch(/NaN|undefined|Infinity/);
    }
    if (!result.ok) return;
    for (const [id, { value, measured }] of Object.entries(result.grown.values)) {
      expect(value, id as MeasureId).toBeGreaterThanOrEqual(measured);
    }
  });

  it('what comes before the measuring or beyond the tables is taken as measured', () => {
    expect(grownOf({ ...SIX, event: day('2026-06-12') }).values.height).toMatchObject({
      value: 1150,
      spread: 0,
    });
    expect(grownOf(ofAge(180, { height: 1650 })).values.height?.from).toEqual({ kind: 'held' });
    expect(grownOf(withWeight(45)).weight).toBeNull();
  });

  it('any days, ages and measures give a result and no number that is none', () => {
    for (const sex of ['girl', 'boy'] as const) {
      for (let months = 0; months <= 175; months += 3.7) {
        for (const ahead of [0, 0.1, 1, 5, 12, 30]) {
          const height = referenceValue('who-height', sex, Math.min(months, 168), -1);
          const input = { ...ofAge(months, { ...SIX.measured.measures, height }, ahead), sex };
          const { values } = grownOf(input);
          for (const [id, { value, spread }] of Object.entries(values)) {
            expect(
              value > 0 && Number.isFinite(value) && spread >= 0 && spread < value,
              `${id} at ${months}`,
            ).toBe(true);
          }
        }
      }
    }
  });
});
