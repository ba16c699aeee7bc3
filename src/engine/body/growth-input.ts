import type { UnitSystem } from '../units/index.ts';
import type { Measured, Sex } from './body.ts';
import { averageMonthsBetween, type CalendarDay, DAYS_PER_MONTH, daysBetween, dayText } from './calendar.ts';
import type { GrowthProblem } from './growth-problem.ts';
import {
  type GrowthCharts,
  growthReference,
  LYING_LONGER,
  referenceAges,
  referenceValue,
  referenceZ,
  STANDING_FROM,
} from './growth-references.ts';

/** What was measured of a child on one day; lengths in mm, weight in kg. */
export interface MeasuringDay {
  readonly day: CalendarDay;
  readonly measures: Measured;
  readonly weight?: number | null;
}

/** A child to be grown from a measuring day to the day of the event. */
export interface GrowthInput {
  readonly sex: Sex;
  readonly born: CalendarDay;
  /** How many weeks before the due date the child was born; 0 where it is not said. */
  readonly weeksEarly?: number;
  readonly measured: MeasuringDay;
  readonly event: CalendarDay;
  /** Which charts go first; those of the WHO where it is not said. */
  readonly charts?: GrowthCharts;
  /** The units in which the maker writes: a number that was meant in the other ones is then known. */
  readonly units?: UnitSystem;
  /** Today where the maker is: lets days that lie wrong be found. */
  readonly today?: CalendarDay;
}

/** Ages in months, as the references are to be read. */
export interface GrowthAges {
  /** By the birthday. */
  readonly measured: number;
  readonly event: number;
  /** What is taken off before a reference is read: weeks that a premature child is younger than its birthday says. */
  readonly correction: number;
}

/** Whether the child is one that growth can be told of; ages, weight in kg, null where it can't be used. */
export type CheckedGrowth =
  | {
      readonly ok: true;
      readonly ages: GrowthAges;
      readonly weight: number | null;
      readonly problems: readonly GrowthProblem[];
    }
  | { readonly ok: false; readonly problems: readonly GrowthProblem[] };

/** Born at 22 weeks instead of 40: hardly any child lives that is born before (common practice, no source). */
const MOST_WEEKS_EARLY = 18;

/** A birth within three weeks of the due date is no premature one (World Health Organization: before 37 weeks). */
const LEAST_WEEKS_EARLY = 3;

/** Up to this age a premature child's age is corrected (common practice in child health: 24 months; from memory). */
const CORRECTED_UP_TO = 24;

/** The longest time over which children were followed in the study of forecasts, months. */
const STUDIED_MONTHS = 12;

/** Beyond these, a height or weight is taken for a slip: WHO Anthro's flags, -6 to +6 and -6 to +5 (from memory). */
const IMPOSSIBLE = 6;
const IMPOSSIBLY_HEAVY = 5;

/** Beyond this, 2 children of 1000, a height is worth a second look. */
const UNLIKELY = 3.1;

/** Within this many standard deviations, the same number in another unit is likely what was meant. */
const LIKELY = 2.5;

/** Beyond this, and not within `LIKELY` of the middle, a weight is asked about when another unit would fit. */
const DOUBTFUL_WEIGHT = 3;

export const KG_PER_POUND = 0.45359237;

/** What asks for nothing, and is of no use beside a refusal. */
const JUST_TOLD: readonly GrowthProblem['code'][] = ['growth.problem.corrected', 'growth.problem.stands-up'];

/** Judges days, height and weight before anything is grown. */
export function checkGrowth(input: GrowthInput): CheckedGrowth {
  const { born, measured, event, today, weeksEarly = 0 } = input;
  const problems: GrowthProblem[] = [];
  const add = (
    code: GrowthProblem['code'],
    level: GrowthProblem['level'],
    values: GrowthProblem['values'],
  ): void => {
    problems.push({ code, level, values });
  };
  const days = { born: dayText(born), measured: dayText(measured.day), event: dayText(event) };
  const isBeforeToday = (day: CalendarDay): boolean => today === undefined || daysBetween(day, today) >= 0;
  if (!isBeforeToday(born)) add('growth.problem.born-in-future', 'stop', days);
  else if (daysBetween(born, measured.day) < 0) add('growth.problem.born-after-measured', 'stop', days);
  if (problems.length > 0) return { ok: false, problems };

  const months = averageMonthsBetween(measured.day, event);
  if (!isBeforeToday(measured.day)) add('growth.problem.measured-in-future', 'warn', days);
  if (months < 0) add('growth.problem.event-before-measured', 'warn', days);
  else if (today !== undefined && daysBetween(event, today) > 0)
    add('growth.problem.event-passed', 'warn', days);
  if (months > STUDIED_MONTHS + 0.5) add('growth.problem.far-ahead', 'warn', { months: Math.round(months) });

  const age = averageMonthsBetween(born, measured.day);
  const isPremature = weeksEarly > LEAST_WEEKS_EARLY && weeksEarly <= MOST_WEEKS_EARLY;
  if (!(weeksEarly >= 0 && weeksEarly <= MOST_WEEKS_EARLY)) {
    add('growth.problem.weeks-early', 'warn', { found: weeksEarly, most: MOST_WEEKS_EARLY });
  }
  const isCorrected = isPremature && age < CORRECTED_UP_TO;
  if (isCorrected) add('growth.problem.corrected', 'warn', { weeks: weeksEarly });
  const correction = isCorrected ? Math.min((weeksEarly * 7) / DAYS_PER_MONTH, age) : 0;
  const ages: GrowthAges = { measured: age, event: averageMonthsBetween(born, event), correction };

  if (standsUp(ages) && months > 0 && measured.measures.height !== undefined) {
    add('growth.problem.stands-up', 'warn', {});
  }

  const read = age - correction;
  problems.push(...ageProblems(ages), ...heightProblems(input, read, age));
  const weight = measured.weight ?? null;
  const heavy = weight === null ? [] : weightProblems(input, read, age, weight);
  problems.push(...heavy);
  if (problems.some(({ level }) => level === 'stop')) {
    return { ok: false, problems: problems.filter(({ code }) => !JUST_TOLD.includes(code)) };
  }
  return { ok: true, ages, weight: heavy.length > 0 ? null : weight, problems };
}

/** The oldest age that the references of height know, months. */
export const OLDEST = referenceAges('who-height')[1];

function ageProblems({ measured, event }: GrowthAges): readonly GrowthProblem[] {
  const values = { most: OLDEST };
  if (measured > OLDEST) return [{ code: 'growth.problem.too-old', level: 'warn', values }];
  if (event > OLDEST) return [{ code: 'growth.problem.ends-before-event', level: 'warn', values }];
  return [];
}

/** What a length comes to when the number was meant in another unit than the one it was written in. */
const OTHER_UNITS = {
  in: [{ words: 'growth.unit.centimetres', factor: 1 / 2.54 }],
  cm: [
    { words: 'growth.unit.inches', factor: 2.54 },
    { words: 'growth.unit.millimetres', factor: 1 / 10 },
  ],
} as const;

function heightProblems(
  { sex, charts = 'who', units, measured }: GrowthInput,
  read: number,
  age: number,
): readonly GrowthProblem[] {
  const { height } = measured.measures;
  const reference = growthReference('height', [Math.min(read, OLDEST)], charts);
  if (height === undefined || reference === null) return [];
  const zOf = (mm: number): number => referenceZ(reference, sex, Math.min(read, OLDEST), mm);
  const at = (z: number) => ({ mm: referenceValue(reference, sex, Math.min(read, OLDEST), z) });
  const z = zOf(height);
  const values = { age: Math.round(age), value: { mm: height }, middle: at(0), least: at(-3), most: at(3) };
  if (Number.isFinite(z) && Math.abs(z) <= IMPOSSIBLE) {
    if (Math.abs(z) <= UNLIKELY) return [];
    return [{ code: 'growth.problem.unlikely-height', level: 'warn', values }];
  }
  const meant = (units === undefined ? [] : OTHER_UNITS[units]).find(
    ({ factor }) => Math.abs(zOf(height * factor)) <= LIKELY,
  );
  if (meant === undefined) return [{ code: 'growth.problem.height-impossible', level: 'stop', values }];
  return [
    {
      code: 'growth.problem.height-other-unit',
      level: 'stop',
      values: { ...values, words: { word: meant.words }, meant: { mm: height * meant.factor } },
    },
  ];
}

function weightProblems(
  { sex, charts = 'who' }: GrowthInput,
  read: number,
  age: number,
  weight: number,
): readonly GrowthProblem[] {
  const reference = growthReference('weight', [Math.min(read, OLDEST)], charts);
  if (reference === null) return [];
  const zOf = (kg: number): number => referenceZ(reference, sex, Math.min(read, OLDEST), kg);
  const z = weight > 0 ? zOf(weight) : Number.NaN;
  const middle = oneDecimal(referenceValue(reference, sex, Math.min(read, OLDEST), 0));
  const values = { age: Math.round(age), value: oneDecimal(weight), middle };
  const fits = (kg: number): boolean => Math.abs(zOf(kg)) <= LIKELY;
  if (z > DOUBTFUL_WEIGHT && fits(weight * KG_PER_POUND)) {
    const meant = oneDecimal(weight * KG_PER_POUND);
    return [{ code: 'growth.problem.weight-in-pounds', level: 'warn', values: { ...values, meant } }];
  }
  const pounds = weight / KG_PER_POUND;
  if (z < -DOUBTFUL_WEIGHT && fits(pounds)) {
    return [
      {
        code: 'growth.problem.weight-in-kilos',
        level: 'warn',
        values: { ...values, value: oneDecimal(pounds) },
      },
    ];
  }
  if (z >= -IMPOSSIBLE && z <= IMPOSSIBLY_HEAVY) return [];
  return [{ code: 'growth.problem.weight-impossible', level: 'warn', values }];
}

const oneDecimal = (value: number): number => Math.round(value * 10) / 10;

/** Whether the child was measured lying and stands at the event. */
export function standsUp({ measured, event, correction }: GrowthAges): boolean {
  return measured - correction < STANDING_FROM && event - correction >= STANDING_FROM;
}

/** The height of a child who stands up between the two days, as it would have been measured standing. */
export function standingHeight(height: number, ages: GrowthAges): number {
  return standsUp(ages) ? height - LYING_LONGER : height;
}
