import fc from 'fast-check';
import { strToU8, Zip, ZipDeflate } from 'fflate';
import { beforeEach, expect, test, vi } from 'vitest';
import { exampleFile, good, spoken, tab } from '../../tests/store.ts';
import { type Files, forged, handmade, textOf, unzipped, zipped } from '../../tests/zips.ts';
import type { Answer, BackupPlan, Store } from './index.ts';

let store: Store;
let bytes: Uint8Array;
let files: Files;
let part: string;

beforeEach(async () => {
  store = await tab();
  const { id } = good(await store.create({ file: exampleFile('First') }));
  good(await store.create({ file: exampleFile('Second') }));
  bytes = good(await store.makeBackup()).bytes;
  files = unzipped(bytes);
  part = `orders/${id}.json`;
});

/** The sentence with which a backup is refused; the book must be as it was. */
async function refusal(answer: Promise<Answer<BackupPlan>>): Promise<string> {
  const before = good(await store.list());
  const read = await answer;
  if (read.ok) throw new Error('was taken');
  expect(read.problem.code).toBe('bad-backup');
  expect(good(await store.list())).toEqual(before);
  return spoken(read.problem.say);
}

test('a part that was changed is named, and the rest is offered when asked for', async () => {
  const changed = zipped({ ...files, [part]: strToU8(textOf(files, part).replace('First', 'Worst')) });
  const sentence = await refusal(store.readBackup(changed));
  expect(sentence).toContain(part);
  expect(sentence).toContain('damaged');

  const plan = good(await store.readBackup(changed, { leaveOutDamaged: true }));
  expect(plan.entries).toMatchObject([{ theirs: { title: 'Second' }, standing: 'same' }]);
  expect(plan.unreadable).toMatchObject([{ part }]);
});

test('a part that is missing is named', async () => {
  const { [part]: _gone, ...rest } = files;
  expect(await refusal(store.readBackup(zipped(rest)))).toMatch(new RegExp(`${part}.*missing`));
});

test('a part that nobody listed is named', async () => {
  const more = zipped({ ...files, 'orders/more.json': strToU8('{}') });
  expect(await refusal(store.readBackup(more))).toContain('orders/more.json');
});

test.each([
  '../../etc/passwd',
  '__proto__',
  'orders/a/b.json',
  'orders/.json',
  'orders/__proto__.json',
  'index.html',
])('a part that no backup has (%s) refuses it', async (name) => {
  const odd = streamed([...Object.entries(files), [name, strToU8('{}')]]);
  expect(await refusal(store.readBackup(odd))).toContain(name);
});

test('a part that stands twice refuses it', async () => {
  const twice = streamed([...Object.entries(files), [part, strToU8('{}')]]);
  expect(await refusal(store.readBackup(twice))).toMatch(new RegExp(`${part}.*twice`));
});

test.each<[what: string, manifest: string, words: RegExp]>([
  ['no JSON', '{"frockwrightBackup":', /list of parts.*damaged/],
  ['nothing in it', '{}', /list of parts.*damaged/],
  ['a newer form', '{"frockwrightBackup":2,"packets":[]}', /newer version/],
  ['wrong types', '{"frockwrightBackup":1,"madeAt":"now","counts":3,"parts":{}}', /list of parts.*damaged/],
])('a manifest with %s refuses it', async (_what, manifest, words) => {
  expect(await refusal(store.readBackup(zipped({ ...files, 'manifest.json': strToU8(manifest) })))).toMatch(
    words,
  );
});

test('a count that does not agree refuses it', async () => {
  const manifest = { ...JSON.parse(textOf(files, 'manifest.json')), counts: { orders: 3 } };
  const odd = zipped({ ...files, 'manifest.json': strToU8(JSON.stringify(manifest)) });
  expect(await refusal(store.readBackup(odd))).toMatch(/as many orders/);
});

test.each<[what: string, content: () => Uint8Array, words: RegExp]>([
  ['an empty file', () => new Uint8Array(), /not a backup/],
  ['a picture', () => new Uint8Array([0x89, 0x50, 0x4e, 0x47, 13, 10, 26, 10]), /not a backup/],
  ['the start of a zip', () => new Uint8Array([0x50, 0x4b, 3, 4, 20, 0]), /not a backup/],
  [
    'a zip without a manifest',
    () => zipped({ [part]: files[part] ?? new Uint8Array() }),
    /no list of its parts/,
  ],
  ['a file larger than any backup', () => new Uint8Array(50_000_001), /51 MB/],
])('%s is no backup', async (_what, content, words) => {
  expect(await refusal(store.readBackup(content()))).toMatch(words);
});

test('a backup cut off anywhere, or with a byte changed anywhere, is refused or is still the same backup', async () => {
  const whole = JSON.stringify(good(await store.readBackup(bytes)));
  let refused = 0;
  const check = async (odd: Uint8Array) => {
    const read = await store.readBackup(odd);
    if (read.ok) expect(JSON.stringify(read.value)).toBe(whole);
    else {
      refused++;
      expect(spoken(read.problem.say)).not.toBe('');
    }
  };
  await fc.assert(
    fc.asyncProperty(fc.nat(bytes.length - 1), fc.integer({ min: 1, max: 255 }), async (at, flip) => {
      await check(bytes.slice(0, at));
      const changed = bytes.slice();
      changed[at] = (changed[at] ?? 0) ^ flip;
      await check(changed);
    }),
    { numRuns: 150, seed: 20270424 },
  );
  expect(refused).toBeGreaterThan(150);
});

/** Zeros pack to a thousandth of their size. */
const zeros = (size: number): Uint8Array => new Uint8Array(size);

test('a part that unpacks to more than an order can hold is refused by the size that it tells', async () => {
  const bomb = handmade([{ name: part, content: zeros(8_000_001) }]);
  expect(bomb.length).toBeLessThan(10_000);
  expect(await refusal(store.readBackup(bomb))).toMatch(new RegExp(`${part}.*unpack to more`));
});

test('one that tells a false size, or none, is given up while it unpacks', async () => {
  const lying = handmade([{ name: part, content: zeros(300_000_000), told: 100 }]);
  expect(lying.length).toBeLessThan(330_000);
  const looked = vi.spyOn(lying, 'subarray');
  expect(await refusal(store.readBackup(lying))).toMatch(new RegExp(`${part}.*unpack to more`));
  // Of the nineteen pieces of the file only the first was unpacked.
  expect(looked).toHaveBeenCalledTimes(1);

  const untold = streamed([[part, zeros(9_000_000)]]);
  expect(await refusal(store.readBackup(untold))).toMatch(new RegExp(`${part}.*unpack to more`));
});

test('many parts of a lawful size that unpack to gigabytes together are given up', async () => {
  const content = zeros(7_900_000);
  const many = handmade(Array.from({ length: 130 }, (_, i) => ({ name: `orders/o${i}.json`, content })));
  expect(many.length).toBeLessThan(1_500_000);
  expect(await refusal(store.readBackup(many))).toMatch(/This file would unpack to more/);
});

test('more parts than a backup can have are refused', async () => {
  const content = new Uint8Array(1);
  const many = handmade(Array.from({ length: 20_001 }, (_, i) => ({ name: `orders/o${i}.json`, content })));
  expect(await refusal(store.readBackup(many))).toMatch(/more parts/);
});

/** A zip whose local headers tell no sizes, as one that is written while it is sent. */
function streamed(parts: readonly (readonly [string, Uint8Array])[]): Uint8Array {
  const chunks: Uint8Array[] = [];
  const zip = new Zip((error, chunk) => {
    if (error !== null) throw error;
    chunks.push(chunk);
  });
  for (const [name, content] of parts) {
    const file = new ZipDeflate(name);
    zip.add(file);
    file.push(content, true);
  }
  zip.end();
  return Buffer.concat(chunks);
}

test('a zip written as a stream is read like any other', async () => {
  expect(good(await store.readBackup(streamed(Object.entries(files)))).entries).toHaveLength(2);
});

const change = (path: string, value: unknown) => {
  const record = JSON.parse(textOf(files, part));
  const fields = path.split('.');
  const last = fields.pop() ?? '';
  const inner = fields.reduce((at, field) => at[field], record);
  inner[last] = value;
  return JSON.stringify(record);
};

test.each<[what: string, content: () => string]>([
  ['no JSON', () => '{'],
  ['nesting without end', () => '['.repeat(1_000_000)],
  ['a list', () => '[]'],
  ['null', () => 'null'],
  ['children of another kind', () => change('file.children', 'Amina')],
  ['a million pieces', () => change('file.children', Array(1_000).fill({ name: 'x' }))],
  ['a number for a name', () => change('file.title', 7)],
  ['a later form of order', () => change('file.frockwright', 2)],
  [
    'a field of the language',
    () => textOf(files, part).replace('{', '{"file":{"__proto__":{"title":"x"}},"spare":{'),
  ],
  ['a path for an origin', () => change('origin', { kind: 'copy', of: '../../x' })],
  ['a revision beyond counting', () => change('versions', { a: 1e308 })],
  ['a day that is none', () => change('changedAt', '<b>now</b>')],
  ['an endless title', () => change('file.title', 'x'.repeat(2_500_000))],
])('an order with %s is told as unreadable, the rest is taken', async (_what, content) => {
  const plan = good(await store.readBackup(forged(files, part, content())));
  expect(plan.unreadable.map((bad) => bad.part)).toEqual([part]);
  for (const { why } of plan.unreadable) expect(spoken(why)).not.toBe('');
  expect(plan.entries).toMatchObject([{ theirs: { title: 'Second' } }]);
});

test('scripts in names are names', async () => {
  const title = '<script>alert(1)</script>"><img src=x onerror=alert(1)>';
  const other = await tab();
  const plan = good(await other.readBackup(forged(files, part, change('file.title', title))));
  good(await other.restore(plan, { orders: {}, takeSettings: false }));
  expect(good(await other.list()).map((entry) => entry.title)).toContain(title);
});

test('settings of another kind are passed over', async () => {
  const odd = forged(files, 'settings.json', '{"units":"ell","theme":["dark"],"__proto__":{"units":"cm"}}');
  expect(good(await store.readBackup(odd)).settings).toBeNull();
});
