import type { Path } from '../geometry/index.ts';
import type { Saying } from '../words/index.ts';
import type { Place } from './place.ts';

/** One thing that the hand does: what is said, and what stands on the paper afterwards. */
export interface DraftStep {
  readonly saying: Saying;
  readonly places: readonly Place[];
  readonly lines: readonly Path[];
}

/** The steps of one piece or one design step on it, in the order in which they are drawn. */
export interface DraftPart {
  readonly title: Saying;
  /** Lines that stand on the paper before the first step. */
  readonly before: readonly Path[];
  readonly steps: readonly DraftStep[];
}
