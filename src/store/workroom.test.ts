import { afterEach, describe, expect, test, vi } from 'vitest';
import { bookName, exampleFile, good, spoken, tab, ticking, UNSET, withDatabase } from '../../tests/store.ts';
import { en } from '../engine/words/index.ts';

afterEach(() => vi.unstubAllGlobals());

describe('settings', () => {
  test('hold when nothing was set, and keep what was', async () => {
    const name = bookName();
    const store = await tab({ name });
    expect(good(await store.settings())).toEqual({ ...UNSET, units: 'in', theme: 'device' });
    expect(good(await store.saveSettings({ units: 'cm' }))).toEqual({
      ...UNSET,
      units: 'cm',
      theme: 'device',
    });
    expect(good(await (await tab({ name })).settings())).toEqual({ ...UNSET, units: 'cm', theme: 'device' });
  });
  test('changed in two tabs at once are both kept', async () => {
    const name = bookName();
    const [here, there] = [await tab({ name }), await tab({ name })];
    await Promise.all([here.saveSettings({ units: 'cm' }), there.saveSettings({ theme: 'dark' })]);
    expect(good(await here.settings())).toEqual({ ...UNSET, units: 'cm', theme: 'dark' });
  });
  test('that cannot be read are as if not set', async () => {
    const name = bookName();
    const store = await tab({ name });
    await withDatabase(name, (db) => {
      const tx = db.transaction('settings', 'readwrite');
      tx.objectStore('settings').put({ ell: 1 }, 'units');
      return tx;
    });
    expect(good(await store.settings()).units).toBe('in');
  });
});

describe('a reminder to make a backup', () => {
  test('not on the first day, then until one is made', async () => {
    const name = bookName();
    const store = await tab({ name });
    expect(good(await store.backupState())).toEqual({ last: null, changedOrders: 0, due: null });
    await store.create({ file: exampleFile() });
    expect(good(await store.backupState())).toEqual({ last: null, changedOrders: 1, due: null });
    const nextDay = await tab({ name, now: ticking('2027-04-25T10:00:00.000Z') });
    expect(good(await nextDay.backupState())).toMatchObject({ due: 'never' });
    const backup = good(await nextDay.makeBackup());
    expect(good(await nextDay.backupState())).toMatchObject({ due: 'never' });
    good(await nextDay.noteBackup(backup));
    expect(good(await nextDay.backupState())).toEqual({ last: backup.madeAt, changedOrders: 0, due: null });
  });
  test('an old one is good as long as nothing has changed', async () => {
    const name = bookName();
    const store = await tab({ name });
    const { id } = good(await store.create({ file: exampleFile() }));
    good(await store.noteBackup(good(await store.makeBackup())));
    const [week, month] = [
      await tab({ name, now: ticking('2027-05-01T09:30:00.000Z') }),
      await tab({ name, now: ticking('2027-05-30T09:30:00.000Z') }),
    ];
    expect(good(await month.backupState())).toMatchObject({ changedOrders: 0, due: null });
    await store.archive(id, true);
    expect(good(await week.backupState())).toMatchObject({ changedOrders: 1, due: null });
    expect(good(await month.backupState())).toMatchObject({ changedOrders: 1, due: 'old' });
  });
  test('ten changed orders are many, and a change between making and noting counts', async () => {
    const store = await tab();
    const { id } = good(await store.create({ file: exampleFile() }));
    const backup = good(await store.makeBackup());
    await store.save(id, 1, { file: exampleFile('Changed while the file was being kept') });
    good(await store.noteBackup(backup));
    expect(good(await store.backupState())).toMatchObject({ changedOrders: 1, due: null });
    for (let i = 0; i < 8; i++) await store.create({ file: exampleFile() });
    expect(good(await store.backupState())).toMatchObject({ changedOrders: 9, due: null });
    await store.create({ file: exampleFile() });
    expect(good(await store.backupState())).toMatchObject({ changedOrders: 10, due: 'many-changes' });
  });
});

describe('lasting storage', () => {
  test('is asked for, and shown with the room there is', async () => {
    let lasting = false;
    const persist = vi.fn(async () => {
      lasting = true;
      return true;
    });
    const storage = {
      persist,
      persisted: async () => lasting,
      estimate: async () => ({ usage: 5, quota: 100 }),
    };
    vi.stubGlobal('navigator', { storage });
    const store = await tab();
    expect(await store.keeping()).toEqual({ lasting: 'no', usedBytes: 5, roomBytes: 100 });
    expect(persist).not.toHaveBeenCalled();
    expect(await store.askToKeep()).toMatchObject({ lasting: 'yes' });
  });
  test.each([
    ['no such thing', {}],
    ['half of it', { storage: {} }],
    [
      'refused',
      {
        storage: {
          persisted: () => Promise.reject(new Error('no')),
          estimate: () => {
            throw new Error('no');
          },
        },
      },
    ],
  ])('a browser with %s says that it does not know', async (_what, navigator) => {
    vi.stubGlobal('navigator', navigator);
    const store = await tab();
    expect(await store.askToKeep()).toEqual({ lasting: 'unknown', usedBytes: null, roomBytes: null });
  });
});

test('a page without digests (plain http) is told how to make backups', async () => {
  const store = await tab();
  vi.stubGlobal('crypto', { getRandomValues: crypto.getRandomValues.bind(crypto) });
  const made = await store.makeBackup();
  expect(made).toMatchObject({ ok: false });
  if (!made.ok) expect(spoken(made.problem.say)).toContain('https');
  expect(await store.readBackup(new Uint8Array())).toMatchObject({ ok: false, problem: { code: 'failed' } });
});

test('no sentence of the store is left without its full stop', () => {
  const sentences = Object.entries(en).filter(([key]) => key.startsWith('store.'));
  expect(sentences.length).toBeGreaterThan(30);
  for (const [, sentence] of sentences) expect(sentence).toMatch(/\.$/);
});
