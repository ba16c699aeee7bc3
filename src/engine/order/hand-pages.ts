import type { DraftPart, DraftStep } from '../construct/index.ts';
import { tell } from '../design/index.ts';
import type { Path } from '../geometry/index.ts';
import {
  type FlowBlock,
  flowPages,
  type HandPart,
  type HandStep,
  handSheetPages,
  type Ink,
  type Page,
  type Paper,
  type TextMeasure,
} from '../sheet/index.ts';
import { say } from '../words/index.ts';
import { sizeText } from './cut-dress.ts';
import type { Order } from './order.ts';
import type { ChildDress, DressByHand } from './work-child.ts';

/**
 * The sheet for drafting by hand, told in the units of the maker's ruler, and a page that says whether the rounded
 * draft still fits together. Null where it can't be drawn with this ruler.
 */
export function handPages(
  order: Order,
  { child, body, byHand }: ChildDress,
  paper: Paper,
  measure: TextMeasure,
  date: string,
): readonly Page[] | null {
  if (byHand === null) return null;
  const ink: Ink = { units: order.ruler.system, measure };
  const size = sizeText(body, ink.units);
  const steps = handSheetPages({
    parts: byHand.draft.filter(({ steps }) => steps.length > 0).map((part) => handPart(part, ink)),
    child: child.name,
    size,
    date,
    paper,
    ink,
  });
  return [...steps, ...fitPages(byHand, child.name, paper, ink, date)];
}

function handPart(part: DraftPart, { units }: Ink): HandPart {
  const drawn: Path[] = [...part.before];
  const steps = part.steps.map((step: DraftStep): HandStep => {
    const faint = [...drawn];
    drawn.push(...step.lines);
    const points = step.places.map(({ name, at }) => ({ name: tell({ key: name, values: {} }, units), at }));
    return { sentence: tell(step.saying, units), diagram: { faint, live: step.lines, points } };
  });
  return { title: tell(part.title, units), steps };
}

function fitPages(byHand: DressByHand, child: string, paper: Paper, ink: Ink, date: string): readonly Page[] {
  const { units } = ink;
  const spoiled = byHand.checks.filter(({ level }) => level === 'warn' || level === 'stop');
  const told = spoiled.flatMap(({ say: what, todo }) => [
    [tell(what, units), todo === null ? '' : tell(todo, units)].join(' ').trim(),
  ]);
  const blocks: FlowBlock[] = [
    { kind: 'heading', text: say('order.hand.fit', {}, units) },
    {
      kind: 'paragraph',
      text: say(spoiled.length === 0 ? 'order.hand.fits' : 'order.hand.fits-not', {}, units),
    },
    { kind: 'ticks', items: told },
  ];
  const name = say('order.hand.fit', {}, units);
  return flowPages(blocks, { paper, ink, name, footer: `${name} - ${child} - ${date}` });
}
