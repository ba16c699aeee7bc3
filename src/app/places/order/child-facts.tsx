import type { ReactNode } from 'react';
import { monthsBetween, readDay } from '../../../engine/order/index.ts';
import { say } from '../../../engine/words/index.ts';
import { Choice } from '../../parts/choice.tsx';
import { NumberField } from '../../parts/number-field.tsx';
import { TextField } from '../../parts/text-field.tsx';
import { useOrderFile, useProblemAt, useSession, useUnits } from '../../session/use-session.ts';
import { useAgeProblem, useDoubt } from '../use-doubt.ts';

/** Birthday, or age on the day of the event, and whether it is a girl or a boy. */
export function ChildFacts({ index }: { readonly index: number }): ReactNode {
  const session = useSession();
  const units = useUnits();
  const child = useOrderFile((file) => file.children[index]);
  const dueDay = useOrderFile((file) => file.dueDay);
  const path = `children[${index}]`;
  const bornProblem = useProblemAt(`${path}.born`);
  const ageProblem = useProblemAt(`${path}.ageMonths`);
  const ageWrong = useAgeProblem(index);
  const doubt = useDoubt(index, 'age');
  if (child === undefined) return null;
  const { name } = child;
  const age = child.born === undefined ? null : ageText(child.born, dueDay);
  return (
    <>
      <TextField
        kind="day"
        label={say('page.order.child.born', {}, units)}
        value={child.born}
        problem={bornProblem ?? ageWrong}
        doubt={child.born === undefined ? null : doubt}
        about={age}
        onDone={session.settle}
        onChange={(day) =>
          session.change(
            { key: 'page.did.born', values: { child: name } },
            (file) => {
              const draft = file.children[index];
              if (draft === undefined) return;
              if (day === '') delete draft.born;
              else {
                draft.born = day;
                delete draft.ageMonths;
              }
            },
            { cause: `${path}.born` },
          )
        }
      />
      {child.born === undefined && (
        <NumberField
          label={say('page.order.child.age', {}, units)}
          value={child.ageMonths}
          unit={say('page.order.child.age.months', {}, units)}
          problem={ageProblem ?? ageWrong}
          doubt={child.ageMonths === undefined ? null : doubt}
          notANumber={say('page.order.not-a-number', {}, units)}
          onDone={session.settle}
          onChange={(months) =>
            session.change(
              { key: 'page.did.age', values: { child: name } },
              (file) => {
                const draft = file.children[index];
                if (draft === undefined) return;
                if (months === undefined) delete draft.ageMonths;
                else draft.ageMonths = months;
              },
              { cause: `${path}.ageMonths` },
            )
          }
        />
      )}
      <Choice
        label={say('page.order.child.sex', {}, units)}
        value={child.sex ?? 'girl'}
        options={(['girl', 'boy'] as const).map((id) => ({
          id,
          text: say(`page.order.child.${id}`, {}, units),
        }))}
        onChange={(sex) =>
          session.change({ key: 'page.did.sex', values: { child: name } }, (file) => {
            const draft = file.children[index];
            if (draft !== undefined) draft.sex = sex;
          })
        }
      />
    </>
  );
}

/** How old she is on the day; null while one of the two is no day. */
function ageText(born: string, dueDay: string): string | null {
  const [from, to] = [readDay(born), readDay(dueDay)];
  if (from === null || to === null) return null;
  const months = monthsBetween(from, to);
  if (months < 0) return null;
  return say('page.order.child.age-then', { age: ageWords(months) }, 'in');
}

/** An age as people say it: `1 year`, `8 months`, `3 years 4 months`. */
function ageWords(ageMonths: number): string {
  const [years, months] = [Math.floor(ageMonths / 12), ageMonths % 12];
  const ofYears = years === 1 ? say('page.age.year', {}, 'in') : say('page.age.years', { years }, 'in');
  const ofMonths = months === 1 ? say('page.age.month', {}, 'in') : say('page.age.months', { months }, 'in');
  if (years === 0) return ofMonths;
  return months === 0 ? ofYears : say('page.age.both', { years: ofYears, months: ofMonths }, 'in');
}
