import { averageMonthsBetween, type CalendarDay, dayAfter, dayText, monthsInDays } from './calendar.ts';
import { type GrowthResult, growBody } from './grow-body.ts';
import type { GrowthInput } from './growth-input.ts';
import type { GrowthProblem } from './growth-problem.ts';
import { SIZE_STEP, sizeHeight } from './size-labels.ts';

/** So long after the day of the event is looked for the day on which a child has grown into the next size, months. */
const FARTHEST_MONTHS = 24;

/** The height (mm) that names the size after that of a height. */
export const nextSize = (height: number): number => sizeHeight(height) + SIZE_STEP;

/**
 * What if the dress were one size more: the child as it will be when it has grown to the height of the size after that
 * of the due day. Where it has no height, or does not reach that within two years, it is grown to the due day, with a
 * warning. Refuses what `growBody` refuses.
 */
export function growOneSizeMore(input: GrowthInput): GrowthResult {
  const result = growBody(input);
  if (!result.ok) return result;
  const { grown, warnings } = result;
  const height = grown.values.height;
  const instead = (code: GrowthProblem['code'], values: GrowthProblem['values']): GrowthResult => ({
    ...result,
    warnings: [...warnings, { code, level: 'warn', values }],
  });
  if (height === undefined) return instead('growth.problem.size-more-no-height', {});
  const next = nextSize(height.value);
  const reached = dayReached(input, height.measured, next);
  const values = { size: next / 10, height: { mm: next } };
  const then = reached === null ? null : growBody({ ...input, event: reached });
  if (reached === null || then === null || !then.ok) {
    return instead('growth.problem.size-more-too-far', values);
  }
  const told: GrowthProblem = {
    code: 'growth.problem.size-more',
    level: 'warn',
    values: { ...values, day: dayText(reached) },
  };
  return { ...then, warnings: [told, ...warnings] };
}

/** The day on which a child that is grown on reaches a height. */
export function dayReached(input: GrowthInput, measured: number, height: number): CalendarDay | null {
  // The height grows by itself: the other measures need not be grown on each of these days.
  const alone = { day: input.measured.day, measures: { height: measured } };
  const heightOn = (day: CalendarDay): number => {
    const then = growBody({ ...input, measured: alone, event: day });
    return then.ok ? (then.grown.values.height?.value ?? 0) : 0;
  };
  const last = averageMonthsBetween(input.measured.day, input.event) + FARTHEST_MONTHS;
  for (let months = 0; months <= last; months += 0.25) {
    const day = dayAfter(input.measured.day, monthsInDays(months));
    if (heightOn(day) >= height) return day;
  }
  return null;
}
