import type { Saying, WordKey, WordValues } from '../words/index.ts';
import type { MeasureId } from './measures.ts';

/** What can be wrong with what is known of a child; also the key of its sentence. */
export type BodyProblemCode =
  | 'body.too-little'
  | 'body.age-not-a-number'
  | 'body.age-out-of-range'
  | 'body.age-beyond-blocks'
  | 'body.boy-by-girls'
  | 'body.measure-not-a-number'
  | 'body.measure-not-positive'
  | 'body.measure-too-small'
  | 'body.measure-too-large'
  | 'body.measure-unusual'
  | 'body.meant-inches'
  | 'body.meant-centimetres'
  | 'body.meant-millimetres'
  | 'body.do-not-belong'
  | 'body.half-measured'
  | 'body.measured-twice'
  | 'body.digits-swapped'
  | 'body.fields-swapped'
  | 'body.all-in-inches'
  | 'body.all-in-centimetres'
  | 'body.all-in-millimetres'
  | 'body.arm-too-short'
  | 'body.other-child'
  | 'body.girths-of-other'
  | 'body.age-unusual'
  | 'body.weight-not-possible'
  | 'body.weight-in-pounds'
  | 'body.weight-in-kilos'
  | 'body.weight-unusual'
  | 'body.shrank'
  | 'body.grew-too-fast'
  | 'body.changed-too-much';

/** `stop`: cannot be drafted; `warn`: can, but look again. `measure` is the field to look at. */
export interface BodyProblem {
  readonly code: BodyProblemCode;
  readonly level: 'stop' | 'warn';
  readonly measure: MeasureId | 'age' | 'weight' | null;
  readonly values: WordValues;
}

/** The problem as a sentence about a child, by its name or by what the maker calls it. */
export function problemSaying(problem: BodyProblem, child: string): Saying {
  const key: WordKey = problem.code;
  return { key, values: { ...problem.values, child } };
}

/** The name of a measure, to stand in a sentence. */
export function wordOf(id: MeasureId): { readonly word: `measure.${MeasureId}` } {
  return { word: `measure.${id}` };
}
