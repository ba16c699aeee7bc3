import fc from 'fast-check';
import { AGE_MONTHS, type BodyInput, completeBody, type MeasureId } from '../../src/engine/body/index.ts';

/** Surveyed measures go up to two standard deviations from what age, height and chest let expect. */
const SURVEYED: readonly MeasureId[] = [
  'waistGirth',
  'hipGirth',
  'headGirth',
  'upperArmGirth',
  'wristGirth',
  'armLength',
  'kneeHeight',
];

/** What rests on a guess has a spread that holds the guess's error too: one of it is already much. */
const GUESSED: readonly MeasureId[] = [
  'neckBaseGirth',
  'shoulderLength',
  'backWidth',
  'frontChestWidth',
  'backNeckToWaist',
  'scyeDepth',
  'waistHeight',
];

/**
 * Plausible children from 6 months to an age: age, height and chest are always given, any of the other measures may
 * be. To be put into `completeBody`.
 */
const bodiesUpTo = (months: number): fc.Arbitrary<BodyInput> =>
  fc
    .record({
      ageMonths: fc.integer({ min: AGE_MONTHS.least, max: months }),
      height: deviation(2),
      chestGirth: deviation(2),
      others: fc.record(
        Object.fromEntries([
          ...SURVEYED.map((id) => [id, deviation(2)] as const),
          ...GUESSED.map((id) => [id, deviation(1)] as const),
        ]),
        { requiredKeys: [] },
      ),
    })
    .map(({ ageMonths, height, chestGirth, others }) => {
      const withHeight = measuredToo({ ageMonths, measured: {} }, { height });
      return measuredToo(measuredToo(withHeight, { chestGirth }), others);
    });

/** To 12 years, for which the methods of the blocks are meant. */
export const randomBody: fc.Arbitrary<BodyInput> = bodiesUpTo(AGE_MONTHS.blocksUpTo);

/** To 14 years, as far as bodies are known. */
export const randomBodyTo14: fc.Arbitrary<BodyInput> = bodiesUpTo(AGE_MONTHS.most);

function deviation(most: number): fc.Arbitrary<number> {
  return fc.double({ min: -most, max: most, noNaN: true });
}

/** Measures as many standard deviations from the estimates as said, rounded to whole mm as on a tape. */
function measuredToo(input: BodyInput, deviations: Readonly<Record<string, number | undefined>>): BodyInput {
  const completed = completeBody(input);
  if (!completed.ok) throw new Error(`Not plausible: ${JSON.stringify(completed.problems)}`);
  const values: Readonly<Record<string, { mm: number; spread?: number }>> = completed.body.values;
  const more = Object.entries(deviations).flatMap(([id, by]) => {
    const value = values[id];
    if (value === undefined || by === undefined) return [];
    return [[id, Math.round(value.mm + by * (value.spread ?? 0))]];
  });
  return { ...input, measured: { ...input.measured, ...Object.fromEntries(more) } };
}
