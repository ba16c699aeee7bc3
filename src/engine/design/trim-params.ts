import { closingOverlap, type Garment, skirtDepth } from '../piece/index.ts';
import type { StepContext } from './step.ts';
import { waistRing } from './waist-ring.ts';

/** Places where a bow may sit; the cautions differ by place. */
export const BOW_PLACES = [
  'waist-back',
  'waist-front',
  'chest',
  'neck',
  'nape',
  'shoulder',
  'sleeve',
  'skirt',
] as const;

export const BOW_PLACE_WORDS = {
  'place.waist-back': 'Waist, at the back',
  'place.waist-front': 'Waist, in front',
  'place.chest': 'Chest',
  'place.neck': 'Neck, in front',
  'place.nape': 'Nape',
  'place.shoulder': 'Shoulder',
  'place.sleeve': 'Sleeve',
  'place.skirt': 'Skirt',
} as const;

/**
 * A tied sash may hang 360 mm from the tying point, undone, and never below the hem (public summaries of the 2007
 * edition of EN 14682).
 */
const SASH_HANGS = 360;

/** How far a sash may hang here, mm: what the summaries allow, or the skirt (one to the knee when there is none). */
export const sashMayHang = ({ garment, body }: StepContext): number =>
  Math.min(SASH_HANGS, skirtDepth(garment) ?? (body.values.waistHeight.mm - body.values.kneeHeight.mm) * 0.9);

/** Finished waist of half the front and half the back, mm, without the overlap of a buttoned back; null without a waist. */
export function finishedWaist(garment: Garment): { readonly front: number; readonly back: number } | null {
  const ring = waistRing(garment);
  if (ring === null) return null;
  return { front: ring.frontHalf, back: ring.backHalf - closingOverlap(garment.closing) / 2 };
}
