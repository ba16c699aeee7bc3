import type { Body, Measured, Sex } from './body.ts';
import { averageMonthsBetween } from './calendar.ts';
import { estimateBody } from './estimate-body.ts';
import { NECK_BASE_SHARE } from './fill-model.ts';
import { forecastError } from './forecast-error.ts';
import { checkGrowth, type GrowthAges, type GrowthInput, OLDEST, standingHeight } from './growth-input.ts';
import type { GrowthProblem } from './growth-problem.ts';
import {
  type GrowthCharts,
  type GrowthMeasure,
  type GrowthReferenceId,
  growthReference,
  referenceValue,
  referenceZ,
} from './growth-references.ts';
import { isBone, MEASURE_IDS, MEASURES, type MeasureId } from './measures.ts';

/** How a value for the day was found. `z`: standard deviations from the middle of the reference, then and now. */
export type GrownFrom =
  | { readonly kind: 'measured' }
  | {
      readonly kind: 'centile';
      readonly reference: GrowthReferenceId;
      readonly zMeasured: number;
      readonly zEvent: number;
    }
  | { readonly kind: 'with-height' }
  | { readonly kind: 'held' };

/** A measure on the day of the event. `spread`: the standard deviation of the forecast, 0 where nothing was forecast. */
export interface GrownValue {
  readonly value: number;
  readonly measured: number;
  readonly spread: number;
  readonly from: GrownFrom;
}

/** A child on the day of the event: every measure that was taken, in mm; weight in kg. */
export interface GrownBody {
  readonly sex: Sex;
  readonly charts: GrowthCharts;
  readonly ages: GrowthAges;
  readonly values: Readonly<Partial<Record<MeasureId, GrownValue>>>;
  readonly weight: GrownValue | null;
}

export type GrowthResult =
  | { readonly ok: true; readonly grown: GrownBody; readonly warnings: readonly GrowthProblem[] }
  | { readonly ok: false; readonly problems: readonly GrowthProblem[] };

/**
 * How well a maker measures, standard deviation in mm: lengths as in the forecasts of height; girths 5 mm, within the
 * 1.8 to 10 mm between observers of children's girths (IDEFICS 2011, from memory).
 */
const MEASURING_ERROR = { length: 4, width: 5, girth: 5 } as const;

/**
 * What a child measures on the day of the event.
 *
 * Height and weight keep their place among children of their age, and go back to the middle under two years (see
 * `forecastError`). Girths of waist, hip, head, arm and neck keep theirs where one reference knows both ages. All other
 * measures keep their share of what children of that height measure on average. How far a girth misses is worked out
 * from height and weight, since no study followed girths: girth² x height goes as the weight.
 *
 * Refuses days and heights that cannot be; what can be mended is done in the nearest sound way, with a warning.
 */
export function growBody(input: GrowthInput): GrowthResult {
  const checked = checkGrowth(input);
  if (!checked.ok) return checked;
  const { ages } = checked;
  const { measures } = input.measured;
  const ids = MEASURE_IDS.filter((id) => measures[id] !== undefined);
  const nothing: GrowthProblem = { code: 'growth.problem.nothing-measured', level: 'warn', values: {} };
  const told = {
    ok: true,
    warnings: ids.length === 0 ? [...checked.problems, nothing] : checked.problems,
  } as const;
  const child = { sex: input.sex, charts: input.charts ?? 'who', ages } as const;
  if (averageMonthsBetween(input.measured.day, input.event) <= 0 || ages.measured > OLDEST) {
    const kind = ages.measured > OLDEST ? 'held' : 'measured';
    const keep = (value: number): GrownValue => ({ value, measured: value, spread: 0, from: { kind } });
    const values = Object.fromEntries(ids.map((id) => [id, keep(measures[id] ?? 0)]));
    const weight = checked.weight === null ? null : keep(checked.weight);
    return { ...told, grown: { ...child, values, weight } };
  }
  const span = spanOf(child.sex, child.charts, ages);
  const weight = checked.weight === null ? null : grownWeight(span, checked.weight);
  const height = grownHeight(span, measures.height);
  const share = girthMiss(span, height, weight);
  const average = averagesByHeight(span, height);
  const values = Object.fromEntries(
    ids.map((id) => [
      id,
      id === 'height' ? height : grownMeasure(span, id, measures, height, share, average),
    ]),
  );
  return { ...told, grown: { ...child, values, weight } };
}

/** A child between two ages at which references are read. */
interface Span {
  readonly sex: Sex;
  readonly charts: GrowthCharts;
  readonly ages: GrowthAges;
  readonly from: number;
  readonly to: number;
  readonly months: number;
}

function spanOf(sex: Sex, charts: GrowthCharts, ages: GrowthAges): Span {
  const from = ages.measured - ages.correction;
  const to = Math.min(ages.event - ages.correction, OLDEST);
  return { sex, charts, ages, from, to, months: Math.max(to - from, 0.1) };
}

/** The place of a value at the first age, and the value at the second of a child that keeps so much of it. */
function followed(span: Span, measure: GrowthMeasure, value: number, keeps: number) {
  const reference = growthReference(measure, [span.from, span.to], span.charts);
  if (reference === null) return null;
  const zMeasured = referenceZ(reference, span.sex, span.from, value);
  const zEvent = zMeasured * keeps;
  const from: GrownFrom = { kind: 'centile', reference, zMeasured, zEvent };
  return { value: referenceValue(reference, span.sex, span.to, zEvent), from };
}

/** The middle height of the age where it was not measured: others grow in step with it. */
function grownHeight(span: Span, measured: number | undefined): GrownValue {
  const { spread, keeps } = forecastError('height', span.sex, span.from, span.months);
  const reference = growthReference('height', [span.from, span.to], span.charts) ?? 'who-height';
  const height = measured ?? referenceValue(reference, span.sex, span.from, 0);
  const grown = followed(span, 'height', height, keeps);
  if (grown === null) return { value: height, measured: height, spread, from: { kind: 'held' } };
  // Nobody shrinks, however tall for her age she is thought to have been by chance.
  const value = Math.max(grown.value, standingHeight(height, span.ages));
  return { value, measured: height, spread, from: grown.from };
}

function grownWeight(span: Span, measured: number): GrownValue {
  const { spread, keeps } = forecastError('weight', span.sex, span.from, span.months);
  const grown = followed(span, 'weight', measured, keeps);
  if (grown === null) return { value: measured, measured, spread, from: { kind: 'held' } };
  const middle = referenceValue('cdc-weight', span.sex, span.to, 0);
  return { ...grown, measured, spread: (spread * grown.value) / middle };
}

/** How far a girth misses while it grows, as a share of it. */
function girthMiss(span: Span, height: GrownValue, weight: GrownValue | null): number {
  const middle = referenceValue('cdc-weight', span.sex, span.to, 0);
  const heavy =
    weight === null
      ? forecastError('weight', span.sex, span.from, span.months).spread / middle
      : weight.spread / weight.value;
  return Math.hypot(heavy, height.spread / height.value) / 2;
}

/** Girths that a reference knows, with what the reference's girth is to ours. */
const REFERENCE_GIRTHS: Readonly<Partial<Record<MeasureId, readonly [GrowthMeasure, number]>>> = {
  waistGirth: ['waistGirth', 1],
  hipGirth: ['hipGirth', 1],
  headGirth: ['headGirth', 1],
  upperArmGirth: ['upperArmGirth', 1],
  neckBaseGirth: ['neckGirth', NECK_BASE_SHARE],
};

function grownMeasure(
  span: Span,
  id: MeasureId,
  measures: Measured,
  height: GrownValue,
  girthShare: number,
  average: AveragesByHeight,
): GrownValue {
  const measured = measures[id] ?? 0;
  const known = REFERENCE_GIRTHS[id];
  const grown = known === undefined ? null : followed(span, known[0], measured / known[1], 1);
  const byPlace = grown === null ? null : { value: grown.value * (known?.[1] ?? 1), from: grown.from };
  const { value, from } = byPlace ?? withHeight(average(id), measured);
  // Bones miss as the height does, not as the weight.
  const share = isBone(id) ? height.spread / height.value : girthShare;
  return { value, measured, spread: Math.hypot(value * share, MEASURING_ERROR[MEASURES[id].kind]), from };
}

/** What children of the child's height measure on average, then and on the day, mm. */
type AveragesByHeight = (id: MeasureId) => Readonly<Record<'before' | 'after', number | undefined>>;

/** Both bodies are worked out once for all measures, and only if one asks: that is most of the work of growing. */
function averagesByHeight({ ages }: Span, height: GrownValue): AveragesByHeight {
  const bodyOf = (mm: number): Body | null => estimateBody({ measured: { height: mm } });
  let bodies: readonly [before: Body | null, after: Body | null] | undefined;
  return (id) => {
    bodies ??= [bodyOf(standingHeight(height.measured, ages)), bodyOf(height.value)];
    const [before, after] = bodies;
    return { before: before?.values[id].mm, after: after?.values[id].mm };
  };
}

/** Keeps its share of what children of the child's height measure on average. */
function withHeight({ before, after }: ReturnType<AveragesByHeight>, measured: number) {
  const from: GrownFrom = { kind: 'with-height' };
  if (before === undefined || after === undefined)
    return { value: measured, from: { kind: 'held' } as const };
  return { value: (measured * after) / before, from };
}
