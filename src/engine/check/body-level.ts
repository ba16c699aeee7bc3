import { type Body, girthBelowWaist } from '../body/index.ts';

/** Drafts set the nape this far below the neck points, mm ("sixth of the neck": back neck depth 1.5 cm). */
const NAPE_BELOW_NECK_POINT = 15;

/** Level of the natural waist below the neck points, mm. */
export const naturalWaist = ({ values }: Body): number => NAPE_BELOW_NECK_POINT + values.backNeckToWaist.mm;

/** Waists that lie this little below the natural one are meant to be at it, mm: methods differ in where it lies. */
const LEVELS_VARY = 20;

/**
 * Girth of the body at a level below the neck points, mm: the chest down to the armpits, straight from there to
 * the natural waist, and straight on to the hip (our own rule; nothing is measured between them).
 */
export function bodyGirthAt(body: Body, y: number): number {
  const { values } = body;
  const armpits = NAPE_BELOW_NECK_POINT + values.scyeDepth.mm;
  const waist = naturalWaist(body);
  if (y >= waist) return girthBelowWaist(body, y - waist > LEVELS_VARY ? y - waist : 0);
  const down = Math.max(y - armpits, 0) / Math.max(waist - armpits, 1);
  return values.chestGirth.mm + Math.min(down, 1) * (values.waistGirth.mm - values.chestGirth.mm);
}
