import type { Body } from '../body/index.ts';
import {
  type Bench,
  type GivenParams,
  type ParamProblem,
  type ParamTable,
  type ParamValues,
  resolveParams,
} from '../construct/index.ts';
import type { ClothRole, Garment } from '../piece/index.ts';
import type { UnitSystem } from '../units/index.ts';
import type { Saying, WordValues } from '../words/index.ts';

/** What the rule behind a default may look at: the wearer, and the dress as the earlier steps left it. */
export interface StepContext {
  readonly body: Body;
  readonly garment: Garment;
}

/** What a step works with. */
export interface StepWork extends StepContext {
  readonly bench: Bench;
  /** The maker's units, for what is sold in steps of them. */
  readonly units: UnitSystem;
  /** Usable width of each cloth, selvedges off, mm. */
  readonly clothWidth: Readonly<Record<ClothRole, number>>;
}

export type StepOutcome =
  | { readonly ok: true; readonly garment: Garment }
  /** The design can't work on this body; the saying tells why and what would. */
  | { readonly ok: false; readonly problem: Saying };

/** The order in which steps are applied, whatever order they were listed in. */
export const STAGES = [
  'figure',
  'shape',
  'fitting',
  'neck',
  'sleeve',
  'style-line',
  'closing',
  'panel',
  'set-in',
  'skirt',
  'hem-line',
  'over-skirt',
  'lining',
  'opening',
  'finish',
  'shoulder',
  'marking',
  'trim',
  'own',
] as const;
export type Stage = (typeof STAGES)[number];

/** Every parameter needs a label and every step a title and a line about it; further words are the step's own. */
type StepWords<T> = Readonly<Record<string, string>> &
  Readonly<Record<'title' | 'about' | (keyof T & string), string>>;

interface StepDeclaration<T extends ParamTable<StepContext>> {
  /** Also the prefix of the step's words in the catalogue. */
  readonly id: string;
  readonly stage: Stage;
  /** Steps of the same kind exclude each other: a dress has one skirt. Null: may stand as often as she likes. */
  readonly kind: string | null;
  readonly params: T;
  readonly words: StepWords<T>;
  readonly apply: (work: StepWork, values: ParamValues<T>) => StepOutcome;
}

/** A step as the rest of the house sees it; its parameter types stay inside its own file. */
export interface DesignStep {
  readonly id: string;
  readonly stage: Stage;
  readonly kind: string | null;
  readonly params: ParamTable<StepContext>;
  readonly words: Readonly<Record<string, string>>;
  readonly run: (work: StepWork, given: GivenParams, units: UnitSystem) => StepRun;
}

export type StepRun = StepOutcome | { readonly ok: false; readonly params: readonly ParamProblem[] };

export function defineStep<T extends ParamTable<StepContext>>(declared: StepDeclaration<T>): DesignStep {
  return {
    id: declared.id,
    stage: declared.stage,
    kind: declared.kind,
    params: declared.params,
    words: declared.words,
    run: (work, given, units) => {
      const resolved = resolveParams(declared.params, given, work, units);
      return resolved.ok ? declared.apply(work, resolved.values) : { ok: false, params: resolved.problems };
    },
  };
}

export const done = (garment: Garment): StepOutcome => ({ ok: true, garment });

export const cannot = (key: string, values: WordValues = {}): StepOutcome => ({
  ok: false,
  problem: { key, values },
});

/** Short forms for declaring parameters of a step. */
export const lengthParam = (
  rule: (c: StepContext) => number,
  range: (c: StepContext) => readonly [number, number],
  source: string,
): { kind: 'length'; rule: typeof rule; range: typeof range; source: string } => ({
  kind: 'length',
  rule,
  range,
  source,
});

export const ratioParam = (
  rule: (c: StepContext) => number,
  range: readonly [number, number],
  source: string,
): { kind: 'ratio'; rule: typeof rule; range: () => readonly [number, number]; source: string } => ({
  kind: 'ratio',
  rule,
  range: () => range,
  source,
});

export const countParam = (
  rule: (c: StepContext) => number,
  range: readonly [number, number],
  source: string,
): { kind: 'count'; rule: typeof rule; range: () => readonly [number, number]; source: string } => ({
  kind: 'count',
  rule,
  range: () => range,
  source,
});

export const choiceParam = <const V extends string>(
  choices: readonly V[],
  fallback: V,
  source: string,
): { kind: 'choice'; choices: readonly V[]; rule: () => V; source: string } => ({
  kind: 'choice',
  choices,
  rule: () => fallback,
  source,
});

export const flagParam = (
  fallback: boolean,
  source: string,
): { kind: 'flag'; rule: () => boolean; source: string } => ({ kind: 'flag', rule: () => fallback, source });

/** A name that the maker writes: of a piece, an edge, a place. */
export const textParam = (
  fallback: string,
  source: string,
): { kind: 'text'; rule: () => string; source: string } => ({ kind: 'text', rule: () => fallback, source });

export const COMMON_PRACTICE = 'common practice, no source';
