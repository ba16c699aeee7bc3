import type { Body } from '../body/index.ts';
import type { ChoiceParam, LengthParam } from '../construct/index.ts';
import { inches } from '../units/index.ts';

export interface BlockContext {
  readonly body: Body;
  readonly method: BlockMethod;
}

/** The published methods; see `sixth-of-neck.ts` and `eighth-of-chest.ts` for their sources. */
export type BlockMethod = 'sixth-of-neck' | 'eighth-of-chest';

/**
 * Chest ease: the methods publish 4 cm (sixth of the neck) and 6 in (eighth of the chest; loose, and its page
 * does not say whether seams are inside), a close occasion bodice takes 4-6 cm, everyday wear 8-12 cm, and
 * flower-girl shops advise never under 2 cm. The sources disagree, so the maker sets it within all of them.
 */
const CHEST_EASE_RANGE = [20, inches(6)] as const;

const length = (
  rule: (c: BlockContext) => number,
  range: readonly [number, number],
  source: string,
): LengthParam<BlockContext> => ({ kind: 'length', rule, range: () => range, source });

const method: ChoiceParam<BlockContext, BlockMethod> = {
  kind: 'choice',
  choices: ['sixth-of-neck', 'eighth-of-chest'],
  rule: () => 'sixth-of-neck',
  source: 'both published; the first is metric and made for children',
};

/** What the maker may set about the block. */
export const BLOCK_PARAMS = {
  method,
  chestEase: length(
    (c) => (c.method === 'sixth-of-neck' ? 40 : 60),
    CHEST_EASE_RANGE,
    'sixth of the neck: 4 cm as published (teaching blog, Jan 2017); else 6 cm, upper end of a close bodice',
  ),
  waistEase: length(
    (c) => (c.body.ageMonths !== null && c.body.ageMonths < 24 ? 50 : 40),
    [20, 100],
    'close occasion bodice 2.5-5 cm, babies 4-6 cm (kids draft, teaching blog: 2 1/2 in; common practice)',
  ),
  frontShoulderFall: length(
    (c) => (c.method === 'sixth-of-neck' ? 25 : inches(1)),
    [0, 45],
    'sixth of the neck aims 2.5 cm below the top line; eighth of the chest drops 1 in',
  ),
  backShoulderFall: length(
    (c) => (c.method === 'sixth-of-neck' ? 20 : inches(1)),
    [0, 45],
    'sixth of the neck allows 2 cm; the back slopes less (common practice, no source)',
  ),
  backNeckDepth: length(
    (c) => (c.method === 'sixth-of-neck' ? 15 : inches(1)),
    [5, 40],
    'sixth of the neck: 1.5 cm; eighth of the chest: 1 to 1 1/2 in',
  ),
  tummy: length(
    () => 6,
    [0, 20],
    'front longer for the tummy: 0.5-1.5 cm (common practice, no source); 0 gives the method as published',
  ),
} as const;
