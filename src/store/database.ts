import {
  type DBSchema,
  type IDBPDatabase,
  type IDBPTransaction,
  type OpenDBCallbacks,
  openDB,
  type StoreNames,
} from 'idb';
import { failure, problemOfError, storeProblem } from './problem.ts';
import type { Answer, Failure, Instant, StoreProblem } from './types.ts';

/**
 * The database. Values are `unknown` on purpose: what lies on a disk is read through a schema, never trusted. All keys
 * stand outside the values, so that a spoiled value can still be found and removed.
 */
export interface BookSchema extends DBSchema {
  /** By id: an `OrderRecord`. */
  orders: { key: string; value: unknown };
  /** By the id of the order: its undo steps, see `history.ts`. Apart, so that the book opens without reading them. */
  histories: { key: string; value: unknown };
  /** By the name of the setting. */
  settings: { key: string; value: unknown };
  /** `writer`: this device's name among the versions; `last-backup`: see `backup-state.ts`. */
  notes: { key: string; value: unknown };
}

export type Book = IDBPDatabase<BookSchema>;
type BookStore = StoreNames<BookSchema>;
type Upgrade = (db: Book, tx: IDBPTransaction<BookSchema, BookStore[], 'versionchange'>) => void;

/**
 * In order: the first makes the database of version 1, the next changes version 1 into 2, and so on. To change the
 * form, add one here with a stored sample of the old form among the tests; leave the older ones alone. The form of the
 * order file has migrations of its own (`engine/order/migrate.ts`), applied when a record is read.
 */
export const UPGRADES: readonly Upgrade[] = [
  (db) => {
    for (const name of ['orders', 'histories', 'settings', 'notes'] as const) db.createObjectStore(name);
  },
];

export interface BookCallbacks {
  readonly onClosed: (problem: StoreProblem) => void;
  /** How long a tab with an older program may keep us waiting, ms. */
  readonly patience: number;
}

/** Opens the database, or says why it can't be opened. `upgrades` is given by tests that need one more than there are. */
export async function openBook(
  name: string,
  callbacks: BookCallbacks,
  upgrades: readonly Upgrade[] = UPGRADES,
): Promise<Answer<Book>> {
  let db: Book | null = null;
  let waiting: ReturnType<typeof setTimeout> | undefined;
  let giveUp: (failed: Failure) => void = () => {};
  const givenUp = new Promise<Failure>((resolve) => {
    giveUp = resolve;
  });
  const onTheWay: OpenDBCallbacks<BookSchema> = {
    upgrade: (fresh, from, _to, tx) => {
      for (const upgrade of upgrades.slice(from)) upgrade(fresh, tx);
    },
    blocked: () => {
      waiting = setTimeout(() => giveUp(failure('older-tab', 'store.older-tab')), callbacks.patience);
    },
    blocking: () => {
      db?.close();
      callbacks.onClosed(storeProblem('newer-tab', 'store.newer-tab'));
    },
    terminated: () => callbacks.onClosed(storeProblem('failed', 'store.failed', { said: 'connection lost' })),
  };
  const opened = begin(() => openDB<BookSchema>(name, upgrades.length, onTheWay)).then(
    (value): Answer<Book> => ({ ok: true, value }),
    (error: unknown) => openFailure(error),
  );
  const first = await Promise.race([opened, givenUp]);
  clearTimeout(waiting);
  if (first.ok) db = first.value;
  // Given up while it was blocked: it may still open later, and would then hold up others in its turn.
  else void opened.then((late) => late.ok && late.value.close());
  return first;
}

/** Some browsers throw at the first word, where others answer later. */
async function begin(open: () => Promise<Book>): Promise<Book> {
  if (typeof indexedDB === 'undefined') throw new DOMException('no IndexedDB', 'SecurityError');
  return open();
}

function openFailure(error: unknown): Failure {
  const problem = problemOfError(error);
  if (problem === null) throw error;
  if (problem.code === 'storage-full') return { ok: false, problem };
  switch ((error as Error).name) {
    case 'VersionError':
      return failure('newer-data', 'store.newer-data');
    case 'InvalidStateError':
    case 'SecurityError':
      return failure('no-storage', 'store.no-storage');
    default:
      return { ok: false, problem };
  }
}

export type ReadTx = IDBPTransaction<BookSchema, BookStore[], 'readonly'>;

/** Reads in one transaction. One that fails tells it through its requests. */
export function read<T>(db: Book, stores: BookStore[], work: (tx: ReadTx) => Promise<T>): Promise<T> {
  const tx = db.transaction(stores, 'readonly');
  tx.done.catch(() => {});
  return work(tx);
}

export type WriteTx = IDBPTransaction<BookSchema, BookStore[], 'readwrite'>;

/**
 * Reads, checks and writes in one transaction, whole or not at all, and comes back when it is on the disk. `work` may
 * wait for nothing but the store: the browser would end the transaction under it.
 */
export async function write<T>(db: Book, stores: BookStore[], work: (tx: WriteTx) => Promise<T>): Promise<T> {
  const tx = db.transaction(stores, 'readwrite', { durability: 'strict' });
  const done = tx.done.then(
    () => null,
    (error: unknown) => ({ error }),
  );
  try {
    const result = await work(tx);
    const failed = await done;
    if (failed !== null) throw failed.error;
    return result;
  } catch (error) {
    abort(tx);
    await done;
    throw tx.error ?? error;
  }
}

function abort(tx: WriteTx): void {
  try {
    tx.abort();
  } catch {
    // It has ended already.
  }
}

/** Runs a piece of storage work; failures of the device become answers, bugs stay errors. */
export async function answer<T>(work: () => Promise<Answer<T>>): Promise<Answer<T>> {
  try {
    return await work();
  } catch (error) {
    const problem = problemOfError(error);
    if (problem === null) throw error;
    return { ok: false, problem };
  }
}

/** What every part of the store works with. */
export interface Desk {
  readonly db: Book;
  /** This device among the versions of a record. */
  readonly writer: string;
  readonly now: () => Instant;
  readonly newId: () => string;
  /** Tells the other tabs that these orders, or the settings, are written. */
  readonly announce: (what: { readonly orders: readonly string[] } | 'settings') => void;
}
