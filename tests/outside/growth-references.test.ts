import { describe, expect, it } from 'vitest';
import {
  centileOf,
  type GrowthReferenceId,
  referenceValue,
  referenceZ,
  surveyMean,
  zOfCentile,
} from '../../src/engine/body/index.ts';
import { rowsOf } from './data-rows.ts';

/*
 * Growth references against published values. Lengths in the files are cm, in the engine mm.
 */

const cm = (id: GrowthReferenceId, age: number, z: number): number => referenceValue(id, 'girl', age, z) / 10;

describe('data/check_values.csv, each cell within its tolerance (sources in the file)', () => {
  const biacromial = rowsOf('snyder1977_by_age.csv').find(
    ({ sex, age_months_from, measure }) =>
      sex === 'girl' && age_months_from === '66' && measure === 'biacromial_breadth',
  );
  const ours: Readonly<Record<string, () => number>> = {
    1: () => cm('who-height', 12, 0),
    2: () => cm('who-height', 12, -2),
    3: () => cm('who-height', 60, 0),
    4: () => cm('who-height', 60, 2),
    5: () => referenceValue('who-weight', 'girl', 12, 0),
    6: () => referenceValue('who-weight', 'girl', 60, 3),
    7: () => cm('who-head', 12, 0),
    8: () => cm('who-head', 12, -2),
    9: () => cm('who-height', 24 - 1e-9, 0) - cm('who-height', 24, 0),
    10: () => cm('who-height', 120, 0),
    11: () => cm('cdc-height', 60.5, zOfCentile(5)),
    12: () => cm('cdc-height', 60.5, zOfCentile(95)),
    13: () => surveyMean('girl', 'chestGirth', 72) / 10,
    14: () => surveyMean('girl', 'hipGirth', 72) / 10,
    15: () => surveyMean('girl', 'neckGirth', 72) / 10,
    // The engine draws nothing from it: the number that the data carries.
    16: () => Number(biacromial?.mean),
    17: () => cm('dutch-waist', 0, 0),
    18: () => cm('us-waist', 72, 0),
  };
  const checks = rowsOf('check_values.csv');

  it('all of them', () => {
    expect(Object.keys(ours)).toEqual(checks.map(({ id }) => id));
  });

  it.each(checks)('$id: $check', ({ id = '', expected, tolerance }) => {
    const value = ours[id]?.() ?? Number.NaN;
    // Half a unit of the printed digit, and what a decimal fraction loses in a computer.
    expect(Math.abs(value - Number(expected))).toBeLessThanOrEqual(Number(tolerance) + 1e-9);
  });
});

/*
 * Every L, M and S of the files, by the definition of the method (T. J. Cole, European Journal of Clinical Nutrition
 * 1990;44:45-60): centile = M (1 + L S z)^(1/L), or M exp(S z) where L is 0, with z from a table of the normal curve.
 * Covered: that each table reaches the engine whole, under the right measure, sex, age and unit, and is read by the
 * published formula. Not covered: whether a cell of the file is as WHO, CDC or the study printed it, but for the cells
 * of check_values.csv above; the printed percentile columns are not carried here, see growth-printed.test.ts.
 */
describe('centiles by the definition, at every age of every table', () => {
  const WHO: Readonly<Record<string, GrowthReferenceId>> = {
    length_for_age: 'who-height',
    height_for_age: 'who-height',
    weight_for_age: 'who-weight',
    bmi_for_age: 'who-bmi',
    head_girth_for_age: 'who-head',
    arm_girth_for_age: 'who-arm',
  };
  const CDC: typeof WHO = { height_for_age: 'cdc-height', weight_for_age: 'cdc-weight' };
  const GIRTHS: typeof WHO = {
    'NL4_1997 waist_girth': 'dutch-waist',
    'NL4_1997 hip_girth': 'dutch-hip',
    'LIFE_CHILD_2019 waist_girth': 'german-waist',
    'LIFE_CHILD_2019 hip_girth': 'german-hip',
    'KIGGS_2003_06 head_girth': 'german-head',
    'NHANES_III_1988_94 waist_girth': 'us-waist',
    'MEXICO_2021 neck_girth': 'mexican-neck',
  };
  const IN_KG: readonly GrowthReferenceId[] = ['who-weight', 'cdc-weight', 'who-bmi'];
  /** Centiles that WHO and CDC draw, with z of the standard normal distribution. */
  const LINES = [
    [3, -1.880794],
    [15, -1.036433],
    [50, 0],
    [85, 1.036433],
    [97, 1.880794],
  ] as const;
  const known = (
    file: string,
    idOf: (row: Readonly<Record<string, string>>) => GrowthReferenceId | undefined,
  ) =>
    rowsOf(file).flatMap((row) => {
      const id = idOf(row);
      return id === undefined ? [] : [{ row, id }];
    });
  const cells = [
    ...known('who_lms_monthly.csv', ({ indicator = '' }) => WHO[indicator]),
    ...known('cdc2000_lms.csv', ({ indicator = '' }) => CDC[indicator]),
    ...known('girth_references_lms.csv', ({ source, measure }) => GIRTHS[`${source} ${measure}`]),
  ].flatMap(({ row, id }) => {
    const [L, M, S] = [Number(row.L), Number(row.M ?? row.M_cm), Number(row.S)];
    const month = Number(row.age_months);
    // Lying children are asked just below the age from which they stand.
    const age = row.indicator === 'length_for_age' ? Math.min(month, 24 - 1e-9) : month;
    const unit = IN_KG.includes(id) ? 1 : 10;
    const sex: 'girl' | 'boy' = row.sex === 'boy' ? 'boy' : 'girl';
    return LINES.map(([centile, z]) => {
      const printed = L === 0 ? M * Math.exp(S * z) : M * (1 + L * S * z) ** (1 / L);
      return { id, sex, age, centile, value: unit * printed, unit };
    });
  });

  it('gives the value of every centile', () => {
    expect(new Set(cells.map(({ id }) => id)).size).toBe(14);
    expect(cells.length).toBe(10_730);
    const wrong = cells.filter(
      ({ id, sex, age, centile, value, unit }) =>
        Math.abs(referenceValue(id, sex, age, zOfCentile(centile)) - value) > 0.0005 * unit,
    );
    expect(wrong).toEqual([]);
  });

  it('and finds the centile of each value again', () => {
    const wrong = cells.filter(
      ({ id, sex, age, centile, value }) =>
        Math.abs(centileOf(referenceZ(id, sex, age, value)) - centile) > 0.01,
    );
    expect(wrong).toEqual([]);
  });
});

describe('WHO growth per month (data/growth_per_month_who.csv: differences of WHO medians)', () => {
  const IDS: Readonly<Record<string, GrowthReferenceId>> = {
    stature: 'who-height',
    weight: 'who-weight',
    head_girth: 'who-head',
  };
  const cells = rowsOf('growth_per_month_who.csv').filter(({ measure = '' }) => measure in IDS);

  it.each(cells)('$sex $measure $age_months_from-$age_months_to', (cell) => {
    const { sex, measure = '', unit, age_months_from, age_months_to } = cell;
    const id = IDS[measure] ?? 'who-height';
    const to = Number(age_months_to);
    const median = (age: number): number =>
      referenceValue(id, sex as 'girl' | 'boy', age, 0) / (unit === 'cm' ? 10 : 1);
    const change = median(to === 24 ? 24 - 1e-9 : to) - median(Number(age_months_from));
    expect(change / (to - Number(age_months_from))).toBeCloseTo(Number(cell.median_change_per_month), 2);
  });
});
