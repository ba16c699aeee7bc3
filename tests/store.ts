import 'fake-indexeddb/auto';
import { onTestFinished } from 'vitest';
import type { OrderFile } from '../src/engine/order/index.ts';
import { en, type Saying, speak } from '../src/engine/words/index.ts';
import {
  type Answer,
  type HistoryStep,
  type OpenOptions,
  openStore,
  type Store,
} from '../src/store/index.ts';
import { EXAMPLE_TEXT } from './fixtures/example-order.ts';

let books = 0;
/** A name that no other test of the file uses. */
export const bookName = (): string => `book ${++books}`;

/** The settings where nothing was set. */
export const UNSET = {
  units: 'in',
  theme: 'device',
  maker: {},
  rates: {},
  week: {},
  times: {},
  prices: [],
  stash: [],
};

/** A clock that goes on by a second with every look. */
export function ticking(from = '2027-04-24T09:30:00.000Z'): () => string {
  let at = Date.parse(from);
  return () => {
    at += 1000;
    return new Date(at).toISOString();
  };
}

/** A store that is closed with the test; two of one name are two tabs. */
export async function tab(options: OpenOptions = {}): Promise<Store> {
  const opened = await openStore({ name: bookName(), now: ticking(), ...options });
  if (!opened.ok) throw new Error(spoken(opened.problem.say));
  onTestFinished(() => opened.store.close());
  return opened.store;
}

/** The value of an answer that must be good. */
export function good<T>(answer: Answer<T>): T {
  if (!answer.ok) throw new Error(`${answer.problem.code}: ${spoken(answer.problem.say)}`);
  return answer.value;
}

/** Speaks a saying; fails when the catalogue lacks it or a value of it. */
export const spoken = (say: Saying): string => speak(say, 'cm', en);

/** The example order, with another title. */
export function exampleFile(title?: string): OrderFile {
  const file: OrderFile = JSON.parse(EXAMPLE_TEXT);
  return title === undefined ? file : { ...file, title };
}

export function step(chest: string): HistoryStep {
  return {
    label: { key: 'order.field.order', values: {} },
    cause: 'typed',
    patches: [{ op: 'replace', path: ['children', 0, 'measures', 'chestGirth'], value: chest }],
    inverse: [{ op: 'replace', path: ['children', 0, 'measures', 'chestGirth'], value: '18 1/2' }],
  };
}

/** Reaches past the store, as a fault of the disk or another program would. */
export async function withDatabase<T>(
  name: string,
  work: (db: IDBDatabase) => IDBRequest<T> | IDBTransaction,
): Promise<T | undefined> {
  const db = await settled(indexedDB.open(name));
  const running = work(db);
  const result = running instanceof IDBTransaction ? await finished(running) : await settled(running);
  db.close();
  return result;
}

function settled<T>(request: IDBRequest<T>): Promise<T> {
  return new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
}

function finished(tx: IDBTransaction): Promise<undefined> {
  return new Promise((resolve, reject) => {
    tx.oncomplete = () => resolve(undefined);
    tx.onabort = () => reject(tx.error);
  });
}

/** Puts anything under an id, as if it had been written so. */
export function spoil(name: string, id: string, value: unknown): Promise<unknown> {
  return withDatabase(name, (db) => {
    const tx = db.transaction('orders', 'readwrite');
    tx.objectStore('orders').put(value, id);
    return tx;
  });
}
