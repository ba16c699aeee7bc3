export type { Body, BodyInput, BodyValue, Measured } from './body.ts';
export {
  averageMonthsBetween,
  type CalendarDay,
  dayAfter,
  daysBetween,
  dayText,
  monthsInDays,
} from './calendar.ts';
export { type CompletedBody, completeBody } from './complete-body.ts';
export type { Measurings } from './doubt-again.ts';
export { type DoubtContext, doubtMeasures } from './doubt-measures.ts';
export type { OtherChild } from './doubt-slips.ts';
export { measureNext, type NextMeasure } from './fill-next.ts';
export {
  type GrownBody,
  type GrownFrom,
  type GrownValue,
  type GrowthResult,
  growBody,
} from './grow-body.ts';
export { grownFromSaying } from './grown-from.ts';
export {
  type DressRoom,
  type GrowthAdvice,
  growthAdvice,
  growthBand,
  type OneSizeMore,
} from './growth-advice.ts';
export { type ChartPoint, type GrowthChart, growthChart } from './growth-curves.ts';
export { type GrowthInput, KG_PER_POUND, type MeasuringDay } from './growth-input.ts';
export { type GrowthProblem, growthProblemSaying } from './growth-problem.ts';
export {
  type GrowthCharts,
  type GrowthMeasure,
  type GrowthReferenceId,
  growthReference,
  referenceAges,
  referenceValue,
  referenceZ,
} from './growth-references.ts';
export { AGE_MONTHS, MEASURE_IDS, MEASURES, type MeasureId } from './measures.ts';
export { centileOf, NINETY_PERCENT, zOfCentile } from './normal-curve.ts';
export { type BodyProblem, problemSaying } from './problem.ts';
export {
  ageOfHeight,
  type LabelDifferences,
  type SizeLabels,
  sizeLabels,
  type UsLabel,
} from './size-labels.ts';
export { growOneSizeMore } from './size-more.ts';
export { type StartingBody, type StartingValue, type StartingWish, startingBody } from './starting-body.ts';
export { surveyMean } from './survey.ts';
export { girthBelowWaist, waistToHip } from './waist-to-hip.ts';
