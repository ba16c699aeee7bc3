export { hasWords, tell } from './catalogue.ts';
export {
  type ChosenStep,
  type DesignProblem,
  type DressResult,
  type DressWish,
  designDress,
} from './design-dress.ts';
export { type DesignStep, STAGES, type Stage, type StepContext } from './step.ts';
export { DESIGN_STEPS, findStep } from './steps.ts';
