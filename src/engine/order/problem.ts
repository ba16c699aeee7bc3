import { tell } from '../design/index.ts';
import type { UnitSystem } from '../units/index.ts';
import type { Saying, WordKey, WordValues } from '../words/index.ts';
import { fieldSaying } from './field-words.ts';
import { type OrderPath, pathText } from './path.ts';

/** One thing because of which an order can't be used. */
export interface OrderProblem {
  /** The key of what is wrong; `values` are its facts. */
  readonly code: string;
  readonly values: WordValues;
  /** The child's name as it will stand on the paper; null when the whole order is concerned. */
  readonly child: string | null;
  /** `children[2].measures.chestGirth`; empty for the file as a whole. */
  readonly path: string;
  /** Whose, which field, what is wrong, what to do, and where it stands in the file. */
  readonly say: Saying;
}

/** Whose field it is and where it stands; problems are made against it. */
export interface OrderPlace {
  readonly child: string | null;
  readonly path: OrderPath;
  /** The design step that the path leads into. */
  readonly step?: string;
  /** Her name for it, where it may stand several times. */
  readonly as?: string;
}

/** A problem with one field. `code` is a key of the core catalogue, checked by the compiler. */
export function fieldProblem(at: OrderPlace, code: WordKey, values: WordValues = {}): OrderProblem {
  return aboutField(at, { key: code, values });
}

/** A problem with one field, told by a saying of another room that does not name the field itself. */
export function aboutField(at: OrderPlace, what: Saying): OrderProblem {
  const field = nearestField(at);
  const { child } = at;
  if (child === null)
    return problem(at, what, { key: FIELD, values: { field: field ?? { word: ORDER }, what } });
  const key = field === null ? CHILD : CHILD_FIELD;
  return problem(at, what, { key, values: { child, field: field ?? '', what } });
}

const FIELD: WordKey = 'order.problem.field';
const CHILD: WordKey = 'order.problem.child';
const CHILD_FIELD: WordKey = 'order.problem.child-field';
const ORDER: WordKey = 'order.field.order';

/** The field itself, or the group it lies in where the maker has no word for it. */
function nearestField({ path, step, as }: OrderPlace): Saying | null {
  const child = path[0] === 'children' && typeof path[1] === 'number' ? 2 : 0;
  for (let length = path.length; length > child; length--) {
    const field = fieldSaying(path.slice(0, length), step === undefined ? null : { step, as });
    if (field !== null) return field;
  }
  return null;
}

/** A problem told by a saying that says by itself whose field it is, or that concerns the whole file. */
export function aboutPlace(at: OrderPlace, what: Saying): OrderProblem {
  return problem(at, what, what);
}

/** The problem as a maker reads it. */
export function problemSentence({ say }: OrderProblem, units: UnitSystem): string {
  const [first = '', ...rest] = tell(say, units);
  return `${first.toUpperCase()}${rest.join('')}`;
}

function problem(at: OrderPlace, what: Saying, sentence: Saying): OrderProblem {
  const path = pathText(at.path);
  const placed: WordKey = 'order.problem.placed';
  const say = path === '' ? sentence : { key: placed, values: { sentence, path } };
  return { code: what.key, values: what.values, child: at.child, path, say };
}
