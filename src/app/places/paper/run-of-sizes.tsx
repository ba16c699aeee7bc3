import type { ReactNode } from 'react';
import { say } from '../../../engine/words/index.ts';
import { TextField } from '../../parts/text-field.tsx';
import { useOrderFile, useProblemAt, useSession, useUnits } from '../../session/use-session.ts';
import { heightsIn } from './edit-paper.ts';

/** The heights for which the dress of the order is drawn as well, all sizes on one sheet. */
export function RunOfSizes(): ReactNode {
  const session = useSession();
  const units = useUnits();
  const sizes = useOrderFile((file) => file.sizes);
  return (
    <section className="part">
      <TextField
        label={say('page.paper.sizes', {}, units)}
        value={(sizes?.heights ?? []).join(', ')}
        about={say('page.paper.sizes.about', {}, units)}
        problem={useProblemAt('sizes*')}
        onDone={session.settle}
        onChange={(text) =>
          session.change(
            { key: 'page.did.paper-sizes', values: {} },
            (file) => {
              const heights = heightsIn(text);
              const others = { ...file.sizes };
              delete others.heights;
              if (heights.length > 0) file.sizes = { ...others, heights };
              else if (others.ageMonths !== undefined) file.sizes = others;
              else delete file.sizes;
            },
            { cause: 'sizes.heights' },
          )
        }
      />
    </section>
  );
}
