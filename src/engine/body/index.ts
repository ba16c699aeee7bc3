export type { Body, BodyInput, BodyRule, BodyValue, EstimatedValue, Measured, Sex } from './body.ts';
export { checkMeasures } from './check-measures.ts';
export { type CompletedBody, completeBody } from './complete-body.ts';
export { AGE_MONTHS, MEASURE_IDS, MEASURES, type MeasureId } from './measures.ts';
export { type BodyProblem, type BodyProblemCode, problemSaying } from './problem.ts';
