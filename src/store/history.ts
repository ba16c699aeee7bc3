import * as v from 'valibot';
import { type History, type HistoryStep, NO_HISTORY } from './types.ts';

/**
 * Histories lie in the store as JSON text: the store never looks inside, the length is known, and a step that cannot
 * be read costs the undo steps, never the order.
 */
const STEP = v.object({
  label: v.object({ key: v.string(), values: v.custom<HistoryStep['label']['values']>(isTable) }),
  cause: v.string(),
  patches: v.array(v.unknown()),
  inverse: v.array(v.unknown()),
});
const HISTORY = v.pipe(
  v.object({ steps: v.array(STEP), position: v.pipe(v.number(), v.integer(), v.minValue(0)) }),
  v.check(({ steps, position }) => position <= steps.length),
);

function isTable(value: unknown): boolean {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

export function readHistory(raw: unknown): History {
  if (typeof raw !== 'string') return NO_HISTORY;
  try {
    const read = v.safeParse(HISTORY, JSON.parse(raw));
    return read.success ? read.output : NO_HISTORY;
  } catch (error) {
    if (error instanceof SyntaxError) return NO_HISTORY;
    throw error;
  }
}

/** Undo steps that are kept of one order, and the length of their text: each save writes them anew. */
const MOST_STEPS = 500;
const LONGEST = 1_000_000;

/** The text that is kept: the newest steps that find room. The oldest go first, then what could be redone last. */
export function historyText({ steps, position }: History): string {
  const texts = steps.map((step) => JSON.stringify(step));
  let from = Math.min(position, Math.max(0, steps.length - MOST_STEPS));
  let to = Math.min(steps.length, from + MOST_STEPS);
  let length = texts.slice(from, to).reduce((sum, text) => sum + text.length, 0);
  while (length > LONGEST) length -= texts[from < position ? from++ : --to]?.length ?? length;
  return `{"steps":[${texts.slice(from, to).join(',')}],"position":${position - from}}`;
}
