import { useEffect } from 'react';
import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';

/** A running clock: for which step of which child of which order, and since when, ms. */
interface Clock {
  readonly order: string;
  readonly child: number;
  readonly step: string;
  readonly since: number;
}

/** Kept for this window alone, so that a reload does not stop the clock. */
const KEY = 'frockwright-sewing-clock';

const isClock = (kept: unknown): kept is Clock =>
  typeof kept === 'object' &&
  kept !== null &&
  'since' in kept &&
  typeof kept.since === 'number' &&
  'step' in kept;

const store = createStore<{ readonly clock: Clock | null; readonly now: number }>(() => ({
  clock: readKept(),
  now: Date.now(),
}));

function readKept(): Clock | null {
  try {
    const kept: unknown = JSON.parse(sessionStorage.getItem(KEY) ?? 'null');
    return isClock(kept) ? kept : null;
  } catch {
    return null;
  }
}

const keep = (clock: Clock | null): void => {
  store.setState({ clock, now: Date.now() });
  try {
    if (clock === null) sessionStorage.removeItem(KEY);
    else sessionStorage.setItem(KEY, JSON.stringify(clock));
  } catch {
    // A window that may keep nothing has a clock all the same, until it is loaded again.
  }
};

export const startClock = (order: string, child: number, step: string): void =>
  keep({ order, child, step, since: Date.now() });

const minutesOf = (clock: Clock, now: number): number =>
  Math.max(1, Math.round((now - clock.since) / 60_000));

/** Stops the clock and gives its minutes, at least one. */
export function stopClock(): number {
  const { clock } = store.getState();
  keep(null);
  return clock === null ? 1 : minutesOf(clock, Date.now());
}

/** Minutes on the clock of this step so far; null when its clock does not run. */
export function useClock(order: string, child: number, step: string): number | null {
  const clock = useStore(store, (state) => state.clock);
  const now = useStore(store, (state) => state.now);
  const runs = clock?.order === order && clock.child === child && clock.step === step;
  useEffect(() => {
    if (!runs) return;
    const ticking = setInterval(() => store.setState({ now: Date.now() }), 5000);
    return () => clearInterval(ticking);
  }, [runs]);
  return runs && clock !== null ? minutesOf(clock, now) : null;
}
