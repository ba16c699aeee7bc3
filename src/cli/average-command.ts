import {
  AGE_MONTHS,
  MEASURE_IDS,
  MEASURES,
  NINETY_PERCENT,
  type StartingBody,
  startingBody,
} from '../engine/body/index.ts';
import { parseWeight } from '../engine/order/index.ts';
import { parseLength, type UnitSystem } from '../engine/units/index.ts';
import { say } from '../engine/words/index.ts';
import { EXIT, type ExitCode, type Io } from './io.ts';
import { type Refusal, refusal, sayRefusal } from './refusal.ts';

/** What an average body is picked by, as it was typed. */
export interface AverageWish {
  readonly boy: boolean;
  readonly inches: boolean;
  readonly age?: string;
  readonly height?: string;
  readonly weight?: string;
  readonly json: boolean;
}

/** Says what children of an age, of a height, or of a height and weight measure on average: a body to begin with. */
export function averageCommand(io: Io, wish: AverageWish): ExitCode {
  const units: UnitSystem = wish.inches ? 'in' : 'cm';
  const found = bodyWished(wish, units);
  if (!found.ok) return sayRefusal(io, found, wish.json);
  const { body } = found;
  if (wish.json) {
    const measures = MEASURE_IDS.map((measure) => {
      const value = body[measure];
      return { measure, ...value, band: NINETY_PERCENT * value.spread };
    });
    io.out(`${JSON.stringify({ ok: true, measures }, null, 2)}\n`);
    return EXIT.fine;
  }
  const name = (id: keyof StartingBody): string => say(`measure.${id}`, {}, units);
  const wide = Math.max(...MEASURE_IDS.map((id) => name(id).length));
  for (const id of MEASURE_IDS) {
    const { mm, spread, from } = body[id];
    const values = {
      value: { mm: Math.round(mm) },
      spread: { mm: Math.round(NINETY_PERCENT * spread) },
      from: { word: `start.from.${from}` },
    };
    const key = from === 'given' ? 'start.from.given' : 'start.value';
    io.out(`${name(id).padEnd(wide)}  ${say(key, values, units)}\n`);
  }
  io.out(`${say('start.band', {}, units)}\n`);
  return EXIT.fine;
}

function bodyWished(
  { boy, age, height, weight }: AverageWish,
  units: UnitSystem,
): { readonly ok: true; readonly body: StartingBody } | Refusal {
  const ageMonths = age === undefined ? null : Number(age);
  if (ageMonths !== null && !(ageMonths >= 0)) return unreadable('start.not-a-number', '--age', age);
  const length = height === undefined ? null : parseLength(height, units);
  if (length !== null && !length.ok) return unreadable('start.not-a-length', '--height', height);
  const kg = weight === undefined ? null : parseWeight(weight);
  if (weight !== undefined && kg === null) return unreadable('start.not-a-weight', '--weight', weight);
  const { least, most } = MEASURES.height;
  const isBeyond = length !== null && (length.mm < least || length.mm > most);
  if (isBeyond || (ageMonths ?? 0) > AGE_MONTHS.most) {
    const values = { most: AGE_MONTHS.most, shortest: { mm: least }, tallest: { mm: most } };
    return refusal(EXIT.unusable, 'start.beyond', values);
  }
  const mm = length?.mm ?? null;
  if (kg !== null && mm !== null && !isBelievable(kg, mm)) {
    return refusal(EXIT.unusable, 'start.weight-beyond', { weight: weight ?? '', height: height ?? '' });
  }
  const sex = boy ? 'boy' : 'girl';
  const body = startingBody({ sex, ageMonths, height: mm, weight: kg });
  return body === null ? refusal(EXIT.unusable, 'start.too-little', {}) : { ok: true, body };
}

/** BMI, kg/m²: beyond these it is a slip (the 3rd and 97th line of the WHO lie at 12 at the lowest and 27 at the highest; the rest is room). */
const isBelievable = (kg: number, mm: number): boolean => {
  const bmi = kg / (mm / 1000) ** 2;
  return bmi >= 9 && bmi <= 40;
};

function unreadable(
  code: 'start.not-a-number' | 'start.not-a-length' | 'start.not-a-weight',
  option: string,
  found: string | undefined,
): Refusal {
  return refusal(EXIT.unusable, code, { option, found: `"${found ?? ''}"` });
}
