/**
 * Turns the survey's spreads and correlations (`data/*.csv`, sources in `data/SOURCES.md`) into what filling in reads.
 * Run `node tools/make-fill-tables.mjs` after changing a CSV; a test says when that was forgotten.
 */
import { giveTables, readRows } from './table-files.mjs';

const correlations = readRows('snyder1977_correlations_girls.csv');
const fits = readRows('snyder1977_on_stature_weight_and_chest_girls.csv');
const cells = readRows('snyder1977_weight_by_stature_girls.csv').map((row) => ({
  x: Number(row.stature_cm),
  mean: Number(row.mean),
  share: Number(row.sd) / Number(row.mean),
  n: Number(row.n),
}));
const babies = readRows('size_table_girls_derived.csv').filter((row) => Number(row.stature_cm) < 86);

/** Taken on every girl, so that every pair is known; the others hang on stature, weight and chest. */
const WITH_ALL = ['weight', 'chest_girth', 'hip_girth', 'head_girth', 'upper_arm_girth'];
const WITH_CHEST = ['natural_waist_girth', 'neck_girth', 'wrist_girth'];
const NAMES = {
  weight: 'weight',
  chest_girth: 'chestGirth',
  hip_girth: 'hipGirth',
  head_girth: 'headGirth',
  upper_arm_girth: 'upperArmGirth',
  natural_waist_girth: 'waistGirth',
  neck_girth: 'neckGirth',
  wrist_girth: 'wristGirth',
};

/** Correlations among girls of one stature, age band by age band: age and stature are taken out. */
function givenStature(band) {
  const of = (a, b) => {
    const row = correlations.find(
      (one) =>
        one.age_months_from === band &&
        ((one.measure_a === a && one.measure_b === b) || (one.measure_a === b && one.measure_b === a)),
    );
    return Number(row.corr_log_resid_given_age);
  };
  const partial = (a, b) => {
    const [as, bs] = [of(a, 'stature'), of(b, 'stature')];
    return (of(a, b) - as * bs) / Math.sqrt((1 - as ** 2) * (1 - bs ** 2));
  };
  const fitOf = (target, model) =>
    fits.find((row) => row.age_months_from === band && row.target === target && row.model === model);
  const spreads = {
    weight: Number(fitOf('weight', 'H').rmse),
    chest: Number(fitOf('chest_girth', 'H').rmse),
  };
  const between = partial('weight', 'chest_girth');
  /** How far a measure moves with weight and chest, in standard deviations of each. */
  const paths = Object.fromEntries(
    WITH_CHEST.map((target) => {
      const row = fitOf(target, 'HWC');
      const byWeight = Number(row.b_weight_per_kg) * spreads.weight;
      const byChest = Number(row.b_chest_girth_per_cm) * spreads.chest;
      const explained = byWeight ** 2 + byChest ** 2 + 2 * byWeight * byChest * between;
      const whole = Math.sqrt(explained + Number(row.rmse) ** 2);
      return [target, { byWeight: byWeight / whole, byChest: byChest / whole }];
    }),
  );
  const correlation = (a, b) => {
    if (a === b) return 1;
    if (WITH_CHEST.includes(b)) {
      const { byWeight, byChest } = paths[b];
      return byWeight * correlation('weight', a) + byChest * correlation('chest_girth', a);
    }
    return WITH_CHEST.includes(a) ? correlation(b, a) : partial(a, b);
  };
  const all = [...WITH_ALL, ...WITH_CHEST];
  return all.map((a) => all.map((b) => Math.round(correlation(a, b) * 1e4) / 1e4));
}

/** The logarithm of weight as a quadratic in stature, each cell weighing as many girls as it holds. */
function weightFit() {
  const rows = [0, 1, 2].map((i) => [
    ...[0, 1, 2].map((j) => cells.reduce((sum, { x, n }) => sum + n * (x / 100) ** (i + j), 0)),
    cells.reduce((sum, { x, n, mean }) => sum + n * (x / 100) ** i * Math.log(mean), 0),
  ]);
  for (const i of [0, 1, 2]) {
    for (const j of [0, 1, 2].filter((other) => other !== i)) {
      const times = rows[j][i] / rows[i][i];
      rows[j] = rows[j].map((value, k) => value - times * rows[i][k]);
    }
  }
  const [a, b, c] = rows.map((row, i) => row[3] / row[i]);
  return (x) => Math.exp(a + (b * x) / 100 + c * (x / 100) ** 2);
}

const fitted = weightFit();
const two = (value) => Math.round(value * 100) / 100;
const average = [
  ...babies.map((row) => [Number(row.stature_cm) * 10, Number(row.weight_kg)]),
  ...cells.map(({ x }) => [x * 10, two(fitted(x))]),
];
const spread = cells.map(({ x }, i) => {
  const near = cells.slice(Math.max(i - 1, 0), i + 2);
  const children = near.reduce((sum, { n }) => sum + n, 0);
  const share = near.reduce((sum, { n, share }) => sum + n * share, 0) / children;
  return [x * 10, Math.round(share * 1e4) / 1e4];
});
const ids = [...WITH_ALL, ...WITH_CHEST].map((name) => `'${NAMES[name]}'`);

const text = `// Made by tools/make-fill-tables.mjs from data/*.csv; change those, not this. Sources: data/SOURCES.md.
import type { Curve } from './curve.ts';

/** Weight of girls by stature (mm), kg: below 860 mm WHO, from there a smooth curve through Snyder 1977. */
export const WEIGHT_BY_STATURE: Curve = ${JSON.stringify(average)};

/** Standard deviation of a girl's weight among girls of her stature, as a share of it (Snyder 1977). */
export const WEIGHT_SPREAD_BY_STATURE: Curve = ${JSON.stringify(spread)};

/** What hangs together among girls of one stature, in the order of the correlations. */
export const BUILD_IDS = [${ids.join(', ')}] as const;

/**
 * Correlations of the logarithms among girls of one stature (Snyder 1977): first girls of 24-84 months, then of 84-168.
 * Waist, neck and wrist were never taken together: they go with the others by way of weight and chest.
 */
export const BUILD_CORRELATIONS: readonly [readonly (readonly number[])[], readonly (readonly number[])[]] =
  ${JSON.stringify([givenStature('24'), givenStature('84')])};
`;

giveTables({ 'fill-tables.ts': text });
