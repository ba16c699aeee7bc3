/**
 * Turns the growth data (`data/*.csv`, sources in `data/SOURCES.md`) into the constants the engine reads.
 * Run `node tools/make-growth-tables.mjs` after changing a CSV; a test says when that was forgotten.
 */
import { giveTables, readRows, SURVEY_NAMES } from './table-files.mjs';

const HEAD =
  '// Made by tools/make-growth-tables.mjs from data/*.csv; change those, not this. Sources: data/SOURCES.md.\n';

/** cm in the CSV, mm in the engine; keeps every decimal of the source. */
const mm = (cm) => Math.round(Number(cm) * 1e6) / 1e5;
const SEXES = ['girl', 'boy'];

/** L, M and S at even steps of age; an L that never changes is written once. */
function lmsTable(rows, scale) {
  const ages = rows.map((row) => Number(row.age_months));
  const [from, next] = ages;
  const step = next - from;
  ages.forEach((age, i) => {
    if (age !== from + i * step) throw new Error(`Uneven ages: ${age}`);
  });
  const powers = rows.map((row) => Number(row.L));
  return {
    from,
    step,
    L: powers.every((power) => power === powers[0]) ? powers.slice(0, 1) : powers,
    M: rows.map((row) => scale(row.M ?? row.M_cm)),
    S: rows.map((row) => Number(row.S)),
  };
}

const bothSexes = (rows, scale) =>
  Object.fromEntries(
    SEXES.map((sex) => [
      sex,
      lmsTable(
        rows.filter((row) => row.sex === sex),
        scale,
      ),
    ]),
  );

const who = readRows('who_lms_monthly.csv');
const cdc = readRows('cdc2000_lms.csv');
const girths = readRows('girth_references_lms.csv');
const whoOf = (indicator, scale) =>
  bothSexes(
    who.filter((row) => row.indicator === `${indicator}_for_age`),
    scale,
  );
const cdcOf = (indicator, scale) =>
  bothSexes(
    cdc.filter((row) => row.indicator === `${indicator}_for_age`),
    scale,
  );
const girthOf = (source, measure) =>
  bothSexes(
    girths.filter((row) => row.source === source && row.measure === measure),
    mm,
  );

const growth = {
  whoLength: whoOf('length', mm),
  whoHeight: whoOf('height', mm),
  whoWeight: whoOf('weight', Number),
  whoBmi: whoOf('bmi', Number),
  whoHead: whoOf('head_girth', mm),
  whoArm: whoOf('arm_girth', mm),
  cdcHeight: cdcOf('height', mm),
  cdcWeight: cdcOf('weight', Number),
  dutchWaist: girthOf('NL4_1997', 'waist_girth'),
  dutchHip: girthOf('NL4_1997', 'hip_girth'),
  germanWaist: girthOf('LIFE_CHILD_2019', 'waist_girth'),
  germanHip: girthOf('LIFE_CHILD_2019', 'hip_girth'),
  germanHead: girthOf('KIGGS_2003_06', 'head_girth'),
  usWaist: girthOf('NHANES_III_1988_94', 'waist_girth'),
  mexicanNeck: girthOf('MEXICO_2021', 'neck_girth'),
};

const errors = readRows('growth_forecast_error_berkeley.csv').filter(
  (row) => row.measure !== 'biacromial_breadth',
);
const errorOf = (measure, scale) =>
  Object.fromEntries(
    SEXES.map((sex) => [
      sex,
      errors
        .filter((row) => row.sex === sex && row.measure === measure)
        .map((row) => [
          Number(row.age_months),
          Number(row.horizon_months),
          scale(row.forecast_error_sd_constant_z),
          Number(row.correlation),
        ]),
    ]),
  );

const survey = readRows('snyder1977_by_age.csv');
const regressions = readRows('snyder1977_on_stature_and_weight.csv');

/** [middle of the age group, mean, standard deviation]. */
const byAge = Object.fromEntries(
  SEXES.map((sex) => [
    sex,
    Object.fromEntries(
      Object.entries(SURVEY_NAMES).map(([id, name]) => [
        id,
        survey
          .filter((row) => row.sex === sex && row.measure === name)
          .map((row) => [
            (Number(row.age_months_from) + Number(row.age_months_to)) / 2,
            mm(row.mean),
            mm(row.sd),
          ]),
      ]),
    ),
  ]),
);

/** [constant, mm for each mm of stature, mm for each kg, standard deviation left], for 24-84 and 84-168 months. */
const byBuild = Object.fromEntries(
  SEXES.map((sex) => [
    sex,
    Object.fromEntries(
      Object.entries(SURVEY_NAMES).map(([id, name]) => [
        id,
        Object.fromEntries(
          ['H', 'HW'].map((model) => [
            model === 'H' ? 'height' : 'heightAndWeight',
            ['24', '84'].map((from) => {
              const row = regressions.find(
                (one) =>
                  one.sex === sex &&
                  one.target === name &&
                  one.model === model &&
                  one.age_months_from === from,
              );
              return [mm(row.const), Number(row.b_stature_per_cm), mm(row.b_weight_per_kg), mm(row.rmse)];
            }),
          ]),
        ),
      ]),
    ),
  ]),
);

const labels = readRows('us_commercial_sizes.csv').map((row) => ({
  label: row.size,
  height: mm(row.stature_cm),
  chestGirth: mm(row.chest_cm),
  waistGirth: mm(row.waist_cm),
  hipGirth: row.hip_cm === '' ? null : mm(row.hip_cm),
}));

const namesOf = (record) =>
  Object.keys(record)
    .map((name) => `'${name}'`)
    .join(' | ');

giveTables({
  'growth-tables.ts': `${HEAD}import type { LmsTable } from './lms.ts';

export type GrowthTableId = ${namesOf(growth)};

/** Growth references by age in months: lengths and girths in mm, weight in kg, BMI in kg/m². */
export const GROWTH_TABLES: Readonly<Record<GrowthTableId, Readonly<Record<'girl' | 'boy', LmsTable>>>> = ${JSON.stringify(growth)};
`,
  'forecast-error-tables.ts': `${HEAD}
/**
 * What became of 70 girls and 66 boys (Berkeley, born 1928-29): [age in months, months to the next measuring, standard
 * deviation of the error when a child is thought to keep its place among the others (mm or kg), correlation of both].
 */
export const FORECAST_ERRORS: Readonly<
  Record<'height' | 'weight', Readonly<Record<'girl' | 'boy', readonly ForecastCell[]>>>
> = ${JSON.stringify({ height: errorOf('height', mm), weight: errorOf('weight', Number) })};

export type ForecastCell = readonly [age: number, horizon: number, spread: number, correlation: number];
`,
  'survey-tables.ts': `${HEAD}
export type SurveyId = ${namesOf(SURVEY_NAMES)};
type BothSexes<T> = Readonly<Record<'girl' | 'boy', Readonly<Record<SurveyId, T>>>>;

/** Means of US children (Snyder 1977) by age: [middle of the age group in months, mean, standard deviation], mm. */
export const SURVEY_BY_AGE: BothSexes<readonly AgeGroup[]> = ${JSON.stringify(byAge)};

export type AgeGroup = readonly [age: number, mean: number, spread: number];

/**
 * How a measure goes with stature, and with stature and weight (Snyder 1977): [constant, mm for each mm of stature, mm
 * for each kg, standard deviation left]; first children of 24-84 months, then of 84-168.
 */
export const SURVEY_BY_BUILD: BothSexes<Readonly<Record<'height' | 'heightAndWeight', readonly [BuildFit, BuildFit]>>> = ${JSON.stringify(byBuild)};

export type BuildFit = readonly [constant: number, perMm: number, perKg: number, spread: number];
`,
  'us-label-table.ts': `${HEAD}
/** Girths on the labels of US children's clothes, mm: the body that a size is sold for, 4 to 6 cm wider in the chest than measured children. */
export const US_LABELS = ${JSON.stringify(labels)} as const;
`,
});
