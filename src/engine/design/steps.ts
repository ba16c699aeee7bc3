import { aLineSkirt } from './a-line-skirt.ts';
import { armholeBinding } from './armhole-binding.ts';
import { armholeFacing } from './armhole-facing.ts';
import { backButtons } from './back-buttons.ts';
import { backLacing } from './back-lacing.ts';
import { backTies } from './back-ties.ts';
import { backZip } from './back-zip.ts';
import { belt } from './belt.ts';
import { bishopSleeve } from './bishop-sleeve.ts';
import { capSleeve } from './cap-sleeve.ts';
import { circleSkirt } from './circle-skirt.ts';
import { coveredButtons } from './covered-buttons.ts';
import { dropShoulder } from './drop-shoulder.ts';
import { droppedWaist } from './dropped-waist.ts';
import { edgeStrip } from './edge-strip.ts';
import { flatCollar } from './flat-collar.ts';
import { flutterSleeve } from './flutter-sleeve.ts';
import { fullBackOpening } from './full-back-opening.ts';
import { gatheredSkirt } from './gathered-skirt.ts';
import { goredSkirt } from './gored-skirt.ts';
import { growthHem } from './growth-hem.ts';
import { growthTuck } from './growth-tuck.ts';
import { highLowHem } from './high-low-hem.ts';
import { keyholeBack } from './keyhole-back.ts';
import { letOutSeams } from './let-out-seams.ts';
import { lining } from './lining.ts';
import { longBody } from './long-body.ts';
import { nappyRoom } from './nappy-room.ts';
import { neckBinding } from './neck-binding.ts';
import { neckFacing } from './neck-facing.ts';
import { neckFrill } from './neck-frill.ts';
import { neckline } from './neckline.ts';
import { netOverskirt } from './net-overskirt.ts';
import { OWN_STEPS } from './own-steps.ts';
import { petticoat } from './petticoat.ts';
import { pleatedSkirt } from './pleated-skirt.ts';
import { princessLine } from './princess-line.ts';
import { puffSleeve } from './puff-sleeve.ts';
import { rosette } from './rosette.ts';
import { roundTummy } from './round-tummy.ts';
import { ruffle } from './ruffle.ts';
import { sash } from './sash.ts';
import { seated } from './seated.ts';
import { setInSleeve } from './set-in-sleeve.ts';
import { sewnBow } from './sewn-bow.ts';
import { shoulderDarts } from './shoulder-darts.ts';
import { shoulderSlope } from './shoulder-slope.ts';
import { shoulderStraps } from './shoulder-straps.ts';
import { shoulderStuds } from './shoulder-studs.ts';
import { sideShaping } from './side-shaping.ts';
import { sleeveBand } from './sleeve-band.ts';
import { sleeveBow } from './sleeve-bow.ts';
import { sleeveExtension } from './sleeve-extension.ts';
import type { DesignStep } from './step.ts';
import { tiedBow } from './tied-bow.ts';
import { tieredSkirt } from './tiered-skirt.ts';
import { unevenShoulders } from './uneven-shoulders.ts';
import { waistDarts } from './waist-darts.ts';
import { waistLevel } from './waist-level.ts';
import { wrapFront } from './wrap-front.ts';
import { yoke } from './yoke.ts';

/** Every design step that there is. A new one is its own file and one line here. */
export const DESIGN_STEPS: readonly DesignStep[] = [
  longBody,
  roundTummy,
  shoulderSlope,
  nappyRoom,
  seated,
  waistLevel,
  droppedWaist,
  sideShaping,
  waistDarts,
  neckline,
  dropShoulder,
  yoke,
  backZip,
  princessLine,
  wrapFront,
  backButtons,
  backLacing,
  backTies,
  shoulderStuds,
  keyholeBack,
  setInSleeve,
  puffSleeve,
  bishopSleeve,
  flutterSleeve,
  capSleeve,
  edgeStrip,
  sleeveExtension,
  sleeveBand,
  sleeveBow,
  gatheredSkirt,
  pleatedSkirt,
  circleSkirt,
  tieredSkirt,
  aLineSkirt,
  goredSkirt,
  highLowHem,
  netOverskirt,
  petticoat,
  lining,
  fullBackOpening,
  growthHem,
  growthTuck,
  letOutSeams,
  neckFacing,
  armholeFacing,
  neckBinding,
  armholeBinding,
  flatCollar,
  neckFrill,
  shoulderDarts,
  unevenShoulders,
  ...OWN_STEPS,
  sash,
  belt,
  tiedBow,
  sewnBow,
  ruffle,
  shoulderStraps,
  coveredButtons,
  rosette,
];

export const findStep = (id: string): DesignStep | undefined => DESIGN_STEPS.find((step) => step.id === id);
