import { memo, type ReactNode, useState } from 'react';
import { type BodyValue, type MeasureId, NINETY_PERCENT } from '../../../engine/body/index.ts';
import type { Finding } from '../../../engine/order/index.ts';
import type { UnitSystem } from '../../../engine/units/index.ts';
import { say } from '../../../engine/words/index.ts';
import { LengthField } from '../../parts/length-field.tsx';
import { MoreLink } from '../../parts/more-link.tsx';
import { inUnits } from '../../parts/shown-length.ts';
import { useProblemAt, useSession, useSessionState, useTell, useUnits } from '../../session/use-session.ts';
import { useEditMeasures } from './edit-measures.ts';

/** One measure: as taken, or else as filled in with the rule that was used; its doubts; how to take it. */
export const MeasureField = memo(function MeasureField({ id }: { readonly id: MeasureId }): ReactNode {
  const session = useSession();
  // Only what this field shows: a number that is typed elsewhere does not draw every field anew.
  const index = useSessionState(({ child }) => child);
  const given = useSessionState(({ file, child }) => file.children[child]?.measures?.[id]);
  const old = useSessionState(({ work, child }) => work.children[child]?.old === true);
  const report = useSessionState(({ work, child }) => work.children[child]?.report);
  const units = useUnits();
  const tell = useTell();
  const edit = useEditMeasures();
  const [howShown, setHowShown] = useState(false);
  const problem = useProblemAt(`children[${index}].measures.${id}`);
  const word = say(`measure.${id}`, {}, units);
  const value = report?.dress.body.values[id];
  const doubt = report?.dress.doubts.find((finding) => isAbout(finding, id));
  return (
    <LengthField
      label={word}
      value={given}
      units={units}
      byRule={value === undefined || value.from === 'measured' ? '' : inUnits(value.mm, units)}
      problem={problem}
      doubt={doubt === undefined || given === undefined || old ? null : tell(doubt.say)}
      about={
        howShown
          ? [say(`measure.${id}.how`, {}, units), ruleOf(given === undefined ? value : undefined)]
              .join(' ')
              .trim()
          : given === undefined
            ? bandOf(value, units)
            : null
      }
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
  );
});

const isAbout = ({ say: { values } }: Finding, id: MeasureId): boolean => {
  const { measure } = values;
  return typeof measure === 'object' && 'word' in measure && measure.word === `measure.${id}`;
};

/** How sure a filled-in value is: nine girls of ten lie within. Its source stands one tap away, with how it is taken. */
const bandOf = (value: BodyValue | undefined, units: UnitSystem): string | null =>
  value === undefined || value.from === 'measured'
    ? null
    : say('measure.give-or-take-of', { band: { mm: NINETY_PERCENT * value.spread } }, units);

const ruleOf = (value: BodyValue | undefined): string =>
  value === undefined || value.from === 'measured'
    ? ''
    : say('page.measures.estimated', { rule: say(value.rule, {}, 'in') }, 'in');
