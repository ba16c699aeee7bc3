/**
 * Turns the size data (`data/*.csv`, sources in `data/SOURCES.md`) into the constants the engine reads.
 * Run `node tools/make-tables.mjs` after changing a CSV; a test says when that was forgotten.
 */
import { giveTables, readRows, SURVEY_NAMES } from './table-files.mjs';

/** cm in the CSV, mm in the engine; a tenth of a mm is finer than any source. */
const toMm = (cm) => Math.round(Number(cm) * 100) / 10;

/** The known points of a column, as [stature, value]. */
function curve(rows, value) {
  return rows.map((row) => [toMm(row.stature_cm), value(row)]).filter(([, y]) => y !== undefined);
}

const column = (name) => (row) => (row[name] === '' ? undefined : toMm(row[name]));

const sizes = readRows('size_table_girls_derived.csv');
const survey = readRows('snyder1977_by_stature_girls.csv');

/**
 * The straight line through the cells of the survey, each weighing as many children as it holds: single cells of
 * a dozen children are too noisy to follow. Given by its values at the first and the last cell.
 */
function straight(rows, value) {
  const cells = rows.map((row) => ({ x: toMm(row.stature_cm), y: toMm(row[value]), n: Number(row.n) }));
  const mean = (f) =>
    cells.reduce((sum, cell) => sum + cell.n * f(cell), 0) / cells.reduce((sum, cell) => sum + cell.n, 0);
  const [x0, y0] = [mean((cell) => cell.x), mean((cell) => cell.y)];
  const slope = mean((cell) => (cell.x - x0) * (cell.y - y0)) / mean((cell) => (cell.x - x0) ** 2);
  const at = (x) => [x, Math.round((y0 + slope * (x - x0)) * 10) / 10];
  return [at(cells[0].x), at(cells.at(-1).x)];
}

/** Each cell together with its two neighbours, weighing as many children as they hold: evens out the noise. */
function smoothed(rows, value) {
  return rows.map((row, index) => {
    const near = rows.slice(Math.max(index - 1, 0), index + 2);
    const children = near.reduce((sum, cell) => sum + Number(cell.n), 0);
    const together = near.reduce((sum, cell) => sum + Number(cell.n) * toMm(cell[value]), 0);
    return [toMm(row.stature_cm), Math.round((together / children) * 10) / 10];
  });
}

const surveyOf = (measure) => survey.filter((row) => row.measure === measure);

const averages = {
  chestGirth: curve(sizes, column('chest_girth_cm')),
  waistGirth: curve(sizes, (row) => column('natural_waist_girth_cm')(row) ?? column('waist_girth_cm')(row)),
  hipGirth: curve(sizes, column('hip_girth_cm')),
  headGirth: curve(sizes, column('head_girth_cm')),
  neckGirth: curve(sizes, column('neck_girth_cm')),
  upperArmGirth: curve(sizes, column('upper_arm_girth_cm')),
  wristGirth: curve(sizes, column('wrist_girth_cm')),
  shoulderLength: curve(sizes, column('est_shoulder_length_cm')),
  armLength: curve(sizes, column('arm_length_acromion_wrist_cm')),
  backNeckToWaist: curve(sizes, column('est_back_waist_length_cm')),
  kneeHeight: straight(surveyOf('knee_height_tibiale'), 'mean'),
  navelHeight: straight(surveyOf('waist_height'), 'mean'),
};

const spreads = Object.fromEntries(
  Object.entries(SURVEY_NAMES).map(([id, name]) => [id, smoothed(surveyOf(name), 'sd')]),
);

const statureByAge = sizes.map((row) => [Number(row.age_months_median_girl), toMm(row.stature_cm)]);

const text = `// Made by tools/make-tables.mjs from data/*.csv; change those, not this. Sources: data/SOURCES.md. All lengths in mm.
import type { Curve } from './curve.ts';

/** Height of the middle girl, by age in months. */
export const STATURE_BY_AGE: Curve = ${print(statureByAge)};

/**
 * Averages of girls by stature. \`waistGirth\` is the natural waist; below 860 mm, where nobody measured that, the
 * waist girth of Dutch babies. \`neckGirth\` is the middle of the neck, \`navelHeight\` from the floor.
 */
export const AVERAGE_BY_STATURE = ${printRecord(averages, print)} as const satisfies Readonly<Record<string, Curve>>;

/** Standard deviation of one girl among girls of her stature, each cell evened out with its neighbours. */
export const SPREAD_BY_STATURE = ${printRecord(spreads, print)} as const satisfies Readonly<Record<string, Curve>>;
`;

function print(value) {
  return Array.isArray(value) ? `[${value.map(print).join(', ')}]` : String(value);
}

function printRecord(record, printValue) {
  return `{\n${Object.entries(record)
    .map(([id, value]) => `  ${id}: ${printValue(value)},\n`)
    .join('')}}`;
}

giveTables({ 'size-tables.ts': text });
