import { type ReactNode, useEffect, useRef, useState } from 'react';
import { Link } from 'wouter';
import { say, speak, type WordKey } from '../../engine/words/index.ts';
import type { Answer, OrderSummary, Store } from '../../store/index.ts';
import { useDevice } from '../device/device.tsx';
import { dayAhead, dayText, today } from '../device/today.ts';
import { Button } from '../parts/button.tsx';
import { LONGEST_TEXT } from '../parts/field-frame.tsx';
import { Sheet } from '../parts/sheet.tsx';
import { toast, toastDone } from '../parts/toast.tsx';
import { placeAddress } from '../places/address.ts';
import { isDay, type Shelf } from './sorted-orders.ts';

/** Rows that are put on the page at once; more follow as she scrolls. */
const ROWS = 60;

/** A deleted order is kept at least this long. */
const DAYS_KEPT = 30;

/** The orders of one shelf. What is done to one of them is said, and can be undone. */
export function OrderList({
  orders,
  shelf,
  onChanged,
}: {
  readonly orders: readonly OrderSummary[];
  readonly shelf: Shelf;
  readonly onChanged: () => Promise<void>;
}): ReactNode {
  const [rows, setRows] = useState(ROWS);
  const [chosen, setChosen] = useState<OrderSummary | null>(null);
  return (
    <>
      <ul className="orders">
        {orders.slice(0, rows).map((order) => (
          <li key={order.id} className="order-row">
            <OrderLine order={order} shelf={shelf} />
            <button
              type="button"
              className="button button-quiet"
              aria-label={say('page.book.more.what', { title: order.title }, 'in')}
              onClick={() => setChosen(order)}
            >
              {say('page.book.more', {}, 'in')}
            </button>
          </li>
        ))}
      </ul>
      {rows < orders.length && <MoreRows onSeen={() => setRows((n) => n + ROWS)} />}
      <Sheet
        open={chosen !== null}
        title={chosen?.title ?? ''}
        close={say('page.close', {}, 'in')}
        onClose={() => setChosen(null)}
      >
        {chosen !== null && (
          <Deeds order={chosen} shelf={shelf} onDone={() => setChosen(null)} onChanged={onChanged} />
        )}
      </Sheet>
    </>
  );
}

function OrderLine({ order, shelf }: { readonly order: OrderSummary; readonly shelf: Shelf }): ReactNode {
  const { title, customer, dueDay, children, origin, deletedAt } = order;
  const due = !isDay(dueDay)
    ? say('page.book.due.none', {}, 'in')
    : say(dueDay < today() ? 'page.book.due.past' : 'page.book.due', { day: dayText(dueDay) }, 'in');
  const about = [
    ...(customer === null || customer === '' ? [] : [customer]),
    ...(children.length === 0 ? [] : [children.join(', ')]),
    ...(deletedAt === null
      ? []
      : [say('page.book.kept-until', { day: dayText(dayAhead(deletedAt.slice(0, 10), DAYS_KEPT)) }, 'in')]),
    ...(origin.kind === 'two-tabs' || origin.kind === 'backup' || origin.kind === 'replaced'
      ? [say(`page.book.origin.${origin.kind}`, {}, 'in')]
      : []),
  ].join(' · ');
  const inside = (
    <>
      <span className="order-title">{title}</span>
      <span className="order-due">{due}</span>
      <span className="order-about quiet small">{about}</span>
    </>
  );
  if (shelf === 'deleted') return <div className="order-line">{inside}</div>;
  return (
    <Link href={placeAddress(order.id, 0, 'order')} className="order-line">
      {inside}
    </Link>
  );
}

/** Puts more rows on the page when its end comes into sight. */
function MoreRows({ onSeen }: { readonly onSeen: () => void }): ReactNode {
  const end = useRef<HTMLDivElement>(null);
  const seen = useRef(onSeen);
  seen.current = onSeen;
  useEffect(() => {
    if (end.current === null) return;
    const watch = new IntersectionObserver((entries) => {
      if (entries.some(({ isIntersecting }) => isIntersecting)) seen.current();
    });
    watch.observe(end.current);
    return () => watch.disconnect();
  }, []);
  return <div ref={end} className="more-rows" />;
}

interface Deed {
  readonly word: WordKey;
  readonly said: WordKey;
  readonly run: (store: Store, id: string) => Promise<Answer<unknown>>;
  readonly undo: (store: Store, id: string) => Promise<Answer<unknown>>;
  readonly wrong?: boolean;
}

const PUT_AWAY: Deed = {
  word: 'page.book.archive',
  said: 'page.book.archived',
  run: (store, id) => store.archive(id, true),
  undo: (store, id) => store.archive(id, false),
};
const PUT_BACK: Deed = {
  word: 'page.book.unarchive',
  said: 'page.book.unarchived',
  run: PUT_AWAY.undo,
  undo: PUT_AWAY.run,
};
const DELETE: Deed = {
  word: 'page.book.delete',
  said: 'page.book.deleted',
  run: (store, id) => store.delete(id),
  undo: (store, id) => store.undelete(id),
  wrong: true,
};
const BRING_BACK: Deed = {
  word: 'page.book.undelete',
  said: 'page.book.undeleted',
  run: DELETE.undo,
  undo: DELETE.run,
};

const DEEDS: Readonly<Record<Shelf, readonly Deed[]>> = {
  open: [PUT_AWAY, DELETE],
  archived: [PUT_BACK, DELETE],
  deleted: [BRING_BACK],
};

function Deeds({
  order,
  shelf,
  onDone,
  onChanged,
}: {
  readonly order: OrderSummary;
  readonly shelf: Shelf;
  readonly onDone: () => void;
  readonly onChanged: () => Promise<void>;
}): ReactNode {
  const { store } = useDevice();
  const [asked, setAsked] = useState(false);
  const { id, title } = order;
  const run = async (act: Promise<Answer<unknown>>, said: WordKey, undo: () => void): Promise<void> => {
    onDone();
    const done = await act;
    await onChanged();
    if (!done.ok) return toast(speak(done.problem.say, 'in'));
    toastDone(say(said, { title }, 'in'), undo);
  };
  const copy = async (): Promise<Answer<unknown>> => {
    const copied = await store.copy(id);
    if (!copied.ok) return copied;
    const named = say('page.book.copy-title', { title }, 'in').slice(0, LONGEST_TEXT);
    const { revision, file } = copied.value;
    const saved = await store.save(copied.value.id, revision, { file: { ...file, title: named } });
    copiedId = copied.value.id;
    return saved.ok || saved.conflict !== undefined ? { ok: true, value: null } : saved;
  };
  let copiedId: string | null = null;
  const discard = async (): Promise<void> => {
    onDone();
    const gone = await store.discard([id]);
    await onChanged();
    toast(gone.ok ? say('page.book.discarded', { title }, 'in') : speak(gone.problem.say, 'in'));
  };
  return (
    <div className="stack">
      {shelf !== 'deleted' && (
        <Button
          onPress={() =>
            void run(copy(), 'page.book.copied', () => {
              if (copiedId !== null) void store.delete(copiedId).then(onChanged);
            })
          }
        >
          {say('page.book.copy', {}, 'in')}
        </Button>
      )}
      {DEEDS[shelf].map((deed) => (
        <Button
          key={deed.word}
          look={deed.wrong === true ? 'wrong' : 'plain'}
          onPress={() =>
            void run(deed.run(store, id), deed.said, () => void deed.undo(store, id).then(onChanged))
          }
        >
          {say(deed.word, {}, 'in')}
        </Button>
      ))}
      {shelf === 'deleted' && !asked && (
        <Button look="wrong" onPress={() => setAsked(true)}>
          {say('page.book.discard', {}, 'in')}
        </Button>
      )}
      {asked && (
        <div className="part" role="alert">
          <p>{say('page.book.discard.about', { title }, 'in')}</p>
          <div className="row row-end">
            <Button look="quiet" onPress={() => setAsked(false)}>
              {say('page.cancel', {}, 'in')}
            </Button>
            <Button look="wrong" onPress={() => void discard()}>
              {say('page.book.discard.sure', {}, 'in')}
            </Button>
          </div>
        </div>
      )}
    </div>
  );
}
