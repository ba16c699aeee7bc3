import type { DraftPart, DraftStep } from '../construct/index.ts';
import type { CutPiece } from '../cut/index.ts';
import { tell } from '../design/index.ts';
import { type Path, pathLength } from '../geometry/index.ts';
import {
  type FlowBlock,
  flowPages,
  type HandPart,
  type HandStep,
  handSheetPages,
  type Ink,
  measuredPages,
  type Page,
  type Paper,
  type TextMeasure,
} from '../sheet/index.ts';
import { formatLength, type UnitSystem } from '../units/index.ts';
import { say } from '../words/index.ts';
import { cutDress, sizeText } from './cut-dress.ts';
import type { Order } from './order.ts';
import type { ChildDress, DressByHand } from './work-child.ts';

/**
 * The sheet for drafting by hand, told in the units of the maker's ruler, and a last page that says whether the
 * rounded draft still fits together and what to add round it. Null where it can't be drawn with this ruler.
 */
export function handPages(
  order: Order,
  dress: ChildDress,
  pieces: readonly CutPiece[],
  paper: Paper,
  measure: TextMeasure,
  date: string,
): readonly Page[] | null {
  const { child, body, byHand } = dress;
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
  // The lines of the pleats are told by their measures, as the sentence that draws them promises.
  const rounded = cutDress(order, { ...dress, garment: byHand.garment }, date);
  const pleated = rounded.filter(({ piece }) => piece.markings.some(({ kind }) => kind === 'pleat-fold'));
  const measures = measuredPages({ pieces: pleated, child: child.name, paper, ruler: order.ruler, ink });
  return [...steps, ...measures, ...lastPages(byHand, pieces, child.name, paper, ink, date)];
}

function handPart(part: DraftPart, { units }: Ink): HandPart {
  const drawn: Path[] = [...part.before];
  const steps = part.steps.map((step: DraftStep): HandStep => {
    const faint = [...drawn];
    drawn.push(...step.lines);
    const points = step.places.map(({ name, at }) => ({ name: tell({ key: name, values: {} }, units), at }));
    const lengths = lengthsOf(step, units);
    return { sentence: tell(step.saying, units), diagram: { faint, live: step.lines, points, lengths } };
  });
  return { title: tell(part.title, units), steps };
}

/** A line this near to a length that the sentence tells is the one that is laid off, mm. */
const SAME_LENGTH = 0.05;

/** Each length of the sentence, with the line of the step that is so long. */
function lengthsOf({ saying, lines }: DraftStep, units: UnitSystem): HandStep['diagram']['lengths'] {
  return Object.values(saying.values).flatMap((value) => {
    if (typeof value !== 'object' || !('mm' in value)) return [];
    const along = lines.find((line) => Math.abs(pathLength(line) - value.mm) < SAME_LENGTH);
    return along === undefined ? [] : [{ text: formatLength(value.mm, units), along }];
  });
}

function lastPages(
  byHand: DressByHand,
  pieces: readonly CutPiece[],
  child: string,
  paper: Paper,
  ink: Ink,
  date: string,
): readonly Page[] {
  const { units } = ink;
  const spoiled = byHand.checks.filter(({ level }) => level === 'warn' || level === 'stop');
  const told = spoiled.map(({ say: what, todo }) =>
    todo === null ? tell(what, units) : `${tell(what, units)} ${tell(todo, units)}`,
  );
  const column = (key: 'piece' | 'cutting' | 'add', share: number) =>
    ({ heading: say(`order.hand.${key}`, {}, units), share, align: 'left' }) as const;
  const blocks: FlowBlock[] = [
    { kind: 'heading', text: say('order.hand.fit', {}, units) },
    {
      kind: 'paragraph',
      text: say(spoiled.length === 0 ? 'order.hand.fits' : 'order.hand.fits-not', {}, units),
    },
    { kind: 'ticks', items: told },
    { kind: 'heading', text: say('order.hand.allowances', {}, units) },
    {
      kind: 'table',
      columns: [column('piece', 3), column('cutting', 4), column('add', 7)],
      rows: pieces.map((piece) => [piece.label.title, piece.label.cutting, allowanceList(piece, ink)]),
      ticked: true,
    },
  ];
  const name = say('order.hand.last', {}, units);
  return flowPages(blocks, { paper, ink, name, footer: `${name} - ${child} - ${date}` });
}

/** `shoulder 3/8 in, side 1 in`: what is added at each kind of edge of a piece. */
function allowanceList({ piece, allowances }: CutPiece, { units }: Ink): string {
  const listed = new Set<string>();
  for (const { name, kind } of piece.edges) {
    const mm = allowances[name] ?? 0;
    if (kind !== 'fold') listed.add(`${say(`check.edge.${kind}`, {}, units)} ${formatLength(mm, units)}`);
  }
  return [...listed].join(', ');
}
