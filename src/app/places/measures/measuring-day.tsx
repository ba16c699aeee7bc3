import type { ReactNode } from 'react';
import { say } from '../../../engine/words/index.ts';
import { today } from '../../device/today.ts';
import { Button } from '../../parts/button.tsx';
import { NumberField } from '../../parts/number-field.tsx';
import { TextField } from '../../parts/text-field.tsx';
import { toastDone } from '../../parts/toast.tsx';
import { useChild, useProblemAt, useSession, useUnits } from '../../session/use-session.ts';
import { beginMeasuring, correctMeasures } from './edit-measures.ts';

/** The day on which these measures were taken, and the way to begin a new measuring. */
export function MeasuringDay(): ReactNode {
  const session = useSession();
  const { index, file, work } = useChild();
  const units = useUnits();
  const problem = useProblemAt(`children[${index}].measured`);
  const child = work.name;
  const isMeasured = Object.keys(file.measures ?? {}).length > 0;
  const begin = (): void => {
    const takeBack = session.change({ key: 'page.did.new-measuring', values: { child } }, ({ children }) => {
      const draft = children[index];
      if (draft !== undefined) beginMeasuring(draft, today());
    });
    toastDone(say('page.measures.new.done', { child }, units), takeBack);
  };
  return (
    <div className="fields">
      <TextField
        kind="day"
        label={say('page.measures.day', {}, units)}
        value={file.measured}
        problem={problem}
        onDone={session.settle}
        onChange={(day) => {
          correctMeasures(session, index);
          session.change(
            { key: 'page.did.measured', values: { child } },
            ({ children }) => {
              const draft = children[index];
              if (draft === undefined) return;
              if (day === '') delete draft.measured;
              else draft.measured = day;
            },
            { cause: `children[${index}].measured` },
          );
        }}
      />
      {isMeasured && file.measured !== today() && (
        <div className="field-beside">
          <Button onPress={begin}>{say('page.measures.new', {}, units)}</Button>
        </div>
      )}
    </div>
  );
}

/** How many weeks before the due date the child was born: under two years the age is corrected by it. */
export function WeeksEarly(): ReactNode {
  const session = useSession();
  const { index, file, work } = useChild();
  const units = useUnits();
  const problem = useProblemAt(`children[${index}].weeksEarly`);
  return (
    <div className="fields">
      <NumberField
        label={say('page.measures.early', {}, units)}
        value={file.weeksEarly}
        unit={say('page.measures.early.unit', {}, units)}
        about={say('page.measures.early.about', {}, units)}
        problem={problem}
        notANumber={say('page.order.not-a-number', {}, units)}
        onDone={session.settle}
        onChange={(weeks) =>
          session.change(
            { key: 'page.did.early', values: { child: work.name } },
            ({ children }) => {
              const draft = children[index];
              if (draft === undefined) return;
              if (weeks === undefined) delete draft.weeksEarly;
              else draft.weeksEarly = weeks;
            },
            { cause: `children[${index}].weeksEarly` },
          )
        }
      />
    </div>
  );
}
