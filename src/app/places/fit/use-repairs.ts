import { useEffect, useState } from 'react';
import { inTurns } from '../../device/in-turns.ts';
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
    const trying = function* (): Generator<undefined, void> {
      setFound({ of: dress, repairs: yield* repairs(dress) });
    };
    return inTurns(trying());
  }, [dress]);
  return found === null || found.of !== dress ? null : found.repairs;
}
