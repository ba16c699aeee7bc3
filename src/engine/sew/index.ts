export { type Batch, batchSteps } from './batch.ts';
export type { ClothAdvice } from './cloth-advice.ts';
export { type Broken, type HandOrder, type HandPlan, handPlan } from './hand-order.ts';
export type { SewInput } from './look.ts';
export { type StepTimes, stepTimes, type TimedStep } from './minutes.ts';
export { type PlannedStep, type SewPlan, type SewPlanResult, sewPlan } from './sew-plan.ts';
export { type EdgeRef, STEP_KINDS, type StepKind } from './step.ts';
