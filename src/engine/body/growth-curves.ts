import type { Sex } from './body.ts';
import type { GrownBody } from './grow-body.ts';
import {
  type GrowthCharts,
  type GrowthMeasure,
  type GrowthReferenceId,
  growthReference,
  referenceAges,
  referenceValue,
} from './growth-references.ts';
import { NINETY_PERCENT, zOfCentile } from './normal-curve.ts';

/** A place on a growth chart: age in months; mm, or kg for weight. */
export interface ChartPoint {
  readonly age: number;
  readonly value: number;
}

/** Everything that a growth chart draws, as numbers. */
export interface GrowthChart {
  readonly measure: GrowthMeasure;
  readonly reference: GrowthReferenceId;
  readonly lines: readonly { readonly centile: number; readonly points: readonly ChartPoint[] }[];
  /** The child on its measuring days, from the youngest. */
  readonly child: readonly ChartPoint[];
  /** Where nine of ten such children will be on the day of the event; null where nothing was forecast. */
  readonly forecast: (ChartPoint & { readonly least: number; readonly most: number }) | null;
}

/** The lines that the WHO prints. */
const CENTILES = [3, 15, 50, 85, 97] as const;

/** So much of the chart is shown on either side of the child's days, months. */
const MARGIN = 6;

/**
 * The chart of one measure round a child's days: its earlier measurings, the last one and the forecast that was grown
 * from it. Null where no reference knows the child's ages.
 */
export function growthChart(
  measure: GrowthMeasure,
  grown: GrownBody,
  earlier: readonly ChartPoint[],
): GrowthChart | null {
  const { ages, sex, charts } = grown;
  const value = chartedValue(measure, grown);
  const correction = ages.correction;
  const child = [...earlier, ...(value === null ? [] : [{ age: ages.measured, value: value.measured }])]
    .map((point) => ({ ...point, age: point.age - correction }))
    .toSorted((a, b) => a.age - b.age);
  const event = ages.event - correction;
  const reference = chartReference(measure, [...child.map(({ age }) => age), event], charts);
  if (reference === null) return null;
  const isForecast = value !== null && value.spread > 0;
  const band = isForecast ? NINETY_PERCENT * value.spread : 0;
  const all = [...child.map(({ age }) => age), event];
  return {
    measure,
    reference,
    lines: centileLines(reference, sex, Math.min(...all) - MARGIN, Math.max(...all) + MARGIN),
    child,
    forecast: isForecast
      ? { age: event, value: value.value, least: value.value - band, most: value.value + band }
      : null,
  };
}

/** A reference that knows all days; else one that knows the first. */
function chartReference(
  measure: GrowthMeasure,
  ages: readonly number[],
  charts: GrowthCharts,
): GrowthReferenceId | null {
  return growthReference(measure, ages, charts) ?? growthReference(measure, ages.slice(0, 1), charts);
}

function chartedValue(measure: GrowthMeasure, { values, weight }: GrownBody) {
  switch (measure) {
    case 'weight':
      return weight;
    case 'height':
    case 'headGirth':
    case 'upperArmGirth':
    case 'waistGirth':
    case 'hipGirth':
      return values[measure] ?? null;
    case 'bmi':
    case 'neckGirth':
      return null;
  }
}

function centileLines(
  reference: GrowthReferenceId,
  sex: Sex,
  from: number,
  to: number,
): GrowthChart['lines'] {
  const [least, most] = referenceAges(reference);
  const [first, last] = [Math.max(Math.floor(from), least), Math.min(Math.ceil(to), most)];
  const ages = Array.from({ length: Math.max(Math.floor(last - first) + 1, 0) }, (_, i) => first + i);
  return CENTILES.map((centile) => ({
    centile,
    points: ages.map((age) => ({ age, value: referenceValue(reference, sex, age, zOfCentile(centile)) })),
  }));
}
