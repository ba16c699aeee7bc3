import type { Sex } from './body.ts';
import { type BuildFit, SURVEY_BY_AGE, SURVEY_BY_BUILD, type SurveyId } from './survey-tables.ts';

/** A value with the standard deviation of one child around it, mm. */
export interface SurveyValue {
  readonly mm: number;
  readonly spread: number;
}

/** Ages (months) and statures (mm) of children whom the survey measured. */
export const SURVEYED = { ages: [24, 168], statures: [840, 1650] } as const;

/** The mean of US children of an age (Snyder 1977), mm; between the middles of the age groups in straight lines. */
export function surveyMean(sex: Sex, id: SurveyId, ageMonths: number): number {
  return surveyByAge(sex, id, ageMonths).mm;
}

/** The mean and spread at an age (months); outside the middles of the first and last age group those hold. */
export function surveyByAge(sex: Sex, id: SurveyId, ageMonths: number): SurveyValue {
  const groups = SURVEY_BY_AGE[sex][id];
  const after = groups.findIndex(([age]) => age >= ageMonths);
  const to = groups[after < 0 ? groups.length - 1 : after];
  const from = groups[Math.max((after < 0 ? groups.length : after) - 1, 0)];
  if (from === undefined || to === undefined) throw new Error(`Nothing surveyed of ${id}`);
  const share = to[0] === from[0] ? 0 : Math.min(Math.max((ageMonths - from[0]) / (to[0] - from[0]), 0), 1);
  return { mm: from[1] + share * (to[1] - from[1]), spread: from[2] + share * (to[2] - from[2]) };
}

/** Statures of the middle child of 54 and of 126 months, where the two age bands of the fits have their middle, mm. */
const BAND_STATURES = [1060, 1420] as const;

/** How far the older of the two age bands holds for a stature (mm), 0 to 1: they run into each other. */
export function shareOfOlder(stature: number): number {
  const [younger, older] = BAND_STATURES;
  return Math.min(Math.max((stature - younger) / (older - younger), 0), 1);
}

/**
 * The mean among children of one stature (mm), or of one stature and weight (kg), by the survey's least squares; the
 * two age bands run into each other by stature.
 */
export function surveyByBuild(sex: Sex, id: SurveyId, stature: number, weight: number | null): SurveyValue {
  const fits = SURVEY_BY_BUILD[sex][id][weight === null ? 'height' : 'heightAndWeight'];
  const share = shareOfOlder(stature);
  const read = ([constant, perMm, perKg, spread]: BuildFit): SurveyValue => ({
    mm: constant + perMm * stature + perKg * (weight ?? 0),
    spread,
  });
  const [young, old] = [read(fits[0]), read(fits[1])];
  return {
    mm: young.mm + share * (old.mm - young.mm),
    spread: young.spread + share * (old.spread - young.spread),
  };
}
