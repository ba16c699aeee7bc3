import type { ReactNode } from 'react';
import type { UnitSystem } from '../../engine/units/index.ts';
import { say } from '../../engine/words/index.ts';

/** Nearer, farther, all of it: for a drawing on a table. `by`: how many times nearer one press brings it. */
export function ZoomButtons({
  units,
  by,
  nearer,
  all,
}: {
  readonly units: UnitSystem;
  readonly by: number;
  readonly nearer: (times: number) => void;
  readonly all: () => void;
}): ReactNode {
  return (
    <div className="t-zoom">
      <button type="button" aria-label={say('table.nearer', {}, units)} onClick={() => nearer(by)}>
        +
      </button>
      <button type="button" aria-label={say('table.farther', {}, units)} onClick={() => nearer(1 / by)}>
        −
      </button>
      <button type="button" onClick={all}>
        {say('table.all', {}, units)}
      </button>
    </div>
  );
}
