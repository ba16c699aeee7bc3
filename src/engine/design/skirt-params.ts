import { edgeEnd, pieceOf } from '../piece/index.ts';
import { lengthParam, type StepContext } from './step.ts';

/** How far the dress's waist seam lies above the natural waist at the side, mm. */
function raisedBy({ body, garment }: StepContext): number {
  const seam = edgeEnd(pieceOf(garment, 'front'), 'side').y;
  return Math.max(0, body.values.backNeckToWaist.mm + 15 - seam);
}

/** From the waist seam to just above the knee. */
const toTheKnee = (c: StepContext): number =>
  c.body.values.waistHeight.mm - c.body.values.kneeHeight.mm - 20 + raisedBy(c);

/** Finished length of a skirt, the same for every kind. */
export const skirtLength = lengthParam(
  toTheKnee,
  (c) => [80, c.body.values.waistHeight.mm + raisedBy(c)],
  "2-6 years just above the knee, 7-11 at the knee (Woman's Institute, 1922, as reported); floor length at most",
);
