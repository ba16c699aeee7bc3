import { expect, it } from 'vitest';
import { falseAlarms, plantBlunders } from './blunders.ts';

/* A short run of bench/body.bench.ts: 20 kinds of blunder, girls drawn from the published distribution. */

it('nine of ten planted blunders are caught', () => {
  const kinds = plantBlunders(81, 40);
  expect(kinds.length).toBe(20);
  const caught = kinds.reduce((sum, one) => sum + one.caught, 0);
  const count = kinds.reduce((sum, one) => sum + one.count, 0);
  expect(caught / count).toBeGreaterThanOrEqual(0.9);
});

it('fewer than three girls of a hundred without a blunder are asked about, also where weights scatter as today', () => {
  expect(falseAlarms(82, 400) / 400).toBeLessThan(0.03);
  expect(falseAlarms(83, 400, 2) / 400).toBeLessThan(0.03);
});
