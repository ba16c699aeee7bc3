export { lengthToBuy } from './buy-length.ts';
export type {
  ClothRepeat,
  Flaw,
  LayCloth,
  LayPiece,
  LayPin,
  StripeMatch,
} from './cloth-rules.ts';
export {
  GRAIN_RULES,
  type GrainRule,
} from './cloth-rules.ts';
export { packAtOnce } from './first-lay.ts';
export { grownOutline } from './grown-outline.ts';
export { type KeptPlace, keptPlaces, lengthOf, pinsOf, placedAgain } from './kept-lay.ts';
export { type ClothAtHand, type LengthsProgress, layOnLengths, planOnLength } from './lay-lengths.ts';
export { layMark } from './lay-mark.ts';
export { type LayPlan, planLay } from './lay-plan.ts';
export type { LayRefusal } from './lay-refusal.ts';
export { clothRefusals } from './lay-refusals.ts';
export { obstaclesOn } from './obstacles.ts';
export { layOffcuts, type Offcut } from './offcuts.ts';
export {
  type HelperLink,
  helpingSearch,
  type LegReport,
  type LegRequest,
  type PackItem,
  type PackProblem,
  type PackVariant,
  packWithHelp,
  startPacking,
} from './pack/index.ts';
export { type PlacedFault, placedFaults, stretchJudge } from './placed-faults.ts';
export { type ShapeStore, shapeStore } from './poses.ts';
export { type LaidOnCloth, type LaidStretch, type Lay, readLay } from './read-lay.ts';
export { type LayRunSettings, type Packer, type PlacedItem, type PlacedStretch, runLay } from './run-lay.ts';
export { type SavedCloth, savedAgainstTable, savedCloth } from './saved-cloth.ts';
export { formatSellingLength, roundUpToUnit, SELLING_UNITS, type SellingUnit } from './selling-unit.ts';
export { sideBySide } from './side-by-side.ts';
