import { useEffect, useState } from 'react';
import type { FaultyDress } from './candidate.ts';
import { type Repair, repairs } from './mends.ts';

/** The ways to mend a fault, tried one by one between frames; null while it is still being looked for. */
export function useRepairs(dress: FaultyDress | null): readonly Repair[] | null {
  const [found, setFound] = useState<{
    readonly of: FaultyDress;
    readonly repairs: readonly Repair[];
  } | null>(null);
  useEffect(() => {
    if (dress === null) return;
    const trying = repairs(dress);
    let soon: ReturnType<typeof setTimeout> | undefined;
    const next = (): void => {
      const tried = trying.next();
      if (tried.done === true) setFound({ of: dress, repairs: tried.value });
      else soon = setTimeout(next, 0);
    };
    soon = setTimeout(next, 0);
    return () => clearTimeout(soon);
  }, [dress]);
  return found === null || found.of !== dress ? null : found.repairs;
}
