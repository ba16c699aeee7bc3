import {
  centileOf,
  daysBetween,
  dayText,
  type GrownValue,
  grownFromSaying,
  growthBand,
  growthProblemSaying,
  MEASURE_IDS,
  NINETY_PERCENT,
} from '../body/index.ts';
import type { UnitSystem } from '../units/index.ts';
import { say } from '../words/index.ts';
import type { GrowthReport, GrowthTold, Standing } from './growth-report.ts';
import type { OrderChild } from './order.ts';

/** A heading with what stands under it; rows have a name and what is told of it. */
export interface GrowthSection {
  readonly heading: string;
  readonly rows: readonly { readonly name: string; readonly text: string }[];
  readonly sentences: readonly string[];
}

/** What a growth report says, for a screen or a sheet. */
export function growthSections(
  child: OrderChild,
  report: GrowthReport,
  units: UnitSystem,
): readonly GrowthSection[] {
  const { name } = child;
  switch (report.kind) {
    case 'no-days':
      return [
        sentencesOnly(name, [say('growth.report.no-days', { child: name }, units)]),
        sentencesOnly(say('growth.report.size-now', {}, units), labelSentences(report, units)),
      ].filter(({ sentences }) => sentences.length > 0);
    case 'refused':
      return [sentencesOnly(name, problemSentences(report.problems, name, units))];
    case 'told':
      return toldSections(child, report.told, units);
  }
}

const sentencesOnly = (heading: string, sentences: readonly string[]): GrowthSection => ({
  heading,
  rows: [],
  sentences,
});

const problemSentences = (
  problems: readonly Parameters<typeof growthProblemSaying>[0][],
  name: string,
  units: UnitSystem,
): readonly string[] =>
  problems.map((problem) => {
    const { values } = growthProblemSaying(problem, name);
    return say(problem.code, values, units);
  });

function toldSections(child: OrderChild, told: GrowthTold, units: UnitSystem): readonly GrowthSection[] {
  const { growth, name } = child;
  if (growth === null) return [];
  const { grown, warnings } = told;
  const { measured, event } = growth.input;
  const values = {
    measured: dayText(measured.day),
    event: dayText(event),
    age: Math.floor(grown.ages.measured),
    days: Math.abs(daysBetween(measured.day, event)),
  };
  const isBefore = daysBetween(measured.day, event) < 0;
  const stands = told.standing.map((one) => ({
    name: measureName(one.measure, units),
    text: standingText(one, units),
  }));
  return [
    sentencesOnly(
      `${name}: ${say(isBefore ? 'growth.report.ages-before' : 'growth.report.ages', values, units)}`,
      problemSentences(warnings, name, units),
    ),
    { heading: say('growth.report.stands', { child: name }, units), rows: stands, sentences: [] },
    {
      heading: say('growth.report.then', {}, units),
      rows: forecastRows(told, units),
      sentences: [],
    },
    sentencesOnly(say('growth.report.advice', {}, units), adviceSentences(child, told, units)),
    sentencesOnly(say('growth.report.size', {}, units), labelSentences(told, units)),
  ].filter(({ rows, sentences }, i) => i === 0 || rows.length + sentences.length > 0);
}

function measureName(measure: Standing['measure'], units: UnitSystem): string {
  if (measure === 'weight') return say('growth.report.weight', {}, units);
  if (measure === 'bmi' || measure === 'neckGirth') throw new Error(`${measure} is not told`);
  return say(`measure.${measure}`, {}, units);
}

function standingText({ measure, value, reference, z }: Standing, units: UnitSystem): string {
  const whole = Math.floor(centileOf(z));
  const values = { centile: Math.min(whole, 99), reference: { word: `growth.reference.${reference}` } };
  const shown =
    measure === 'weight'
      ? say('growth.report.kg', { value: oneDecimal(value) }, units)
      : { mm: wholeMm(value) };
  return say(
    whole < 1 ? 'growth.report.lowest' : 'growth.report.centile',
    { ...values, value: shown },
    units,
  );
}

function forecastRows({ grown }: GrowthTold, units: UnitSystem): GrowthSection['rows'] {
  const lengths = MEASURE_IDS.flatMap((id) => {
    const value = grown.values[id];
    if (value === undefined) return [];
    const band = { mm: wholeMm(growthBand(grown, id) ?? 0) };
    const values = { value: { mm: wholeMm(value.value) }, band, how: grownFromSaying(value.from) };
    return [{ name: say(`measure.${id}`, {}, units), text: say('growth.report.value', values, units) }];
  });
  return grown.weight === null ? lengths : [...lengths, weightRow(grown.weight, units)];
}

function weightRow({ value, spread, from }: GrownValue, units: UnitSystem): GrowthSection['rows'][number] {
  const values = {
    value: oneDecimal(value),
    band: oneDecimal(NINETY_PERCENT * spread),
    how: grownFromSaying(from),
  };
  return {
    name: say('growth.report.weight', {}, units),
    text: say('growth.report.value-kg', values, units),
  };
}

function adviceSentences(child: OrderChild, told: GrowthTold, units: UnitSystem): readonly string[] {
  const { advice, chestEase } = told;
  if (advice === null || chestEase === null) return [];
  const { name, growth } = child;
  const isGrown = growth !== null && growth.drafted !== null;
  const values = {
    child: name,
    hem: { mm: Math.ceil(advice.hem) },
    side: { mm: Math.ceil(advice.letOut.side) },
    girth: { mm: 4 * Math.ceil(advice.letOut.side) },
    ease: { mm: wholeMm(chestEase) },
    day: dayText(advice.measureAgain.day),
  };
  return [
    ...(isGrown ? [] : [say('growth.advice.as-measured', values, units)]),
    ...(values.hem.mm > 0
      ? [say(isGrown ? 'growth.advice.hem' : 'growth.advice.hem-as-measured', values, units)]
      : []),
    ...(values.side.mm > 0 ? [say('growth.advice.let-out', values, units)] : []),
    ...(told.grown.values.chestGirth === undefined
      ? []
      : [say(`growth.advice.measure-again.${advice.measureAgain.when}`, values, units)]),
    ...sizeMore(name, advice.oneSizeMore, units),
  ];
}

function sizeMore(
  child: string,
  more: NonNullable<GrowthTold['advice']>['oneSizeMore'],
  units: UnitSystem,
): readonly string[] {
  if (more === null) return [];
  const values = { child, size: more.height / 10, height: { mm: more.height } };
  const { chestGirth } = more.wider;
  if (more.reached === null) return [say('growth.advice.one-size-more-late', values, units)];
  const chest = { mm: wholeMm(chestGirth ?? 0) };
  return chestGirth === undefined
    ? []
    : [say('growth.advice.one-size-more', { ...values, chest, day: dayText(more.reached) }, units)];
}

function labelSentences({ labels }: Pick<GrowthTold, 'labels'>, units: UnitSystem): readonly string[] {
  if (labels === null) return [];
  const named = { size: labels.height / 10, label: { mm: labels.height } };
  const { differences, ageMonths, us } = labels;
  const apart = (mm: number): string =>
    say(mm < 0 ? 'growth.label.less' : 'growth.label.more', { by: { mm: wholeMm(Math.abs(mm)) } }, units);
  return [
    ageMonths === null
      ? say('growth.label.height', named, units)
      : say('growth.label.age', { ...named, age: Math.round(ageMonths) }, units),
    ...(differences === null
      ? []
      : [
          say(
            'growth.label.differences',
            {
              chest: apart(differences.chestGirth ?? 0),
              waist: apart(differences.waistGirth ?? 0),
              hip: apart(differences.hipGirth ?? 0),
            },
            units,
          ),
        ]),
    say('growth.label.us', { byHeight: us.byHeight.label, byChest: us.byChest.label }, units),
  ];
}

const oneDecimal = (value: number): number => Math.round(value * 10) / 10;
/** Forecasts are told in whole millimetres: none is surer. */
const wholeMm = (value: number): number => Math.round(value);
