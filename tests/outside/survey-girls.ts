import type { MeasureId } from '../../src/engine/body/index.ts';
import { rowsOf } from './data-rows.ts';

/*
 * Girls drawn from the published distribution, apart from the engine's own reckoning: an age from 24 to 84 months, the
 * ten measures that were taken on every girl by the survey's means by age, standard deviations and correlations of
 * logarithms at one age (data/snyder1977_by_age.csv, snyder1977_correlations_girls.csv); neck, wrist, waist, arm, knee
 * and navel by its least squares on stature (and weight and chest) with their errors; the rest, which no survey
 * measured, by the rules of the trade that the engine goes by too, with their spreads. Chances: a fixed generator.
 */

/** mulberry32: uniform numbers from 0 to 1, and normal ones by Box and Muller. */
export function chanceFrom(seed: number) {
  let state = seed >>> 0;
  const uniform = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), state | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
  const normal = (): number => Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform());
  return { uniform, normal, below: (n: number): number => Math.floor(uniform() * n) };
}
export type Chance = ReturnType<typeof chanceFrom>;

const TEN = ['stature', 'weight', 'chest_girth', 'hip_girth', 'upper_arm_girth', 'head_girth'] as const;
type Ten = (typeof TEN)[number];

const correlations = rowsOf('snyder1977_correlations_girls.csv').filter(
  ({ age_months_from }) => age_months_from === '24',
);
const pair = (a: Ten, b: Ten) => {
  const row = correlations.find(
    (one) => (one.measure_a === a && one.measure_b === b) || (one.measure_a === b && one.measure_b === a),
  );
  if (row === undefined) throw new Error(`No correlation of ${a} and ${b}`);
  return Number(row.corr_log_resid_given_age);
};
const spreadOf = (a: Ten): number =>
  Number(correlations.find((one) => one.measure_a === a && one.measure_b === a)?.sd_log_a);

/** Rows of the lower triangle of the correlations. */
const lower: number[][] = [];
TEN.forEach((a, i) => {
  const row: number[] = [];
  for (let j = 0; j <= i; j++) {
    let rest = pair(a, TEN[j] ?? a);
    for (let k = 0; k < j; k++) rest -= (row[k] ?? 0) * ((j === i ? row : lower[j])?.[k] ?? 0);
    row.push(j === i ? Math.sqrt(rest) : rest / (lower[j]?.[j] ?? 1));
  }
  lower.push(row);
});

const byAge = rowsOf('snyder1977_by_age.csv').filter(({ sex }) => sex === 'girl');
const weightByAge = rowsOf('snyder1977_weight_by_age_girls.csv');

/** The median at an age: the mean of the group less half the variance of the logarithm, between the groups' middles. */
function middleAt(measure: Ten, age: number): number {
  const groups = (measure === 'weight' ? weightByAge : byAge)
    .filter((row) => row.measure === measure)
    .map((row) => ({
      age: (Number(row.age_months_from) + Number(row.age_months_to)) / 2,
      mean: Number(row.mean),
    }));
  const after = Math.max(
    groups.findIndex((group) => group.age >= age),
    1,
  );
  const [from, to] = [groups[after - 1], groups[after]];
  if (from === undefined || to === undefined) throw new Error(`No ${measure} at ${age}`);
  const mean = from.mean + ((age - from.age) / (to.age - from.age)) * (to.mean - from.mean);
  return mean * Math.exp(-(spreadOf(measure) ** 2) / 2);
}

const onBuild = [
  ...rowsOf('snyder1977_on_stature_weight_and_chest_girls.csv'),
  ...rowsOf('snyder1977_on_stature_and_weight.csv'),
].filter(({ sex, age_months_from }) => sex === 'girl' && age_months_from === '24');

/** A girl as she is: mm, kg, months. */
export interface Girl {
  readonly ageMonths: number;
  readonly weight: number;
  readonly measured: Readonly<Record<MeasureId, number>>;
}

/** `heavier`: how many times as far apart in weight as in the survey, girths and all. */
export function surveyGirl({ uniform, normal }: Chance, heavier = 1): Girl {
  const ageMonths = 33 + uniform() * (84 - 33);
  const parts = TEN.map((_, i) => normal() * (i === 1 ? heavier : 1));
  const cm = Object.fromEntries(
    TEN.map((id, i) => {
      const z = (lower[i] ?? []).reduce((sum, cell, k) => sum + cell * (parts[k] ?? 0), 0);
      return [id, middleAt(id, ageMonths) * Math.exp(z * spreadOf(id))];
    }),
  ) as Record<Ten, number>;
  const fitted = (target: string, model: string): number => {
    const row = onBuild.find((one) => one.target === target && one.model === model);
    if (row === undefined) throw new Error(`No fit of ${target}`);
    return (
      10 *
      (Number(row.const) +
        Number(row.b_stature_per_cm) * cm.stature +
        Number(row.b_weight_per_kg) * cm.weight +
        Number(row.b_chest_girth_per_cm) * cm.chest_girth +
        Number(row.rmse) * normal())
    );
  };
  const chestGirth = cm.chest_girth * 10;
  const neckBaseGirth = 1.07 * fitted('neck_girth', 'HWC') + 8 * normal();
  // (Biacromial - neck breadth) / 2 and the line of back lengths, as in data/size_table_girls_derived.csv.
  const shoulderLength = (cm.stature * 0.08 - 0.2) * 10 + 10 * normal();
  const backNeckToWaist = (2.66 + 0.2108 * cm.stature) * 10 + 15 * normal();
  return {
    ageMonths,
    weight: cm.weight,
    measured: {
      height: cm.stature * 10,
      chestGirth,
      waistGirth: fitted('natural_waist_girth', 'HWC'),
      hipGirth: cm.hip_girth * 10,
      neckBaseGirth,
      headGirth: cm.head_girth * 10,
      shoulderLength,
      shoulderWidth: 2 * Math.cos(Math.PI / 12) * shoulderLength + neckBaseGirth / 3 + 10 + 10 * normal(),
      backWidth: 0.415 * chestGirth + 10 * normal(),
      frontChestWidth: 0.385 * chestGirth + 10 * normal(),
      backNeckToWaist,
      scyeDepth: backNeckToWaist / 2 - 7.5 + 10 * normal(),
      upperArmGirth: cm.upper_arm_girth * 10,
      wristGirth: fitted('wrist_girth', 'HWC'),
      armLength: fitted('arm_length_acromion_wrist', 'H'),
      waistHeight: fitted('waist_height', 'H') + 30,
      kneeHeight: fitted('knee_height_tibiale', 'H'),
    },
  };
}
