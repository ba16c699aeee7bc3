import type { GivenParams, Param } from '../construct/index.ts';
import { parseLength, type UnitSystem } from '../units/index.ts';
import { notAChoice, unknownField } from './form-problems.ts';
import { aboutField, fieldProblem, type OrderPlace, type OrderProblem } from './problem.ts';
import { shown } from './shown.ts';

/** As much of a parameter as can be judged without a child. */
interface KnownParam {
  readonly kind: Param<never>['kind'];
  readonly choices?: readonly string[];
}

type Given = GivenParams[string];

/**
 * What is wrong with the numbers given for a block or a step, whoever wears it: each must be known and readable.
 * Whether it lies in a range depends on the child, and is found when her dress is drawn. `otherFields` may stand
 * beside the numbers.
 */
export function givenProblems(
  params: Readonly<Record<string, KnownParam>>,
  given: GivenParams,
  at: OrderPlace,
  units: UnitSystem,
  otherFields: readonly string[] = [],
): readonly OrderProblem[] {
  return Object.entries(given).flatMap(([name, value]) => {
    const param = params[name];
    if (param === undefined) return [unknownField(at, name, [...otherFields, ...Object.keys(params)])];
    return givenProblem(param, value, { ...at, path: [...at.path, name] }, units) ?? [];
  });
}

function givenProblem(
  param: KnownParam,
  value: Given,
  at: OrderPlace,
  units: UnitSystem,
): OrderProblem | null {
  switch (param.kind) {
    case 'choice':
      return param.choices?.some((choice) => choice === value) === true
        ? null
        : notAChoice(at, value, param.choices ?? []);
    case 'text':
      return typeof value === 'string' && value.trim() !== ''
        ? null
        : fieldProblem(at, 'order.wants.name', { found: shown(value) });
    case 'flag':
      return typeof value === 'boolean'
        ? null
        : fieldProblem(at, 'order.wants.flag', { found: shown(value) });
    case 'length': {
      if (typeof value === 'boolean') return fieldProblem(at, 'order.wants.length', { found: shown(value) });
      const read = parseLength(value, units);
      return read.ok ? null : aboutField(at, { key: read.problem.code, values: read.problem.values });
    }
    case 'ratio':
      return isNumber(value) ? null : fieldProblem(at, 'order.wants.number', { found: shown(value) });
    case 'count': {
      const isWhole = isNumber(value) && Number.isInteger(Number(value));
      return isWhole ? null : fieldProblem(at, 'order.wants.whole-number', { found: shown(value) });
    }
  }
}

const isNumber = (value: Given): boolean =>
  typeof value === 'number' ||
  (typeof value === 'string' && value.trim() !== '' && Number.isFinite(Number(value)));
