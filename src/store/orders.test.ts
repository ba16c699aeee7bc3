import { expect, test } from 'vitest';
import { bookName, exampleFile, good, step, tab, ticking } from '../../tests/store.ts';
import type { OrderFile } from '../engine/order/index.ts';
import { NO_HISTORY } from './index.ts';

test('an order comes back as it was typed', async () => {
  const name = bookName();
  const store = await tab({ name });
  const file = exampleFile('  Two girls,   one wedding ');
  const made = good(await store.create({ file }));
  expect(made).toMatchObject({ revision: 1, archived: false, deletedAt: null, origin: { kind: 'new' } });

  const loaded = good(await (await tab({ name })).load(made.id));
  expect(loaded).toEqual(made);
  expect(JSON.stringify(loaded.file)).toBe(JSON.stringify(file));
});

test('an order in the making is kept: a blank title, no children, a length that cannot be read', async () => {
  const store = await tab();
  const whole = exampleFile();
  const [first] = whole.cloths;
  const file: OrderFile = {
    ...whole,
    title: '',
    dueDay: '',
    children: [],
    cloths: first ? [{ ...first, width: '5o' }] : [],
  };
  const { id } = good(await store.create({ file }));
  expect(good(await store.load(id)).file).toEqual(file);
  expect(good(await store.list())).toMatchObject([{ kind: 'order', title: '', dueDay: '', children: [] }]);
});

test('the book tells the steps that she has timed in an order, and not those that are only done', async () => {
  const store = await tab();
  const file = exampleFile();
  const zip = { step: 'zip', kind: 'zip', minutes: 56, estimate: 28 } as const;
  const children = file.children.map((child, i) =>
    i === 0 ? { ...child, sewing: { done: [zip, { step: 'turn', kind: 'turn' as const }] } } : child,
  );
  await store.create({ file: { ...file, children } });
  expect(good(await store.list())).toMatchObject([{ timed: [{ kind: 'zip', minutes: 56, estimate: 28 }] }]);
});

test('what is no order is a bug of the page, and is not kept', async () => {
  const store = await tab();
  const file = { ...exampleFile(), children: 'none' } as unknown as OrderFile;
  expect(() => store.create({ file })).toThrow('children');
  expect(good(await store.list())).toEqual([]);
});

test('an order larger than an order may be is refused in words', async () => {
  const store = await tab();
  const file = { ...exampleFile(), title: 'x'.repeat(2_000_001) };
  expect(await store.create({ file })).toMatchObject({ ok: false, problem: { code: 'too-large' } });
});

test('saving raises the revision, keeps the day of making and moves the day of changing', async () => {
  const store = await tab();
  const made = good(await store.create({ file: exampleFile() }));
  const saved = await store.save(made.id, 1, { file: exampleFile('Changed') });
  expect(saved).toMatchObject({ ok: true, revision: 2 });
  const loaded = good(await store.load(made.id));
  expect(loaded.file.title).toBe('Changed');
  expect(loaded.createdAt).toBe(made.createdAt);
  expect(loaded.changedAt > made.changedAt).toBe(true);
});

test('undo steps survive a reload; a save without any leaves them', async () => {
  const name = bookName();
  const store = await tab({ name });
  const history = { steps: [step('19'), step('19 1/4'), step('20')], position: 2 };
  const { id } = good(await store.create({ file: exampleFile(), history }));
  await store.save(id, 1, { file: exampleFile('Again') });
  expect(good(await (await tab({ name })).load(id)).history).toEqual(history);
  await store.save(id, 2, { file: exampleFile('Again'), history: NO_HISTORY });
  expect(good(await store.load(id)).history).toEqual(NO_HISTORY);
});

test('of very many undo steps the newest are kept', async () => {
  const store = await tab();
  const steps = Array.from({ length: 700 }, (_, i) => step(String(i)));
  const { id } = good(await store.create({ file: exampleFile(), history: { steps, position: 690 } }));
  const { history } = good(await store.load(id));
  expect(history.steps).toEqual(steps.slice(200));
  expect(history.position).toBe(490);

  const long = Array.from({ length: 30 }, (_, i) => step(String(i).repeat(50_000)));
  await store.save(id, 1, { file: exampleFile(), history: { steps: long, position: 30 } });
  const kept = good(await store.load(id)).history;
  expect(kept.steps.length).toBeGreaterThan(5);
  expect(kept.steps).toEqual(long.slice(-kept.steps.length));
  expect(kept.position).toBe(kept.steps.length);
  expect(JSON.stringify(kept).length).toBeLessThan(1_000_100);
});

test('the book lists all, the last changed first, with what stands on the card', async () => {
  const store = await tab();
  const first = good(await store.create({ file: { ...exampleFile('First'), dueDay: '2027-06-12' } }));
  good(await store.create({ file: exampleFile('Second') }));
  await store.save(first.id, 1, { file: exampleFile('First again') });
  const listed = good(await store.list());
  expect(listed).toMatchObject([
    { kind: 'order', title: 'First again', children: expect.arrayContaining(['Amina', 'Efua']) },
    { kind: 'order', title: 'Second', customer: null },
  ]);
});

test('a copy is an order of its own', async () => {
  const store = await tab();
  const made = good(
    await store.create({ file: exampleFile(), history: { steps: [step('19')], position: 1 } }),
  );
  const copy = good(await store.copy(made.id));
  expect(copy).toMatchObject({ file: made.file, revision: 1, origin: { kind: 'copy', of: made.id } });
  expect(copy.history).toEqual(NO_HISTORY);
  await store.save(copy.id, 1, { file: exampleFile('Only the copy') });
  expect(good(await store.load(made.id)).file.title).toBe(made.file.title);
});

test('archived and back, deleted and back, without touching the order', async () => {
  const store = await tab();
  const made = good(
    await store.create({ file: exampleFile(), history: { steps: [step('19')], position: 1 } }),
  );
  expect(good(await store.archive(made.id, true))).toMatchObject({ archived: true, revision: 2 });
  expect(good(await store.archive(made.id, false))).toMatchObject({ archived: false });
  expect(good(await store.delete(made.id)).deletedAt).not.toBeNull();
  expect(good(await store.list())).toMatchObject([{ id: made.id, deletedAt: expect.any(String) }]);
  expect(good(await store.undelete(made.id))).toMatchObject({ deletedAt: null });
  expect(good(await store.load(made.id))).toEqual({ ...made, revision: 5 });
});

test('what is deleted may go after 30 days, and never by itself', async () => {
  const name = bookName();
  const store = await tab({ name });
  const kept = good(await store.create({ file: exampleFile('Stands') }));
  const old = good(await store.create({ file: exampleFile('Deleted') }));
  await store.delete(old.id);
  expect(good(await store.discardable())).toEqual([]);

  const later = await tab({ name, now: ticking('2027-05-23T09:00:00.000Z') });
  expect(good(await later.discardable())).toEqual([]);
  const latest = await tab({ name, now: ticking('2027-05-25T09:00:00.000Z') });
  expect(good(await latest.discardable())).toMatchObject([{ id: old.id }]);
  expect(good(await latest.list())).toHaveLength(2);

  expect(good(await latest.discard([kept.id, old.id, 'nobody']))).toEqual([old.id]);
  expect(good(await latest.list())).toMatchObject([{ id: kept.id }]);
  expect(await latest.load(old.id)).toMatchObject({ ok: false, problem: { code: 'not-here' } });
});

test('of more than a hundred deleted orders the oldest may go', async () => {
  const store = await tab();
  const ids: string[] = [];
  for (let i = 0; i < 102; i++) {
    const { id } = good(await store.create({ file: exampleFile(`No. ${i}`) }));
    await store.delete(id);
    ids.push(id);
  }
  const may = good(await store.discardable()).map(({ id }) => id);
  expect(new Set(may)).toEqual(new Set(ids.slice(0, 2)));
});

test('an order that is not here is said so', async () => {
  const store = await tab();
  const notHere = { ok: false, problem: { code: 'not-here' } };
  expect(await store.load('x')).toMatchObject(notHere);
  expect(await store.save('x', 1, { file: exampleFile() })).toMatchObject(notHere);
  expect(await store.copy('x')).toMatchObject(notHere);
  expect(await store.archive('x', true)).toMatchObject(notHere);
  expect(await store.delete('x')).toMatchObject(notHere);
  expect(await store.raw('x')).toMatchObject(notHere);
});
