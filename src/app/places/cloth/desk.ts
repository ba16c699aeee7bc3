import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';
import type { LayLook, LengthFound } from '../../work/lay-wish.ts';
import type { ItemAt } from './seen-lay.ts';

/** A search that is under way. */
export interface Searching {
  /** Which lay is searched for, by `keyOf`. */
  readonly key: string;
  /** 0 to 1 */
  readonly gone: number;
  readonly evaluations: number;
  /** The best so far; null before there is one that is better than what was seen. */
  readonly found: readonly LengthFound[] | null;
}

/** What lies on the cutting table of the page; panel and drawing share it. */
export interface Desk {
  readonly forWhom: 'child' | 'party';
  /** What the worker has laid, and for whom; null before the first answer. */
  readonly look: LayLook | null;
  readonly of: number | 'party' | null;
  /** The worker is laying what was asked for last. */
  readonly looking: boolean;
  /** Which of the lays is drawn, by `keyOf`; null for the first. */
  readonly shown: string | null;
  /** The piece that she holds. */
  readonly picked: ItemAt | null;
  readonly search: Searching | null;
  /** A sentence about what she did last, and whether it was refused. */
  readonly said: { readonly text: string; readonly wrong: boolean } | null;
}

const CLEAR: Omit<Desk, 'forWhom'> = {
  look: null,
  of: null,
  looking: false,
  shown: null,
  picked: null,
  search: null,
  said: null,
};

const desk = createStore<Desk>(() => ({ ...CLEAR, forWhom: 'party' }));

export const useDesk = <T>(selector: (desk: Desk) => T): T => useStore(desk, selector);

export const changeDesk = (change: Partial<Desk>): void => desk.setState(change);

export const deskNow = (): Desk => desk.getState();

/** On leaving the place. For whom she lays stays. */
export const clearDesk = (): void => desk.setState(CLEAR);
