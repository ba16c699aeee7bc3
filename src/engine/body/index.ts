export type { Body, BodyInput, BodyValue, Measured } from './body.ts';
export { checkMeasures } from './check-measures.ts';
export { completeBody } from './complete-body.ts';
export { AGE_MONTHS, MEASURE_IDS, MEASURES, type MeasureId } from './measures.ts';
export { type BodyProblem, problemSaying } from './problem.ts';
export { girthBelowWaist, waistToHip } from './waist-to-hip.ts';
