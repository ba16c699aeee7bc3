import { useSyncExternalStore } from 'react';

/** The screen of a phone, as in table.css. */
const NARROW = '(max-width: 700px)';

/** Whether the table is so narrow that its bars are folded into one button. */
export function useNarrow(): boolean {
  return useSyncExternalStore(
    subscribe,
    () => window.matchMedia(NARROW).matches,
    // Drawn without a window, in a test: as on a laptop.
    () => false,
  );
}

function subscribe(changed: () => void): () => void {
  const query = window.matchMedia(NARROW);
  query.addEventListener('change', changed);
  return () => query.removeEventListener('change', changed);
}
