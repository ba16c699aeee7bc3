import { type ReactNode, useState } from 'react';
import { fullWeeks, type PlannedWork } from '../../../engine/bill/index.ts';
import {
  type CalendarNames,
  daysSaying,
  dayWords,
  fullWeekSaying,
  hoursOf,
  type PayFile,
  type PayWork,
  readWorkroom,
  shownDay,
} from '../../../engine/order/index.ts';
import { say } from '../../../engine/words/index.ts';
import type { OrderSummary } from '../../../store/index.ts';
import { Button } from '../../parts/button.tsx';
import { Choice } from '../../parts/choice.tsx';
import { Switch } from '../../parts/switch.tsx';
import { useOrderFile, useSession, useTell, useUnits } from '../../session/use-session.ts';
import type { PayGrounds } from '../../work/pay-wish.ts';
import { MakeButton, ReckonState } from './pay-parts.tsx';
import { useChangePay, useOpenOrders, usePay, useWorkroom } from './use-pay.ts';
import { WorkHours } from './work-hours.tsx';
import '../../look/pay.css';

/** When the order is worked on, reckoned back from the event; what else she has to do in those weeks; the calendar. */
export function DaysPlace(): ReactNode {
  const units = useUnits();
  const { work, wrong, busy, grounds } = usePay();
  const pay = useOrderFile((file) => file.pay);
  const others = useOpenOrders();
  const change = useChangePay('page.did.days');
  const fittings = String(work?.fittings ?? 2) as '0' | '1' | '2' | '3';
  return (
    <div className="stack">
      <h2>{say('page.days.title', {}, units)}</h2>
      <ReckonState busy={busy} wrong={wrong} />
      {work !== null && (
        <section className="part">
          <Choice
            label={say('page.days.fittings', {}, units)}
            value={fittings}
            options={(['0', '1', '2', '3'] as const).map((id) => ({
              id,
              text: say(`page.days.fittings.${id}`, {}, units),
            }))}
            onChange={(id) =>
              change(say('page.days.fittings', {}, units), (draft) => {
                draft.fittings = Number(id);
              })
            }
          />
          {others.some(({ kept }) => kept.length > 0) && (
            <Switch
              label={say('page.days.round', {}, units)}
              value={pay?.roundOthers ?? false}
              onChange={(on) =>
                change(say('page.days.round', {}, units), (draft) => {
                  draft.roundOthers = on;
                })
              }
            />
          )}
          {work.days.ok ? (
            <Plan days={work.days.days} tight={work.days.tight} others={others} grounds={grounds} />
          ) : (
            <Unplanned work={work} />
          )}
        </section>
      )}
      <WorkHours work={work} />
      <p className="quiet small">{say('page.pay.everywhere', {}, units)}</p>
    </div>
  );
}

function Unplanned({ work }: { readonly work: PayWork }): ReactNode {
  const units = useUnits();
  const tellIt = useTell();
  if (work.days.ok) return null;
  const { problem } = work.days;
  return problem.code === 'bill.days.no-hours' ? (
    <p>{say('page.days.none', {}, units)}</p>
  ) : (
    <p role="alert" className="wrong">
      {tellIt(daysSaying(problem))}
    </p>
  );
}

function Plan({
  days,
  tight,
  others,
  grounds,
}: {
  readonly days: readonly PlannedWork[];
  readonly tight: boolean;
  readonly others: readonly OrderSummary[];
  readonly grounds: PayGrounds;
}): ReactNode {
  const units = useUnits();
  const due = useOrderFile((file) => file.dueDay);
  const minutes = days.reduce((sum, day) => sum + day.minutes, 0);
  return (
    <>
      <ol className="pay-days">
        {days.map((day) => (
          <li key={day.kind} className="pay-day">
            <span>{whenOf(day, units)}</span>
            <span>{say(`day.${day.kind}`, {}, units)}</span>
            <span className="pay-amount">
              {day.minutes === 0 ? '' : say('page.days.hours-of', { hours: hoursOf(day.minutes) }, units)}
            </span>
          </li>
        ))}
        <li className="pay-day">
          <strong>{shownDay(due)}</strong>
          <strong>{say('day.event', {}, units)}</strong>
          <span />
        </li>
      </ol>
      <p>{say('page.days.total', { hours: hoursOf(minutes) }, units)}</p>
      {tight && <p className="doubt">{say('bill.days.tight', {}, units)}</p>}
      <FullWeeks days={days} others={others} />
      <KeepDays days={days} />
      <Calendar grounds={grounds} />
      <div className="row row-wrap">
        <MakeButton grounds={grounds} paper={{ kind: 'list', list: 'timetable' }}>
          {say('page.pay.make.timetable', {}, units)}
        </MakeButton>
      </div>
    </>
  );
}

function whenOf({ from, to }: PlannedWork, units: 'in' | 'cm'): string {
  const [first, last] = [dayWords(from), dayWords(to)];
  return first === last ? first : say('paper.days.from-to', { from: first, to: last }, units);
}

type Kept = NonNullable<PayFile['kept']>;

/** Minutes by day of all work, in order of the days. */
function loadOf(days: readonly PlannedWork[]): Kept {
  const load = new Map<string, number>();
  for (const { byDay } of days)
    for (const [day, minutes] of byDay) load.set(day, (load.get(day) ?? 0) + minutes);
  return [...load].sort(([a], [b]) => (a < b ? -1 : 1)).map(([day, minutes]) => ({ day, minutes }));
}

/** Weeks in which this order and the days that others keep ask for more than her hours. */
function FullWeeks({
  days,
  others,
}: {
  readonly days: readonly PlannedWork[];
  readonly others: readonly OrderSummary[];
}): ReactNode {
  const tellIt = useTell();
  const units = useUnits();
  const title = useOrderFile((file) => file.title);
  const { week } = readWorkroom(useWorkroom(), null, units);
  const loads = [
    { title, byDay: new Map(loadOf(days).map(({ day, minutes }) => [day, minutes] as const)) },
    ...others.map((order) => ({
      title: order.title,
      byDay: new Map(order.kept.map(({ day, minutes }) => [day, minutes] as const)),
    })),
  ];
  return fullWeeks(loads, week)
    .filter(({ titles }) => titles.includes(title))
    .map((full) => (
      <p key={full.monday.day + 100 * full.monday.month} role="alert" className="wrong">
        {tellIt(fullWeekSaying(full))}
      </p>
    ));
}

function KeepDays({ days }: { readonly days: readonly PlannedWork[] }): ReactNode {
  const units = useUnits();
  const kept = useOrderFile((file) => file.pay?.kept);
  const change = useChangePay('page.did.days');
  const load = loadOf(days);
  const same = JSON.stringify(kept ?? []) === JSON.stringify(load);
  if (same) return <p className="right">{say('page.days.kept', {}, units)}</p>;
  const word = say('page.days.keep', {}, units);
  return (
    <div className="stack">
      {kept !== undefined && kept.length > 0 && <p>{say('page.days.kept.old', {}, units)}</p>}
      <div>
        <Button
          look="main"
          onPress={() =>
            change(word, (draft) => {
              draft.kept = load;
            })
          }
        >
          {word}
        </Button>
      </div>
    </div>
  );
}

const NAMES = ['title', 'letters', 'children'] as const satisfies readonly CalendarNames[];

function Calendar({ grounds }: { readonly grounds: PayGrounds }): ReactNode {
  const units = useUnits();
  const { id } = useSession();
  const [names, setNames] = useState<CalendarNames>('title');
  return (
    <div className="stack">
      <h3>{say('page.days.calendar', {}, units)}</h3>
      <p className="quiet small">{say('page.days.calendar.about', {}, units)}</p>
      <Choice
        label={say('page.days.calendar.names', {}, units)}
        value={names}
        options={NAMES.map((name) => ({ id: name, text: say(`page.days.calendar.${name}`, {}, units) }))}
        onChange={setNames}
      />
      <div className="row row-wrap">
        <MakeButton grounds={grounds} paper={{ kind: 'calendar', names, key: id }}>
          {say('page.days.calendar.make', {}, units)}
        </MakeButton>
      </div>
    </div>
  );
}
