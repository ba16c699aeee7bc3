import type { Sex } from './body.ts';
import { FORECAST_ERRORS, type ForecastCell } from './forecast-error-tables.ts';

/**
 * How far a forecast of height (mm) or weight (kg) misses, and how far a child goes back to the middle.
 * `spread`: the standard deviation of the miss, the measurers' own error in it.
 * `keeps`: the share of its distance from the middle that a child is thought to keep.
 */
export interface ForecastError {
  readonly spread: number;
  readonly keeps: number;
}

/**
 * Up to this age a forecast goes back to the middle as far as the two ages hang together; from the second age on the
 * child is thought to keep its place. In between one way runs into the other. Under two years the correlations are
 * low (0.4 to 0.9), from three on above 0.93 (Berkeley study, see data/SOURCES.md).
 */
const PULLED_UP_TO = 24;
const KEPT_FROM = 36;

/**
 * The miss grows with a power of the time. Between 3 and 6, and 6 and 12 months of the study that was 0.4 to 0.7 under
 * two years and 0.9 to 1 from eight years on. Below the shortest time that was studied a low power, beyond the longest a
 * high one, so that the miss is rather thought too large.
 */
const POWER_BEFORE = 0.7;
const POWER_AFTER = 1;

/** Two ages of the study further apart than this are not joined, months. */
const WIDEST_GAP = 12;

/** Nobody measures better than this (mm; kg): measurers of the ToyBox study, 2014, 0.7 to 2 mm; with a tape at home twice that, common practice, no source. */
const LEAST_SPREAD = { height: 4, weight: 0.2 } as const;

/**
 * The error of a forecast from an age over so many months (both more than 0), as Berkeley children missed it: read
 * between the ages and times of the study. Weight in kg for a child of middle weight.
 */
export function forecastError(
  measure: keyof typeof FORECAST_ERRORS,
  sex: Sex,
  ageMonths: number,
  months: number,
): ForecastError {
  const { spread: constant, correlation } = missWithConstantPlace(
    FORECAST_ERRORS[measure][sex],
    ageMonths,
    months,
  );
  const share = Math.min(Math.max((ageMonths - PULLED_UP_TO) / (KEPT_FROM - PULLED_UP_TO), 0), 1);
  const keeps = correlation + share * (1 - correlation);
  // With equal spreads s at both ages, a child that keeps k misses by s²(1 - 2kr + k²), one that keeps all by s²·2(1 - r).
  const ratio = (1 - 2 * keeps * correlation + keeps ** 2) / (2 * (1 - correlation));
  return { spread: Math.max(constant * Math.sqrt(ratio), LEAST_SPREAD[measure]), keeps };
}

interface Miss {
  readonly months: number;
  readonly spread: number;
  readonly correlation: number;
}

function missWithConstantPlace(cells: readonly ForecastCell[], age: number, months: number): Miss {
  // Boys' heights begin at three months.
  const youngest = Math.min(...cells.map(([at]) => at));
  const studied = [3, 6, 12].flatMap((time) => missAtAge(cells, Math.max(age, youngest), time) ?? []);
  const after = studied.findIndex((miss) => miss.months >= months);
  const to = studied[after < 0 ? studied.length - 1 : after];
  const from = studied[Math.max((after < 0 ? studied.length : after) - 1, 0)];
  if (from === undefined || to === undefined) throw new Error('No child of this age was studied');
  const power = months < from.months ? POWER_BEFORE : POWER_AFTER;
  const read = (of: (miss: Miss) => number, steepness: number): number =>
    from.months < months && months < to.months
      ? betweenTimes(from.months, of(from), to.months, of(to), months)
      : of(to) * (months / to.months) ** steepness;
  // 1 - r grows as the square of the miss. A child never goes to the other side of the middle.
  const apart = read(({ correlation }) => 1 - correlation, 2 * power);
  return {
    months,
    spread: read(({ spread }) => spread, power),
    correlation: Math.min(Math.max(1 - apart, 0), 1 - 1e-9),
  };
}

/** Straight on logarithmic paper. */
function betweenTimes(
  time: number,
  value: number,
  laterTime: number,
  laterValue: number,
  at: number,
): number {
  return value * (laterValue / value) ** (Math.log(at / time) / Math.log(laterTime / time));
}

/** The miss over one of the studied times, between the two nearest ages; null where those lie too far apart. */
function missAtAge(cells: readonly ForecastCell[], age: number, months: number): Miss | null {
  const studied = cells.filter(([, time]) => time === months);
  const ages = studied.map(([at]) => at);
  const last = studied.at(-1);
  const after = studied.findIndex(([at]) => at >= age);
  const to = after < 0 ? (months === 12 ? last : undefined) : studied[after];
  const from = after > 0 ? studied[after - 1] : to;
  if (from === undefined || to === undefined || Math.min(...ages) > age) return null;
  if (to[0] - from[0] > WIDEST_GAP && age !== to[0]) return null;
  const share = to[0] === from[0] ? 0 : (age - from[0]) / (to[0] - from[0]);
  return {
    months,
    spread: from[2] + share * (to[2] - from[2]),
    correlation: from[3] + share * (to[3] - from[3]),
  };
}
