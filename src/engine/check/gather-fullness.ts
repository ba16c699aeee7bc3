import type { ClothKind } from './check.ts';

/** Cloth cut to finished length, from least to most. */
export type Ratios = readonly [least: number, most: number];

/** What gathers well in a sort of cloth. Outside its usual range a ratio is unusual; beyond the limit it is wrong. */
export interface Fullness {
  /** At the waist of a skirt, or a layer over it. */
  readonly skirt: Ratios;
  /** From one tier to the next. */
  readonly tier: Ratios;
  /** A frill or a ruffle, of which the usual range is 1.5 to 3 whatever the cloth (page on gathers). */
  readonly ruffle: Ratios;
  readonly limit: number;
}

/** Below about 1.2 it is ease rather than gathers (common practice, no source). */
export const LEAST = 1.2;

/** For cloth whose kind is not known: from gathers at all to the most that is given for the lightest cloth (Lo). */
export const ANY: Ratios = [LEAST, 4];

/** Lo gives 1.5 for thick wool and sweat; as much as satin is still usual, twice as much no longer (common practice, no source). */
const HEAVY: Fullness = { skirt: [LEAST, 2], tier: [LEAST, 2], ruffle: [LEAST, 2], limit: 3 };

/** A skirt of satin or taffeta takes 1.5 to 2 (common practice, no source). */
const SMOOTH: Fullness = { skirt: [1.5, 2], tier: [1.5, 2], ruffle: [1.5, 3], limit: ANY[1] };

/** Lo gives 2 for poplin and shirting, which lies within the usual range of a ruffle. */
const MEDIUM: Fullness = { skirt: [1.5, 3], tier: [1.5, 3], ruffle: [1.5, 3], limit: ANY[1] };

/** About 6 to 1 is the most that one layer takes at a waist: 160 in into 26 in was laid in pleats instead (pleat algebra, Nov 2018). */
const LAYER = 6;

/**
 * Stiff net takes 2 to 3, soft tulle 3 and more (common practice, no source); Lo gives 3 to 4 for soft tulle. An order
 * does not tell them apart. Organza is as light and as stiff (common practice, no source).
 */
const SHEER: Fullness = { skirt: [2, 4], tier: [2, 4], ruffle: [1.5, 4], limit: LAYER };

/** Lo gives 3 to 4 for chiffon; tiers widen by 2 each time in light cloth, and by 1.5 in heavier (pages on tiers). */
const LIGHT: Fullness = { skirt: [3, 4], tier: [2, 4], ruffle: [1.5, 4], limit: LAYER };

/**
 * The gathers of each kind of cloth; null where nothing is known that would narrow the general range. Lo: D. C. Lo,
 * Pattern Cutting, as reported by a blog (a weak copy).
 */
export const FULLNESS: Readonly<Record<ClothKind, Fullness | null>> = {
  satin: SMOOTH,
  taffeta: SMOOTH,
  net: SHEER,
  lace: null,
  organza: SHEER,
  chiffon: LIGHT,
  velvet: HEAVY,
  cotton: MEDIUM,
  crepe: null,
  lining: null,
};
