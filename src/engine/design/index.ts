export { hasWords, tell } from './catalogue.ts';
export {
  type ChosenStep,
  type DesignProblem,
  type DressResult,
  designDress,
  type SkippedChange,
} from './design-dress.ts';
export { findDress, LIBRARY } from './library.ts';
export { type DesignStep, STAGES } from './step.ts';
export { DESIGN_STEPS, findStep } from './steps.ts';
