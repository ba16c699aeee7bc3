import { describe, expect, it } from 'vitest';
import { type Body, type BodyInput, completeBody, type MeasureId } from '../../src/engine/body/index.ts';
import { centimetres, inches } from '../../src/engine/units/index.ts';
import { rowsOf } from './data-rows.ts';

/*
 * What is filled in, against published measurements of children. Estimates carry a standard deviation (`spread`);
 * a published average is asked to lie within a stated share of it.
 */

function bodyOf(input: BodyInput): Body {
  const completed = completeBody(input);
  if (!completed.ok) throw new Error(JSON.stringify(completed.problems));
  return completed.body;
}

function estimateOf(input: BodyInput, id: MeasureId): { mm: number; spread: number } {
  const value = bodyOf(input).values[id];
  if (value.from === 'measured') throw new Error(`${id} was measured`);
  return value;
}

const ofAge = (ageMonths: number): BodyInput => ({ ageMonths, measured: {} });
const ofHeight = (cm: number): BodyInput => ({ measured: { height: centimetres(cm) } });

describe('data/check_values.csv', () => {
  const rows = new Map(
    rowsOf('check_values.csv').map(({ id, check = '', expected }) => [
      Number(id),
      { what: check, mm: centimetres(Number(expected)) },
    ]),
  );
  const expected = (id: number, what: string): number => {
    const row = rows.get(id);
    if (row === undefined || !row.what.startsWith(what)) throw new Error(`Row ${id} is not "${what}"`);
    return row.mm;
  };

  it('heights by age: WHO medians of girls, within 5 mm of interpolation', () => {
    expect(Math.abs(estimateOf(ofAge(12), 'height').mm - expected(1, 'WHO girl length 12'))).toBeLessThan(5);
    expect(Math.abs(estimateOf(ofAge(60), 'height').mm - expected(3, 'WHO girl height 60'))).toBeLessThan(5);
    expect(
      Math.abs(estimateOf(ofAge(120), 'height').mm - expected(10, 'WHO 2007 girl height 120')),
    ).toBeLessThan(5);
  });

  it('spread of height: the 5th to 95th percentile of CDC 2000 girls of 60.5 months, within a tenth', () => {
    const published = expected(12, 'CDC 2000 girl stature') - expected(11, 'CDC 2000 girl stature');
    const ours = 2 * 1.645 * estimateOf(ofAge(60.5), 'height').spread;
    expect(ours / published).toBeGreaterThan(0.9);
    expect(ours / published).toBeLessThan(1.1);
  });

  it('head girth: WHO median of girls of 12 months, within 2 mm', () => {
    const mm = expected(7, 'WHO girl head girth 12');
    expect(Math.abs(estimateOf(ofAge(12), 'headGirth').mm - mm)).toBeLessThan(2);
  });

  it('chest and hip: Snyder 1977, girls of 66-78 months, mean stature 114.2 cm, within a quarter of the spread', () => {
    const girl = ofHeight(114.2);
    const chest = estimateOf(girl, 'chestGirth');
    const hip = estimateOf(girl, 'hipGirth');
    expect(Math.abs(chest.mm - expected(13, 'Snyder girls 66-78 months chest'))).toBeLessThan(
      chest.spread / 4,
    );
    expect(Math.abs(hip.mm - expected(14, 'Snyder girls 66-78 months hip'))).toBeLessThan(hip.spread / 4);
  });

  it('neck base: larger than the middle of the neck (Snyder 1977), by no more than an eighth', () => {
    const ratio =
      estimateOf(ofHeight(114.2), 'neckBaseGirth').mm / expected(15, 'Snyder girls 66-78 months neck');
    expect(ratio).toBeGreaterThan(1);
    expect(ratio).toBeLessThan(1.125);
  });

  it('waist: median of US girls of 6 years, NHANES III 1988-94, within one spread', () => {
    const waist = estimateOf(ofAge(78), 'waistGirth');
    expect(Math.abs(waist.mm - expected(18, 'US NHANES III girls waist'))).toBeLessThan(waist.spread);
  });
});

describe('Snyder 1977, girls by stature (data/snyder1977_by_stature_girls.csv)', () => {
  const NAMES: Readonly<Record<string, MeasureId>> = {
    chest_girth: 'chestGirth',
    natural_waist_girth: 'waistGirth',
    hip_girth: 'hipGirth',
    head_girth: 'headGirth',
    upper_arm_girth: 'upperArmGirth',
    wrist_girth: 'wristGirth',
    arm_length_acromion_wrist: 'armLength',
    knee_height_tibiale: 'kneeHeight',
  };
  const cells = rowsOf('snyder1977_by_stature_girls.csv').flatMap((row) => {
    const id = NAMES[row.measure ?? ''];
    if (id === undefined) return [];
    const [stature, n] = [Number(row.stature_cm), Number(row.n)];
    return [{ id, stature, n, mean: Number(row.mean) * 10, sd: Number(row.sd) * 10 }];
  });

  it('every cell mean lies within the fit and three standard errors', () => {
    expect(cells.length).toBeGreaterThan(100);
    for (const { id, stature, n, mean, sd } of cells) {
      const allowed = 0.2 * sd + (3 * sd) / Math.sqrt(n);
      expect(Math.abs(estimateOf(ofHeight(stature), id).mm - mean), `${id} at ${stature}`).toBeLessThan(
        allowed,
      );
    }
  });

  it('every spread is within a factor of 1.5 of the standard deviation of a cell of 20 children or more', () => {
    for (const { id, stature, n, sd } of cells) {
      if (n < 20) continue;
      const ratio = estimateOf(ofHeight(stature), id).spread / sd;
      expect(ratio, `${id} at ${stature}`).toBeGreaterThan(1 / 1.5);
      expect(ratio, `${id} at ${stature}`).toBeLessThan(1.5);
    }
  });
});

describe('trade tables, as sanity bands', () => {
  // W. Aldrich, Metric Pattern Cutting for Children's Wear and Babywear, 4th ed. 2009, p. 12 (free extract). Sizes
  // to be sold run wider than the children measured in 1975-77: within one and a half spreads.
  it.each([
    [104, 56, 53],
    [110, 58, 54],
    [116, 60, 55],
  ])('height %d: chest %d, waist %d cm', (height, chestCm, waistCm) => {
    const chest = estimateOf(ofHeight(height), 'chestGirth');
    const waist = estimateOf(ofHeight(height), 'waistGirth');
    expect(Math.abs(chest.mm - centimetres(chestCm))).toBeLessThan(1.5 * chest.spread);
    expect(Math.abs(waist.mm - centimetres(waistCm))).toBeLessThan(1.5 * waist.spread);
  });

  // Craft Yarn Council child sizes as enlarged in a designer's table (second hand), inches.
  const CRAFT_YARN = [
    { years: 2, armholeDepth: 4.25, upperArm: 7 },
    { years: 4, armholeDepth: 4.75, upperArm: 7.5 },
    { years: 6, armholeDepth: 5, upperArm: 8 },
    { years: 8, armholeDepth: 5.5, upperArm: 8.5 },
    { years: 10, armholeDepth: 6, upperArm: 8.75 },
    { years: 12, armholeDepth: 6.5, upperArm: 9 },
  ];
  it.each(CRAFT_YARN)(
    'age $years: armhole depth $armholeDepth in, within 1/2 in',
    ({ years, armholeDepth }) => {
      const ours = estimateOf(ofAge(years * 12), 'scyeDepth').mm;
      expect(Math.abs(ours - inches(armholeDepth))).toBeLessThanOrEqual(inches(0.5));
    },
  );

  // The upper arms of that table are NOT met within 1/2 in: they lie above the measured girls of Snyder 1977 and
  // WHO at every age, by up to 1 1/4 in, as sizes for loose knitting may.
  it.each(CRAFT_YARN)(
    'age $years: upper arm under $upperArm in, by less than 1 1/4 in',
    ({ years, upperArm }) => {
      const under = inches(upperArm) - estimateOf(ofAge(years * 12), 'upperArmGirth').mm;
      expect(under).toBeGreaterThan(0);
      expect(under).toBeLessThan(inches(1.25));
    },
  );

  // Teaching blog on children's bodices, Jan 2017: girth 60, neck 28, back length 27, shoulder 9, front 23, back 25.
  it('a published draft at chest 60 cm: the rules give its other measures within one spread', () => {
    const girl: BodyInput = { measured: { chestGirth: 600 } };
    const published: [MeasureId, number][] = [
      ['neckBaseGirth', 280],
      ['backNeckToWaist', 270],
      ['shoulderLength', 90],
      ['frontChestWidth', 230],
      ['backWidth', 250],
    ];
    for (const [id, mm] of published) {
      const ours = estimateOf(girl, id);
      expect(Math.abs(ours.mm - mm), id).toBeLessThan(ours.spread);
    }
  });

  // CDC-type head girth table for girls, middle of the range (a health web page).
  it.each([
    [12, 45.6],
    [18, 47.1],
    [24, 48.1],
    [36, 49.3],
  ])('head of a girl of %d months: %d cm, within one spread', (age, cm) => {
    const head = estimateOf(ofAge(age), 'headGirth');
    expect(Math.abs(head.mm - centimetres(cm))).toBeLessThan(head.spread);
  });
});
