import type { WordValues } from '../words/index.ts';
import type { BodyInput, Measured, Sex } from './body.ts';
import { doubtAgain, type Measurings } from './doubt-again.ts';
import { judgeFields } from './doubt-fields.ts';
import { findMisfits, oneDecimal } from './doubt-misfits.ts';
import { type OtherChild, UNIT_SLIPS } from './doubt-slips.ts';
import { AGE_MONTHS, MEASURE_IDS, MEASURES, type MeasureId } from './measures.ts';
import { type BodyProblem, type BodyProblemCode, wordOf } from './problem.ts';
import { RELATIONS } from './relations.ts';

/** What is known beside one child's measures. */
export interface DoubtContext {
  /** The other children of the order: one of their values may have been written again. */
  readonly others?: readonly OtherChild[];
  /** This measuring and those before it. */
  readonly again?: Measurings;
}

/**
 * Judges what was measured, before anything is filled in: the one door for doubts. `stop`: no child can have that
 * value; `warn`: it is possible but worth a look. Ages in months, values in mm and kg; `values` of a problem hold what
 * was found and what is allowed, for the sentence. A value is held against all others at once (`judgeFields`), and what
 * does not fit is explained by the slip that explains it best.
 */
export function doubtMeasures(input: BodyInput, context: DoubtContext = {}): readonly BodyProblem[] {
  const outside = MEASURE_IDS.flatMap((id) => impossibleValue(id, input.measured[id]));
  const impossible = [
    ...outside,
    ...sameUnit(input.measured, outside),
    ...impossibleWeight(input.weight ?? null),
  ];
  const age = ageProblems(input.ageMonths ?? null);
  const ageHolds = age.every((problem) => problem.level !== 'stop');
  const possible = without(ageHolds ? input : { ...input, ageMonths: null }, impossible);
  const misfits = findMisfits(possible, context.others ?? []);
  const isUnexplained = ({ code }: BodyProblem): boolean => code === 'body.measure-unusual';
  const explained = misfits.filter((problem) => !isUnexplained(problem));
  const unrelated = relationProblems(without(possible, explained).measured);
  const told = new Set(unrelated.flatMap(({ between }) => between));
  const unusual = misfits.filter((problem) => isUnexplained(problem) && !told.has(problem.measure));
  const again = context.again === undefined ? [] : doubtAgain(context.again);
  const found = [...explained, ...unrelated.map(({ problem }) => problem), ...unusual];
  const isNew = ({ measure }: BodyProblem): boolean => found.every((problem) => problem.measure !== measure);
  return [...age, ...sexProblems(input.sex), ...impossible, ...found, ...again.filter(isNew)];
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

/** Whether the same number in another unit would lie in the range. */
function unitSlip(value: number, least: number, most: number) {
  const slip = UNIT_SLIPS.find(({ factor }) => value * factor >= least && value * factor <= most);
  return slip === undefined ? null : { code: slip.code, meant: value * slip.factor };
}

interface Unrelated {
  readonly problem: BodyProblem;
  readonly between: readonly BodyProblem['measure'][];
}

function relationProblems(measured: Measured): readonly Unrelated[] {
  return RELATIONS.flatMap(({ of, to, least, most }): Unrelated[] => {
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
    return [
      { problem: { code: 'body.do-not-belong', level: 'stop', measure: of, values }, between: [of, to] },
    ];
  });
}

/** The input without the values that have a problem. */
function without(input: BodyInput, problems: readonly BodyProblem[]): BodyInput {
  const bad = new Set(problems.map((problem) => problem.measure));
  const kept = Object.entries(input.measured).filter(([id]) => !bad.has(id as MeasureId));
  const weight = bad.has('weight') ? null : (input.weight ?? null);
  return { ...input, weight, measured: Object.fromEntries(kept) };
}

/** So many lengths that can only be meant in another unit speak for the whole sheet. */
const SHEET = 3;

/** What could be a child's as it is, on a sheet of which most can only be meant in another unit: that unit is its, too. */
function sameUnit(measured: Measured, outside: readonly BodyProblem[]): readonly BodyProblem[] {
  const ids = MEASURE_IDS.filter((id) => measured[id] !== undefined);
  return UNIT_SLIPS.slice(0, 2).flatMap(({ code, factor }): readonly BodyProblem[] => {
    const count = outside.filter((problem) => problem.code === code).length;
    if (count < SHEET || 2 * count < ids.length) return [];
    const converted = Object.fromEntries(ids.map((id) => [id, (measured[id] ?? 0) * factor]));
    const judged = judgeFields({ measured: converted });
    return (judged?.fields ?? []).flatMap(({ id, value: meant }, place): BodyProblem[] => {
      if (id === 'age' || id === 'weight' || outside.some(({ measure }) => measure === id)) return [];
      const value = meant / factor;
      const { least, most } = judged?.expected(place, LIKELY_SPREADS) ?? { least: 0, most: 0 };
      if (value >= least && value <= most) return [];
      const limits = { least: { mm: least }, most: { mm: most } };
      const values = { measure: wordOf(id), value: { mm: value }, meant: { mm: meant }, ...limits };
      return [{ code, level: 'stop', measure: id, values }];
    });
  });
}

/** The range that is told of what the others let expect. */
const LIKELY_SPREADS = 2.5;

/** From a newborn's to a heavy grown-up's: beyond, it is no weight of a child at all, kg. */
const WEIGHTS = [2, 150] as const;

function impossibleWeight(weight: number | null): BodyProblem[] {
  const [least, most] = WEIGHTS;
  if (weight === null || (weight >= least && weight <= most)) return [];
  const values = { value: oneDecimal(weight), least, most };
  return [{ code: 'body.weight-not-possible', level: 'warn', measure: 'weight', values }];
}
