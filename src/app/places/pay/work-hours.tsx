import type { ReactNode } from 'react';
import { type PayWork, WEEKDAYS, type WorkroomFile } from '../../../engine/order/index.ts';
import { say } from '../../../engine/words/index.ts';
import { today } from '../../device/today.ts';
import { NumberField } from '../../parts/number-field.tsx';
import { TextField } from '../../parts/text-field.tsx';
import { useUnits } from '../../session/use-session.ts';
import { EntryList } from './pay-parts.tsx';
import { useChangeWorkroom, usePayProblem, useWorkroom } from './use-pay.ts';

type Week = NonNullable<WorkroomFile['week']>;

/** On which days she works, how long, and when not at all. */
export function WorkHours({ work }: { readonly work: PayWork | null }): ReactNode {
  const units = useUnits();
  const { week = {} } = useWorkroom();
  const change = useChangeWorkroom();
  const off = week.off ?? [];
  const writeOff = (next: NonNullable<Week['off']>): void => change('week', { ...week, off: next });
  return (
    <section className="part">
      <h3>{say('page.days.hours', {}, units)}</h3>
      <p className="quiet small">{say('page.days.hours.about', {}, units)}</p>
      <div className="fields pay-week">
        {WEEKDAYS.map((day) => (
          <DayHours key={day} day={day} week={week} work={work} />
        ))}
      </div>
      <h3>{say('page.days.off', {}, units)}</h3>
      <EntryList
        entries={off}
        nameOf={({ from }) => say('page.days.off.what', { from }, units)}
        onTakeOut={(at) => writeOff(off.filter((_, i) => i !== at))}
        add={say('page.days.off.add', {}, units)}
        onAdd={() => writeOff([...off, { from: today() }])}
      >
        {(days, i) => (
          <>
            <TextField
              kind="day"
              label={say('page.days.off.from', {}, units)}
              value={days.from}
              onChange={(from) => writeOff(off.map((old, n) => (n === i ? { ...old, from } : old)))}
            />
            <TextField
              kind="day"
              label={say('page.days.off.to', {}, units)}
              value={days.to ?? days.from}
              onChange={(to) => writeOff(off.map((old, n) => (n === i ? { ...old, to } : old)))}
            />
          </>
        )}
      </EntryList>
    </section>
  );
}

function DayHours({
  day,
  week,
  work,
}: {
  readonly day: (typeof WEEKDAYS)[number];
  readonly week: Week;
  readonly work: PayWork | null;
}): ReactNode {
  const units = useUnits();
  const change = useChangeWorkroom();
  const problem = usePayProblem(work, `week.hours.${day}`);
  return (
    <NumberField
      label={say(`page.days.${day}`, {}, units)}
      value={week.hours?.[day]}
      byRule="0"
      unit="h"
      problem={problem}
      notANumber={say('page.pay.not-a-number', {}, units)}
      onChange={(hours) => {
        const all = { ...week.hours };
        if (hours === undefined) delete all[day];
        else all[day] = hours;
        change('week', { ...week, hours: all });
      }}
    />
  );
}
