import * as v from 'valibot';
import type { WordKey } from '../words/index.ts';
import { nearest } from './nearest.ts';
import type { OrderPath } from './path.ts';
import { fieldProblem, type OrderPlace, type OrderProblem } from './problem.ts';
import { ORDER_SCHEMA, type OrderFile } from './schema.ts';
import { shown } from './shown.ts';

export type FormResult =
  | { readonly ok: true; readonly order: OrderFile }
  | { readonly ok: false; readonly problems: readonly OrderProblem[] };

/** Holds a file against the form of an order. Nothing is dropped or guessed: every field is known, or refused. */
export function readForm(order: unknown, placeOf: (path: OrderPath) => OrderPlace): FormResult {
  const read = v.safeParse(ORDER_SCHEMA, order);
  if (read.success) return { ok: true, order: read.output };
  return { ok: false, problems: read.issues.map((issue) => problemOf(issue, placeOf)) };
}

type Issue = v.InferIssue<typeof ORDER_SCHEMA>;

function problemOf(issue: Issue, placeOf: (path: OrderPath) => OrderPlace): OrderProblem {
  const path = (issue.path ?? []).map(({ key }) => (typeof key === 'number' ? key : String(key)));
  const last = path.at(-1);
  if (issue.type === 'strict_object' && issue.expected === 'never' && typeof last === 'string') {
    return unknownField(placeOf(path.slice(0, -1)), last, issue.message.split(' '));
  }
  const at = placeOf(path);
  if (issue.received === 'undefined' && typeof last === 'string') {
    return fieldProblem(at, 'order.missing', { name: last });
  }
  const found = shown(issue.input);
  switch (issue.message) {
    case 'choice':
      return notAChoice(at, issue.input, choicesIn(issue.expected ?? ''));
    case 'too-many':
      return fieldProblem(at, 'order.too-many', { most: String(issue.expected).replace(/\D/g, '') });
    default:
      return fieldProblem(at, WANTED[issue.message] ?? 'order.wants.table', { found });
  }
}

/** `("A4" | "A0")` as the library tells what it expected. */
const choicesIn = (expected: string): readonly string[] =>
  [...expected.matchAll(/"([^"]*)"/g)].map(([, choice]) => choice ?? '');

/** What a schema asks for by its message, as a sentence. */
const WANTED: Readonly<Record<string, WordKey>> = {
  table: 'order.wants.table',
  list: 'order.wants.list',
  text: 'order.wants.text',
  length: 'order.wants.length',
  amount: 'order.wants.amount',
  number: 'order.wants.number',
  flag: 'order.wants.flag',
  scalar: 'order.wants.scalar',
  'not-empty': 'order.wants.not-empty',
  'not-blank': 'order.wants.not-blank',
};

export function unknownField(at: OrderPlace, name: string, known: readonly string[]): OrderProblem {
  const near = nearest(name, known);
  const inside = { ...at, path: [...at.path, name] };
  const found = shown(name);
  return near === null
    ? fieldProblem(inside, 'order.unknown-field', { found, known: known.join(', ') })
    : fieldProblem(inside, 'order.unknown-field.near', { found, near });
}

export function notAChoice(at: OrderPlace, given: unknown, choices: readonly string[]): OrderProblem {
  const near = typeof given === 'string' ? nearest(given, choices) : null;
  const values = { found: shown(given), choices: choices.map((choice) => `"${choice}"`).join(', ') };
  return near === null
    ? fieldProblem(at, 'order.not-a-choice', values)
    : fieldProblem(at, 'order.not-a-choice.near', { ...values, near });
}
