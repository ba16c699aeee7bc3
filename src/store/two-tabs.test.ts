import { afterEach, expect, test, vi } from 'vitest';
import { bookName, exampleFile, good, step, tab } from '../../tests/store.ts';
import { openBook, UPGRADES } from './database.ts';
import { openStore, type StoreEvent } from './index.ts';

afterEach(() => vi.unstubAllGlobals());

test('two tabs change one order: both changes are kept', async () => {
  const name = bookName();
  const [here, there] = [await tab({ name }), await tab({ name })];
  const { id } = good(await here.create({ file: exampleFile('As it was') }));
  await there.save(id, 1, { file: exampleFile('Changed there') });

  const mine = { file: exampleFile('Changed here'), history: { steps: [step('19')], position: 1 } };
  const saved = await here.save(id, 1, mine);
  expect(saved).toMatchObject({
    ok: false,
    conflict: {
      theirs: { id, revision: 2, file: { title: 'Changed there' } },
      copy: { revision: 1, origin: { kind: 'two-tabs', of: id }, ...mine },
    },
  });
  const titles = good(await there.list()).map(({ title }) => title);
  expect(titles.sort()).toEqual(['Changed here', 'Changed there']);
});

test('of many saves at once under one revision exactly one stands, and none is lost', async () => {
  const name = bookName();
  const tabs = [await tab({ name }), await tab({ name })];
  const first = tabs[0];
  if (first === undefined) throw new Error('no tab');
  const { id } = good(await first.create({ file: exampleFile('As it was') }));
  const saves = await Promise.all(
    Array.from({ length: 20 }, (_, i) =>
      (tabs[i % 2] ?? first).save(id, 1, { file: exampleFile(`Save ${i}`) }),
    ),
  );
  expect(saves.filter(({ ok }) => ok)).toHaveLength(1);
  const titles = good(await first.list()).map(({ title }) => title);
  expect(titles.sort()).toEqual(Array.from({ length: 20 }, (_, i) => `Save ${i}`).sort());
});

test('a save in one tab after a delete in another keeps the change', async () => {
  const name = bookName();
  const [here, there] = [await tab({ name }), await tab({ name })];
  const { id } = good(await here.create({ file: exampleFile() }));
  await there.delete(id);
  const saved = await here.save(id, 1, { file: exampleFile('Worked on') });
  expect(saved).toMatchObject({
    ok: false,
    conflict: { copy: { deletedAt: null, file: { title: 'Worked on' } } },
  });
});

test('other tabs hear what was written, the writing one does not', async () => {
  const name = bookName();
  const [here, there] = [await tab({ name }), await tab({ name })];
  const heardHere: StoreEvent[] = [];
  const heardThere: StoreEvent[] = [];
  here.subscribe((event) => heardHere.push(event));
  const stop = there.subscribe((event) => heardThere.push(event));
  const { id } = good(await here.create({ file: exampleFile() }));
  await here.saveSettings({ units: 'cm' });
  await vi.waitFor(() => expect(heardThere).toHaveLength(2));
  expect(heardThere).toEqual([{ kind: 'orders', ids: [id] }, { kind: 'settings' }]);
  expect(heardHere).toEqual([]);
  stop();
  await here.delete(id);
  await new Promise((resolve) => setTimeout(resolve, 50));
  expect(heardThere).toHaveLength(2);
});

test('what other programs say on the channel is passed over', async () => {
  const name = bookName();
  const store = await tab({ name });
  const heard: StoreEvent[] = [];
  store.subscribe((event) => heard.push(event));
  const channel = new BroadcastChannel(`${name}: written`);
  for (const word of [null, 7, {}, { orders: 'all' }, { orders: ['a', 3, 'b'] }]) channel.postMessage(word);
  await vi.waitFor(() => expect(heard).toHaveLength(1));
  channel.close();
  expect(heard).toEqual([{ kind: 'orders', ids: ['a', 'b'] }]);
});

test('the second tab learns that an order is open in the first', async () => {
  vi.stubGlobal('navigator', { locks: locksOfTheSpecification() });
  const name = bookName();
  const [here, there] = [await tab({ name }), await tab({ name })];
  const claim = await here.claim('a');
  expect(claim.held).toBe('here');
  expect((await there.claim('a')).held).toBe('elsewhere');
  expect((await there.claim('b')).held).toBe('here');
  claim.release();
  await vi.waitFor(async () => expect((await there.claim('a')).held).toBe('here'));
});

test('a browser without locks says that it does not know', async () => {
  vi.stubGlobal('navigator', {});
  expect((await (await tab()).claim('a')).held).toBe('unknown');
});

/** `ifAvailable` of the Web Locks API (W3C): the callback gets null when taken; held until its promise settles. */
function locksOfTheSpecification() {
  const held = new Set<string>();
  return {
    request: async (name: string, _options: object, work: (lock: object | null) => unknown) => {
      if (held.has(name)) return work(null);
      held.add(name);
      try {
        return await work({ name });
      } finally {
        held.delete(name);
      }
    },
  };
}

test('a newer program takes over: the older tab closes and says so', async () => {
  const name = bookName();
  const store = await tab({ name });
  const { id } = good(await store.create({ file: exampleFile() }));
  const heard: StoreEvent[] = [];
  store.subscribe((event) => heard.push(event));
  const newer = await openBook(name, { patience: 1000, onClosed: () => {} }, [...UPGRADES, () => {}]);
  expect(heard).toMatchObject([{ kind: 'closed', problem: { code: 'newer-tab' } }]);
  expect(await store.save(id, 1, { file: exampleFile() })).toMatchObject({
    ok: false,
    problem: { code: 'failed' },
  });
  expect(newer.ok && (await newer.value.count('orders'))).toBe(1);
  if (newer.ok) newer.value.close();
});

test('an older tab that does not let go is named, and its end is not spoiled by us', async () => {
  const name = bookName();
  const holding = await new Promise<IDBDatabase>((resolve) => {
    const request = indexedDB.open(name, 1);
    request.onsuccess = () => resolve(request.result);
  });
  const opened = await openBook(name, { patience: 20, onClosed: () => {} }, [...UPGRADES, () => {}]);
  expect(opened).toMatchObject({ ok: false, problem: { code: 'older-tab' } });
  holding.close();
});

test('data of a newer program are not touched', async () => {
  const name = bookName();
  await new Promise((resolve) => {
    const request = indexedDB.open(name, 99);
    request.onsuccess = () => {
      request.result.close();
      resolve(null);
    };
  });
  expect(await openStore({ name })).toMatchObject({ ok: false, problem: { code: 'newer-data' } });
});

test.each([
  ['none at all', undefined],
  [
    'refused',
    {
      open: () => {
        throw new DOMException('denied', 'SecurityError');
      },
    },
  ],
])('a browser without storage (%s) is an answer, not an error', async (_what, stub) => {
  vi.stubGlobal('indexedDB', stub);
  expect(await openStore({ name: bookName() })).toMatchObject({ ok: false, problem: { code: 'no-storage' } });
});
