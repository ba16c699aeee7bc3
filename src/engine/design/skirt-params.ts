import { edgeEnd, findEdge } from '../piece/index.ts';
import { bodicePieces } from './bodice.ts';
import { lengthParam, type StepContext } from './step.ts';

/** How far the dress's waist seam lies above the natural waist at the side, mm; less than nothing where it is dropped. */
function raisedBy({ body, garment }: StepContext): number {
  const feet = bodicePieces(garment, 'front').flatMap((piece) =>
    findEdge(piece, 'side') === undefined ? [] : [edgeEnd(piece, 'side').y],
  );
  const seam = Math.max(...feet);
  const above = body.values.backNeckToWaist.mm + 15 - seam;
  return above < -AT_THE_WAIST ? above : Math.max(0, above);
}

/** A waist seam within this of the natural waist is meant to be at it, mm. */
const AT_THE_WAIST = 25;

/** Shortest skirt that is made, mm; a shorter one would be a frill. */
const SHORTEST = 80;

/** From the waist seam to just above the knee. */
const toTheKnee = (c: StepContext): number =>
  Math.max(SHORTEST, c.body.values.waistHeight.mm - c.body.values.kneeHeight.mm - 20 + raisedBy(c));

/** Finished length of a skirt, the same for every kind. */
export const skirtLength = lengthParam(
  toTheKnee,
  (c) => [SHORTEST, c.body.values.waistHeight.mm + raisedBy(c)],
  "2-6 years just above the knee, 7-11 at the knee (Woman's Institute, 1922, as reported); floor length at most",
);
