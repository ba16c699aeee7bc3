export { CLOTH_KINDS } from '../check/index.ts';
export { changeUnits } from './change-units.ts';
export {
  type ChildDrawing,
  type ChildReport,
  checkChild,
  checkOrder,
  countOf,
  drawChild,
  LEVELS,
  mustNotBeCut,
  type OrderReport,
  reportOnDrawing,
} from './check-order.ts';
export type { PackDocument } from './child-papers.ts';
export { sizeText } from './cut-dress.ts';
export { monthsBetween, readDay } from './day.ts';
export { safeFileName } from './file-names.ts';
export type { Finding } from './finding.ts';
export { grownWords } from './growth-findings.ts';
export { type GrowthReport, growthReport } from './growth-report.ts';
export { type GrowthSection, growthSections } from './growth-words.ts';
export { type KeptOrder, readKeptOrder } from './kept-order.ts';
export { LARGEST_ORDER } from './largest-order.ts';
export { clothsToBuy, type LaidCloths, type LayStep } from './lay-cloths.ts';
export { layPack } from './lay-pack.ts';
export { libraryPages } from './library-pages.ts';
export {
  childPack,
  makePack,
  PACK_CONTENTS,
  type Pack,
  packInTurn,
  partyPack,
} from './make-pack.ts';
export { type NeededMeasure, neededMeasures } from './needed-measures.ts';
export type { Order, OrderChild } from './order.ts';
export { parseWeight } from './parse-weight.ts';
export { type OrderProblem, problemSentence } from './problem.ts';
export { readOrder, readOrderFile, readOrderValue } from './read-order.ts';
export {
  type ChildFile,
  CLOTH_ROLES,
  type ClothFile,
  type EarlierFile,
  type OrderFile,
  OWN_FIELDS,
  type PaperBlockFile,
  type StepFile,
} from './schema.ts';
export { dressWish, exactDress } from './work-child.ts';
