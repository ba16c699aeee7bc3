import * as v from 'valibot';
import { type PaperKind, type PaperNumber, paperNumbersIn, paperNumberText } from '../engine/order/index.ts';
import { readAll } from './book.ts';
import { answer, type Desk, type WriteTx, write } from './database.ts';
import { type OrderRecord, readRecord } from './record.ts';
import type { Answer } from './types.ts';

/**
 * The numbers of quotes, invoices and receipts that this device has given. They lie among the notes, which no backup
 * holds: a backup that is brought back can't turn them back, and on another device it finds another series.
 */
const NOTE = 'numbers';
const count = v.pipe(v.number(), v.integer(), v.minValue(0));
const NUMBERS = v.object({
  series: v.pipe(v.string(), v.regex(/^[A-Z]{4}$/)),
  last: v.object({ quote: count, invoice: count, receipt: count }),
});
type Numbers = v.InferOutput<typeof NUMBERS>;

/** The next number of its kind: read, counted on and written in one transaction, so that two tabs never get the same. */
export function takeNumber(desk: Desk, kind: PaperKind): Promise<Answer<string>> {
  return answer(async () => {
    const known = v.is(NUMBERS, await desk.db.get('notes', NOTE));
    const fresh = known ? null : await freshSeries(desk);
    const value = await write(desk.db, ['notes'], async (tx) => {
      const numbers = (await numbersIn(tx)) ?? fresh;
      if (numbers === null) throw new Error('A note that was there does not go.');
      const { series, last } = numbers;
      const next: Numbers = { series, last: { ...last, [kind]: last[kind] + 1 } };
      await tx.objectStore('notes').put(next, NOTE);
      return paperNumberText({ kind, series, count: next.last[kind] });
    });
    return { ok: true, value };
  });
}

async function numbersIn(tx: WriteTx): Promise<Numbers | null> {
  const read = v.safeParse(NUMBERS, await tx.objectStore('notes').get(NOTE));
  return read.success ? read.output : null;
}

/** A series of its own, for the first number of a device, and where the note of it is spoiled. */
async function freshSeries({ db, newId }: Desk): Promise<Numbers> {
  const given = new Set(
    (await readAll(db)).flatMap(([, raw, fetched]) => {
      const read = fetched ? readRecord(raw) : null;
      return read?.ok ? paperNumbersIn(read.record.file).map(({ series }) => series) : [];
    }),
  );
  let series = seriesOf(newId());
  for (let tries = 0; given.has(series) && tries < MOST_TRIES; tries++) series = seriesOf(newId());
  return { series, last: { quote: 0, invoice: 0, receipt: 0 } };
}

/** Of 65,536 series one is free long before. */
const MOST_TRIES = 1000;

/** Letters that spell no word. */
const LETTERS = 'BCDFGHJKLMNPQRST';

const seriesOf = (id: string): string =>
  [...`${id}${'0'.repeat(4)}`]
    .slice(0, 4)
    .map((letter) => LETTERS[(letter.codePointAt(0) ?? 0) % LETTERS.length])
    .join('');

/** Orders that come from a backup may bear numbers of this device that its note has forgotten: it counts on from them. */
export async function countPast(tx: WriteTx, records: readonly OrderRecord[]): Promise<void> {
  const numbers = await numbersIn(tx);
  if (numbers === null) return;
  const own = records
    .flatMap(({ file }) => paperNumbersIn(file))
    .filter(({ series }) => series === numbers.series);
  if (own.length === 0) return;
  const most = (kind: PaperKind): number =>
    own.reduce(
      (last, number: PaperNumber) => (number.kind === kind ? Math.max(last, number.count) : last),
      numbers.last[kind],
    );
  const last = { quote: most('quote'), invoice: most('invoice'), receipt: most('receipt') };
  await tx.objectStore('notes').put({ ...numbers, last }, NOTE);
}
