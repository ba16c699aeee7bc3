import type { ReactNode } from 'react';
import { fullWeeks } from '../../engine/bill/index.ts';
import { fullWeekSaying, readWorkroom } from '../../engine/order/index.ts';
import { say, speak } from '../../engine/words/index.ts';
import type { OrderSummary } from '../../store/index.ts';
import { useDevice } from '../device/device.tsx';

/** Weeks for which the days that orders keep ask for more than her hours. Says nothing where there are none. */
export function FullWeeksOfBook({ orders }: { readonly orders: readonly OrderSummary[] }): ReactNode {
  const { settings } = useDevice();
  const { week } = readWorkroom({ week: settings.week }, null, settings.units);
  const full = fullWeeks(
    orders.map(({ title, kept }) => ({
      title,
      byDay: new Map(kept.map(({ day, minutes }) => [day, minutes] as const)),
    })),
    week,
  );
  if (full.length === 0) return null;
  return (
    <section className="part" aria-label={say('page.book.full-weeks', {}, 'in')}>
      <h2>{say('page.book.full-weeks', {}, 'in')}</h2>
      <ul className="stack">
        {full.map((one) => (
          <li key={`${one.monday.year} ${one.monday.month} ${one.monday.day}`} className="wrong">
            {speak(fullWeekSaying(one), 'in')}
          </li>
        ))}
      </ul>
    </section>
  );
}
