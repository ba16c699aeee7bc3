import type { Body } from '../body/index.ts';

/** Drafts set the nape this far below the neck points, mm ("sixth of the neck": back neck depth 1.5 cm). */
const NAPE_BELOW_NECK_POINT = 15;

/**
 * Girth of the body at a level below the neck points, mm: the chest down to the armpits, the waist from the natural
 * waist on, and straight between them (our own rule; nothing is measured there).
 */
export function bodyGirthAt({ values }: Body, y: number): number {
  const armpits = NAPE_BELOW_NECK_POINT + values.scyeDepth.mm;
  const waist = NAPE_BELOW_NECK_POINT + values.backNeckToWaist.mm;
  if (y >= waist) return values.waistGirth.mm;
  const down = Math.max(y - armpits, 0) / Math.max(waist - armpits, 1);
  return values.chestGirth.mm + Math.min(down, 1) * (values.waistGirth.mm - values.chestGirth.mm);
}
