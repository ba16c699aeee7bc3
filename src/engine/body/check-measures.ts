import type { WordValues } from '../words/index.ts';
import type { BodyInput, Measured, Sex } from './body.ts';
import { estimateBody } from './estimate-body.ts';
import { AGE_MONTHS, MEASURE_IDS, MEASURES, type MeasureId } from './measures.ts';
import { type BodyProblem, type BodyProblemCode, wordOf } from './problem.ts';
import { RELATIONS } from './relations.ts';

/** Further from the expected value than this many standard deviations, a value is worth a second measuring. */
const UNUSUAL_SPREADS = 4;

/** And within this many of it, the same number in another unit is likely what was meant. */
const LIKELY_SPREADS = 2;

/**
 * Judges what was measured, before anything is filled in. `stop`: no child can have that value; `warn`: it is
 * possible but worth a look. Ages in months, values in mm; `values` of a problem hold what was found and what is
 * allowed, for the sentence.
 */
export function checkMeasures(input: BodyInput): readonly BodyProblem[] {
  const impossible = MEASURE_IDS.flatMap((id) => impossibleValue(id, input.measured[id]));
  const age = ageProblems(input.ageMonths ?? null);
  const ageHolds = age.every((problem) => problem.level !== 'stop');
  const possible = without(ageHolds ? input : { ...input, ageMonths: null }, impossible);
  // A wrong unit explains a pair that does not fit better than "measure both again" would.
  const slips = unusualValues(possible).filter((problem) => problem.level === 'stop');
  const sameUnit = without(possible, slips);
  const unrelated = relationProblems(sameUnit.measured);
  const unusual = unusualValues(without(sameUnit, unrelated));
  return [...age, ...sexProblems(input.sex), ...impossible, ...slips, ...unrelated, ...unusual];
}

function ageProblems(ageMonths: number | null): BodyProblem[] {
  if (ageMonths === null) return [];
  const { least, blocksUpTo, most } = AGE_MONTHS;
  const problem = (code: BodyProblemCode, level: BodyProblem['level'], values: WordValues): BodyProblem[] => [
    { code, level, measure: 'age', values },
  ];
  if (!Number.isFinite(ageMonths)) return problem('body.age-not-a-number', 'stop', {});
  if (ageMonths < least || ageMonths > most) {
    return problem('body.age-out-of-range', 'stop', { age: ageMonths, least, most });
  }
  if (ageMonths <= blocksUpTo) return [];
  return problem('body.age-beyond-blocks', 'warn', { age: ageMonths, most: blocksUpTo });
}

function sexProblems(sex: Sex | undefined): BodyProblem[] {
  return sex === 'boy' ? [{ code: 'body.boy-by-girls', level: 'warn', measure: null, values: {} }] : [];
}

function impossibleValue(id: MeasureId, value: number | undefined): BodyProblem[] {
  if (value === undefined) return [];
  const { least, most } = MEASURES[id];
  const stop = (code: BodyProblemCode, values: WordValues): BodyProblem[] => [
    {
      code,
      level: 'stop',
      measure: id,
      values: { measure: wordOf(id), least: { mm: least }, most: { mm: most }, ...values },
    },
  ];
  if (!Number.isFinite(value)) return stop('body.measure-not-a-number', {});
  if (value <= 0) return stop('body.measure-not-positive', { value: { mm: value } });
  if (value >= least && value <= most) return [];
  const slip = unitSlip(value, least, most);
  if (slip !== null) return stop(slip.code, { value: { mm: value }, meant: { mm: slip.meant } });
  return stop(value < least ? 'body.measure-too-small' : 'body.measure-too-large', { value: { mm: value } });
}

/** The unit that was chosen over the unit that was meant, and how much too small or large the length came out. */
const UNIT_SLIPS = [
  { code: 'body.meant-inches', factor: 2.54 },
  { code: 'body.meant-centimetres', factor: 1 / 2.54 },
  { code: 'body.meant-centimetres', factor: 10 },
  { code: 'body.meant-millimetres', factor: 1 / 10 },
  { code: 'body.meant-inches', factor: 25.4 },
  { code: 'body.meant-millimetres', factor: 1 / 25.4 },
] as const;

/** Whether the same number in another unit would lie in the range. */
function unitSlip(value: number, least: number, most: number) {
  const slip = UNIT_SLIPS.find(({ factor }) => value * factor >= least && value * factor <= most);
  return slip === undefined ? null : { code: slip.code, meant: value * slip.factor };
}

function relationProblems(measured: Measured): BodyProblem[] {
  return RELATIONS.flatMap(({ of, to, least, most }): BodyProblem[] => {
    const value = measured[of];
    const other = measured[to];
    if (value === undefined || other === undefined) return [];
    if (value >= least * other && value <= most * other) return [];
    const values = {
      measure: wordOf(of),
      value: { mm: value },
      other: wordOf(to),
      otherValue: { mm: other },
      least: { mm: least * other },
      most: { mm: most * other },
    };
    return [{ code: 'body.do-not-belong', level: 'stop', measure: of, values }];
  });
}

/**
 * Compares each value with what the other values and the age let expect, height and chest first. A value found
 * unusual is not used to judge the next ones. A value that would be usual in another unit is more than twice or
 * less than half of what it should be: that stops.
 */
function unusualValues(input: BodyInput): BodyProblem[] {
  const found: BodyProblem[] = [];
  for (const id of MEASURE_IDS) {
    const value = input.measured[id];
    if (value === undefined) continue;
    const others = without(input, found);
    const { [id]: _, ...measured } = others.measured;
    const expected = estimateBody({ ...others, measured })?.values[id];
    if (expected === undefined || expected.from === 'measured') continue;
    const { mm, spread } = expected;
    const least = mm - UNUSUAL_SPREADS * spread;
    const most = mm + UNUSUAL_SPREADS * spread;
    if (value >= least && value <= most) continue;
    const slip = unitSlip(value, mm - LIKELY_SPREADS * spread, mm + LIKELY_SPREADS * spread);
    found.push({
      code: slip?.code ?? 'body.measure-unusual',
      level: slip === null ? 'warn' : 'stop',
      measure: id,
      values: {
        measure: wordOf(id),
        value: { mm: value },
        least: { mm: least },
        most: { mm: most },
        ...(slip === null ? {} : { meant: { mm: slip.meant } }),
      },
    });
  }
  return found;
}

/** The input without the values that have a problem. */
function without(input: BodyInput, problems: readonly BodyProblem[]): BodyInput {
  const bad = new Set(problems.map((problem) => problem.measure));
  const kept = Object.entries(input.measured).filter(([id]) => !bad.has(id as MeasureId));
  return { ...input, measured: Object.fromEntries(kept) };
}
