import type { Finding, OrderFile, OrderProblem } from '../../../engine/order/index.ts';
import { formatLength, type UnitSystem } from '../../../engine/units/index.ts';
import type { ParamRef } from '../../table/index.ts';
import { keyOf, type StepKey } from '../dress/dress-list.ts';
import { holderOf, type Scope } from '../scope.ts';
import { type Candidate, type FaultyDress, fieldWord, leaveOut, setNumber } from './candidate.ts';

/** A change of hers that this child goes without anyway is left out for good. */
export function skippedCandidates(dress: FaultyDress, { say: { values } }: Finding): readonly Candidate[] {
  const at = typeof values.path === 'string' ? placeIn(dress.file, values.path) : null;
  return at === null ? [] : [leaveOut(dress, at.key)];
}

interface StepPlace {
  readonly scope: Scope;
  readonly key: StepKey;
  readonly param: string | null;
}

/** The step that a path of the order file leads into. */
function placeIn(file: OrderFile, path: string): StepPlace | null {
  const [, child, index, param = null] =
    /^(?:children\[(\d+)\]\.)?dress\[(\d+)\](?:\.(\w+))?$/.exec(path) ?? [];
  if (index === undefined) return null;
  const scope = scopeOf(child);
  const entry = holderOf(file, scope)?.dress?.[Number(index)];
  return entry === undefined ? null : { scope, key: keyOf(entry), param };
}

/** A number out of its range goes to the nearest end of it, or back to the rule; a step that can't be made is left out. */
export function problemCandidates(dress: FaultyDress, problem: OrderProblem): readonly Candidate[] {
  const at = placeIn(dress.file, problem.path);
  if (at === null) return blockCandidates(dress, problem);
  const { scope, key, param } = at;
  const without = leaveOut(dress, key);
  if (param === null) return [without];
  return [...rangeCandidates(dress, problem, scope, { of: 'step', ...key, param }), without];
}

function blockCandidates(dress: FaultyDress, problem: OrderProblem): readonly Candidate[] {
  const [, child, param] = /^(?:children\[(\d+)\]\.)?block\.(\w+)$/.exec(problem.path) ?? [];
  if (param === undefined) return [];
  return rangeCandidates(dress, problem, scopeOf(child), { of: 'block', param });
}

/** Whose list a path speaks of, by the number of the child in it. */
const scopeOf = (child: string | undefined): Scope => (child === undefined ? 'party' : Number(child));

function rangeCandidates(
  { file, wish }: FaultyDress,
  problem: OrderProblem,
  scope: Scope,
  ref: ParamRef,
): readonly Candidate[] {
  const forAll = scope === 'party' && file.children.length > 1;
  const field = fieldWord(ref);
  const nearest = nearestAllowed(problem, wish.units);
  const rule: Candidate = {
    family: 'rule',
    label: { key: forAll ? 'page.fit.repair.rule-all' : 'page.fit.repair.rule', values: { field } },
    forAll,
    change: (draft) => setNumber(draft, scope, ref, undefined),
  };
  if (nearest === null) return [rule];
  return [
    {
      family: 'nearest',
      label: { key: 'page.fit.repair.set', values: { field, value: nearest } },
      forAll,
      change: (draft) => setNumber(draft, scope, ref, nearest),
    },
    rule,
  ];
}

/** The end of the range that lies nearer to what was given. */
function nearestAllowed({ code, values }: OrderProblem, units: UnitSystem): string | number | null {
  if (code !== 'order.param.out-of-range') return null;
  const { value, least, most } = values;
  const plain = [value, least, most].map((one) =>
    typeof one === 'object' && 'mm' in one ? one.mm : typeof one === 'number' ? one : null,
  );
  const [given, low, high] = plain;
  if (given === null || given === undefined || low === null || low === undefined) return null;
  if (high === null || high === undefined) return null;
  const end = given < low ? low : high;
  return typeof value === 'object' ? formatLength(end, units) : end;
}
