import {
  dayText,
  growthBand,
  MEASURE_IDS,
  MEASURES,
  type NextMeasure,
  NINETY_PERCENT,
} from '../engine/body/index.ts';
import {
  changeWords,
  grownWords,
  measuringSheet,
  type NeededMeasure,
  neededMeasures,
  nextWords,
  type Order,
  type OrderChild,
  readOrder,
} from '../engine/order/index.ts';
import { formatLength, type UnitSystem } from '../engine/units/index.ts';
import { type Saying, say, speak } from '../engine/words/index.ts';
import { EXIT, type ExitCode, type Io } from './io.ts';
import { openOrder } from './order-file.ts';
import { orderRefusal, type Refusal, refusal, sayRefusal } from './refusal.ts';
import { sheetProblem, writeSheet } from './write-sheet.ts';

export interface MeasuresWish {
  /** The order whose children are meant, or the design steps of a dress that is only thought of. */
  readonly file: string | null;
  readonly steps: readonly string[];
  /** A new PDF file for the measuring sheets; null for none. */
  readonly sheet: string | null;
  /** One child of the order; null for all. */
  readonly child: string | null;
  readonly json: boolean;
}

interface ChildMeasures {
  readonly child: OrderChild;
  readonly needed: readonly NeededMeasure[];
  readonly next: NextMeasure | null;
  readonly doubts: readonly Saying[];
}

/** Says which measurements a dress rests on, which of them are known, and how the others are taken. */
export async function measuresCommand(io: Io, wish: MeasuresWish): Promise<ExitCode> {
  const { file, steps, sheet, json } = wish;
  const opened = await orderMeant(io, file, steps);
  if (!opened.ok) return sayRefusal(io, opened, json);
  const { order } = opened;
  const wrong = wishProblem(order, wish);
  if (wrong !== null) return sayRefusal(io, wrong, json);
  const meant = order.children.filter(({ name }) => wish.child === null || name === wish.child);
  if (sheet !== null) {
    return writeSheet(io, order, { file: sheet, title: 'measuring.name', json }, (tools) =>
      meant.flatMap((child) => measuringSheet(order, child, tools).pages),
    );
  }
  const children: ChildMeasures[] = [];
  for (const child of meant) {
    const found = neededMeasures(order, child);
    if (!found.ok) return sayRefusal(io, orderRefusal(found.problems, order.units), json);
    const { needed, next, doubts } = found;
    children.push({ child, needed, next, doubts });
  }
  if (json) io.out(`${JSON.stringify({ ok: true, ...measureData(children, file !== null) }, null, 2)}\n`);
  else
    for (const child of children) io.out(`${measureLines(child, order.units, file !== null).join('\n')}\n\n`);
  return EXIT.fine;
}

function wishProblem({ children }: Order, { sheet, child }: MeasuresWish): Refusal | null {
  const known = children.map(({ name }) => name);
  if (child !== null && !known.includes(child))
    return refusal(EXIT.unusable, 'cli.measures.no-child', { name: child, known: known.join(', ') });
  return sheetProblem(sheet);
}

async function orderMeant(
  io: Io,
  file: string | null,
  steps: readonly string[],
): Promise<{ readonly ok: true; readonly order: Order } | Refusal> {
  if ((file === null) === (steps.length === 0)) return refusal(EXIT.unusable, 'cli.measures.which', {});
  if (file !== null) return openOrder(io, file);
  const read = readOrder(JSON.stringify(thoughtOf(steps)));
  return read.ok ? read : orderRefusal(read.problems, read.units);
}

/** An order for one girl of four who was not measured, so that a design can be asked before there is an order. */
const thoughtOf = (steps: readonly string[]): object => ({
  frockwright: 1,
  title: '-',
  dueDay: '2000-01-01',
  units: 'cm',
  cloths: [{ name: '-', use: ['main'], width: 140 }],
  dress: steps.map((step) => ({ step })),
  children: [{ name: steps.join(', '), ageMonths: 48 }],
});

function measureLines(
  { child, needed, next, doubts }: ChildMeasures,
  units: UnitSystem,
  isReal: boolean,
): readonly string[] {
  const known = needed.filter(({ value }) => value.from === 'measured');
  const missing = needed.filter(({ value }) => value.from === 'estimated');
  const label = (id: NeededMeasure['id']): string => say(`measure.${id}`, {}, units);
  const wide = Math.max(...needed.map(({ id }) => label(id).length));
  const grown = (id: NeededMeasure['id']): string => {
    const words = grownWords(child, id, units);
    return words === null ? '' : ` (${words})`;
  };
  return [
    child.name,
    ...(isReal && next !== null ? [`  ${nextWords(next, units)}`] : []),
    ...(known.length === 0 ? [] : [`  ${say('cli.measures.known', {}, units)}`]),
    ...known.map(
      ({ id, value }) => `    ${label(id).padEnd(wide)}  ${formatLength(value.mm, units)}${grown(id)}`,
    ),
    ...(missing.length === 0
      ? []
      : [`  ${say(isReal ? 'cli.measures.filled-in' : 'cli.measures.take', {}, units)}`]),
    ...(isReal && missing.length > 0 ? [`    (${say('measure.give-or-take', {}, units)})`] : []),
    ...missing.flatMap(({ id, use, value }) => [
      isReal
        ? `    ${label(id).padEnd(wide)}  ${about(value, units)}${use === 'checks' ? ` (${say('cli.measures.checks', {}, units)})` : ''}`
        : `    ${label(id)}`,
      `      ${say(`measure.${id}.how`, {}, units)}`,
      ...(isReal && value.from === 'estimated' ? [`      ${say(value.rule, {}, units)}`] : []),
    ]),
    ...doubts.map((doubt) => `  ${speak(doubt, units)}`),
    ...(isReal ? earlierLines(child, units) : []),
  ];
}

/** The last measuring before this one, and what has changed since. */
function earlierLines({ growth }: OrderChild, units: UnitSystem): readonly string[] {
  const [last] = growth?.earlier ?? [];
  const now = growth?.input.measured.measures ?? {};
  if (last === undefined) return [];
  const rows = MEASURE_IDS.flatMap((id) => {
    const [then, present] = [last.measures[id], now[id]];
    if (then === undefined || present === undefined) return [];
    const change = changeWords(then, present, units);
    const values = { before: { mm: then }, now: { mm: present }, change };
    return [{ name: say(`measure.${id}`, {}, units), text: say('measure.since', values, units) }];
  });
  const wide = Math.max(0, ...rows.map(({ name }) => name.length));
  return [
    `  ${say('cli.measures.before', { day: dayText(last.day) }, units)}`,
    ...rows.map(({ name, text }) => `    ${name.padEnd(wide)}  ${text}`),
  ];
}

function about(value: NeededMeasure['value'], units: UnitSystem): string {
  const length = formatLength(value.mm, units);
  if (value.from === 'measured') return length;
  return say('cli.measures.about', { length, spread: { mm: NINETY_PERCENT * value.spread } }, units);
}

function measureData(children: readonly ChildMeasures[], isReal: boolean): object {
  const data = (child: OrderChild, { id, use, value }: NeededMeasure): object => ({
    measure: id,
    isoTerm: MEASURES[id].isoTerm,
    use,
    how: say(`measure.${id}.how`, {}, 'cm'),
    ...(isReal ? value : {}),
    ...(isReal && value.from === 'estimated'
      ? { band: NINETY_PERCENT * value.spread, source: say(value.rule, {}, 'cm') }
      : {}),
    ...(isReal ? grownData(child, id) : {}),
  });
  return {
    children: children.map(({ child, needed, next, doubts }) => ({
      name: child.name,
      measures: needed.map((one) => data(child, one)),
      ...(isReal ? { next, doubts: doubts.map((doubt) => speak(doubt, 'cm')) } : {}),
    })),
  };
}

/** Of a value that was grown to the day: what was measured, and in which band nine of ten will lie. */
function grownData(child: OrderChild, id: NeededMeasure['id']): object {
  const grown = child.growth?.drafted?.grown;
  const value = grown?.values[id];
  if (grown === undefined || value === undefined || value.from.kind === 'measured') return {};
  const { measured, spread } = value;
  return {
    from: 'grown',
    measured,
    spread,
    band: growthBand(grown, id),
    source: grownWords(child, id, 'cm'),
  };
}
