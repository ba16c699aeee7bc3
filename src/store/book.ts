import { answer, type Book, type Desk, read, write } from './database.ts';
import { failure } from './problem.ts';
import { rawText } from './raw-text.ts';
import { brokenEntry, readRecord, saying, summaryOf } from './record.ts';
import type { Answer, BookEntry, OrderSummary } from './types.ts';

/** Every entry of the book, the last changed first; broken ones at the end. */
export function listBook({ db }: Desk): Promise<Answer<readonly BookEntry[]>> {
  return answer(async () => {
    const entries = (await readAll(db)).map(entryOf);
    entries.sort(lastChangedFirst);
    return { ok: true, value: entries };
  });
}

/** A record as it lies there; `fetched` is false where the browser itself can't read it from the disk. */
export type RawOrder = readonly [id: string, raw: unknown, fetched: boolean];

/**
 * All records. One that the browser can't read makes it refuse the whole lot, so they are then fetched one by one:
 * a bad place on the disk must not hide the other orders.
 */
export async function readAll(db: Book): Promise<readonly RawOrder[]> {
  const ids = await read(db, ['orders'], (tx) => tx.objectStore('orders').getAllKeys());
  try {
    return await read(db, ['orders'], async (tx) => {
      const orders = tx.objectStore('orders');
      const [keys, raws] = await Promise.all([orders.getAllKeys(), orders.getAll()]);
      return keys.map((id, i): RawOrder => [id, raws[i], true]);
    });
  } catch {
    return Promise.all(ids.map((id) => fetchOne(db, id)));
  }
}

/** An id alone, past what the browser can't read. */
export async function fetchOne(db: Book, id: string): Promise<RawOrder> {
  try {
    return [id, await read(db, ['orders'], (tx) => tx.objectStore('orders').get(id)), true];
  } catch {
    return [id, null, false];
  }
}

function entryOf([id, raw, fetched]: RawOrder): BookEntry {
  if (!fetched) return brokenEntry(id, null, saying('store.broken.unfetched'));
  const order = readRecord(raw);
  return order.ok ? summaryOf(id, order.record) : brokenEntry(id, raw, order.why);
}

function lastChangedFirst(a: BookEntry, b: BookEntry): number {
  if (a.kind !== b.kind) return a.kind === 'broken' ? 1 : -1;
  const [at, bt] = [a.changedAt ?? '', b.changedAt ?? ''];
  if (at !== bt) return at < bt ? 1 : -1;
  return a.id < b.id ? -1 : 1;
}

/** Deleted orders are kept this long, and at most so many; then they may go. Rule of this program. */
const DAYS_KEPT = 30;
const MOST_DELETED = 100;

/** Deleted orders that may be removed for good; the page asks before it does. */
export async function discardableIn(desk: Desk): Promise<Answer<readonly OrderSummary[]>> {
  const listed = await listBook(desk);
  if (!listed.ok) return listed;
  const before = new Date(Date.parse(desk.now()) - DAYS_KEPT * 86_400_000).toISOString();
  const deleted = listed.value
    .flatMap((entry) =>
      entry.kind === 'order' && entry.deletedAt !== null ? [[entry, entry.deletedAt] as const] : [],
    )
    .sort(([, a], [, b]) => (a < b ? 1 : -1));
  const value = deleted.flatMap(([entry, at], i) => (at <= before || i >= MOST_DELETED ? [entry] : []));
  return { ok: true, value };
}

/** Removes for good what is deleted or broken; an order that stands in the book is left alone, whoever asks. */
export function discardFrom(desk: Desk, ids: readonly string[]): Promise<Answer<readonly string[]>> {
  return answer(async () => {
    // Reading such a record would end the transaction that is to remove it, so they are found before.
    const unfetched = new Set(
      (await Promise.all(ids.map((id) => fetchOne(desk.db, id)))).flatMap(([id, , fetched]) =>
        fetched ? [] : [id],
      ),
    );
    const gone = await write(desk.db, ['orders', 'histories'], async (tx) => {
      const orders = tx.objectStore('orders');
      const removed: string[] = [];
      for (const id of ids) {
        const raw = unfetched.has(id) ? null : await orders.get(id);
        if (raw === undefined || stands(raw)) continue;
        await orders.delete(id);
        await tx.objectStore('histories').delete(id);
        removed.push(id);
      }
      return removed;
    });
    if (gone.length > 0) desk.announce({ orders: gone });
    return { ok: true, value: gone };
  });
}

function stands(raw: unknown): boolean {
  const order = readRecord(raw);
  return order.ok && order.record.deletedAt === null;
}

export function rawOrder(
  { db }: Desk,
  id: string,
): Promise<Answer<{ readonly fileName: string; readonly text: string }>> {
  return answer(async () => {
    const [, raw, fetched] = await fetchOne(db, id);
    if (!fetched) return failure('failed', 'store.broken.unfetched');
    if (raw === undefined) return failure('not-here', 'store.not-here');
    const fileName = `order-${id.replace(/[^A-Za-z0-9-]+/g, '-').slice(0, 64)}.json`;
    return { ok: true, value: { fileName, text: rawText(raw) } };
  });
}
