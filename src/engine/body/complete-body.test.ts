import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { randomBody } from '../../../tests/properties/random-body.ts';
import { say, speak } from '../words/index.ts';
import {
  type Body,
  type BodyInput,
  completeBody,
  MEASURE_IDS,
  type MeasureId,
  problemSaying,
} from './index.ts';

function bodyOf(input: BodyInput): Body {
  const completed = completeBody(input);
  if (!completed.ok) throw new Error(JSON.stringify(completed.problems));
  return completed.body;
}

const mmOf = (input: BodyInput, id: MeasureId) => bodyOf(input).values[id].mm;

function spreadOf(input: BodyInput, id: MeasureId): number {
  const value = bodyOf(input).values[id];
  return value.from === 'measured' ? 0 : value.spread;
}

describe('filling in', () => {
  it('keeps what was measured, and fills in everything else with a rule and a spread', () => {
    fc.assert(
      fc.property(randomBody, (input) => {
        const { values } = bodyOf(input);
        for (const id of MEASURE_IDS) {
          const value = values[id];
          const measured = input.measured[id];
          if (measured !== undefined) {
            expect(value).toEqual({ mm: measured, from: 'measured' });
            continue;
          }
          expect(value.from).toBe('estimated');
          if (value.from !== 'estimated') continue;
          expect(value.mm).toBeGreaterThan(0);
          expect(value.spread).toBeGreaterThan(0);
          expect(value.spread).toBeLessThan(value.mm / 3);
          expect(say(value.rule, {}, 'in').length).toBeGreaterThan(20);
        }
      }),
      { seed: 20260503, numRuns: 300 },
    );
  });

  it('every estimate grows with the height', () => {
    for (let height = 570; height <= 1900; height += 10) {
      const smaller = bodyOf({ measured: { height: height - 10 } }).values;
      const taller = bodyOf({ measured: { height } }).values;
      for (const id of MEASURE_IDS)
        expect(taller[id].mm, `${id} at ${height}`).toBeGreaterThan(smaller[id].mm);
    }
  });

  it('every estimate grows with the age', () => {
    for (let ageMonths = 7; ageMonths <= 168; ageMonths++) {
      const younger = bodyOf({ ageMonths: ageMonths - 1, measured: {} }).values;
      const older = bodyOf({ ageMonths, measured: {} }).values;
      for (const id of MEASURE_IDS)
        expect(older[id].mm, `${id} at ${ageMonths}`).toBeGreaterThan(younger[id].mm);
    }
  });

  it('is surer the more is known', () => {
    const girths: MeasureId[] = ['waistGirth', 'hipGirth', 'upperArmGirth', 'neckBaseGirth', 'backWidth'];
    for (const id of girths) {
      const byAge = spreadOf({ ageMonths: 72, measured: {} }, id);
      const byHeight = spreadOf({ ageMonths: 72, measured: { height: 1150 } }, id);
      const byChest = spreadOf({ ageMonths: 72, measured: { height: 1150, chestGirth: 570 } }, id);
      expect(byAge).toBeGreaterThan(byHeight);
      expect(byHeight).toBeGreaterThan(byChest);
    }
  });

  it('a wider chest widens what goes with it, and no length', () => {
    const height = 1150;
    const usual = bodyOf({ measured: { height, chestGirth: 570 } }).values;
    const wider = bodyOf({ measured: { height, chestGirth: 620 } }).values;
    const grown = MEASURE_IDS.filter((id) => wider[id].mm > usual[id].mm);
    expect(grown).toEqual([
      'chestGirth',
      'waistGirth',
      'hipGirth',
      'neckBaseGirth',
      'headGirth',
      'shoulderWidth',
      'backWidth',
      'frontChestWidth',
      'upperArmGirth',
      'wristGirth',
    ]);
    expect(MEASURE_IDS.filter((id) => wider[id].mm < usual[id].mm)).toEqual([]);
  });

  it('the average chest changes nothing', () => {
    const average = bodyOf({ measured: { height: 1150 } }).values;
    const same = bodyOf({ measured: { height: 1150, chestGirth: average.chestGirth.mm } }).values;
    for (const id of MEASURE_IDS) expect(same[id].mm).toBeCloseTo(average[id].mm, 6);
  });

  it('a measured waist moves the chest, and the chest the rest', () => {
    const usual = bodyOf({ measured: { height: 1100 } }).values;
    const wide = bodyOf({ measured: { height: 1100, waistGirth: 560 } }).values;
    expect(wide.chestGirth).toMatchObject({ rule: 'body.rule.by-girths' });
    expect(wide.chestGirth.mm).toBeGreaterThan(usual.chestGirth.mm + 20);
    expect(wide.chestGirth.mm).toBeLessThan(usual.chestGirth.mm + 56);
    expect(wide.hipGirth.mm).toBeGreaterThan(usual.hipGirth.mm);
  });

  it('the armhole depth follows a measured back length', () => {
    expect(mmOf({ measured: { height: 1150, backNeckToWaist: 270 } }, 'scyeDepth')).toBeCloseTo(127.5, 9);
  });

  it('finds the height by the chest when there is nothing better, and says how rough that is', () => {
    const body = bodyOf({ measured: { chestGirth: 600 } });
    expect(body.values.height).toMatchObject({ mm: 1220, rule: 'body.rule.height-by-chest' });
    expect(spreadOf({ measured: { chestGirth: 600 } }, 'height')).toBeGreaterThan(50);
    expect(body.ageMonths).toBeNull();
    expect(mmOf({ measured: { chestGirth: 1000 } }, 'height')).toBe(1580);
  });

  it('the height goes before the age', () => {
    const byHeight = bodyOf({ measured: { height: 1200 } }).values;
    expect(bodyOf({ ageMonths: 72, measured: { height: 1200 } }).values).toEqual(byHeight);
  });

  it('says where there is no data', () => {
    const baby = bodyOf({ measured: { height: 680 } }).values;
    expect(baby.armLength).toMatchObject({ rule: 'body.rule.beyond-data' });
    expect(baby.chestGirth).toMatchObject({ rule: 'body.rule.by-height-baby' });
    expect(bodyOf({ measured: { height: 1750 } }).values.chestGirth).toMatchObject({
      rule: 'body.rule.beyond-data',
    });
  });
});

describe('refusing', () => {
  it('too little to go by', () => {
    const completed = completeBody({ measured: { waistGirth: 520 } });
    expect(completed).toEqual({
      ok: false,
      problems: [{ code: 'body.too-little', level: 'stop', measure: null, values: {} }],
    });
    expect(completeBody({ ageMonths: null, measured: {} }).ok).toBe(false);
  });

  it('impossible values, with all their problems', () => {
    const completed = completeBody({ ageMonths: 72, measured: { chestGirth: 0, waistGirth: Number.NaN } });
    expect(completed.ok ? [] : completed.problems.map(({ code, measure }) => [code, measure])).toEqual([
      ['body.measure-not-positive', 'chestGirth'],
      ['body.measure-not-a-number', 'waistGirth'],
    ]);
  });

  it('goes on with warnings', () => {
    const completed = completeBody({ ageMonths: 72, sex: 'boy', measured: {} });
    expect(completed.ok && completed.warnings.map(({ code }) => code)).toEqual(['body.boy-by-girls']);
    expect(completed.ok && completed.body.sex).toBe('boy');
  });

  it('plausible children are never refused', () => {
    fc.assert(
      fc.property(randomBody, (input) => {
        const completed = completeBody(input);
        const problems = completed.ok ? [] : completed.problems;
        expect(problems.map((problem) => speak(problemSaying(problem, 'Ada'), 'cm'))).toEqual([]);
      }),
      { seed: 20260504, numRuns: 1000 },
    );
  });
});
