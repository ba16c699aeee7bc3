import type { Level } from '../check/index.ts';
import type { Saying } from '../words/index.ts';

/** One thing that was found about a child's dress, from whichever room it comes. */
export interface Finding {
  readonly code: string;
  readonly level: Level;
  readonly say: Saying;
  readonly todo: Saying | null;
}
