import { createContext, use, useMemo } from 'react';
import { useStore } from 'zustand';
import { tell } from '../../engine/design/index.ts';
import type { ChildFile, OrderFile, OrderProblem } from '../../engine/order/index.ts';
import type { UnitSystem } from '../../engine/units/index.ts';
import type { Saying } from '../../engine/words/index.ts';
import type { Session, SessionState } from './session.ts';
import type { ChildWork } from './work.ts';

export const SessionContext = createContext<Session | null>(null);

/** The open order's session: `change`, `settle`, `undo`, `redo`, `choose`. */
export function useSession(): Session {
  const session = use(SessionContext);
  if (session === null) throw new Error('A place is shown inside an open order.');
  return session;
}

/** A part of what the session shows. The selector must answer the same object while nothing has changed. */
export function useSessionState<T>(selector: (state: SessionState) => T): T {
  return useStore(useSession().shown, selector);
}

/** The same for the drawing on the table, which follows a dragged point at once. */
export function useSessionNow<T>(selector: (state: SessionState) => T): T {
  return useStore(useSession().state, selector);
}

/** A part of the order file, as typed. */
export function useOrderFile<T>(selector: (file: OrderFile) => T): T {
  return useSessionState(({ file }) => selector(file));
}

/** The child whom the places show: her place in the order, her part of the file, her dress as far as it is drawn. */
export function useChild(): { readonly index: number; readonly file: ChildFile; readonly work: ChildWork } {
  const index = useSessionState(({ child }) => child);
  const file = useSessionState((state) => state.file.children[state.child]);
  const work = useSessionState((state) => state.work.children[state.child]);
  if (file === undefined || work === undefined) throw new Error('The child that is shown is in the order.');
  return { index, file, work };
}

export const useUnits = (): UnitSystem => useOrderFile(({ units }) => units);

/** Speaks any saying of the engine in the units of the order. */
export function useTell(): (saying: Saying) => string {
  const units = useUnits();
  return useMemo(() => (saying: Saying) => tell(saying, units), [units]);
}

/**
 * The sentence that belongs at a field, null when it is fine. `path` as in the order file:
 * `children[2].measures.chestGirth`, `cloths[0].width`, `dueDay`. A path that ends with `*` finds the first problem
 * below it.
 */
export function useProblemAt(path: string): string | null {
  const problem = useSessionState(({ work }) => problemAt(work.problems, path));
  const tellIt = useTell();
  return problem === undefined ? null : fieldSentence(problem, tellIt);
}

function problemAt(problems: readonly OrderProblem[], path: string): OrderProblem | undefined {
  if (!path.endsWith('*')) return problems.find((problem) => problem.path === path);
  return problems.find((problem) => problem.path.startsWith(path.slice(0, -1)));
}

/** What is wrong with one field, to stand beside it: without naming the field or its place in the file. */
export function fieldSentence({ code, values }: OrderProblem, tellIt: (saying: Saying) => string): string {
  const [head = '', ...rest] = tellIt({ key: code, values });
  return `${head.toUpperCase()}${rest.join('')}`;
}
