import type { WordKey, WordValues } from '../words/index.ts';
import { isPassedOver } from './passed-over.ts';
import type { OrderPath } from './path.ts';
import { fieldProblem, type OrderPlace, type OrderProblem } from './problem.ts';
import { shown } from './shown.ts';

/** Letters of any text of an order; a longer name is a slip, and would not fit on a piece. */
export const LONGEST_TEXT = 80;

/**
 * What no order may hold, whatever its form: control characters, texts without end, and field names that mean
 * something to the language this program is written in and would be passed over by the reader of the form.
 */
export function plainTextProblems(
  order: unknown,
  placeOf: (path: OrderPath) => OrderPlace,
): readonly OrderProblem[] {
  const problems: OrderProblem[] = [];
  const look = (value: unknown, path: OrderPath): void => {
    if (typeof value === 'string') {
      const problem = textProblem(value);
      if (problem !== null) problems.push(fieldProblem(placeOf(path), problem.code, problem.values));
    } else if (Array.isArray(value)) for (const [i, item] of value.entries()) look(item, [...path, i]);
    else if (typeof value === 'object' && value !== null) {
      for (const [name, inside] of Object.entries(value)) {
        if (isPassedOver(name) || hasControl(name)) {
          problems.push(fieldProblem(placeOf(path), 'order.forbidden-field', { found: shown(name) }));
        } else look(inside, [...path, name]);
      }
    }
  };
  look(order, []);
  return problems;
}

function textProblem(text: string): { readonly code: WordKey; readonly values: WordValues } | null {
  if (text.length > LONGEST_TEXT && [...text].length > LONGEST_TEXT)
    return { code: 'order.too-long', values: { found: shown(text), most: LONGEST_TEXT } };
  return hasControl(text) ? { code: 'order.control-character', values: { found: shown(text) } } : null;
}

/** Control characters, and the marks that turn the direction of text around and so can hide what it says. */
const hasControl = (text: string): boolean =>
  /[\p{Cc}\u{202a}-\u{202e}\u{2066}-\u{2069}]|[\p{Cs}]/u.test(text);
