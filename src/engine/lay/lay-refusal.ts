import type { Saying, WordKey } from '../words/index.ts';

/** What stands in the way of a lay. `key` is the key of its sentence, `advice` what would do instead. */
export interface LayRefusal extends Saying {
  readonly key: WordKey;
  /** Which of the pieces that were given. */
  readonly pieces: readonly number[];
  readonly advice: readonly Saying[];
}

export function refusal(
  key: WordKey,
  values: Saying['values'],
  pieces: readonly number[] = [],
  advice: readonly Saying[] = [],
): LayRefusal {
  return { key, values, pieces, advice };
}
