import type { Saying, WordKey, WordValues } from '../words/index.ts';

/** What can be wrong with, or worth knowing of, a forecast; also the key of its sentence. */
export type GrowthProblemCode = Extract<WordKey, `growth.problem.${string}`>;

/** `stop`: nothing can be told; `warn`: the nearest sound thing was done, and the sentence says what that is. */
export interface GrowthProblem {
  readonly code: GrowthProblemCode;
  readonly level: 'stop' | 'warn';
  readonly values: WordValues;
}

/** The problem as a sentence about a child. */
export function growthProblemSaying({ code, values }: GrowthProblem, child: string): Saying {
  return { key: code, values: { ...values, child } };
}
