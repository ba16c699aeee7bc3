import type { BodyInput } from './body.ts';
import { type Field, type FieldId, type Judged, judgeFields } from './doubt-fields.ts';
import { type OtherChild, possibleSlips, type Slip } from './doubt-slips.ts';
import { KG_PER_POUND } from './growth-input.ts';
import type { MeasureId } from './measures.ts';
import { type BodyProblem, wordOf } from './problem.ts';

/**
 * As squared deviations: so far off must a value lie that is questioned without a reason. Where two fields only gainsay
 * each other, it is rather the one that is harder to take.
 */
const UNEXPLAINED = { age: 16, height: 14, others: 13 } as const;

/** What was meant must lie so near to what the others let expect. */
const LIKELY = 2.5;

/** A wrong unit, and nothing else, is held to be certain where the value lies so far off: it stops the drafting. */
const CERTAIN = 5;

/** So wide is the range that is told as expected. */
const EXPECTED = 2.5;

/** As many as can be wrong before nothing is left to hold them against. */
const MOST = 6;

interface Doubt {
  readonly slip: Slip | null;
  readonly places: readonly number[];
  readonly gain: number;
}

/**
 * The fields that do not fit the others, the worst first, each with the slip that explains it best. What was found
 * wrong is not used to judge the rest.
 */
export function findMisfits(input: BodyInput, others: readonly OtherChild[]): readonly BodyProblem[] {
  const found: BodyProblem[] = [];
  let rest = input;
  while (found.length < MOST) {
    const judged = judgeFields(rest);
    if (judged === null) break;
    const doubt = worstDoubt(judged, others);
    if (doubt === null) break;
    found.push(...problemsOf(doubt, judged));
    const bad = doubt.places.map((place) => judged.fields[place]?.id);
    rest = {
      ...rest,
      ageMonths: bad.includes('age') ? null : (rest.ageMonths ?? null),
      weight: bad.includes('weight') ? null : (rest.weight ?? null),
      measured: Object.fromEntries(
        Object.entries(rest.measured).filter(([id]) => !bad.includes(id as MeasureId)),
      ),
    };
  }
  return found;
}

/** The doubt that gains most. */
function worstDoubt(judged: Judged, others: readonly OtherChild[]): Doubt | null {
  const { fields } = judged;
  const values = fields.map(({ value }) => value);
  const before = judged.misfit(values);
  const slips = possibleSlips(fields, others).flatMap((slip): Doubt[] => {
    const places = slip.meant.map(([place]) => place);
    if (slip.whose !== undefined) return aloneFor(judged, places, slip);
    const meant = values.map((value, i) => slip.meant.find(([place]) => place === i)?.[1] ?? value);
    const gain = before - judged.misfit(meant) - slip.price;
    return gain > 0 && isLikely(judged, slip) ? [{ slip, places, gain }] : [];
  });
  const alone = fields.flatMap((_, place) => aloneFor(judged, [place], null));
  return [...alone, ...slips].reduce<Doubt | null>(
    (worst, doubt) => (worst === null || doubt.gain > worst.gain ? doubt : worst),
    null,
  );
}

function aloneFor(judged: Judged, places: readonly number[], slip: Slip | null): Doubt[] {
  const [place = 0] = places;
  const id = judged.fields[place]?.id;
  const price = slip?.price ?? UNEXPLAINED[id === 'age' || id === 'height' ? id : 'others'];
  const gain = (places.length > 1 ? judged.awayTogether(places) : judged.away(place) ** 2) - price;
  return gain > 0 ? [{ slip, places, gain }] : [];
}

/** Whether what was meant alone would be as the others let expect. Slips of several fields are judged by their gain. */
function isLikely(judged: Judged, { meant, code }: Slip): boolean {
  const [only, second] = meant;
  if (only === undefined || second !== undefined) return true;
  const { least, most } = judged.expected(only[0], LIKELY);
  const isUnit = code.startsWith('body.meant-');
  return only[1] >= least && only[1] <= most && (!isUnit || Math.abs(judged.away(only[0])) > CERTAIN);
}

export const oneDecimal = (value: number): number => Math.round(value * 10) / 10;

function problemsOf({ slip, places }: Doubt, judged: Judged): readonly BodyProblem[] {
  const [first, second] = places.map((place) => judged.fields[place]);
  if (first === undefined) return [];
  const { least, most } = judged.expected(places[0] ?? 0, EXPECTED);
  const meant = slip?.meant[0]?.[1] ?? 0;
  if (slip?.code.startsWith('body.all-in-')) {
    return [{ code: slip.code, level: 'stop', measure: null, values: {} }];
  }
  if (first.id === 'age') {
    const values = { age: Math.round(first.value), least: Math.round(least), most: Math.round(most) };
    return [{ code: 'body.age-unusual', level: 'warn', measure: 'age', values }];
  }
  if (first.id === 'weight') {
    const values = {
      value: oneDecimal(first.value),
      meant: oneDecimal(meant),
      pounds: oneDecimal(first.value / KG_PER_POUND),
      least: oneDecimal(least),
      most: oneDecimal(most),
      other: slip?.whose ?? '',
      measure: 'weight',
    };
    return [{ code: slip?.code ?? 'body.weight-unusual', level: 'warn', measure: 'weight', values }];
  }
  const values = {
    measure: wordOf(first.id),
    value: { mm: first.value },
    least: { mm: Math.max(least, 0) },
    most: { mm: most },
    ...(slip === null || slip.whose !== undefined ? {} : { meant: { mm: meant } }),
    ...(slip?.whose === undefined ? {} : { whose: slip.whose }),
    ...otherOf(second),
  };
  const isUnit = slip?.code.startsWith('body.meant-') ?? false;
  const problem: BodyProblem = {
    code: slip?.code ?? unexplainedCode(first.id, first.value < least),
    level: isUnit ? 'stop' : 'warn',
    measure: first.id,
    values,
  };
  if (slip?.code === 'body.girths-of-other') {
    return [{ ...problem, values: { ...values, count: places.length } }];
  }
  if (second === undefined || second.id === 'age' || second.id === 'weight') return [problem];
  const turned = {
    ...values,
    measure: wordOf(second.id),
    value: { mm: second.value },
    other: wordOf(first.id),
    otherValue: { mm: first.value },
  };
  return [problem, { ...problem, measure: second.id, values: turned }];
}

const unexplainedCode = (id: FieldId, isSmall: boolean) =>
  id === 'armLength' && isSmall ? ('body.arm-too-short' as const) : ('body.measure-unusual' as const);

function otherOf(second: Field | undefined) {
  if (second === undefined || second.id === 'age' || second.id === 'weight') return {};
  return { other: wordOf(second.id), otherValue: { mm: second.value } };
}
