export { type ChildReport, checkOrder, LEVELS, mustNotBeCut, type OrderReport } from './check-order.ts';
export { sizeText } from './cut-dress.ts';
export { libraryPages } from './library-pages.ts';
export { makePack, PACK_CONTENTS, type Pack, type PackDocument } from './make-pack.ts';
export { type NeededMeasure, neededMeasures } from './needed-measures.ts';
export type { Order } from './order.ts';
export { type OrderProblem, problemSentence } from './problem.ts';
export { LARGEST_ORDER, readOrder } from './read-order.ts';
export type { Finding } from './work-child.ts';
