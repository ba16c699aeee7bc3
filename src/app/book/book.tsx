import { lazy, type ReactNode, Suspense, useCallback, useDeferredValue, useEffect, useState } from 'react';
import { Link, useLocation } from 'wouter';
import { say, speak } from '../../engine/words/index.ts';
import type { BookEntry, BrokenOrder, OrderSummary } from '../../store/index.ts';
import { useDevice } from '../device/device.tsx';
import { today } from '../device/today.ts';
import { Button } from '../parts/button.tsx';
import { Choice } from '../parts/choice.tsx';
import { TextField } from '../parts/text-field.tsx';
import { toast } from '../parts/toast.tsx';
import { BrokenOrders } from './broken-orders.tsx';
import { DiscardOld } from './discard-old.tsx';
import { openExample } from './example.ts';
import { KeptSafe } from './kept-safe.tsx';
import { OrderList } from './order-list.tsx';
import { byDueDay, found, SHELVES, type Shelf, shelfOf } from './sorted-orders.ts';

/** It needs the engine, which the book comes up without. */
const FullWeeks = lazy(async () => ({ default: (await import('./full-weeks.tsx')).FullWeeksOfBook }));

/** The order book: every order of this device, and how safe they are. */
export function Book(): ReactNode {
  const { store } = useDevice();
  const [entries, setEntries] = useState<readonly BookEntry[] | null>(null);
  const reload = useCallback(async (): Promise<void> => {
    const listed = await store.list();
    if (listed.ok) setEntries(listed.value);
    else toast(speak(listed.problem.say, 'in'));
  }, [store]);
  useEffect(() => {
    document.title = say('page.name', {}, 'in');
    void reload();
    return store.subscribe((event) => {
      if (event.kind === 'orders') void reload();
    });
  }, [store, reload]);

  if (entries === null) return <p className="waiting quiet">{say('page.waiting', {}, 'in')}</p>;
  const orders = entries.filter((entry): entry is OrderSummary => entry.kind === 'order');
  const planned = orders.filter(
    ({ kept, archived, deletedAt }) => kept.length > 0 && !archived && deletedAt === null,
  );
  const broken = entries.filter((entry): entry is BrokenOrder => entry.kind === 'broken');
  return (
    <main className="book">
      {entries.length === 0 ? <Welcome /> : <Orders orders={orders} onChanged={reload} />}
      {planned.length > 1 && (
        <Suspense>
          <FullWeeks orders={planned} />
        </Suspense>
      )}
      {broken.length > 0 && <BrokenOrders broken={broken} onChanged={reload} />}
      <div>
        <Link href="/guide" className="button button-quiet">
          {say('page.guide.title', {}, 'in')}
        </Link>
      </div>
      <KeptSafe orders={orders.length} onChanged={reload} />
      <Looks />
    </main>
  );
}

/** The first visit: look round in a finished order, or begin. */
function Welcome(): ReactNode {
  const [, go] = useLocation();
  return (
    <div className="welcome">
      <h1>{say('page.name', {}, 'in')}</h1>
      <p className="welcome-line">{say('page.book.welcome', {}, 'in')}</p>
      <p>{say('page.book.welcome.about', {}, 'in')}</p>
      <OpenExample look="main" />
      <p className="quiet small">{say('page.book.or', {}, 'in')}</p>
      <Button onPress={() => go('/start')}>{say('page.book.start-own', {}, 'in')}</Button>
    </div>
  );
}

function OpenExample({ look }: { readonly look: 'main' | 'quiet' }): ReactNode {
  const { store } = useDevice();
  const [, go] = useLocation();
  const open = async (): Promise<void> => {
    const opened = await openExample(store);
    if (opened.ok) go(opened.value);
    else toast(speak(opened.problem.say, 'in'));
  };
  return (
    <Button look={look} onPress={() => void open()}>
      {say('page.book.example', {}, 'in')}
    </Button>
  );
}

function Orders({
  orders,
  onChanged,
}: {
  readonly orders: readonly OrderSummary[];
  readonly onChanged: () => Promise<void>;
}): ReactNode {
  const [shelf, setShelf] = useState<Shelf>('open');
  const [looked, setLooked] = useState('');
  const late = useDeferredValue(looked);
  const onShelf = orders.filter((order) => shelfOf(order) === shelf);
  const shown = byDueDay(found(onShelf, late), today());
  const shelves = SHELVES.map((id) => ({ id, text: say(`page.book.show.${id}`, {}, 'in') }));
  return (
    <>
      <div className="book-head">
        <h1>{say('page.book', {}, 'in')}</h1>
        <Link href="/start" className="button button-main">
          {say('page.book.new', {}, 'in')}
        </Link>
      </div>
      <div className="fields">
        <TextField
          label={say('page.book.find', {}, 'in')}
          value={looked}
          onChange={setLooked}
          about={say('page.book.find.about', {}, 'in')}
        />
        <Choice label={say('page.book.show', {}, 'in')} value={shelf} options={shelves} onChange={setShelf} />
      </div>
      {shown.length > 0 && <OrderList orders={shown} shelf={shelf} onChanged={onChanged} />}
      {shelf === 'deleted' && <DiscardOld deleted={onShelf} onChanged={onChanged} />}
      {shown.length === 0 && (
        <p className="quiet">
          {late.trim() === ''
            ? say(`page.book.none.${shelf}`, {}, 'in')
            : say('page.book.none-found', { what: late.trim() }, 'in')}
        </p>
      )}
      <div>
        <OpenExample look="quiet" />
      </div>
    </>
  );
}

/** Units for new orders, light or dark. */
function Looks(): ReactNode {
  const { settings, set } = useDevice();
  const themes = (['device', 'light', 'dark'] as const).map((id) => ({
    id,
    text: say(`page.theme.${id}`, {}, 'in'),
  }));
  const units = (['in', 'cm'] as const).map((id) => ({ id, text: say(`page.units.${id}`, {}, 'in') }));
  return (
    <section className="part">
      <div className="fields">
        <Choice
          label={say('page.book.units', {}, 'in')}
          value={settings.units}
          options={units}
          onChange={(id) => set({ units: id })}
        />
        <Choice
          label={say('page.theme', {}, 'in')}
          value={settings.theme}
          options={themes}
          onChange={(theme) => set({ theme })}
        />
      </div>
    </section>
  );
}
