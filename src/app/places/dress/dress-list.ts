import { type DesignStep, findDress, findStep, STAGES } from '../../../engine/design/index.ts';
import type { OrderFile, StepFile } from '../../../engine/order/index.ts';
import type { Scope } from '../scope.ts';

/** By what a step is found in every list: its id, and her name for it where it may stand several times. */
export interface StepKey {
  readonly step: string;
  readonly as: string | null;
}

export const sameStep = (a: StepKey, b: StepKey): boolean => keyText(a) === keyText(b);

/** One text for a step: for maps, and for the names of fields. */
export const keyText = ({ step, as }: StepKey): string =>
  findStep(step)?.kind !== null || as === null ? step : `${step} ${as}`;

export const keyOf = ({ step, as }: Pick<StepFile, 'step' | 'as'>): StepKey => ({
  step,
  as: as?.trim().normalize('NFC') ?? null,
});

/** Whose list says something of a step, from the ground up. */
export type Source = 'library' | 'order' | 'child';

/** What one list says of a step. */
interface StepLayer {
  readonly from: Source;
  /** Where it stands in the order file; null for a dress of the library. */
  readonly path: string | null;
  readonly given: Readonly<Record<string, Given>>;
}

export type Given = string | number | boolean;

/** A step of the dress as the page shows it, with all that the lists say of it. */
export interface ListedStep extends StepKey {
  readonly known: DesignStep;
  readonly on: boolean;
  /** From the ground up; never empty. */
  readonly layers: readonly StepLayer[];
  /** The step of the lists below whose place it takes (a dress has one skirt). */
  readonly instead: string | null;
}

interface SourceList {
  readonly from: Source;
  readonly entries: readonly { readonly entry: StepFile; readonly path: string | null }[];
}

/** The lists that make up the dress of one child, or of the order, from the ground up. */
function listsOf(file: OrderFile, scope: Scope): readonly SourceList[] {
  const begun = file.startFrom === undefined ? undefined : findDress(file.startFrom);
  const library: SourceList = {
    from: 'library',
    entries: (begun?.steps ?? []).map(({ step, given }) => ({ entry: { step, ...given }, path: null })),
  };
  const order: SourceList = {
    from: 'order',
    entries: (file.dress ?? []).map((entry, i) => ({ entry, path: `dress[${i}]` })),
  };
  if (scope === 'party') return [library, order];
  const own = file.children[scope]?.dress ?? [];
  const entries = own.map((entry, i) => ({ entry, path: `children[${scope}].dress[${i}]` }));
  return [library, order, { from: 'child', entries }];
}

/**
 * The steps of a dress in the order in which they are sewn, those that are switched off with them: the library's, with
 * the order's list over it, and over both that of a child. Joined as the order file is read, see `mergeSteps`.
 */
export function listSteps(file: OrderFile, scope: Scope): readonly ListedStep[] {
  const merged = new Map<string, ListedStep>();
  for (const { from, entries } of listsOf(file, scope)) {
    for (const { entry, path } of entries) {
      const { step, as: _, off = false, ...given } = entry;
      const known = findStep(step);
      if (known === undefined) continue;
      const key = keyOf(entry);
      const before = merged.get(keyText(key));
      let instead = before?.instead ?? null;
      if (!off && known.kind !== null) {
        for (const [text, other] of merged) {
          if (other.step === step || other.known.kind !== known.kind) continue;
          // What one list holds switched off beside its rival stays to be seen.
          if (other.layers.every((layer) => layer.from === from)) continue;
          if (other.on) instead = other.step;
          merged.delete(text);
        }
      }
      const layer: StepLayer = { from, path, given };
      merged.set(keyText(key), {
        ...key,
        known,
        on: !off,
        layers: [...(before?.layers ?? []), layer],
        instead,
      });
    }
  }
  const stage = ({ known }: ListedStep): number => STAGES.indexOf(known.stage);
  return [...merged.values()].sort((a, b) => stage(a) - stage(b));
}

export const findListed = (file: OrderFile, scope: Scope, key: StepKey): ListedStep | undefined =>
  listSteps(file, scope).find((listed) => sameStep(listed, key));

/** The list that a scope writes in. */
export const sourceOf = (scope: Scope): Source => (scope === 'party' ? 'order' : 'child');

/** What is given for one number of a step: in the list of the scope, and in the nearest one below it. */
interface GivenAt {
  readonly own: Given | undefined;
  /** `rule` where nothing is given below. */
  readonly under: { readonly from: Source | 'rule'; readonly value: Given | undefined };
  /** Where a problem with it is told. */
  readonly path: string | null;
}

export function givenAt({ layers }: ListedStep, scope: Scope, param: string): GivenAt {
  const own = layers.find(({ from }) => from === sourceOf(scope));
  const below = layers.filter((layer) => layer !== own).toReversed();
  const under = below.find(({ given }) => given[param] !== undefined);
  const value = own?.given[param];
  const holder = value === undefined ? under : own;
  return {
    own: value,
    under: { from: under?.from ?? 'rule', value: under?.given[param] },
    path: holder === undefined || holder.path === null ? null : `${holder.path}.${param}`,
  };
}

/** The place in the file that the whole step is told at: of the topmost list that names it. */
export const pathOfStep = ({ layers }: ListedStep): string => layers.at(-1)?.path ?? 'startFrom';
