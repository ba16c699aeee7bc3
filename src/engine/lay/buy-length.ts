import type { Saying } from '../words/index.ts';
import type { Cloth, LayCloth } from './cloth-rules.ts';
import { roundUpToUnit } from './selling-unit.ts';

/** What to ask for in the shop, and what was added to the lay, mm. */
export interface LengthToBuy {
  readonly bought: number;
  readonly notes: readonly Saying[];
}

/**
 * A lay of `length` mm, with the extra for cloth that slips (5 to 10 %, common practice, no source) and one repeat of
 * stripes or checks (the shop cuts anywhere in the pattern; common practice, no source), with the shrinkage, rounded
 * up to the shop's unit. A leftover needs nothing.
 */
export function layLengthToBuy(length: number, cloth: LayCloth): LengthToBuy {
  if (length === 0 || cloth.remnant !== undefined) return { bought: 0, notes: [] };
  const repeat = cloth.repeat?.along?.every ?? 0;
  const notes: Saying[] = [];
  if (cloth.extra > 0) notes.push({ key: 'lay.note.slipped', values: { percent: 100 * cloth.extra } });
  if (repeat > 0) notes.push({ key: 'lay.note.repeat', values: { repeat: { mm: repeat } } });
  return { bought: lengthToBuy(length * (1 + cloth.extra) + repeat, cloth), notes };
}

/** What to buy so that `length` mm are left after shrinking: L / (1 - s), rounded up to the shop's unit. */
export function lengthToBuy(length: number, { shrinkage, unit }: Pick<Cloth, 'shrinkage' | 'unit'>): number {
  if (!(shrinkage >= 0 && shrinkage < 1))
    throw new Error(`Cloth cannot shrink by ${shrinkage} of its length.`);
  return roundUpToUnit(length / (1 - shrinkage), unit);
}
