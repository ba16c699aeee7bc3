import type { Body } from './body.ts';

/** Part of the way from the waist to the knee at which the hip is widest (common practice, no source). */
const SHARE = 1 / 3;

/** How far the widest part of the hip lies below the natural waist, mm. Nobody measures it; it follows the leg. */
export const waistToHip = ({ values }: Pick<Body, 'values'>): number =>
  Math.max(values.waistHeight.mm - values.kneeHeight.mm, 0) * SHARE;

/** Girth of the body this far below the natural waist, mm: straight from waist to hip, the hip from there on. */
export function girthBelowWaist(body: Pick<Body, 'values'>, below: number): number {
  const { waistGirth, hipGirth } = body.values;
  const share = Math.min(Math.max(below / Math.max(waistToHip(body), 1), 0), 1);
  return waistGirth.mm + share * (hipGirth.mm - waistGirth.mm);
}
