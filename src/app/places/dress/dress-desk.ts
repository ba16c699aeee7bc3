import { createContext, use, useEffect, useMemo, useState } from 'react';
import { type DressWish, findDress, type StepContext } from '../../../engine/design/index.ts';
import { dressWish, type OrderFile } from '../../../engine/order/index.ts';
import { type Saying, say, type WordValue } from '../../../engine/words/index.ts';
import type { Session } from '../../session/session.ts';
import {
  fieldSentence,
  useChild,
  useOrderFile,
  useSession,
  useSessionState,
  useTell,
} from '../../session/use-session.ts';
import type { Scope } from '../scope.ts';
import { keyText, type ListedStep, listSteps, type StepKey, sameStep } from './dress-list.ts';
import { contextOf } from './step-facts.ts';

/** What all parts of the place work with: whose dress, for whom she changes it, and what is drawn. */
export interface DressDesk {
  readonly session: Session;
  readonly file: OrderFile;
  readonly units: OrderFile['units'];
  /** The child whose dress lies on the table. */
  readonly child: number;
  readonly childName: string;
  /** For whom a change is made. */
  readonly scope: Scope;
  readonly party: readonly ListedStep[];
  readonly own: readonly ListedStep[];
  /** What her dress is designed from; null while nothing can be read. */
  readonly wish: DressWish | null;
  readonly libraryName: string;
}

const DeskContext = createContext<DressDesk | null>(null);
export const DeskProvider = DeskContext.Provider;

export function useDesk(): DressDesk {
  const desk = use(DeskContext);
  if (desk === null) throw new Error('A part of the dress is shown in the place of the dress.');
  return desk;
}

export function useNewDesk(alone: boolean): DressDesk {
  const session = useSession();
  const file = useOrderFile((whole) => whole);
  const { index: child, work } = useChild();
  const order = useSessionState((state) => state.work.order);
  const { report } = work;
  const party = useMemo(() => listSteps(file, 'party'), [file]);
  const own = useMemo(() => listSteps(file, child), [file, child]);
  const wish = useMemo(() => {
    if (order === null || report === null) return null;
    return dressWish(order, order.children[child] ?? report.dress.child, report.dress.body, null);
  }, [order, report, child]);
  const begun = file.startFrom === undefined ? undefined : findDress(file.startFrom);
  const libraryName =
    begun === undefined
      ? say('page.dress.unnamed', {}, file.units)
      : say(`dress.${begun.id}` as 'dress.clover', {}, file.units);
  return {
    session,
    file,
    units: file.units,
    child,
    childName: work.name,
    scope: alone && file.children.length > 1 ? child : 'party',
    party,
    own,
    wish,
    libraryName,
  };
}

/** For whom a change of this step is made: what only this child wears is changed for this child. */
export const scopeOfStep = ({ scope, party, child }: DressDesk, key: StepKey): Scope =>
  party.some((listed) => sameStep(listed, key)) ? scope : child;

/** What a step is called in a sentence; with her name for it where there are several. */
export const titleOf = ({ step, as }: StepKey): Saying =>
  as === null
    ? { key: `${step}.title`, values: {} }
    : { key: 'page.dress.step.named', values: { step: { word: `${step}.title` }, name: as } };

type DidWord = 'add-step' | 'remove-step' | 'step-off' | 'step-on' | 'step-param';

/** How a change is called in undo; with the child's name where it is made for one alone. */
export function didSaying(
  desk: DressDesk,
  scope: Scope,
  what: DidWord,
  key: StepKey,
  more: Readonly<Record<string, WordValue>> = {},
): Saying {
  const values = { step: titleOf(key), ...more };
  if (scope === 'party') return { key: `page.did.${what}`, values };
  return { key: `page.did.${what}-of`, values: { ...values, child: desk.childName } };
}

/** How long a number must rest before what follows from it is worked out anew, ms. */
const REST = 60;

/** What a step finds done, worked out when there is time; the old answer stands until the new one is there. */
export function useStepContext(key: StepKey): StepContext | null {
  const { wish } = useDesk();
  const [found, setFound] = useState<{ readonly of: string; readonly context: StepContext | null } | null>(
    null,
  );
  const { step, as } = key;
  const of = keyText(key);
  const isFirst = found?.of !== of;
  useEffect(() => {
    if (wish === null) return;
    const soon = setTimeout(
      () => setFound({ of, context: contextOf(wish, { step, as }) }),
      isFirst ? 0 : REST,
    );
    return () => clearTimeout(soon);
  }, [wish, step, as, of, isFirst]);
  return isFirst ? null : found.context;
}

/** The sentence that belongs at a place of the file: of the child that is shown, or else of another, by name. */
export function useSentenceAt(path: string | null): string | null {
  const { work } = useChild();
  const all = useSessionState((state) => state.work.problems);
  const tell = useTell();
  if (path === null) return null;
  const here = work.problems.find((problem) => problem.path === path);
  if (here !== undefined) return fieldSentence(here, tell);
  const other = all.find((problem) => problem.path === path);
  if (other === undefined) return null;
  const sentence = fieldSentence(other, tell);
  return other.child === null ? sentence : `${other.child}: ${sentence}`;
}
