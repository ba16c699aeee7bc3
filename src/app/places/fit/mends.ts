import { type Draft, produce } from 'immer';
import type { Check } from '../../../engine/check/index.ts';
import {
  exactDress,
  type Finding,
  type OrderFile,
  type OrderProblem,
  readOrderValue,
} from '../../../engine/order/index.ts';
import type { Saying } from '../../../engine/words/index.ts';
import type { Candidate, Fault, FaultyDress } from './candidate.ts';
import { repairCandidates } from './repair-candidates.ts';

/** A change of the order that is known to mend a fault without spoiling anything else. */
export interface Repair {
  readonly label: Saying;
  readonly change: (file: Draft<OrderFile>) => void;
}

/** At most so many ways are offered for one fault. */
const MOST = 2;

/**
 * The ways to mend a fault, each tried on the whole order first: the fault is gone, nothing else is worse for this
 * child, and where other children wear it too, nothing is worse for them. A generator, so that a page can try one at a
 * time and let go between.
 */
export function* repairs(dress: FaultyDress): Generator<undefined, readonly Repair[]> {
  const before = stateOf(dress.file, dress.child);
  const found: Repair[] = [];
  const families = new Set<string>();
  for (const candidate of repairCandidates(dress)) {
    if (found.length === MOST) break;
    if (families.has(candidate.family)) continue;
    yield;
    if (!mends(dress, candidate, before)) continue;
    families.add(candidate.family);
    found.push({ label: candidate.label, change: candidate.change });
  }
  return found;
}

/** How it stands with a child's dress. */
interface State {
  readonly problems: readonly OrderProblem[];
  readonly findings: readonly Finding[];
}

function stateOf(file: OrderFile, child: number): State {
  const read = readOrderValue(file);
  if (!read.ok) return { problems: read.problems, findings: [] };
  const found = read.order.children[child];
  if (found === undefined) return { problems: [], findings: [] };
  const exact = exactDress(read.order, found);
  return exact.ok
    ? { problems: [], findings: [...exact.dress.doubts, ...exact.dress.checks] }
    : { problems: exact.problems, findings: [] };
}

function mends({ file, child, fault }: FaultyDress, { change, forAll }: Candidate, before: State): boolean {
  const next = produce(file, change);
  if (next === file) return false;
  const after = stateOf(next, child);
  if (isThere(fault, after) || worse(before, after, fault)) return false;
  if (!forAll) return true;
  return [...file.children.keys()]
    .filter((other) => other !== child)
    .every((other) => !worse(stateOf(file, other), stateOf(next, other), null));
}

function isThere(fault: Fault, { problems, findings }: State): boolean {
  if (fault.of === 'problem')
    return problems.some(({ code, path }) => code === fault.problem.code && path === fault.problem.path);
  return findings.some((finding) => isBad(finding) && sameFinding(finding, fault.finding));
}

const isBad = ({ level }: Finding): boolean => level !== 'ok';

/** The same check of the same place, whatever was measured. */
const sameFinding = (a: Finding, b: Finding): boolean =>
  a.code === b.code &&
  placeText(a) === placeText(b) &&
  (placeText(a) !== '' || a.say.values.path === b.say.values.path);

const placeText = (finding: Finding): string =>
  'where' in finding ? JSON.stringify([(finding as Check).where.pieces, (finding as Check).where.edges]) : '';

/** Something that was well is not any more. What the fault itself was may not come back as another. */
function worse(before: State, after: State, fault: Fault | null): boolean {
  const known = new Set(before.problems.map(({ code, path }) => `${code} ${path}`));
  if (after.problems.some(({ code, path }) => !known.has(`${code} ${path}`))) return true;
  // Nothing is known of the fit of a dress that could not be drawn before.
  if (before.problems.length > 0) return false;
  const fewer = (level: Finding['level']): number =>
    fault?.of === 'finding' && fault.finding.level === level ? 1 : 0;
  const count = ({ findings }: State, level: Finding['level']): number =>
    findings.filter((finding) => finding.level === level).length;
  return (['stop', 'warn'] as const).some(
    (level) => count(after, level) > count(before, level) - fewer(level),
  );
}
