export { lengthToBuy } from './buy-length.ts';
export type {
  ClothRepeat,
  Flaw,
  LayCloth,
  LayPiece,
  LayPin,
  StripeMatch,
} from './cloth-rules.ts';
export { type ClothAtHand, type LengthsProgress, layOnLengths } from './lay-lengths.ts';
export { type LayPlan, planLay } from './lay-plan.ts';
export type { LayRefusal } from './lay-refusal.ts';
export { clothRefusals } from './lay-refusals.ts';
export { layOffcuts, type Offcut } from './offcuts.ts';
export {
  type HelperLink,
  helpingSearch,
  type LegReport,
  type LegRequest,
  packWithHelp,
} from './pack/index.ts';
export { type LaidOnCloth, type LaidStretch, type Lay, readLay } from './read-lay.ts';
export { type LayRunSettings, type Packer, type PlacedStretch, runLay } from './run-lay.ts';
export { type SavedCloth, savedAgainstTable, savedCloth } from './saved-cloth.ts';
export { formatSellingLength, roundUpToUnit, SELLING_UNITS, type SellingUnit } from './selling-unit.ts';
export { sideBySide } from './side-by-side.ts';
