import { expect, it } from 'vitest';
import { type GrowthInput, growBody, growOneSizeMore } from './index.ts';

const GIRL: GrowthInput = {
  sex: 'girl',
  born: { year: 2021, month: 1, day: 12 },
  measured: { day: { year: 2027, month: 1, day: 12 }, measures: { height: 1150, chestGirth: 570 } },
  event: { year: 2027, month: 6, day: 12 },
};

it('one size more is the child when it has grown to the height of the next size', () => {
  const [day, more] = [growBody(GIRL), growOneSizeMore(GIRL)];
  if (!day.ok || !more.ok) throw new Error('Not grown');
  // Sizes run in steps of 6 cm (EN 13402-3, from memory): about 118 cm on the day is size 116 (113 to 119), then 122.
  expect(day.grown.values.height?.value).toBeGreaterThan(1150);
  expect(day.grown.values.height?.value).toBeLessThan(1190);
  expect(more.grown.values.height?.value).toBeGreaterThanOrEqual(1220);
  expect(more.grown.values.height?.value).toBeLessThan(1225);
  expect(more.grown.values.chestGirth?.value).toBeGreaterThan(day.grown.values.chestGirth?.value ?? 0);
  expect(more.warnings[0]).toMatchObject({ code: 'growth.problem.size-more', values: { size: 122 } });
});

it('goes to the due day, with a word, where there is no height or the references end first', () => {
  const short = { ...GIRL, measured: { ...GIRL.measured, measures: { chestGirth: 570 } } };
  const none = growOneSizeMore(short);
  expect(none.ok && none.warnings.map(({ code }) => code)).toEqual(['growth.problem.size-more-no-height']);
  const grown = { ...GIRL, born: { year: 2013, month: 2, day: 12 } };
  const tall = { ...grown, measured: { ...grown.measured, measures: { height: 1580, chestGirth: 800 } } };
  const late = growOneSizeMore(tall);
  expect(late.ok && late.warnings.map(({ code }) => code)).toContain('growth.problem.size-more-too-far');
  const plain = growBody(tall);
  expect(late.ok && plain.ok && late.grown.values).toEqual(plain.ok && plain.grown.values);
});
