import type { ReactNode } from 'react';
import { changeUnits } from '../../engine/order/index.ts';
import { say } from '../../engine/words/index.ts';
import { Choice } from '../parts/choice.tsx';
import { useSession, useUnits } from '../session/use-session.ts';

/** Inches or centimetres, for the whole order, at any time; no length changes with it. */
export function UnitsChoice(): ReactNode {
  const session = useSession();
  const units = useUnits();
  return (
    <Choice
      label={say('page.units', {}, units)}
      value={units}
      options={(['in', 'cm'] as const).map((id) => ({ id, text: say(`page.units.${id}`, {}, units) }))}
      onChange={(chosen) =>
        session.change({ key: 'page.did.units', values: {} }, (file) => {
          const told = changeUnits(session.state.getState().file, chosen);
          if (told.ruler === undefined) delete file.ruler;
          Object.assign(file, told);
        })
      }
    />
  );
}
