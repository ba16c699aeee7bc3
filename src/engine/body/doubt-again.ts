import type { Sex } from './body.ts';
import { type CalendarDay, daysBetween, dayText } from './calendar.ts';
import { measuringError } from './doubt-fields.ts';
import { growBody } from './grow-body.ts';
import type { MeasuringDay } from './growth-input.ts';
import type { GrowthCharts } from './growth-references.ts';
import { isBone, MEASURE_IDS } from './measures.ts';
import { type BodyProblem, type BodyProblemCode, wordOf } from './problem.ts';

/** Two or more measurings of one child. */
export interface Measurings {
  readonly sex: Sex;
  readonly born: CalendarDay;
  readonly charts?: GrowthCharts;
  readonly now: MeasuringDay;
  /** In any order. */
  readonly before: readonly MeasuringDay[];
}

/** Further than this from the forecast, in standard deviations, one of the two measurings is questioned. */
const DOUBTFUL = 3.3;

/** So many standard deviations of two measurings may a height or an arm seem to shrink. */
const SHRINKING = 2.5;

/**
 * This measuring against the last one before it: bones do not shrink, and no child grows much faster than the
 * references forecast (`growBody`: the published miss of forecasts). Measurers' errors count on both days.
 */
export function doubtAgain({ sex, born, charts, now, before }: Measurings): readonly BodyProblem[] {
  const last = before
    .filter(({ day }) => daysBetween(day, now.day) > 0)
    .toSorted((a, b) => daysBetween(b.day, a.day))[0];
  if (last === undefined) return [];
  const result = growBody({
    sex,
    born,
    measured: last,
    event: now.day,
    ...(charts === undefined ? {} : { charts }),
  });
  if (!result.ok) return [];
  const { grown } = result;
  return MEASURE_IDS.flatMap((id): BodyProblem[] => {
    const [value, old, forecast] = [now.measures[id], last.measures[id], grown.values[id]];
    // A value that stands as before was not taken again: a new measuring begins from the old one.
    if (value === undefined || old === undefined || forecast === undefined || value === old) return [];
    const error = measuringError(id);
    const spread = Math.hypot(forecast.spread, error);
    const values = {
      measure: wordOf(id),
      value: { mm: value },
      before: { mm: old },
      day: dayText(last.day),
      least: { mm: forecast.value - DOUBTFUL * spread },
      most: { mm: forecast.value + DOUBTFUL * spread },
    };
    const doubt = (code: BodyProblemCode): BodyProblem[] => [{ code, level: 'warn', measure: id, values }];
    if (isBone(id) && value < old - SHRINKING * Math.SQRT2 * error) return doubt('body.shrank');
    if (value > forecast.value + DOUBTFUL * spread) {
      return doubt(isBone(id) ? 'body.grew-too-fast' : 'body.changed-too-much');
    }
    return value < forecast.value - DOUBTFUL * spread ? doubt('body.changed-too-much') : [];
  });
}
