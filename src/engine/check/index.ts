import { armholeRatio, armPasses } from './arm-passes.ts';
import { armholeDepth } from './armhole-depth.ts';
import { chestEase, waistEase } from './body-ease.ts';
import { capEase } from './cap-ease.ts';
import type { Check, CheckInput } from './check.ts';
import { closingLongEnough } from './closing-long-enough.ts';
import { collarMatches } from './collar-matches.ts';
import { cornersRunSmooth } from './corners-run-smooth.ts';
import { facingMatches } from './facing-matches.ts';
import { gatherRatio } from './gather-ratio.ts';
import { handPasses } from './hand-passes.ts';
import { headPasses, neckClears } from './head-passes.ts';
import { hemWalks } from './hem-walks.ts';
import { liningFits } from './lining-fits.ts';
import { lookAt, type Rule } from './look.ts';
import { netCaution } from './net-caution.ts';
import { notchesMeet } from './notches-meet.ts';
import { outlineClosed, outlineSimple } from './outlines.ts';
import { pleatJoins } from './pleat-joins.ts';
import { pleatsWhole } from './pleats-whole.ts';
import { seamLengths } from './seam-lengths.ts';
import { shoulderNarrow } from './shoulder-narrow.ts';
import { smallParts } from './small-parts.ts';
import { tiersMatch } from './tiers-match.ts';
import { tiesAndBows } from './ties-and-bows.ts';

export {
  type Check,
  type CheckCode,
  type CheckInput,
  CLOTH_KINDS,
  type ClothKind,
  type EaseBounds,
  type Level,
} from './check.ts';
export { summarise } from './summary.ts';

/** Every check, in the order in which a maker reads them: the drawing, the seams, the wearer, the sewing. */
const RULES: readonly Rule[] = [
  outlineClosed,
  outlineSimple,
  seamLengths,
  cornersRunSmooth,
  notchesMeet,
  liningFits,
  facingMatches,
  collarMatches,
  pleatsWhole,
  pleatJoins,
  tiersMatch,
  gatherRatio,
  headPasses,
  neckClears,
  armPasses,
  armholeRatio,
  handPasses,
  capEase,
  chestEase,
  waistEase,
  armholeDepth,
  closingLongEnough,
  hemWalks,
  shoulderNarrow,
  netCaution,
  tiesAndBows,
  smallParts,
];

/**
 * Asks every check of a garment and gives all that they find, good and bad, in a fixed order. Throws only when a
 * seam names a piece or an edge that the garment has not: that is a mistake of the design step, not of the maker.
 */
export const checkGarment = (input: CheckInput): readonly Check[] => {
  const look = lookAt(input);
  return RULES.flatMap((rule) => rule(look));
};
