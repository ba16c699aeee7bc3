import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { bookName, good, tab, UNSET, withDatabase } from '../../tests/store.ts';

/**
 * What earlier programs left on devices must open for ever. Each file of the folder is a whole small database of one
 * version, laid down here with plain IndexedDB, as the program of its time did it.
 */
interface Sample {
  readonly database: number;
  readonly orders: Readonly<
    Record<string, { readonly file: object; readonly versions: Record<string, number> }>
  >;
  readonly histories: Readonly<Record<string, string>>;
  readonly settings: Readonly<Record<string, unknown>>;
  readonly notes: Readonly<Record<string, unknown>>;
}

const FOLDER = new URL('../../tests/fixtures/stored/', import.meta.url);
const STORES = ['orders', 'histories', 'settings', 'notes'] as const;

/** The stores of each version of the database, by hand: not made by the code that is tested. */
const MAKE: Readonly<Record<number, (db: IDBDatabase) => void>> = {
  1: (db) => {
    for (const store of STORES) db.createObjectStore(store);
  },
};

async function layDown(name: string, sample: Sample): Promise<void> {
  await new Promise<void>((resolve) => {
    const request = indexedDB.open(name, sample.database);
    request.onupgradeneeded = () => MAKE[sample.database]?.(request.result);
    request.onsuccess = () => {
      request.result.close();
      resolve();
    };
  });
  await withDatabase(name, (db) => {
    const tx = db.transaction([...STORES], 'readwrite');
    for (const store of STORES) {
      for (const [key, value] of Object.entries(sample[store])) tx.objectStore(store).put(value, key);
    }
    return tx;
  });
}

const samples = readdirSync(FOLDER).filter((file) => file.endsWith('.json'));

test('there are samples', () => expect(samples.length).toBeGreaterThanOrEqual(2));

test.each(samples)('%s opens whole, and can be worked on', async (file) => {
  const sample: Sample = JSON.parse(readFileSync(new URL(file, FOLDER), 'utf8'));
  const name = bookName();
  await layDown(name, sample);
  const store = await tab({ name });

  for (const [id, { file: order, versions, ...facts }] of Object.entries(sample.orders)) {
    const loaded = good(await store.load(id));
    const revision = Object.values(versions).reduce((sum, count) => sum + count, 0);
    const history = JSON.parse(sample.histories[id] ?? '{"steps":[],"position":0}');
    // Every version so far has the newest form of the order file, so the file is what was written.
    expect(loaded).toEqual({ id, revision, ...facts, file: order, history });
    expect(await store.save(id, revision, { file: loaded.file })).toMatchObject({
      ok: true,
      revision: revision + 1,
    });
  }
  expect(good(await store.list()).map(({ kind }) => kind)).toEqual(
    Object.keys(sample.orders).map(() => 'order'),
  );
  expect(good(await store.settings())).toEqual({ ...UNSET, ...sample.settings });
});
