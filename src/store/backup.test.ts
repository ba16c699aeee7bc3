import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bookName, exampleFile, good, spoil, step, tab } from '../../tests/store.ts';
import { digest, textOf, unzipped } from '../../tests/zips.ts';
import type { OrderFile } from '../engine/order/index.ts';
import type { BackupPlan, ClashChoice, Store } from './index.ts';

/** Choices for all that clash. */
const all = (plan: BackupPlan, choice: ClashChoice) => ({
  orders: Object.fromEntries(plan.entries.map(({ id }) => [id, choice])),
  takeSettings: true,
});
const standings = (plan: BackupPlan) => plan.entries.map(({ standing }) => standing);

async function planFrom(from: Store, to: Store): Promise<BackupPlan> {
  return good(await to.readBackup(good(await from.makeBackup()).bytes));
}

async function titles(store: Store): Promise<readonly (string | null)[]> {
  const listed = good(await store.list());
  return listed
    .flatMap((entry) => (entry.kind === 'broken' || entry.deletedAt === null ? [entry.title] : []))
    .sort();
}

/** Two devices that begin with the same order. */
async function twoDevices(): Promise<{ phone: Store; laptop: Store; id: string }> {
  const [phone, laptop] = [await tab(), await tab()];
  const { id } = good(await phone.create({ file: exampleFile('Begun') }));
  const plan = await planFrom(phone, laptop);
  good(await laptop.restore(plan, all(plan, 'take-theirs')));
  return { phone, laptop, id };
}

test('the file is a zip with a manifest, one JSON for each order, and its digests are right', async () => {
  const store = await tab();
  const { id, file } = good(await store.create({ file: exampleFile('Tọ́lá & Efua <script>') }));
  const backup = good(await store.makeBackup());
  expect(backup).toMatchObject({ orders: 1, broken: 0, fileName: 'frockwright-backup-2027-04-24.zip' });

  const files = unzipped(backup.bytes);
  expect(Object.keys(files).sort()).toEqual(['manifest.json', `orders/${id}.json`, 'settings.json']);
  const manifest = JSON.parse(textOf(files, 'manifest.json'));
  expect(manifest).toMatchObject({ frockwrightBackup: 1, madeAt: backup.madeAt, counts: { orders: 1 } });
  for (const { name, bytes, sha256 } of manifest.parts) {
    expect(sha256).toBe(digest(files[name] ?? new Uint8Array()));
    expect(bytes).toBe(files[name]?.length);
  }
  expect(JSON.parse(textOf(files, `orders/${id}.json`)).file).toEqual(file);
});

test('the same book makes the same bytes, on any day and in any zone', async () => {
  const name = bookName();
  const now = () => '2027-04-24T09:30:00.000Z';
  const store = await tab({ name, now });
  good(await store.create({ file: exampleFile() }));
  const first = good(await store.makeBackup()).bytes;
  const zone = process.env.TZ;
  process.env.TZ = 'Pacific/Auckland';
  const second = good(await (await tab({ name, now })).makeBackup()).bytes;
  if (zone === undefined) delete process.env.TZ;
  else process.env.TZ = zone;
  expect(digest(second)).toBe(digest(first));
});

const anyTitle = fc.string({ unit: 'grapheme', maxLength: 60 });
const anyFile: fc.Arbitrary<OrderFile> = fc
  .record({
    title: anyTitle,
    customer: anyTitle,
    dueDay: anyTitle,
    units: fc.constantFrom('in' as const, 'cm' as const),
    names: fc.array(anyTitle, { maxLength: 4 }),
    chest: fc.oneof(anyTitle, fc.double({ noNaN: true, noDefaultInfinity: true })),
  })
  .map(({ names, chest, ...given }) => ({
    ...exampleFile(),
    ...given,
    children: names.map((name) => ({ name, measures: { chestGirth: chest } })),
  }));
const anyBook = fc.array(
  fc.record({ file: anyFile, archived: fc.boolean(), deleted: fc.boolean(), saves: fc.nat(2) }),
  { maxLength: 6 },
);

test('what goes into a backup comes out of it on another device', async () => {
  await fc.assert(
    fc.asyncProperty(anyBook, fc.constantFrom('in' as const, 'cm' as const), async (book, units) => {
      const [from, to] = [await tab(), await tab()];
      await from.saveSettings({ units, theme: 'dark' });
      for (const { file, archived, deleted, saves } of book) {
        const { id } = good(await from.create({ file }));
        for (let i = 1; i <= saves; i++) await from.save(id, i, { file });
        if (archived) await from.archive(id, true);
        if (deleted) await from.delete(id);
      }
      const plan = await planFrom(from, to);
      expect(standings(plan)).toEqual(book.map(() => 'new'));
      const report = good(await to.restore(plan, { orders: {}, takeSettings: true }));
      expect(report).toEqual({ added: book.length, replaced: 0, keptBoth: 0, leftAlone: 0 });
      expect(good(await to.list())).toEqual(good(await from.list()));
      for (const { id } of good(await from.list())) {
        expect(good(await to.load(id))).toEqual(good(await from.load(id)));
      }
      const settings = good(await to.settings());
      expect(settings).toMatchObject({ units, theme: 'dark' });
      expect(settings).toEqual(good(await from.settings()));
      expect(standings(await planFrom(from, to))).toEqual(book.map(() => 'same'));
    }),
    { numRuns: 25, seed: 20270424 },
  );
});

describe('how an order of a backup stands to the one here', () => {
  test('changed there only: newer', async () => {
    const { phone, laptop, id } = await twoDevices();
    await phone.save(id, 1, { file: exampleFile('Changed') });
    expect(standings(await planFrom(phone, laptop))).toEqual(['newer']);
  });
  test('changed here only: older', async () => {
    const { phone, laptop, id } = await twoDevices();
    await laptop.save(id, 1, { file: exampleFile('Changed') });
    expect(standings(await planFrom(phone, laptop))).toEqual(['older']);
  });
  test('changed on both: conflicting, however many times on either', async () => {
    const { phone, laptop, id } = await twoDevices();
    await phone.save(id, 1, { file: exampleFile('On the phone') });
    await laptop.save(id, 1, { file: exampleFile('On the laptop') });
    await laptop.save(id, 2, { file: exampleFile('On the laptop again') });
    expect(standings(await planFrom(phone, laptop))).toEqual(['conflicting']);
    expect(standings(await planFrom(laptop, phone))).toEqual(['conflicting']);
  });
  test('changed on both to the same: no clash', async () => {
    const { phone, laptop, id } = await twoDevices();
    await phone.save(id, 1, { file: exampleFile('Alike') });
    await laptop.save(id, 1, { file: exampleFile('Alike') });
    expect(standings(await planFrom(phone, laptop))).toEqual(['same']);
  });
  test('a broken one here: conflicting, and never replaced', async () => {
    const name = bookName();
    const [from, to] = [await tab(), await tab({ name })];
    const { id } = good(await from.create({ file: exampleFile('Whole') }));
    await spoil(name, id, { torn: true });
    const plan = await planFrom(from, to);
    expect(plan.entries).toMatchObject([{ standing: 'conflicting', mine: null }]);
    expect(good(await to.restore(plan, all(plan, 'take-theirs')))).toMatchObject({
      keptBoth: 1,
      replaced: 0,
    });
    expect(JSON.parse(good(await to.raw(id)).text)).toEqual({ torn: true });
    expect(await titles(to)).toEqual(['Whole', null]);
  });
});

describe('what she chooses', () => {
  const clash = async () => {
    const { phone, laptop, id } = await twoDevices();
    await phone.save(id, 1, { file: exampleFile('Phone') });
    const history = { steps: [step('19')], position: 1 };
    await laptop.save(id, 1, { file: exampleFile('Laptop'), history });
    return { phone, laptop, id, plan: await planFrom(phone, laptop) };
  };

  test('without a word from her nothing is overwritten', async () => {
    const { laptop, id, plan } = await clash();
    const before = good(await laptop.load(id));
    const report = good(await laptop.restore(plan, { orders: {}, takeSettings: false }));
    expect(report).toEqual({ added: 0, replaced: 0, keptBoth: 0, leftAlone: 1 });
    expect(good(await laptop.load(id))).toEqual(before);
  });

  test('theirs taken: mine lies among the deleted with its undo steps, and comes back', async () => {
    const { phone, laptop, id, plan } = await clash();
    expect(good(await laptop.restore(plan, all(plan, 'take-theirs')))).toMatchObject({ replaced: 1 });
    expect(await titles(laptop)).toEqual(['Phone']);
    const old = good(await laptop.list()).find((entry) => entry.id !== id);
    expect(old).toMatchObject({ title: 'Laptop', origin: { kind: 'replaced', of: id } });
    good(await laptop.undelete(old?.id ?? ''));
    expect(good(await laptop.load(old?.id ?? '')).history.steps).toHaveLength(1);
    expect(standings(await planFrom(laptop, phone)).sort()).toEqual(['new', 'same']);
    const taken = good(await laptop.load(id));
    expect(taken.revision).toBeGreaterThan(2);
    // A page that still had mine open does not write over theirs.
    expect(await laptop.save(id, 2, { file: exampleFile('Late') })).toMatchObject({ ok: false });
  });

  test('both kept: theirs comes as a new order', async () => {
    const { laptop, id, plan } = await clash();
    expect(good(await laptop.restore(plan, all(plan, 'keep-both')))).toMatchObject({ keptBoth: 1 });
    expect(await titles(laptop)).toEqual(['Laptop', 'Phone']);
    expect(good(await laptop.load(id)).file.title).toBe('Laptop');
  });

  test('mine kept, and a new one left out', async () => {
    const { phone, laptop } = await clash();
    await phone.create({ file: exampleFile('Only there') });
    const plan = await planFrom(phone, laptop);
    const report = good(await laptop.restore(plan, all(plan, 'keep-mine')));
    expect(report).toEqual({ added: 0, replaced: 0, keptBoth: 0, leftAlone: 2 });
    expect(await titles(laptop)).toEqual(['Laptop']);
  });

  test('a book that has changed since is not written to', async () => {
    const { laptop, id, plan } = await clash();
    await laptop.save(id, 2, { file: exampleFile('Changed since') });
    const restored = await laptop.restore(plan, all(plan, 'take-theirs'));
    expect(restored).toMatchObject({ ok: false, problem: { code: 'changed-meanwhile' } });
    expect(await titles(laptop)).toEqual(['Changed since']);
  });

  test('an order that came here since is not overwritten either', async () => {
    const [phone, laptop] = [await tab(), await tab()];
    await phone.create({ file: exampleFile('New') });
    const [early, late] = [await planFrom(phone, laptop), await planFrom(phone, laptop)];
    good(await laptop.restore(early, all(early, 'take-theirs')));
    expect(await laptop.restore(late, all(late, 'take-theirs'))).toMatchObject({ ok: false });
  });

  test('settings are taken only when she says so', async () => {
    const [from, to] = [await tab(), await tab()];
    await from.saveSettings({ units: 'cm' });
    const plan = await planFrom(from, to);
    expect(plan.settings).toEqual({ units: 'cm' });
    await to.restore(plan, { orders: {}, takeSettings: false });
    expect(good(await to.settings()).units).toBe('in');
    await to.restore(plan, { orders: {}, takeSettings: true });
    expect(good(await to.settings()).units).toBe('cm');
    expect((await planFrom(from, to)).settings).toBeNull();
  });
});

test('a broken order travels in the backup as it is and is told as unreadable', async () => {
  const name = bookName();
  const [from, to] = [await tab({ name }), await tab()];
  good(await from.create({ file: exampleFile('Sound') }));
  await spoil(name, 'bad', { file: exampleFile('Torn') });
  expect(good(await from.makeBackup())).toMatchObject({ orders: 2, broken: 1 });
  const plan = await planFrom(from, to);
  expect(plan.entries).toMatchObject([{ theirs: { title: 'Sound' } }]);
  expect(plan.unreadable).toMatchObject([{ part: 'orders/bad.json' }]);
  good(await to.restore(plan, all(plan, 'take-theirs')));
  expect(await titles(to)).toEqual(['Sound']);
});
