import {
  type BodyInput,
  type CalendarDay,
  dayAfter,
  type GrownBody,
  type GrowthInput,
  type GrowthProblem,
  growBody,
  growOneSizeMore,
  growthProblemSaying,
  MEASURE_IDS,
  type Measured,
  type MeasureId,
  type MeasuringDay,
  monthsInDays,
} from '../body/index.ts';
import type { UnitSystem } from '../units/index.ts';
import { readDay } from './day.ts';
import type { OrderGrowth } from './order.ts';
import { parseWeight } from './parse-weight.ts';
import { aboutPlace, fieldProblem, type OrderPlace, type OrderProblem } from './problem.ts';
import { createLengthReader, type LengthReader } from './read-lengths.ts';
import type { ChildFile, OrderFile } from './schema.ts';
import { shown } from './shown.ts';

/** A child with the body that it is drafted from, and what is known of its growth. */
export interface GrowingChild {
  readonly body: BodyInput;
  /** Null where the day of measuring, the due day or the age is not known. */
  readonly growth: OrderGrowth | null;
}

/** Reads the measures of one measuring, mm; what can't be read becomes a problem of the reader. */
export function readMeasures(file: ChildFile['measures'], at: OrderPlace, reader: LengthReader): Measured {
  const measured: Partial<Record<MeasureId, number>> = {};
  for (const id of MEASURE_IDS) {
    const given = file?.[id];
    if (given === undefined) continue;
    const mm = reader.anyLength({ ...at, path: [...at.path, id] }, given);
    if (mm !== null) measured[id] = mm;
  }
  return measured;
}

/**
 * What is known of a child's growth from the day of measuring to the due day. Where the order is drafted to the day, the
 * measures of the body are grown, and what growth can't be told of is a problem; else the body stays as measured.
 * A child whose age in months alone is known was born so many average months before the due day.
 */
export function readGrowth(
  order: OrderFile,
  file: ChildFile,
  at: OrderPlace,
  unweighed: BodyInput,
  problems: OrderProblem[],
): GrowingChild {
  const weight = readWeight(file.weight, { ...at, path: [...at.path, 'weight'] }, problems);
  const body = weight === null ? unweighed : { ...unweighed, weight };
  const event = readDay(order.dueDay);
  const day = file.measured === undefined ? null : readDay(file.measured);
  const born = event === null ? null : birthday(file, body, event);
  if (event === null || day === null || born === null) return { body, growth: null };
  const input: GrowthInput = {
    sex: body.sex ?? 'girl',
    born,
    weeksEarly: file.weeksEarly ?? 0,
    measured: { day, measures: body.measured, weight },
    event,
    charts: order.growthCharts ?? 'who',
    units: order.units,
  };
  const sizeMore = order.growth === 'one-size-more';
  const growth = { input, earlier: readEarlier(file, at, order.units), sizeMore };
  if (order.growth !== 'to-the-day' && !sizeMore) return { body, growth: { ...growth, drafted: null } };
  const result = sizeMore ? growOneSizeMore(input) : growBody(input);
  if (!result.ok) {
    const { child } = at;
    const told = result.problems.map((problem) =>
      aboutPlace(placeOf(problem, file, at), growthProblemSaying(problem, child ?? file.name)),
    );
    problems.push(...told);
    return { body, growth: null };
  }
  return { body: grownInput(body, result.grown), growth: { ...growth, drafted: result } };
}

/** The body with the measures that it will have on the due day. */
export function grownInput(body: BodyInput, { values, weight }: GrownBody): BodyInput {
  const measured = Object.fromEntries(Object.entries(values).map(([id, { value }]) => [id, value]));
  return { ...body, measured, weight: weight?.value ?? null };
}

function birthday(file: ChildFile, body: BodyInput, event: CalendarDay): CalendarDay | null {
  if (file.born !== undefined) return readDay(file.born);
  const { ageMonths = null } = body;
  return ageMonths === null ? null : dayAfter(event, -monthsInDays(ageMonths));
}

/** A measuring of old that can't be read any more draws nothing, so it stops nothing. */
function readEarlier(file: ChildFile, at: OrderPlace, units: UnitSystem): readonly MeasuringDay[] {
  const quiet = createLengthReader(units);
  const place = { ...at, path: [...at.path, 'earlier'] };
  return (file.earlier ?? []).flatMap((one): MeasuringDay[] => {
    const day = one.measured === undefined ? null : readDay(one.measured);
    const weight = readWeight(one.weight, place, []);
    const measures = readMeasures(one.measures, place, quiet);
    return day === null ? [] : [{ day, measures, weight }];
  });
}

function readWeight(text: string | undefined, at: OrderPlace, problems: OrderProblem[]): number | null {
  if (text === undefined) return null;
  const weight = parseWeight(text);
  if (weight === null) problems.push(fieldProblem(at, 'order.not-a-weight', { found: shown(text) }));
  return weight;
}

/** The field that a refusal to grow is about. */
function placeOf({ code }: GrowthProblem, { born }: ChildFile, at: OrderPlace): OrderPlace {
  const under = (...names: readonly string[]): OrderPlace => ({ ...at, path: [...at.path, ...names] });
  switch (code) {
    case 'growth.problem.born-after-measured':
    case 'growth.problem.born-in-future':
    case 'growth.problem.too-old':
      return under(born === undefined ? 'ageMonths' : 'born');
    case 'growth.problem.height-impossible':
    case 'growth.problem.height-other-unit':
    case 'growth.problem.unlikely-height':
      return under('measures', 'height');
    case 'growth.problem.weight-impossible':
    case 'growth.problem.weight-in-pounds':
    case 'growth.problem.weight-in-kilos':
      return under('weight');
    case 'growth.problem.weeks-early':
      return under('weeksEarly');
    case 'growth.problem.measured-in-future':
    case 'growth.problem.event-before-measured':
      return under('measured');
    default:
      return at;
  }
}
