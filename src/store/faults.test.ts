import { afterEach, expect, test, vi } from 'vitest';
import { bookName, exampleFile, good, spoil, spoken, step, tab, withDatabase } from '../../tests/store.ts';
import { openStore } from './index.ts';

afterEach(() => vi.restoreAllMocks());

const put = IDBObjectStore.prototype.put;

/** Lets the put that comes as number `at` fail in some way. */
function failingPut(at: number, fail: (store: IDBObjectStore) => void): void {
  let puts = 0;
  vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(function (this: IDBObjectStore, value, key) {
    if (++puts === at) fail(this);
    return put.call(this, value, key);
  });
}

test('every write asks for the bytes to be on the disk', async () => {
  const asked = vi.spyOn(IDBDatabase.prototype, 'transaction');
  const store = await tab();
  const { id } = good(await store.create({ file: exampleFile() }));
  await store.save(id, 1, { file: exampleFile('Again') });
  await store.copy(id);
  await store.archive(id, true);
  await store.delete(id);
  await store.discard([id]);
  await store.saveSettings({ units: 'cm' });
  const backup = good(await store.makeBackup());
  await store.noteBackup(backup);
  await store.restore(good(await store.readBackup(backup.bytes)), { orders: {}, takeSettings: false });
  const writes = asked.mock.calls.filter(([, mode]) => mode === 'readwrite');
  expect(writes).toHaveLength(10);
  for (const [, , options] of writes) expect(options).toEqual({ durability: 'strict' });
});

test.each([1, 2])(
  'storage full at part %i of a save: told in words, the old order and its undo steps stand',
  async (at) => {
    const name = bookName();
    const store = await tab({ name });
    const made = good(
      await store.create({ file: exampleFile(), history: { steps: [step('19')], position: 1 } }),
    );
    failingPut(at, () => {
      throw new DOMException('full', 'QuotaExceededError');
    });
    const content = {
      file: exampleFile('Too much'),
      history: { steps: [step('19'), step('20')], position: 2 },
    };
    const saved = await store.save(made.id, 1, content);
    expect(saved).toMatchObject({ ok: false, problem: { code: 'storage-full' } });
    if (!saved.ok && saved.conflict === undefined)
      expect(spoken(saved.problem.say)).toMatch(/Nothing that was saved is lost/);
    vi.restoreAllMocks();
    expect(good(await store.load(made.id))).toEqual(made);
    expect(await store.save(made.id, 1, content)).toMatchObject({ ok: true, revision: 2 });
  },
);

/** Lets everything succeed up to the put that comes as number `at`, and the transaction end there. */
function endingAfterPut(at: number, error: DOMException | null): void {
  let puts = 0;
  vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(function (this: IDBObjectStore, value, key) {
    const request = put.call(this, value, key);
    const { transaction } = this;
    if (++puts === at) request.addEventListener('success', () => transaction.abort());
    // A commit that fails gives its reason here; `abort` by hand gives none.
    if (error !== null) Object.defineProperty(transaction, 'error', { get: () => error, configurable: true });
    return request;
  });
}

test('storage full only when the transaction ends', async () => {
  const store = await tab();
  const made = good(await store.create({ file: exampleFile() }));
  endingAfterPut(1, new DOMException('full', 'QuotaExceededError'));
  const saved = await store.save(made.id, 1, { file: exampleFile('Lost') });
  expect(saved).toMatchObject({ ok: false, problem: { code: 'storage-full' } });
  vi.restoreAllMocks();
  expect(good(await store.load(made.id))).toEqual(made);
});

test.each([1, 2])('a write cut off after part %i leaves what was there, in one piece', async (at) => {
  const name = bookName();
  const store = await tab({ name });
  const made = good(
    await store.create({ file: exampleFile(), history: { steps: [step('19')], position: 1 } }),
  );
  endingAfterPut(at, null);
  const content = { file: exampleFile('Half'), history: { steps: [], position: 0 } };
  expect(await store.save(made.id, 1, content)).toMatchObject({ ok: false, problem: { code: 'failed' } });
  vi.restoreAllMocks();
  expect(good(await (await tab({ name })).load(made.id))).toEqual(made);
});

test('a conflict whose copy finds no room overwrites nothing', async () => {
  const name = bookName();
  const [here, there] = [await tab({ name }), await tab({ name })];
  const { id } = good(await here.create({ file: exampleFile() }));
  await there.save(id, 1, { file: exampleFile('Theirs') });
  failingPut(1, () => {
    throw new DOMException('full', 'QuotaExceededError');
  });
  const saved = await here.save(id, 1, { file: exampleFile('Mine') });
  expect(saved).toMatchObject({ ok: false, problem: { code: 'storage-full' } });
  vi.restoreAllMocks();
  expect(good(await here.list()).map(({ title }) => title)).toEqual(['Theirs']);
});

const circle: Record<string, unknown> = { archived: false };
circle.file = circle;

test.each<[what: string, raw: unknown, why: RegExp]>([
  ['nothing', null, /not an order/],
  ['a word', 'order', /not an order/],
  ['a circle', circle, /not an order/],
  [
    'bytes and big numbers',
    { file: new Uint8Array(3), at: new Date(0), n: 7n, gone: Number.NaN },
    /not an order/,
  ],
  ['an order without version', record({ title: 'x' }), /which version/],
  ['an order of a newer form', record({ ...exampleFile('New'), frockwright: 99 }), /form 99/],
  [
    'an order with a field of another kind',
    record({ ...exampleFile(), children: { name: 'one' } }),
    /children/,
  ],
  ['an order with a field that nobody knows', record({ ...exampleFile(), hem: 3 }), /hem/],
  ['a field that schemas pass over', record({ ...exampleFile(), toString: {} }), /toString/],
  ['a million children', record({ ...exampleFile(), children: Array(100).fill({ name: 'x' }) }), /children/],
  ['no revision', { ...record(exampleFile()), versions: {} }, /not an order/],
  ['a revision that is no number', { ...record(exampleFile()), versions: { a: 1.5 } }, /not an order/],
])('a broken record (%s) hinders nothing, can be fetched and removed', async (_what, raw, why) => {
  const name = bookName();
  const store = await tab({ name });
  const sound = good(await store.create({ file: exampleFile('Sound') }));
  await spoil(name, 'bad', raw);

  const [first, second] = good(await store.list());
  expect(first).toMatchObject({ kind: 'order', title: 'Sound' });
  expect(second).toMatchObject({ kind: 'broken', id: 'bad' });
  if (second?.kind === 'broken') expect(spoken(second.why)).toMatch(why);
  expect(await store.load('bad')).toMatchObject({ ok: false, problem: { code: 'broken' } });
  expect(await store.save('bad', 1, { file: exampleFile() })).toMatchObject({
    ok: false,
    problem: { code: 'broken' },
  });

  const { fileName, text } = good(await store.raw('bad'));
  expect(fileName).toBe('order-bad.json');
  expect(() => JSON.parse(text)).not.toThrow();
  good(await store.makeBackup());
  expect(good(await store.discard(['bad', sound.id]))).toEqual(['bad']);
  expect(good(await store.list())).toHaveLength(1);
});

function record(file: unknown): Record<string, unknown> {
  const at = '2027-04-24T09:30:00.000Z';
  return {
    versions: { a: 1 },
    origin: { kind: 'new' },
    createdAt: at,
    changedAt: at,
    archived: false,
    deletedAt: null,
    file,
  };
}

test('what can be told of a broken order is told, and it is fetched whole', async () => {
  const name = bookName();
  const store = await tab({ name });
  const raw = record({ ...exampleFile('Lilac'), frockwright: 99 });
  await spoil(name, 'bad', raw);
  expect(good(await store.list())).toMatchObject([{ title: 'Lilac', changedAt: '2027-04-24T09:30:00.000Z' }]);
  expect(JSON.parse(good(await store.raw('bad')).text)).toEqual(raw);
});

test('a record that the browser cannot read from the disk does not hide the others', async () => {
  const name = bookName();
  const store = await tab({ name });
  good(await store.create({ file: exampleFile('Sound') }));
  await spoil(name, 'bad', 'on a bad place of the disk');
  const get = IDBObjectStore.prototype.get;
  const unreadable = () => {
    throw new DOMException('Failed to read large IndexedDB value', 'DataError');
  };
  vi.spyOn(IDBObjectStore.prototype, 'getAll').mockImplementation(unreadable);
  vi.spyOn(IDBObjectStore.prototype, 'get').mockImplementation(function (this: IDBObjectStore, key) {
    return key === 'bad' ? unreadable() : get.call(this, key);
  });
  expect(good(await store.list())).toMatchObject([{ title: 'Sound' }, { kind: 'broken', id: 'bad' }]);
  expect(await store.load('bad')).toMatchObject({ ok: false, problem: { code: 'broken' } });
  expect(await store.raw('bad')).toMatchObject({ ok: false, problem: { code: 'failed' } });
  expect(good(await store.makeBackup())).toMatchObject({ orders: 1, broken: 1 });
  expect(good(await store.discard(['bad']))).toEqual(['bad']);
  expect(good(await store.list())).toHaveLength(1);
});

test.each(['not text', 7, '{"steps":', '{"steps":[{}],"position":0}', '{"steps":[],"position":3}'])(
  'undo steps that cannot be read (%s) cost the steps, not the order',
  async (text) => {
    const name = bookName();
    const store = await tab({ name });
    const made = good(
      await store.create({ file: exampleFile(), history: { steps: [step('19')], position: 1 } }),
    );
    await withDatabase(name, (db) => {
      const tx = db.transaction('histories', 'readwrite');
      tx.objectStore('histories').put(text, made.id);
      return tx;
    });
    expect(good(await store.load(made.id))).toEqual({ ...made, history: { steps: [], position: 0 } });
  },
);

test('no room even for the first word: told when opening', async () => {
  failingPut(1, () => {
    throw new DOMException('full', 'QuotaExceededError');
  });
  expect(await openStore({ name: bookName() })).toMatchObject({
    ok: false,
    problem: { code: 'storage-full' },
  });
});
