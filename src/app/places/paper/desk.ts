import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';
import type { PaperLook, PaperOf, PaperRefusal } from '../../work/paper-wish.ts';

/** What lies on the desk of the place: shared by its panel and the pages on the table. */
export interface Desk {
  /** For the child that is shown, or for the party. */
  readonly forWhom: 'child' | 'party';
  /** The paper that was chosen, by its path; it may be gone after a change of the order. */
  readonly path: string;
  /** Whose papers `look` shows. */
  readonly of: PaperOf | null;
  readonly look: PaperLook | null;
  /** Why there is nothing new to look at. */
  readonly refusal:
    | PaperRefusal
    | { readonly ok: false; readonly code: 'failed'; readonly why: string }
    | null;
  /** `look` is of the order before the last change, or of another paper. */
  readonly drawing: boolean;
}

const EMPTY: Desk = { forWhom: 'child', path: '', of: null, look: null, refusal: null, drawing: true };

const desk = createStore<Desk>(() => EMPTY);

export const useDesk = <T>(selector: (desk: Desk) => T): T => useStore(desk, selector);

export const changeDesk = (change: Partial<Desk>): void => desk.setState(change);

export const clearDesk = (): void => desk.setState(EMPTY);
