export { type Batch, batchSteps } from './batch.ts';
export type { ClothAdvice } from './cloth-advice.ts';
export { type Broken, handPlan } from './hand-order.ts';
export type { SewInput } from './look.ts';
export { hoursAndMinutes, stepTimes, type TimedStep } from './minutes.ts';
export { type PlannedStep, type SewPlan, sewPlan } from './sew-plan.ts';
export { type EdgeRef, STEP_KINDS } from './step.ts';
