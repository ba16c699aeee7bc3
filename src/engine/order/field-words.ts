import { findStep } from '../design/index.ts';
import { en, type Saying, type WordKey } from '../words/index.ts';
import type { OrderPath } from './path.ts';

/** A design step that a path leads into, and the maker's name for it where it has one. */
interface NamedStep {
  readonly step: string;
  readonly as: string | undefined;
}

/**
 * What the maker calls the field at the end of a path; null where there is no word for it. `step` is the design
 * step that the path leads into, whose parameters have words of their own.
 */
export function fieldSaying(path: OrderPath, step: NamedStep | null): Saying | null {
  const [head, index, ...rest] = path;
  if (head === 'children' && typeof index === 'number' && rest.length > 0) return fieldSaying(rest, step);
  const last = path.at(-1);
  if (step !== null) return stepField(step, last);
  const names = path.filter((part) => typeof part === 'string');
  const field = wordFor(names);
  if (head === 'cloths' && typeof index === 'number' && field !== null) {
    return { key: 'order.field.of-cloth' satisfies WordKey, values: { number: index + 1, field } };
  }
  return field;
}

function stepField({ step, as }: NamedStep, param: string | number | undefined): Saying | null {
  const known = findStep(step);
  if (known === undefined) return firstKnown(['order.field.dress']);
  const plain: Saying = { key: `${step}.title`, values: {} };
  const title: Saying =
    as === undefined
      ? plain
      : { key: 'order.field.named-step' satisfies WordKey, values: { step: plain, as } };
  if (typeof param !== 'string' || known.params[param] === undefined) return title;
  const field: Saying = { key: `${step}.${param}`, values: {} };
  return { key: 'order.field.of-step' satisfies WordKey, values: { step: title, field } };
}

function wordFor(names: readonly string[]): Saying | null {
  const [table = '', ...inside] = names;
  const last = inside.at(-1);
  if (table === 'allowances' && inside.length === 2) {
    const edge = firstKnown([`check.edge.${last}`, `order.edge.${last}`]);
    return edge === null ? null : { key: 'order.field.allowance' satisfies WordKey, values: { edge } };
  }
  const plain = `order.field.${names.join('.')}`;
  if (last === undefined) return firstKnown([plain]);
  return firstKnown([plain, table === 'measures' ? `measure.${last}` : `order.field.${table}.${last}`]);
}

function firstKnown(keys: readonly string[]): Saying | null {
  const key = keys.find((candidate) => candidate in en);
  return key === undefined ? null : { key, values: {} };
}
