export { type ChildReport, checkOrder, LEVELS, mustNotBeCut, type OrderReport } from './check-order.ts';
export { sizeText } from './cut-dress.ts';
export { type LaidCloths, layCloths } from './lay-cloths.ts';
export {
  makePack,
  type Pack,
  type PackDocument,
  type PackResult,
  type PackStep,
  type PackTools,
} from './make-pack.ts';
export {
  type MeasureUse,
  type NeededMeasure,
  type NeededMeasures,
  neededMeasures,
} from './needed-measures.ts';
export type { Order, OrderChild } from './order.ts';
export { type OrderProblem, problemSentence } from './problem.ts';
export { LARGEST_ORDER, type ReadOrder, readOrder } from './read-order.ts';
export type { Finding } from './work-child.ts';
