import { parseLength, type UnitSystem } from '../units/index.ts';
import type { GivenParams, Param, ParamTable, ParamValues } from './params.ts';

/** Why a given value can't be used; `allowed` holds the range in mm or the choices. */
export type ParamProblem =
  | { readonly code: 'unknown-param'; readonly param: string; readonly known: readonly string[] }
  | {
      readonly code: 'unreadable';
      readonly param: string;
      readonly given: string;
      readonly wants: Param<never>['kind'];
    }
  | {
      readonly code: 'not-a-choice';
      readonly param: string;
      readonly given: string;
      readonly choices: readonly string[];
    }
  | {
      readonly code: 'out-of-range';
      readonly param: string;
      readonly value: number;
      readonly range: readonly [number, number];
      readonly isLength: boolean;
    };

export type Resolved<V> =
  | { readonly ok: true; readonly values: V }
  | { readonly ok: false; readonly problems: readonly ParamProblem[] };

/** Fills a table of parameters from what is given, and from its rules where nothing is. Lengths come out in mm. */
export function resolveParams<C, T extends ParamTable<C>>(
  table: T,
  given: GivenParams,
  context: C,
  units: UnitSystem,
): Resolved<ParamValues<T>> {
  const problems: ParamProblem[] = [];
  const known = Object.keys(table);
  for (const name of Object.keys(given)) {
    if (!known.includes(name)) problems.push({ code: 'unknown-param', param: name, known });
  }
  const values: Record<string, unknown> = {};
  for (const [name, param] of Object.entries(table)) {
    const value = given[name];
    if (value === undefined) values[name] = param.rule(context);
    else {
      const read = readParam(name, param, value, context, units);
      if (typeof read === 'object') problems.push(read);
      else values[name] = read;
    }
  }
  // The loop has put one value of the right kind under every name of the table.
  return problems.length > 0 ? { ok: false, problems } : { ok: true, values: values as ParamValues<T> };
}

/** Longest name that is taken from a maker, letters. */
const LONGEST_NAME = 80;

function readParam<C>(
  name: string,
  param: Param<C>,
  given: string | number | boolean,
  context: C,
  units: UnitSystem,
): number | string | boolean | ParamProblem {
  const unreadable: ParamProblem = {
    code: 'unreadable',
    param: name,
    given: String(given),
    wants: param.kind,
  };
  switch (param.kind) {
    case 'flag':
      return typeof given === 'boolean' ? given : unreadable;
    case 'text':
      return typeof given === 'string' && given.trim() !== '' && given.length <= LONGEST_NAME
        ? given.trim()
        : unreadable;
    case 'choice':
      return typeof given === 'string' && param.choices.includes(given)
        ? given
        : { code: 'not-a-choice', param: name, given: String(given), choices: param.choices };
    case 'length': {
      if (typeof given === 'boolean') return unreadable;
      const parsed = parseLength(given, units);
      return parsed.ok ? withinRange(name, parsed.mm, param.range(context), true) : unreadable;
    }
    case 'ratio':
    case 'count': {
      const value = typeof given === 'string' && given.trim() !== '' ? Number(given) : given;
      if (typeof value !== 'number' || !Number.isFinite(value)) return unreadable;
      if (param.kind === 'count' && !Number.isInteger(value)) return unreadable;
      return withinRange(name, value, param.range(context), false);
    }
  }
}

/** Ranges forgive a thousandth, so that a value which was rounded when it was written can be read again. */
function withinRange(
  param: string,
  value: number,
  range: readonly [number, number],
  isLength: boolean,
): number | ParamProblem {
  const slack = Math.max(Math.abs(range[0]), Math.abs(range[1])) * 1e-3;
  return value >= range[0] - slack && value <= range[1] + slack
    ? value
    : { code: 'out-of-range', param, value, range, isLength };
}
