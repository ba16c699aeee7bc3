import { memo, type ReactNode, useState } from 'react';
import { type BodyValue, type MeasureId, NINETY_PERCENT } from '../../../engine/body/index.ts';
import type { UnitSystem } from '../../../engine/units/index.ts';
import { say } from '../../../engine/words/index.ts';
import { LengthField } from '../../parts/length-field.tsx';
import { MoreLink } from '../../parts/more-link.tsx';
import { inUnits } from '../../parts/shown-length.ts';
import { useProblemAt, useSession, useSessionState, useUnits } from '../../session/use-session.ts';
import { useDoubt } from '../use-doubt.ts';
import { useEditMeasures } from './edit-measures.ts';
import { TapeGuide } from './tape-guide.tsx';

/** One measure: as taken, or else as filled in with how sure that is; its doubts; one tap away how to take it. */
export const MeasureField = memo(function MeasureField({ id }: { readonly id: MeasureId }): ReactNode {
  const session = useSession();
  // Only what this field shows: a number that is typed elsewhere does not draw every field anew.
  const index = useSessionState(({ child }) => child);
  const given = useSessionState(({ file, child }) => file.children[child]?.measures?.[id]);
  const report = useSessionState(({ work, child }) => work.children[child]?.report);
  const units = useUnits();
  const edit = useEditMeasures();
  const [howShown, setHowShown] = useState(false);
  const problem = useProblemAt(`children[${index}].measures.${id}`);
  const doubt = useDoubt(index, id);
  const word = say(`measure.${id}`, {}, units);
  const value = report?.dress.body.values[id] ?? null;
  return (
    <div className={howShown ? 'measure measure-open' : 'measure'}>
      <LengthField
        label={word}
        value={given}
        units={units}
        byRule={value === null || value.from === 'measured' ? '' : inUnits(value.mm, units)}
        problem={problem}
        doubt={given === undefined ? null : doubt}
        about={given === undefined ? bandOf(value, units) : null}
        onChange={(text) => edit(id, text)}
        onDone={session.settle}
        aside={
          <span className="row small">
            {given !== undefined && problem === null && (
              <span className="right">{say('page.measures.measured', {}, units)}</span>
            )}
            <MoreLink
              word={say('page.measures.how', {}, units)}
              name={say('page.measures.how.what', { measure: word }, units)}
              open={howShown}
              onChange={setHowShown}
            />
          </span>
        }
      />
      {howShown && <TapeGuide id={id} value={given === undefined ? value : null} />}
    </div>
  );
});

/** How sure a filled-in value is: nine girls of ten lie within. Its source stands one tap away, with how it is taken. */
const bandOf = (value: BodyValue | null, units: UnitSystem): string | null =>
  value === null || value.from === 'measured'
    ? null
    : say('measure.give-or-take-of', { band: { mm: NINETY_PERCENT * value.spread } }, units);
