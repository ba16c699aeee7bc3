import { tell } from '../design/index.ts';
import type { LayRefusal } from '../lay/index.ts';
import type { UnitSystem } from '../units/index.ts';

/** What stands in the way of a lay, and after it everything that would do instead. */
export const layRefusalSentence = (refusal: LayRefusal, units: UnitSystem): string =>
  [refusal, ...refusal.advice].map((saying) => tell(saying, units)).join(' ');
