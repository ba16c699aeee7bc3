export { CLOTH_KINDS } from '../check/index.ts';
export type { TimedStep } from '../sew/index.ts';
export { changeUnits, withUnit } from './change-units.ts';
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
export { childNames } from './child-names.ts';
export { growthSheet, MEASURING_SHEET, measuringSheet, type PackDocument } from './child-papers.ts';
export { sizeText } from './cut-dress.ts';
export { monthsBetween, readDay } from './day.ts';
export { safeFileName } from './file-names.ts';
export { type LayStep, lengthSoFar, type PlacedLength } from './find-lay.ts';
export type { Finding } from './finding.ts';
export { growthCharts } from './growth-charts.ts';
export { grownWords } from './growth-findings.ts';
export { type GrowthReport, growthOf, growthReport } from './growth-report.ts';
export { type GrowthSection, growthSections } from './growth-words.ts';
export { keptLays, LAY_ENGINE, layFile } from './kept-lays.ts';
export { type KeptOrder, readKeptOrder } from './kept-order.ts';
export { LARGEST_ORDER } from './largest-order.ts';
export { boughtByTable } from './lay-by-table.ts';
export {
  clothsToBuy,
  type LaidCloth,
  type LaidCloths,
  laidApart,
  layInTurn,
  PACK_SEARCH,
} from './lay-cloths.ts';
export { layPack } from './lay-pack.ts';
export { layRefusalSentence } from './lay-refusal-words.ts';
export { libraryPages } from './library-pages.ts';
export {
  childPack,
  makePack,
  PACK_CONTENTS,
  type Pack,
  packInTurn,
  partyPack,
} from './make-pack.ts';
export { changeWords } from './measure-change.ts';
export { nextWords } from './measuring-pages.ts';
export { type NeededMeasure, neededMeasures } from './needed-measures.ts';
export type { KeptLay, KeptLength, Order, OrderChild } from './order.ts';
export { parseWeight } from './parse-weight.ts';
export { type CalendarNames, calendarOf } from './pay/calendar-of.ts';
export { issuePaper } from './pay/issue.ts';
export { orderToCopy, type PaperNumber, paperNumbersIn, paperNumberText } from './pay/paper-number.ts';
export {
  type IssuedPaper,
  PAPER_KINDS,
  type PaperKind,
  type PayFile,
  WORK_KINDS,
} from './pay/pay-form.ts';
export {
  issuedDocument,
  type LaidOrder,
  laidOrder,
  type PayList,
  payListDocument,
  payOfOrder,
} from './pay/pay-order.ts';
export {
  buyText,
  daysSaying,
  dayWords,
  fullWeekSaying,
  goodsName,
  hoursOf,
  shownDay,
  stashSaying,
  stashText,
} from './pay/pay-words.ts';
export type { PayWork } from './pay/pay-work.ts';
export { readWorkroomFile } from './pay/read-workroom-file.ts';
export { readWorkroom, USUAL_CURRENCY, USUAL_TIMES } from './pay/workroom.ts';
export {
  isWorkroomPart,
  WEEKDAYS,
  type WorkroomFile,
  type WorkroomPart,
} from './pay/workroom-form.ts';
export { type OrderProblem, problemSentence } from './problem.ts';
export { ownerOf } from './read-lay-back.ts';
export { readOrder, readOrderFile, readOrderValue } from './read-order.ts';
export {
  type ChildFile,
  CLOTH_ROLES,
  type ClothFile,
  type EarlierFile,
  type LayFile,
  type OrderFile,
  OWN_FIELDS,
  type PaperBlockFile,
  type StepFile,
} from './schema.ts';
export { cautionsOf } from './sew/cautions.ts';
export { type ChildSewing, type ChildSewingResult, childSewing } from './sew/child-sewing.ts';
export { figureOf, partySewPages, reportDrawing, sewPages } from './sew/sew-pages.ts';
export type { SewingFile } from './sew/sewing-form.ts';
export { timedSteps } from './sew/timed-steps.ts';
export { dressWish, exactDress } from './work-child.ts';
