import {
  type BodyInput,
  type BodyValue,
  completeBody,
  dayText,
  KG_PER_POUND,
  MEASURE_IDS,
  type MeasureId,
  type NextMeasure,
  NINETY_PERCENT,
} from '../body/index.ts';
import {
  type FlowBlock,
  flowPages,
  type Ink,
  landmarkFigure,
  type MeasureCard,
  measureCards,
  type Page,
  type Paper,
} from '../sheet/index.ts';
import { formatLength, type UnitSystem } from '../units/index.ts';
import { say, type WordKey } from '../words/index.ts';
import { doubtContext } from './doubt-context.ts';
import { neededMeasures } from './needed-measures.ts';
import type { Order, OrderChild } from './order.ts';

/**
 * The measuring sheet of one child: how to go about it, and for every measure where the tape runs, what is known and
 * room to write, in both units. What the dress rests on comes first; where it can't be drawn all are asked for.
 */
export function measuringPages(
  order: Order,
  child: OrderChild,
  paper: Paper,
  ink: Ink,
  day: string,
): readonly Page[] {
  const told = (key: WordKey, values = {}): string => say(key, values, ink.units);
  const found = neededMeasures(order, child);
  const needed: readonly MeasureId[] = found.ok ? found.needed.map(({ id }) => id) : MEASURE_IDS;
  const others = MEASURE_IDS.filter((id) => !needed.includes(id));
  const taken = asMeasured(child);
  const filled = completeBody(taken.body, doubtContext(order, child));
  const card = (id: MeasureId): MeasureCard => ({
    id,
    name: told(`measure.${id}`),
    how: told(`measure.${id}.how`),
    known: lengthWords(taken.body.measured[id], filled.ok ? filled.body.values[id] : null, taken.day),
    units: [told('measuring.unit.cm'), told('measuring.unit.in')],
  });
  const weight: MeasureCard = {
    id: 'weight',
    name: told('measure.weight'),
    how: told('measure.weight.how'),
    known: weightWords(taken.body.weight ?? null, taken.day),
    units: [told('measuring.unit.kg'), told('measuring.unit.lb')],
  };
  const name = told('measuring.name');
  const blocks: readonly FlowBlock[] = [
    { kind: 'title', text: told('measuring.title', { child: child.name }) },
    { kind: 'paragraph', text: told('measuring.taken') },
    { kind: 'heading', text: told('measuring.before') },
    ...(['over', 'with', 'hold', 'tape', 'lines'] as const).map(
      (part): FlowBlock => ({ kind: 'paragraph', text: told(`measuring.${part}`) }),
    ),
    { kind: 'heading', text: told('measuring.letters') },
    landmarkFigure(ink),
    { kind: 'new-page' },
    { kind: 'heading', text: told('measuring.needed') },
    ...(found.ok && found.next !== null
      ? [{ kind: 'paragraph', text: nextWords(found.next, ink.units) } as const]
      : []),
    ...measureCards([...needed.map(card), weight], ink),
    ...(others.length === 0
      ? []
      : [
          { kind: 'heading', text: told('measuring.others') } as const,
          ...measureCards(others.map(card), ink),
        ]),
  ];
  const footer = told('measuring.footer', { child: child.name, day });
  return flowPages(blocks, { paper, ink, name, footer });
}

/** What to measure next, and what that would do for the dress. */
export const nextWords = ({ id, narrows }: NextMeasure, units: UnitSystem): string =>
  say('measure.next', { measure: { word: `measure.${id}` }, share: Math.round(100 * narrows) }, units);

interface Taken {
  readonly body: BodyInput;
  readonly day: string | null;
}

/** What was measured and when; of a dress that is drafted to the day, the measures before they were grown. */
function asMeasured({ body, growth }: OrderChild): Taken {
  if (growth === null) return { body, day: null };
  const { measured } = growth.input;
  const day = dayText(measured.day);
  if (growth.drafted === null) return { body, day };
  const { measures, weight } = measured;
  const ageMonths = Math.floor(growth.drafted.grown.ages.measured);
  return { body: { ...body, ageMonths, measured: measures, weight: weight ?? null }, day };
}

function lengthWords(given: number | undefined, value: BodyValue | null, day: string | null): string | null {
  if (given !== undefined) return knownWords(formatLength(given, 'cm'), formatLength(given, 'in'), day);
  if (value === null || value.from === 'measured') return null;
  const band = NINETY_PERCENT * value.spread;
  const values = {
    cm: formatLength(value.mm, 'cm'),
    in: formatLength(value.mm, 'in'),
    bandCm: formatLength(band, 'cm'),
    bandIn: formatLength(band, 'in'),
  };
  return say('measuring.likely', values, 'cm');
}

function weightWords(kg: number | null, day: string | null): string | null {
  if (kg === null) return null;
  const text = (value: number, unit: 'kg' | 'lb'): string =>
    say(
      'measuring.weight',
      { value: Math.round(10 * value) / 10, unit: { word: `measuring.unit.${unit}` } },
      'cm',
    );
  return knownWords(text(kg, 'kg'), text(kg / KG_PER_POUND, 'lb'), day);
}

const knownWords = (metric: string, other: string, day: string | null): string =>
  day === null
    ? say('measuring.known-undated', { cm: metric, in: other }, 'cm')
    : say('measuring.known', { day, cm: metric, in: other }, 'cm');
