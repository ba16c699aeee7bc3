import { findStep, tell } from '../design/index.ts';
import { type FlowBlock, flowPages, type Ink, type Page, type Paper, sketchFigure } from '../sheet/index.ts';
import { sketchDress } from '../sketch/index.ts';
import { formatLength, parseLength } from '../units/index.ts';
import { type Saying, say, type WordKey } from '../words/index.ts';
import { sizeText } from './cut-dress.ts';
import type { PlacedStep } from './order.ts';
import type { ChildDress } from './work-child.ts';

/** The two sketches leave room for the list below them, mm. */
const TALLEST_SKETCH = 150;

/** One page that shows the dress, front and back as flat sketches, and lists what it is made of. */
export function dressPages(
  { child, body, garment }: ChildDress,
  paper: Paper,
  ink: Ink,
  date: string,
): readonly Page[] {
  const told = (key: WordKey, values = {}): string => say(key, values, ink.units);
  // A side of which nothing is cut on its own, as where she has joined the back to the front, can't be drawn.
  const sketches = (['front', 'back'] as const)
    .map((side) => ({ sketch: sketchDress(garment, side), caption: told(`order.dress.${side}`) }))
    .filter(({ sketch }) => sketch.lines.length > 0);
  const blocks: readonly FlowBlock[] = [
    { kind: 'title', text: child.name },
    { kind: 'paragraph', text: told('order.dress.head', { size: sizeText(body, ink.units), day: date }) },
    ...(sketches.length === 0 ? [] : [sketchFigure(sketches, paper, TALLEST_SKETCH)]),
    { kind: 'paragraph', text: told('order.dress.drawn') },
    { kind: 'heading', text: told('order.dress.steps') },
    {
      kind: 'table',
      columns: [
        { heading: told('order.dress.step'), share: 2, align: 'left' },
        { heading: told('order.dress.numbers'), share: 5, align: 'left' },
      ],
      rows: child.steps.map((step) => [tell(titleOf(step), ink.units), numbersOf(step, ink)]),
      ticked: false,
    },
  ];
  return flowPages(blocks, {
    paper,
    ink,
    name: told('order.dress.name'),
    footer: told('order.dress.footer', { child: child.name, day: date }),
  });
}

function titleOf({ step, as }: PlacedStep): Saying {
  const title: Saying = { key: `${step}.title`, values: {} };
  const named: WordKey = 'order.field.named-step';
  return as === undefined ? title : { key: named, values: { step: title, as } };
}

/** What the order says about a step; what it does not say stays with the rule. */
function numbersOf({ step, given }: PlacedStep, { units }: Ink): string {
  const params = findStep(step)?.params ?? {};
  const shown = (name: string, value: string | number | boolean): string => {
    const kind = params[name]?.kind;
    if (kind === 'choice') return tell({ key: `${step}.${name}.${value}`, values: {} }, units);
    if (kind !== 'length' || typeof value === 'boolean') return String(value);
    const length = parseLength(value, units);
    return length.ok ? formatLength(length.mm, units) : String(value);
  };
  const parts = Object.entries(given).map(
    ([name, value]) => `${tell({ key: `${step}.${name}`, values: {} }, units)}: ${shown(name, value)}`,
  );
  return parts.length === 0 ? say('order.dress.by-rule', {}, units) : parts.join('; ');
}
