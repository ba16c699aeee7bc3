import { completeBody, MEASURE_IDS, type MeasureId } from '../../src/engine/body/index.ts';
import { chanceFrom, type Girl, surveyGirl } from './survey-girls.ts';

/** 90 of 100 lie within so many standard deviations on both sides. */
const NINETY = 1.6449;

/** What was known, and how the filled-in values lie from the true ones. */
export interface Filled {
  readonly id: MeasureId;
  readonly bias: number;
  /** Standard deviation of the error, mm. */
  readonly miss: number;
  readonly within: number;
}

export type Known = readonly (MeasureId | 'weight')[];

/** Fills in `count` girls of 33 to 84 months from what is known of them. */
export function fillGirls(seed: number, count: number, known: Known): readonly Filled[] {
  const chance = chanceFrom(seed);
  const asked = MEASURE_IDS.filter((id) => !known.includes(id));
  const errors = new Map(asked.map((id) => [id, [] as { error: number; inside: boolean }[]]));
  for (let i = 0; i < count; i++) {
    const girl = surveyGirl(chance);
    const completed = completeBody(knownOf(girl, known));
    if (!completed.ok) throw new Error(JSON.stringify(completed.problems));
    for (const id of asked) {
      const value = completed.body.values[id];
      if (value.from === 'measured') throw new Error(`${id} was not known`);
      const error = value.mm - girl.measured[id];
      errors.get(id)?.push({ error, inside: Math.abs(error) <= NINETY * value.spread });
    }
  }
  return [...errors].map(([id, list]) => {
    const bias = list.reduce((sum, { error }) => sum + error, 0) / count;
    const miss = Math.sqrt(list.reduce((sum, { error }) => sum + (error - bias) ** 2, 0) / (count - 1));
    return { id, bias, miss, within: list.filter(({ inside }) => inside).length / count };
  });
}

const knownOf = ({ measured, weight }: Girl, known: Known) => ({
  measured: Object.fromEntries(Object.entries(measured).filter(([id]) => known.includes(id as MeasureId))),
  weight: known.includes('weight') ? weight : null,
});
