import { type BlockChoice, type BlockProblem, draftBlock } from '../block/index.ts';
import type { Body } from '../body/index.ts';
import { createBench, type DraftPart, type GivenParams, type ParamProblem } from '../construct/index.ts';
import type { ClothRole, Garment } from '../piece/index.ts';
import type { Ruler, UnitSystem } from '../units/index.ts';
import type { Saying } from '../words/index.ts';
import { plainBodice } from './bodice.ts';
import { notchSeams } from './seam-notches.ts';
import { STAGES } from './step.ts';
import { DESIGN_STEPS, findStep } from './steps.ts';

/** One step of a design as an order writes it: which step, and the numbers that differ from its rules. */
export interface ChosenStep {
  readonly step: string;
  /** Her name for this change, where a step may stand several times. */
  readonly as?: string;
  readonly given: GivenParams;
}

export interface DressWish {
  readonly body: Body;
  readonly block: BlockChoice;
  readonly steps: readonly ChosenStep[];
  /** Usable width of each cloth, selvedges off, mm. */
  readonly clothWidth: Readonly<Record<ClothRole, number>>;
  /** Units in which numbers without a unit are meant. */
  readonly units: UnitSystem;
  /** Round every drawn length to this ruler, as a hand would; null for the exact draft. */
  readonly ruler: Ruler | null;
}

export type DesignProblem =
  | { readonly of: 'block'; readonly problem: BlockProblem }
  | { readonly of: 'unknown-step'; readonly step: string; readonly known: readonly string[] }
  | { readonly of: 'two-of-a-kind'; readonly first: string; readonly second: string }
  | {
      readonly of: 'param';
      readonly step: string;
      readonly as: string | null;
      readonly problem: ParamProblem;
    }
  | { readonly of: 'body'; readonly step: string; readonly as: string | null; readonly problem: Saying };

/** A change of the maker's own that can't be made on this body; the dress is drawn without it. */
export interface SkippedChange {
  readonly step: string;
  readonly as: string | null;
  readonly problem: Saying;
}

export type DressResult =
  | {
      readonly ok: true;
      readonly garment: Garment;
      readonly draft: readonly DraftPart[];
      readonly skipped: readonly SkippedChange[];
    }
  | { readonly ok: false; readonly problems: readonly DesignProblem[] };

/**
 * The whole way from a body to a designed dress: the block, then every step in the order of the stages. A change of
 * the maker's own that can't be made on this body is left out and told; any other step that can't be made ends it.
 */
export function designDress(wish: DressWish): DressResult {
  const listed = checkList(wish.steps);
  if (listed.length > 0) return { ok: false, problems: listed };
  const bench = createBench(wish.ruler);
  const drafted = draftBlock(bench, wish.body, wish.block, wish.units);
  if (!drafted.ok)
    return { ok: false, problems: drafted.problems.map((problem) => ({ of: 'block', problem })) };
  let garment = plainBodice(drafted.block);
  const skipped: SkippedChange[] = [];
  for (const { step, as = null, given } of inOrder(wish.steps)) {
    const known = findStep(step);
    if (known === undefined) continue;
    const work = { body: wish.body, garment, bench, clothWidth: wish.clothWidth, units: wish.units };
    const outcome = known.run(work, given, wish.units);
    if (outcome.ok) garment = outcome.garment;
    else if ('params' in outcome) {
      return { ok: false, problems: outcome.params.map((problem) => ({ of: 'param', step, as, problem })) };
    } else if (known.stage === 'own') skipped.push({ step, as, problem: outcome.problem });
    else return { ok: false, problems: [{ of: 'body', step, as, problem: outcome.problem }] };
  }
  return { ok: true, garment: notchSeams(garment), draft: bench.record(), skipped };
}

/** A list can name a step that does not exist, two that exclude each other, or one change twice under one name. */
function checkList(steps: readonly ChosenStep[]): readonly DesignProblem[] {
  const problems: DesignProblem[] = [];
  const taken = new Map<string, string>();
  for (const { step, as = '' } of steps) {
    const known = findStep(step);
    if (known === undefined) {
      problems.push({ of: 'unknown-step', step, known: DESIGN_STEPS.map((s) => s.id) });
      continue;
    }
    const kind = known.kind ?? `${step} ${as}`;
    const first = taken.get(kind);
    if (first !== undefined) problems.push({ of: 'two-of-a-kind', first, second: step });
    taken.set(kind, step);
  }
  return problems;
}

function inOrder<T extends ChosenStep>(steps: readonly T[]): readonly T[] {
  const stage = (chosen: T): number => STAGES.indexOf(findStep(chosen.step)?.stage ?? 'shape');
  return steps.toSorted((a, b) => stage(a) - stage(b));
}

/** The steps of a list whose work a step of it finds done when its turn comes. */
export function stepsBefore<T extends ChosenStep>(steps: readonly T[], chosen: T): readonly T[] {
  const all = inOrder(steps);
  return all.slice(0, Math.max(all.indexOf(chosen), 0));
}
