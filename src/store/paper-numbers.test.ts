import { expect, test } from 'vitest';
import { bookName, exampleFile, good, tab, withDatabase } from '../../tests/store.ts';
import type { OrderFile } from '../engine/order/index.ts';

/** The example order with papers of these numbers. */
const withPapers = (...numbers: readonly string[]): OrderFile => ({
  ...exampleFile(),
  pay: {
    received: [{ day: '2027-04-30', amount: '10' }],
    papers: numbers.map((number) => ({
      kind: 'invoice',
      number,
      day: '2027-04-30',
      currency: 'GBP',
      lines: [],
      total: '10.00',
      received: '0.00',
      due: '10.00',
    })),
  },
});

const seriesIn = (number: string): string => number.slice(2, 6);

test('each kind is counted up by itself', async () => {
  const store = await tab();
  const numbers = [];
  for (const kind of ['invoice', 'invoice', 'quote', 'receipt', 'invoice'] as const)
    numbers.push(good(await store.takeNumber(kind)));
  const series = seriesIn(numbers[0] ?? '');
  expect(series).toMatch(/^[A-Z]{4}$/);
  expect(numbers).toEqual(
    ['I', 'I', 'Q', 'R', 'I'].map((kind, i) => `${kind}-${series}-000${[1, 2, 1, 1, 3][i]}`),
  );
});

test('two tabs that ask at once never get the same', async () => {
  const name = bookName();
  const [one, other] = [await tab({ name }), await tab({ name })];
  const asked = Array.from({ length: 40 }, (_, i) => (i % 2 === 0 ? one : other).takeNumber('invoice'));
  const numbers = (await Promise.all(asked)).map(good);
  expect(new Set(numbers).size).toBe(40);
  expect(new Set(numbers.map(seriesIn)).size).toBe(1);
});

test('a backup that is brought back turns no number back', async () => {
  const store = await tab();
  await store.takeNumber('invoice');
  good(await store.create({ file: exampleFile() }));
  const { bytes } = good(await store.makeBackup());
  const later = [good(await store.takeNumber('invoice')), good(await store.takeNumber('invoice'))];
  const plan = good(await store.readBackup(bytes));
  good(await store.restore(plan, { orders: {}, takeSettings: true }));
  const next = good(await store.takeNumber('invoice'));
  expect(later).not.toContain(next);
  expect(next.endsWith('-0004')).toBe(true);
});

test('the same book on another device counts in another series', async () => {
  const store = await tab();
  const given = good(await store.takeNumber('invoice'));
  good(await store.create({ file: withPapers(given) }));
  const { bytes } = good(await store.makeBackup());
  // That other device would make the very same series, were it not in the book.
  let made = 0;
  const letters = seriesIn(given);
  const codes = 'BCDFGHJKLMNPQRST';
  const sameId = [...letters].map((letter) => String.fromCodePoint(0x60 + codes.indexOf(letter))).join('');
  const newId = () => (made++ === 1 ? sameId : `id${made}zz`);
  const other = await tab({ newId });
  const plan = good(await other.readBackup(bytes));
  good(await other.restore(plan, { orders: {}, takeSettings: false }));
  const next = good(await other.takeNumber('invoice'));
  expect(seriesIn(next)).not.toBe(letters);
});

test('numbers of this device that its note has forgotten are counted past', async () => {
  const name = bookName();
  const store = await tab({ name });
  const series = seriesIn(good(await store.takeNumber('invoice')));
  good(await store.create({ file: withPapers(`I-${series}-0050`) }));
  const { bytes } = good(await store.makeBackup());
  const fresh = await tab();
  good(await fresh.takeNumber('quote'));
  // The note of the first device comes back from an old disk, without the orders.
  const note = await withDatabase<unknown>(name, (db) =>
    db.transaction('notes').objectStore('notes').get('numbers'),
  );
  const second = bookName();
  const again = await tab({ name: second });
  await withDatabase(second, (db) => {
    const tx = db.transaction('notes', 'readwrite');
    tx.objectStore('notes').put(note, 'numbers');
    return tx;
  });
  const plan = good(await again.readBackup(bytes));
  good(await again.restore(plan, { orders: {}, takeSettings: false }));
  expect(good(await again.takeNumber('invoice'))).toBe(`I-${series}-0051`);
});

test('a spoiled note begins another series', async () => {
  const name = bookName();
  const store = await tab({ name });
  const before = seriesIn(good(await store.takeNumber('invoice')));
  good(await store.create({ file: withPapers(`I-${before}-0001`) }));
  await withDatabase(name, (db) => {
    const tx = db.transaction('notes', 'readwrite');
    tx.objectStore('notes').put({ series: 'x', last: 3 }, 'numbers');
    return tx;
  });
  expect(seriesIn(good(await store.takeNumber('invoice')))).not.toBe(before);
});

test('a copied order bears no papers and no payments', async () => {
  const store = await tab();
  const { id } = good(await store.create({ file: withPapers('I-BCDF-0001') }));
  const copy = good(await store.copy(id));
  expect(copy.file.pay).toEqual({});
  expect(good(await store.load(id)).file.pay?.papers).toHaveLength(1);
});

test('what the maker sets is kept part by part, and what has no form is passed over', async () => {
  const name = bookName();
  const [one, other] = [await tab({ name }), await tab({ name })];
  const prices = [{ what: 'satin', price: '9.50', per: 'yd' as const }];
  good(await one.saveSettings({ prices }));
  good(await other.saveSettings({ rates: { perHour: '14' } }));
  expect(good(await one.settings())).toMatchObject({ prices, rates: { perHour: '14' }, stash: [] });
  await withDatabase(name, (db) => {
    const tx = db.transaction('settings', 'readwrite');
    tx.objectStore('settings').put([{ what: 7 }], 'prices');
    return tx;
  });
  expect(good(await one.settings())).toMatchObject({ prices: [], rates: { perHour: '14' } });
});
