import type { BodyInput } from './body.ts';
import {
  ageByStature,
  type FillId,
  knownOf,
  statureBy,
  statureByAge,
  toModel,
  unfilledBody,
} from './fill-model.ts';
import { covarianceOf, inverseOf, type Joint, meanOf } from './fill-normal.ts';
import { MEASURES, type MeasureId } from './measures.ts';

export type FieldId = MeasureId | 'weight' | 'age';

/** What the maker wrote of a child: mm, kg, months. */
export interface Field {
  readonly id: FieldId;
  readonly value: number;
}

/** The fields of a child beside each other: what the others let expect of each. */
export interface Judged {
  readonly fields: readonly Field[];
  /** Squared distance from the middle of all children, were the fields these values. */
  misfit(values: readonly number[]): number;
  /** How many standard deviations a field lies from what the others let expect. */
  away(place: number): number;
  /** Squared distance of several fields together from what the others let expect of them. */
  awayTogether(places: readonly number[]): number;
  /** What the others let expect of a field: the middle, and so many standard deviations to both sides. */
  expected(place: number, deviations: number): { readonly least: number; readonly most: number };
}

/**
 * The children of today scatter about twice as far in fatness as those of the survey: girls of 6 years, weight at the
 * 95th percentile over the median 1.72 (NHANES 2015-18, data/nhanes2015_2018_by_age.csv), in the survey 1.29 (Snyder
 * 1977, girls of 66-78 months). A child that is wide all over is no blunder.
 */
const TODAY = { fatness: 2 } as const;

/** So far from what the fields point to may the stature lie, mm: nothing is taken for granted. */
const OPEN_STATURE = 300;

/**
 * How far two measurings of one child lie apart, standard deviation of one: mm, of the weight a share. Girths 1.8 to 10
 * mm between observers (IDEFICS 2011, from memory), 0.5 to 11 mm within one (ToyBox 2014, waist); height 0.7 to 2 mm
 * by trained observers (ToyBox 2014) and up to 2 % under two years (TARGet Kids! 2019). See data/measurement_error.csv.
 */
const MEASURING_ERROR = { height: 5, length: 6, width: 6, girth: 7, weight: 0.015 } as const;

/** That error of one measure, mm. */
export const measuringError = (id: MeasureId): number =>
  MEASURING_ERROR[id === 'height' ? 'height' : MEASURES[id].kind];

/** Outside these statures the averages are carried on from others (see data/SOURCES.md), mm. */
const SURE_STATURES = [860, 1640] as const;

/** What that adds to the scatter, as a share of the value. */
const UNSURE_SHARE = 0.04;

/** Null where there is too little to hold against each other. */
export function judgeFields(input: BodyInput): Judged | null {
  const { ageMonths = null } = input;
  const age = ageMonths === null ? [] : [{ id: 'age' as const, value: ageMonths }];
  const fields: readonly Field[] = [...age, ...knownOf(input).map(([id, value]) => ({ id, value }))];
  if (fields.length < 2) return null;
  const stature = likelyStature(fields);
  const joint = unfilledBody(stature, OPEN_STATURE, TODAY);
  const isUnsure = stature < SURE_STATURES[0] || stature > SURE_STATURES[1];
  const covariance = fields.map((a, i) =>
    fields.map((b, j) => {
      const shared = covarianceOf(joint, modelId(a.id), modelId(b.id));
      return i === j ? shared + ownVariance(a, joint, isUnsure) : shared;
    }),
  );
  const inverse = inverseOf(covariance);
  const away = (values: readonly number[]): readonly number[] =>
    fields.map(({ id }, i) => held(id, values[i] ?? 0) - meanOf(joint, modelId(id)));
  const given = away(fields.map(({ value }) => value));
  const pull = (i: number): number =>
    (inverse[i] ?? []).reduce((sum, cell, j) => sum + cell * (given[j] ?? 0), 0);
  const own = (i: number): number => inverse[i]?.[i] ?? 1;
  return {
    fields,
    misfit: (values) => {
      const rests = away(values);
      let sum = 0;
      for (let i = 0; i < rests.length; i++)
        for (let j = 0; j < rests.length; j++)
          sum += (rests[i] ?? 0) * (inverse[i]?.[j] ?? 0) * (rests[j] ?? 0);
      return sum;
    },
    away: (i) => pull(i) / Math.sqrt(own(i)),
    awayTogether: (places) => {
      const shared = inverseOf(places.map((i) => places.map((j) => inverse[i]?.[j] ?? 0)));
      const pulls = places.map(pull);
      return pulls.reduce(
        (sum, a, i) => sum + pulls.reduce((line, b, j) => line + a * (shared[i]?.[j] ?? 0) * b, 0),
        0,
      );
    },
    expected: (i, deviations) => {
      const { id, value } = fields[i] ?? { id: 'height', value: 0 };
      const middle = held(id, value) - pull(i) / own(i);
      const by = deviations / Math.sqrt(own(i));
      return { least: told(id, middle - by), most: told(id, middle + by) };
    },
  };
}

/** An age stands for the middle height of that age. */
const modelId = (id: FieldId): FillId => (id === 'age' ? 'height' : id);
const held = (id: FieldId, value: number): number =>
  id === 'age' ? statureByAge(value).mm : toModel(id, Math.max(value, 1e-3));
const told = (id: FieldId, value: number): number => {
  if (id === 'age') return ageByStature(value);
  return isLog(id) ? Math.exp(value) : value;
};
const isLog = (id: MeasureId | 'weight'): boolean => toModel(id, Math.E) === 1;

/** What nothing else explains: the measurer's error, and of an age how far children of it differ. */
function ownVariance({ id, value }: Field, joint: Joint<FillId>, isUnsure: boolean): number {
  if (id === 'age') return statureByAge(value).spread ** 2;
  const middle = told(id, meanOf(joint, id));
  const error = id === 'weight' ? MEASURING_ERROR.weight * middle : measuringError(id);
  const unsure = isUnsure && id !== 'height' ? UNSURE_SHARE * middle : 0;
  return (Math.hypot(error, unsure) / (isLog(id) ? middle : 1)) ** 2;
}

/** The stature to which most of the fields point, each weighing by how surely it does: one wrong field can't move it far. */
function likelyStature(fields: readonly Field[]): number {
  const pointers = fields
    .flatMap(({ id, value }) => {
      const at = id === 'age' ? statureByAge(value) : statureBy(id, value);
      return at === null ? [] : [{ mm: at.mm, weight: 1 / at.spread }];
    })
    .toSorted((a, b) => a.mm - b.mm);
  const half = pointers.reduce((sum, { weight }) => sum + weight, 0) / 2;
  let sum = 0;
  for (const { mm, weight } of pointers) {
    sum += weight;
    if (sum >= half) return Math.min(Math.max(mm, 550), 1850);
  }
  return 1100;
}
