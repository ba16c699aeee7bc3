import { expect, it } from 'vitest';
import { type GrowthReferenceId, referenceValue, zOfCentile } from '../../src/engine/body/index.ts';

/*
 * Whole rows of the printed tables, from memory: the -3 to +3 SD columns of the WHO Child Growth Standards 2006
 * (simplified field tables, one decimal) and the percentile columns of the data files statage and wtage of the CDC 2000
 * growth charts (remembered to half a hundredth). data/*.csv carries L, M and S only, so this stands against the tables.
 */

const WHO_ROWS: readonly [GrowthReferenceId, 'girl' | 'boy', number, readonly number[]][] = [
  ['who-height', 'girl', 0, [43.6, 45.4, 47.3, 49.1, 51.0, 52.9, 54.7]],
  ['who-height', 'boy', 0, [44.2, 46.1, 48.0, 49.9, 51.8, 53.7, 55.6]],
  ['who-height', 'girl', 12, [66.3, 68.9, 71.4, 74.0, 76.6, 79.2, 81.7]],
  ['who-height', 'boy', 12, [68.6, 71.0, 73.4, 75.7, 78.1, 80.5, 82.9]],
  ['who-height', 'girl', 24, [76.0, 79.3, 82.5, 85.7, 88.9, 92.2, 95.4]],
  ['who-height', 'girl', 60, [95.2, 99.9, 104.7, 109.4, 114.2, 118.9, 123.7]],
  ['who-weight', 'girl', 0, [2.0, 2.4, 2.8, 3.2, 3.7, 4.2, 4.8]],
  ['who-weight', 'boy', 0, [2.1, 2.5, 2.9, 3.3, 3.9, 4.4, 5.0]],
  ['who-weight', 'girl', 12, [6.3, 7.0, 7.9, 8.9, 10.1, 11.5, 13.1]],
  ['who-weight', 'boy', 12, [6.9, 7.7, 8.6, 9.6, 10.8, 12.0, 13.3]],
  ['who-weight', 'girl', 24, [8.1, 9.0, 10.2, 11.5, 13.0, 14.8, 17.0]],
  ['who-weight', 'girl', 60, [12.1, 13.7, 15.8, 18.2, 21.2, 24.9, 29.5]],
];

it.each(WHO_ROWS)('%s, %s of %i months: the SD columns of the WHO', (id, sex, months, row) => {
  const of = id === 'who-height' ? 10 : 1;
  row.forEach((printed, i) => {
    const ours = referenceValue(id, sex, months, i - 3) / of;
    expect(Math.abs(ours - printed), `${i - 3} SD: ${ours}`).toBeLessThanOrEqual(0.05 + 1e-3);
  });
});

const CENTILES = [3, 5, 10, 25, 50, 75, 90, 95, 97] as const;
const CDC_ROWS: readonly [GrowthReferenceId, readonly number[]][] = [
  ['cdc-height', [80.26037, 81.08868, 82.36401, 84.49471, 86.86161, 89.22805, 91.35753, 92.63177, 93.45923]],
  ['cdc-weight', [10.44144, 10.70051, 11.1148, 11.85182, 12.74154, 13.71386, 14.66372, 15.27603, 15.68841]],
];

it.each(CDC_ROWS)('%s, boys of 24.5 months: the percentile columns of the CDC', (id, row) => {
  row.forEach((printed, i) => {
    const ours =
      referenceValue(id, 'boy', 24.5, zOfCentile(CENTILES[i] ?? 50)) / (id === 'cdc-height' ? 10 : 1);
    expect(Math.abs(ours - printed), `P${CENTILES[i]}: ${ours}`).toBeLessThan(0.005);
  });
});
