import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import {
  centileOf,
  type GrowthReferenceId,
  referenceValue,
  referenceZ,
  surveyMean,
  zOfCentile,
} from '../../src/engine/body/index.ts';

/*
 * Growth references against published values. Lengths in the files are cm, in the engine mm.
 */

function rowsOf(file: string): readonly Readonly<Record<string, string>>[] {
  const [head = '', ...lines] = readFileSync(`data/${file}`, 'utf8').trim().split('\n');
  const columns = head.split(',');
  return lines.map((line) => {
    const cells = line.split(/,(?=(?:[^"]*"[^"]*")*[^"]*$)/);
    return Object.fromEntries(columns.map((column, i) => [column, cells[i] ?? '']));
  });
}

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
 * Centile lines of WHO 2006, WHO 2007 and CDC 2000 as an open chart component carries them (the chart library of the
 * Royal College of Paediatrics and Child Health, npm, 7.5.2): made from WHO's and CDC's tables by others than those
 * from whom our L, M and S come. Printed there with four decimals.
 */
describe('centile lines of an independent copy (data/growth_centile_lines.csv)', () => {
  const REFERENCE: Readonly<Record<string, GrowthReferenceId>> = {
    'WHO length': 'who-height',
    'WHO height': 'who-height',
    'WHO weight': 'who-weight',
    'WHO bmi': 'who-bmi',
    'WHO head_girth': 'who-head',
    'CDC height': 'cdc-height',
    'CDC weight': 'cdc-weight',
  };
  const cells = rowsOf('growth_centile_lines.csv').flatMap((row) => {
    const { source = '', sex, indicator = '', age_months, ...columns } = row;
    const id = REFERENCE[`${source.slice(0, 3)} ${indicator}`];
    if (id === undefined) throw new Error(`No reference for ${source} ${indicator}`);
    // Lying children are asked just below the age from which they stand.
    const age = indicator === 'length' ? Math.min(Number(age_months), 24 - 1e-9) : Number(age_months);
    const inMm = indicator === 'length' || indicator === 'height' || indicator === 'head_girth';
    return Object.entries(columns).flatMap(([name, text]) =>
      text === ''
        ? []
        : [{ id, sex: sex as 'girl' | 'boy', age, centile: Number(name.slice(1)), text, inMm }],
    );
  });

  it('reproduces every one of them', () => {
    expect(cells.length).toBe(10304);
    const wrong = cells.filter(({ id, sex, age, centile, text, inMm }) => {
      const value = referenceValue(id, sex, age, zOfCentile(centile)) / (inMm ? 10 : 1);
      // WHO's head girths differ there by up to 0.06 mm (that copy goes by days), CDC's by rounded parameters.
      const allowed = id === 'who-head' ? 0.006 : id.startsWith('cdc') ? 0.0011 : 0.0006;
      return Math.abs(value - Number(text)) > allowed;
    });
    expect(wrong).toEqual([]);
  });

  it('and finds the centile of each value again', () => {
    for (const { id, sex, age, centile, text, inMm } of cells) {
      const found = centileOf(referenceZ(id, sex, age, Number(text) * (inMm ? 10 : 1)));
      expect(Math.abs(found - centile), `${id} ${sex} ${age}`).toBeLessThan(0.15);
    }
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
