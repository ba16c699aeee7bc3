import { createContext, use } from 'react';
import { useStore } from 'zustand';
import { createStore, type StoreApi } from 'zustand/vanilla';
import {
  FIRST_LOOK,
  type Governed,
  type OnDragParam,
  type ParamRef,
  type TableLook,
  type TablePlace,
} from '../table/index.ts';

/** How she looks at the dress on the table; shared by the table and the panel of the place that she is in. */
export interface Looking {
  readonly look: TableLook;
  readonly picked: TablePlace | null;
  /** The finding that is spoken of, by `findingId`: the table goes to its place. */
  readonly markShown: string | null;
  /** What the numbers of the present place govern, and the one that lights up; set by the place, cleared on leaving. */
  readonly governed: readonly Governed[];
  readonly liveParam: ParamRef | null;
  readonly onDragParam: OnDragParam | null;
}

export const createLooking = (): StoreApi<Looking> =>
  createStore<Looking>(() => ({
    look: FIRST_LOOK,
    picked: null,
    markShown: null,
    governed: [],
    liveParam: null,
    onDragParam: null,
  }));

export const LookingContext = createContext<StoreApi<Looking> | null>(null);

function useLookingStore(): StoreApi<Looking> {
  const store = use(LookingContext);
  if (store === null) throw new Error('The table stands in the workroom.');
  return store;
}

export const useLooking = <T>(selector: (looking: Looking) => T): T => useStore(useLookingStore(), selector);

/** Changes how she looks: `look({ picked: null })`. Always the same function. */
export const useLook = (): ((change: Partial<Looking>) => void) => useLookingStore().setState;

/** The name by which a finding of a child's report is known to the table: its place in `report.findings`. */
export const findingId = (index: number): string => `finding-${index}`;
