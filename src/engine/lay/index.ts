export { type LengthToBuy, lengthToBuy } from './buy-length.ts';
export type {
  Cloth,
  ClothRepeat,
  Flaw,
  Folding,
  GrainRule,
  LayCloth,
  LayPiece,
  LayPin,
  Repeat,
  StripeMatch,
} from './cloth-rules.ts';
export type { LayLayer } from './lay-drafts.ts';
export { type ClothAtHand, type LaidLength, type LengthsProgress, layOnLengths } from './lay-lengths.ts';
export { type LayPlan, type LayPlanResult, planLay } from './lay-plan.ts';
export type { LayRefusal } from './lay-refusal.ts';
export { clothRefusals } from './lay-refusals.ts';
export { layOffcuts, type Offcut } from './offcuts.ts';
export type { PinPoint } from './pin-points.ts';
export { type LaidOnCloth, type LaidStretch, type Lay, readLay } from './read-lay.ts';
export { type LayProgress, type LayRunSettings, type PlacedStretch, runLay } from './run-lay.ts';
export { type SavedCloth, savedAgainstTable, savedCloth } from './saved-cloth.ts';
export { formatSellingLength, roundUpToUnit, SELLING_UNITS, type SellingUnit } from './selling-unit.ts';
export { sideBySide } from './side-by-side.ts';
export { lengthByTable, WIDTH_TABLE } from './width-table.ts';
