import type { MeasureId } from './measures.ts';

/** `of` lies between `least` and `most` times `to` on every child. */
interface Relation {
  readonly of: MeasureId;
  readonly to: MeasureId;
  readonly least: number;
  readonly most: number;
}

/**
 * Pairs that cannot be further apart on one body. The limits leave room beyond the averages of `size-tables.ts`
 * (waist 0.82 to 0.96 of the chest, for instance); how much room is common practice, no source.
 */
export const RELATIONS: readonly Relation[] = [
  { of: 'waistGirth', to: 'chestGirth', least: 0.6, most: 1.3 },
  { of: 'hipGirth', to: 'chestGirth', least: 0.7, most: 1.5 },
  { of: 'neckBaseGirth', to: 'chestGirth', least: 0.28, most: 0.7 },
  { of: 'shoulderLength', to: 'chestGirth', least: 0.07, most: 0.26 },
  { of: 'backWidth', to: 'chestGirth', least: 0.28, most: 0.58 },
  { of: 'frontChestWidth', to: 'chestGirth', least: 0.25, most: 0.56 },
  { of: 'upperArmGirth', to: 'chestGirth', least: 0.2, most: 0.5 },
  { of: 'wristGirth', to: 'upperArmGirth', least: 0.4, most: 1 },
  { of: 'backNeckToWaist', to: 'height', least: 0.15, most: 0.35 },
  { of: 'scyeDepth', to: 'backNeckToWaist', least: 0.25, most: 0.8 },
  { of: 'armLength', to: 'height', least: 0.2, most: 0.45 },
  { of: 'waistHeight', to: 'height', least: 0.4, most: 0.75 },
  { of: 'kneeHeight', to: 'height', least: 0.16, most: 0.38 },
];
