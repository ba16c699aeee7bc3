import { type BodyInput, doubtMeasures, MEASURES, type MeasureId } from '../../src/engine/body/index.ts';
import { type Chance, chanceFrom, type Girl, surveyGirl } from './survey-girls.ts';

/*
 * Blunders planted in the measurements of girls drawn from the published distribution, measured with the errors of
 * measurers and read off the tape to half a centimetre. A blunder is caught when any doubt names a field that it
 * spoiled; a false alarm is any doubt about a girl in whose measurements there is none.
 */

/** What a maker takes for a dress with sleeves. */
const TAKEN = [
  'height',
  'chestGirth',
  'waistGirth',
  'hipGirth',
  'neckBaseGirth',
  'headGirth',
  'shoulderLength',
  'backWidth',
  'backNeckToWaist',
  'upperArmGirth',
  'wristGirth',
  'armLength',
  'waistHeight',
] as const satisfies readonly MeasureId[];
type Taken = (typeof TAKEN)[number];

export interface Sheet {
  readonly ageMonths: number;
  readonly weight: number;
  readonly measured: Readonly<Record<Taken, number>>;
}

/** Girths 5 mm, height 3 mm, lengths 5 mm, widths 5 mm (data/measurement_error.csv: 1 to 12 mm); weight 0.1 kg. */
function measure(girl: Girl, { normal }: Chance): Sheet {
  const entries = TAKEN.map((id) => {
    const error = id === 'height' ? 3 : 5;
    return [id, Math.round((girl.measured[id] + error * normal()) / 5) * 5] as const;
  });
  return {
    ageMonths: Math.round(girl.ageMonths),
    weight: Math.round((girl.weight + 0.1 * normal()) * 10) / 10,
    measured: Object.fromEntries(entries) as Sheet['measured'],
  };
}

interface Planted {
  readonly input: BodyInput;
  readonly spoiled: readonly string[];
}
/** Null where the blunder would change nothing (two equal digits, say): another girl is taken. */
type Plant = (sheet: Sheet, chance: Chance, other: Sheet) => Planted | null;

const withValues = (sheet: Sheet, values: Readonly<Partial<Record<Taken, number>>>): Planted | null => {
  const changed = Object.keys(values).filter((id) => values[id as Taken] !== sheet.measured[id as Taken]);
  if (changed.length === 0) return null;
  return { input: { ...sheet, measured: { ...sheet.measured, ...values } }, spoiled: changed };
};
const times =
  (ids: readonly Taken[], factor: number): Plant =>
  (sheet, { below }) => {
    const id = ids[below(ids.length)] ?? 'height';
    return withValues(sheet, { [id]: sheet.measured[id] * factor });
  };
const exchange =
  (a: Taken, b: Taken): Plant =>
  (sheet) =>
    withValues(sheet, { [a]: sheet.measured[b], [b]: sheet.measured[a] });
const digits =
  (ids: readonly Taken[]): Plant =>
  (sheet, { below }) => {
    const id = ids[below(ids.length)] ?? 'height';
    const cm = sheet.measured[id] / 10;
    const whole = String(Math.floor(cm));
    const at = whole.length - 2;
    const swapped = Number(`${whole.slice(0, at)}${whole[at + 1]}${whole[at]}`) + (cm % 1);
    return withValues(sheet, { [id]: swapped * 10 });
  };
const GIRTHS = TAKEN.filter((id) => MEASURES[id].kind === 'girth');
const LENGTHS = TAKEN.filter((id) => MEASURES[id].kind === 'length');
const LARGE = ['chestGirth', 'waistGirth', 'hipGirth', 'headGirth'] as const;

export const BLUNDERS: Readonly<Record<string, Plant>> = {
  'inches typed as centimetres, a girth': times(GIRTHS, 1 / 2.54),
  'inches typed as centimetres, a length': times(LENGTHS, 1 / 2.54),
  'centimetres typed as inches': times(TAKEN, 2.54),
  'the whole sheet in inches, typed as centimetres': (sheet) => {
    const values = Object.fromEntries(TAKEN.map((id) => [id, sheet.measured[id] / 2.54]));
    return withValues(sheet, values);
  },
  'a nought too many': times(TAKEN, 10),
  'a nought too few': times(TAKEN, 0.1),
  'digits swapped, height': digits(['height']),
  'digits swapped, a girth': digits(LARGE),
  'digits swapped, a length': digits(['armLength', 'backNeckToWaist', 'waistHeight']),
  'ten centimetres misread on the tape, a girth': (sheet, { below, uniform }) => {
    const id = LARGE[below(LARGE.length)] ?? 'chestGirth';
    return withValues(sheet, { [id]: sheet.measured[id] + (uniform() < 0.5 ? 100 : -100) });
  },
  'ten centimetres misread, height': (sheet, { uniform }) =>
    withValues(sheet, { height: sheet.measured.height + (uniform() < 0.5 ? 100 : -100) }),
  'hip and head exchanged': exchange('hipGirth', 'headGirth'),
  'back length and arm length exchanged': exchange('backNeckToWaist', 'armLength'),
  'waist and hip exchanged': exchange('waistGirth', 'hipGirth'),
  'upper arm and wrist exchanged': exchange('upperArmGirth', 'wristGirth'),
  'half a girth': times(GIRTHS, 0.5),
  'pounds typed as kilos': (sheet) => ({
    input: { ...sheet, weight: sheet.weight / 0.45359237 },
    spoiled: ['weight'],
  }),
  'kilos typed as pounds': (sheet) => ({
    input: { ...sheet, weight: sheet.weight * 0.45359237 },
    spoiled: ['weight'],
  }),
  'arm measured to the elbow': (sheet) =>
    withValues(sheet, { armLength: Math.round((sheet.measured.armLength * 0.62) / 5) * 5 }),
  'the girths of the child before, at least two years older or younger': (sheet, _, other) => {
    const values = Object.fromEntries(GIRTHS.map((id) => [id, other.measured[id]]));
    return Math.abs(other.ageMonths - sheet.ageMonths) < 24 ? null : withValues(sheet, values);
  },
};

export interface Caught {
  readonly kind: string;
  readonly caught: number;
  readonly count: number;
}

export function plantBlunders(seed: number, count: number): readonly Caught[] {
  return Object.entries(BLUNDERS).map(([kind, plant], place) => {
    const chance = chanceFrom(seed + place);
    let [caught, planted] = [0, 0];
    while (planted < count) {
      const sheet = measure(surveyGirl(chance), chance);
      const other = measure(surveyGirl(chance), chance);
      const spoiled = plant(sheet, chance, other);
      if (spoiled === null) continue;
      planted += 1;
      const others = [{ name: 'Bea', measured: { ...other.measured, weight: other.weight } }];
      const doubts = doubtMeasures(spoiled.input, { others });
      const isAbout = (measure: string | null): boolean =>
        measure === null || spoiled.spoiled.includes(measure);
      if (doubts.some(({ measure }) => isAbout(measure))) caught += 1;
    }
    return { kind, caught, count };
  });
}

/** How many of the girls without a blunder are asked about. `heavier`: see `surveyGirl`. */
export function falseAlarms(seed: number, count: number, heavier = 1): number {
  const chance = chanceFrom(seed);
  let alarms = 0;
  for (let i = 0; i < count; i++) {
    const sheet = measure(surveyGirl(chance, heavier), chance);
    if (doubtMeasures(sheet).length > 0) alarms += 1;
  }
  return alarms;
}
