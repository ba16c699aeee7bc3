import type { ClothKind } from '../check/index.ts';
import type { Saying } from '../words/index.ts';
import { clothKindOf, type SewLook } from './look.ts';
import { tell } from './words-of.ts';

/** How a cloth of the dress is sewn and pressed. */
export interface ClothAdvice {
  readonly kind: ClothKind;
  readonly stitch: Saying;
  readonly press: Saying;
}

/**
 * Advice for every kind of cloth that the dress is cut from, in the order in which the pieces name them. Needles, stitch
 * lengths, pins, French seams and the iron are common practice, no source; so the words tell her to try a scrap where
 * fibres of one kind of cloth differ.
 */
export function clothAdvice(look: SewLook): readonly ClothAdvice[] {
  const kinds = new Set(look.garment.pieces.map((piece) => clothKindOf(look, piece)));
  return [...kinds]
    .filter((kind) => kind !== null)
    .map((kind) => ({ kind, stitch: tell(`sew.stitch.${kind}`), press: tell(`sew.press.${kind}`) }));
}
