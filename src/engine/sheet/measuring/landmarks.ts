/**
 * Places on the body between which a tape runs, each with the letter that marks it in the drawings. How to find them
 * stands in the catalogue under `landmark.<id>`.
 */
export const LANDMARKS = {
  nape: 'A',
  neckSide: 'B',
  neckHollow: 'C',
  shoulderBone: 'D',
  armpit: 'E',
  waistCord: 'F',
  wristBone: 'G',
  kneeCrease: 'H',
} as const;

export type LandmarkId = keyof typeof LANDMARKS;
