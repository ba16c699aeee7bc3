import type { Sex } from './body.ts';
import { estimateBody } from './estimate-body.ts';
import {
  type GrowthCharts,
  type GrowthMeasure,
  growthReference,
  referenceValue,
} from './growth-references.ts';
import { MEASURE_IDS, type MeasureId } from './measures.ts';
import { SURVEYED, type SurveyValue, surveyByAge, surveyByBuild } from './survey.ts';
import type { SurveyId } from './survey-tables.ts';

/** What a body to begin with is picked by: mm, kg, months; what is not known is null. */
export interface StartingWish {
  readonly sex: Sex;
  readonly ageMonths: number | null;
  readonly height: number | null;
  readonly weight: number | null;
  readonly charts?: GrowthCharts;
}

/**
 * A value to begin with. `from`: given; the middle or mean of its age; the average of its height, or of its height and
 * weight; or `estimated`: no open data has measured it on such children, so it is to be measured.
 */
export interface StartingValue extends SurveyValue {
  readonly from: 'given' | 'age' | 'height' | 'build' | 'estimated';
}

export type StartingBody = Readonly<Record<MeasureId, StartingValue>>;

/** Measures that the survey took as we do. Neck base and waist height are only worked out from it. */
const SURVEY_MEASURES = {
  chestGirth: 'chestGirth',
  waistGirth: 'waistGirth',
  hipGirth: 'hipGirth',
  headGirth: 'headGirth',
  upperArmGirth: 'upperArmGirth',
  wristGirth: 'wristGirth',
  armLength: 'armLength',
  kneeHeight: 'kneeHeight',
} as const satisfies Readonly<Partial<Record<MeasureId, SurveyId>>>;
type SurveyMeasure = keyof typeof SURVEY_MEASURES;
const SURVEY_MEASURE_IDS = Object.keys(SURVEY_MEASURES) as readonly SurveyMeasure[];

/** Where no survey reaches down to babies, growth references by age know these girths. */
const BABY_GIRTHS: Readonly<Partial<Record<SurveyMeasure, GrowthMeasure>>> = {
  waistGirth: 'waistGirth',
  hipGirth: 'hipGirth',
  headGirth: 'headGirth',
  upperArmGirth: 'upperArmGirth',
};

/**
 * A whole body to begin with, of a girl or a boy, by age, by height, or by height and weight; null when neither age nor
 * height is known. The height itself comes from the growth references. Children of 84 to 165 cm and of 2 to 14 years
 * were surveyed; below, waist, hip, head and arm come from growth references by age.
 */
export function startingBody(wish: StartingWish): StartingBody | null {
  const height = heightOf(wish);
  if (height === null) return null;
  const surveyed: Partial<Record<MeasureId, StartingValue>> = { height };
  for (const id of SURVEY_MEASURE_IDS) {
    const value = surveyedValue(wish, id, height);
    if (value !== null) surveyed[id] = value;
  }
  const known = Object.fromEntries(Object.entries(surveyed).map(([id, { mm }]) => [id, mm]));
  const rest = estimateBody({ sex: wish.sex, ageMonths: wish.ageMonths, measured: known });
  if (rest === null) return null;
  const entries = MEASURE_IDS.map((id): [MeasureId, StartingValue] => {
    const { mm, ...more } = rest.values[id];
    const spread = more.from === 'estimated' ? more.spread : 0;
    return [id, surveyed[id] ?? { mm, spread, from: 'estimated' }];
  });
  return Object.fromEntries(entries) as StartingBody;
}

function heightOf({ sex, ageMonths, height, charts = 'who' }: StartingWish): StartingValue | null {
  if (height !== null) return { mm: height, spread: 0, from: 'given' };
  return ageMonths === null ? null : middleOf('height', sex, ageMonths, charts);
}

/** The middle of an age, and how far one standard deviation goes; null where no reference knows the age. */
function middleOf(
  measure: GrowthMeasure,
  sex: Sex,
  ageMonths: number,
  charts: GrowthCharts,
): StartingValue | null {
  const reference = growthReference(measure, [ageMonths], charts);
  if (reference === null) return null;
  const mm = referenceValue(reference, sex, ageMonths, 0);
  return { mm, spread: referenceValue(reference, sex, ageMonths, 1) - mm, from: 'age' };
}

const isWithin = (value: number, [least, most]: readonly [number, number]): boolean =>
  value >= least && value <= most;

function surveyedValue(
  { sex, ageMonths, weight, charts = 'who', ...wish }: StartingWish,
  id: SurveyMeasure,
  height: StartingValue,
): StartingValue | null {
  const survey = SURVEY_MEASURES[id];
  if (wish.height !== null && isWithin(height.mm, SURVEYED.statures)) {
    return { ...surveyByBuild(sex, survey, height.mm, weight), from: weight === null ? 'height' : 'build' };
  }
  if (wish.height === null && ageMonths !== null && isWithin(ageMonths, SURVEYED.ages)) {
    return { ...surveyByAge(sex, survey, ageMonths), from: 'age' };
  }
  const girth = BABY_GIRTHS[id];
  return girth === undefined || ageMonths === null ? null : middleOf(girth, sex, ageMonths, charts);
}
