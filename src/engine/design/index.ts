export { hasWords, tell } from './catalogue.ts';
export {
  type ChosenStep,
  type DesignProblem,
  type DressResult,
  type DressWish,
  designDress,
  type SkippedChange,
  stepsBefore,
} from './design-dress.ts';
export { findDress, LIBRARY } from './library.ts';
export { type DesignStep, STAGES, type StepContext } from './step.ts';
export { DESIGN_STEPS, findStep } from './steps.ts';
