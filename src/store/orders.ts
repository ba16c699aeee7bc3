import { LARGEST_ORDER, orderToCopy, readKeptOrder } from '../engine/order/index.ts';
import { fetchOne } from './book.ts';
import { answer, type Desk, read, type WriteTx, write } from './database.ts';
import { historyText, readHistory } from './history.ts';
import { failure } from './problem.ts';
import { type OrderRecord, readRecord, summaryOf } from './record.ts';
import type {
  Answer,
  Failure,
  History,
  OrderContent,
  OrderSummary,
  Origin,
  SaveResult,
  StoredOrder,
} from './types.ts';
import { NO_HISTORY } from './types.ts';
import { revisionOf, written } from './versions.ts';

export function loadOrder({ db }: Desk, id: string): Promise<Answer<StoredOrder>> {
  return answer(async () => {
    try {
      const [raw, history] = await read(db, ['orders', 'histories'], (tx) =>
        Promise.all([tx.objectStore('orders').get(id), tx.objectStore('histories').get(id)]),
      );
      return storedOrder(id, raw, history);
    } catch (error) {
      // One that the browser can't read from the disk is broken, not a fault of the whole store.
      if ((await fetchOne(db, id))[2]) throw error;
      return failure('broken', 'store.broken-order');
    }
  });
}

export function createOrder(desk: Desk, content: OrderContent): Promise<Answer<StoredOrder>> {
  const refused = refuse(content);
  if (refused !== null) return Promise.resolve(refused);
  return answer(async () => {
    const [id, record] = freshOrder(desk, content.file, { kind: 'new' });
    const text = historyText(content.history ?? NO_HISTORY);
    const stored = await write(desk.db, ['orders', 'histories'], (tx) => put(tx, id, record, text));
    desk.announce({ orders: [id] });
    return { ok: true, value: stored };
  });
}

export async function saveOrder(
  desk: Desk,
  id: string,
  expectedRevision: number,
  content: OrderContent,
): Promise<SaveResult> {
  const refused = refuse(content);
  if (refused !== null) return refused;
  const saved = await answer<SaveResult>(async () => ({
    ok: true,
    value: await write(desk.db, ['orders', 'histories'], (tx) =>
      saveIn(tx, desk, id, expectedRevision, content),
    ),
  }));
  if (!saved.ok) return saved;
  const result = saved.value;
  if (result.ok) desk.announce({ orders: [id] });
  else if (result.conflict !== undefined) desk.announce({ orders: [result.conflict.copy.id] });
  return result;
}

async function saveIn(
  tx: WriteTx,
  desk: Desk,
  id: string,
  expectedRevision: number,
  content: OrderContent,
): Promise<SaveResult> {
  const raw = await tx.objectStore('orders').get(id);
  const history = await tx.objectStore('histories').get(id);
  const kept = readStored(raw);
  if (!kept.ok) return kept;
  const { record, fromOlderForm } = kept.value;
  const text = content.history === undefined ? null : historyText(content.history);
  if (revisionOf(record.versions) === expectedRevision) {
    const next = {
      ...record,
      file: content.file,
      changedAt: desk.now(),
      versions: written(record.versions, desk.writer),
    };
    await tx.objectStore('orders').put(next, id);
    if (text !== null) await tx.objectStore('histories').put(text, id);
    else if (fromOlderForm) await tx.objectStore('histories').delete(id);
    return { ok: true, revision: revisionOf(next.versions), changedAt: next.changedAt };
  }
  const theirs = await storedOrder(id, raw, history);
  if (!theirs.ok) return theirs;
  const [copyId, mine] = freshOrder(desk, content.file, { kind: 'two-tabs', of: id });
  const copy = await put(tx, copyId, mine, text ?? historyText(NO_HISTORY));
  return { ok: false, conflict: { theirs: theirs.value, copy } };
}

export function copyOrder(desk: Desk, id: string): Promise<Answer<StoredOrder>> {
  return answer(async () => {
    const copied = await write(desk.db, ['orders', 'histories'], async (tx): Promise<Answer<StoredOrder>> => {
      const kept = readStored(await tx.objectStore('orders').get(id));
      if (!kept.ok) return kept;
      const [copyId, record] = freshOrder(desk, orderToCopy(kept.value.record.file), {
        kind: 'copy',
        of: id,
      });
      return { ok: true, value: await put(tx, copyId, record, historyText(NO_HISTORY)) };
    });
    if (copied.ok) desk.announce({ orders: [copied.value.id] });
    return copied;
  });
}

type Mark = { readonly archived: boolean } | { readonly deleted: boolean };

/** Archives, deletes, or takes either back. The order file is not touched. */
export function markOrder(desk: Desk, id: string, mark: Mark): Promise<Answer<OrderSummary>> {
  return answer(async () => {
    const marked = await write(
      desk.db,
      ['orders', 'histories'],
      async (tx): Promise<Answer<OrderSummary>> => {
        const kept = readStored(await tx.objectStore('orders').get(id));
        if (!kept.ok) return kept;
        const { record, fromOlderForm } = kept.value;
        const next = {
          ...record,
          ...('archived' in mark
            ? mark
            : { deletedAt: mark.deleted ? (record.deletedAt ?? desk.now()) : null }),
          versions: written(record.versions, desk.writer),
        };
        await tx.objectStore('orders').put(next, id);
        if (fromOlderForm) await tx.objectStore('histories').delete(id);
        return { ok: true, value: summaryOf(id, next) };
      },
    );
    if (marked.ok) desk.announce({ orders: [id] });
    return marked;
  });
}

/** A new record and its id, first written by this device. */
function freshOrder(
  { newId, now, writer }: Desk,
  file: OrderRecord['file'],
  origin: Origin,
): [id: string, record: OrderRecord] {
  const at = now();
  const versions = written({}, writer);
  return [
    newId(),
    { versions, origin, createdAt: at, changedAt: at, archived: false, deletedAt: null, file },
  ];
}

async function put(tx: WriteTx, id: string, record: OrderRecord, history: string): Promise<StoredOrder> {
  await tx.objectStore('orders').put(record, id);
  await tx.objectStore('histories').put(history, id);
  return orderOf(id, record, readHistory(history));
}

/** What a page may not hand over. A wrong form is a bug: it would be kept as a broken order. */
function refuse({ file }: OrderContent): Failure | null {
  const kept = readKeptOrder(file);
  if (!kept.ok || kept.fromOlderForm)
    throw new Error(`Not an order of the newest form: ${JSON.stringify(kept)}`);
  if (JSON.stringify(file).length <= LARGEST_ORDER) return null;
  return failure('too-large', 'store.too-large', { most: LARGEST_ORDER / 1_000_000 });
}

function readStored(raw: unknown): Answer<{ readonly record: OrderRecord; readonly fromOlderForm: boolean }> {
  if (raw === undefined) return failure('not-here', 'store.not-here');
  const order = readRecord(raw);
  return order.ok ? { ok: true, value: order } : failure('broken', 'store.broken-order');
}

function storedOrder(id: string, raw: unknown, history: unknown): Answer<StoredOrder> {
  const kept = readStored(raw);
  if (!kept.ok) return kept;
  const { record, fromOlderForm } = kept.value;
  return { ok: true, value: orderOf(id, record, fromOlderForm ? NO_HISTORY : readHistory(history)) };
}

function orderOf(id: string, { versions, ...record }: OrderRecord, history: History): StoredOrder {
  return { id, revision: revisionOf(versions), ...record, history };
}
