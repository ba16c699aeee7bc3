import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { createPaperBench } from '../../src/app/work/paper-bench.ts';
import {
  EVERYTHING,
  type PaperAnswer,
  type PaperLook,
  type PaperStep,
} from '../../src/app/work/paper-wish.ts';
import { makePack, type OrderFile, readOrderFile } from '../../src/engine/order/index.ts';
import { createTextMeasure, writePdf } from '../../src/pdf/index.ts';
import { loadFonts } from '../../src/pdf/load-fonts.ts';
import { changedExample, exampleOrder, type RawOrder } from '../fixtures/example-order.ts';
import { unzipped } from '../zips.ts';

const TODAY = '2027-03-01';
const fonts = await loadFonts();
const bench = createPaperBench(fonts);

function fileOf(change: (order: RawOrder) => void = () => {}): OrderFile {
  const read = readOrderFile(JSON.parse(changedExample(change)));
  if (!read.ok) throw new Error('The example is an order.');
  return read.order;
}

const two = (order: RawOrder): void => {
  order.children = order.children.slice(0, 2);
  order.paper = { formats: ['A4'] };
};
/** No head passes the neck without the zip. */
const withoutZip = (order: RawOrder): void => {
  two(order);
  order.dress = order.dress.filter(({ step }: { step: string }) => step !== 'back-zip');
};
const grounds = { file: fileOf(two), today: TODAY };

function answered<T>(answer: PaperAnswer<T>): T {
  if (!answer.ok) throw new Error(answer.code);
  return answer.value;
}

const bytesOf = async (blob: Blob): Promise<Uint8Array> => new Uint8Array(await blob.arrayBuffer());

/** The pack as the command line makes it. */
const packed = makePack(exampleOrder(two), {
  today: TODAY,
  measure: createTextMeasure(fonts),
  evenSo: false,
});
if (!packed.ok) throw new Error(packed.code);
const { documents, day } = packed.pack;

describe('the papers of one child', () => {
  it('are those of the pack, page for page, and the pattern lies on top', () => {
    const { papers, path, pages } = answered(bench.look(grounds, 0, ''));
    expect(path).toBe('pattern-A4.pdf');
    const own = documents.filter((document) => document.path.startsWith('Amina/'));
    expect(papers.map((paper) => paper.path).filter((p) => p !== 'pieces/')).toEqual(
      own.filter(({ kind }) => kind === 'pages').map((document) => document.path.slice('Amina/'.length)),
    );
    const pattern = own.find((document) => document.path === 'Amina/pattern-A4.pdf');
    expect(pattern?.kind === 'pages' && pattern.pages).toEqual(pages);
    expect(papers.find((paper) => paper.path === path)?.count).toBe(pages.length);
    const drawings = own.filter(({ kind }) => kind === 'svg');
    expect(papers.find((paper) => paper.path === 'pieces/')?.count).toBe(drawings.length);
  });

  it('reckon her minutes from what she has timed in other orders', () => {
    const minutesOf = (look: PaperAnswer<PaperLook>): string =>
      JSON.stringify(answered(look).pages).match(/(\d+ h \d+) min in all/)?.[1] ?? '';
    const own = minutesOf(bench.look({ ...grounds, file: fileOf(two) }, 0, 'sewing.pdf'));
    const timed = (['waist', 'hem', 'side'] as const).map((kind) => ({ kind, minutes: 500, estimate: 5 }));
    const slow = minutesOf(bench.look({ ...grounds, timed }, 0, 'sewing.pdf'));
    expect(own).toMatch(/^\d+ h \d+$/);
    expect(Number.parseInt(slow, 10)).toBeGreaterThan(Number.parseInt(own, 10) + 5);
  });

  it('are the same bytes as those of the command line', async () => {
    const steps: PaperStep[] = [];
    const wish = { of: 1, path: 'checks.pdf', evenSo: false };
    const made = answered(await bench.make(grounds, wish, (step) => steps.push(step)));
    expect(made.fileName).toBe('Tọ́lá - checks.pdf');
    const document = documents.find(({ path }) => path === 'Tọ́lá/checks.pdf');
    if (document?.kind !== 'pages') throw new Error('The pack has the checks.');
    const creationDate = new Date(`${day}T00:00:00Z`);
    const bytes = await writePdf(document.pages, { title: document.title, creationDate, fonts });
    expect(Buffer.compare(await bytesOf(made.content), bytes)).toBe(0);
    expect(made.pages).toBe(document.pages.length);
    expect(steps.map(({ done }) => done)).toEqual(document.pages.map((_, i) => i + 1));
  });

  it('the measuring sheet is that of the pack, and is made also where something must not be cut', async () => {
    const wish = { of: 0, path: 'measuring-sheet.pdf', evenSo: false };
    const made = answered(await bench.make(grounds, wish, () => {}));
    expect(made.fileName).toBe('Amina - measuring-sheet.pdf');
    const document = documents.find(({ path }) => path === 'Amina/measuring-sheet.pdf');
    if (document?.kind !== 'pages') throw new Error('The pack has the measuring sheet.');
    const creationDate = new Date(`${day}T00:00:00Z`);
    const bytes = await writePdf(document.pages, { title: document.title, creationDate, fonts });
    expect(Buffer.compare(await bytesOf(made.content), bytes)).toBe(0);
    const barred = { file: fileOf(withoutZip), today: TODAY };
    expect(answered(await bench.make(barred, wish, () => {})).pages).toBe(document.pages.length);
  });

  it('can be made while another child cannot be read', () => {
    const file = fileOf((order) => {
      two(order);
      order.children[1].measures.height = 'tall';
    });
    expect(answered(bench.look({ file, today: TODAY }, 0, '')).path).toBe('pattern-A4.pdf');
    const other = bench.look({ file, today: TODAY }, 1, '');
    expect(other).toMatchObject({ ok: false, code: 'problems' });
  });

  it('are gone when the child or the paper is gone', async () => {
    expect(bench.look(grounds, 7, '')).toEqual({ ok: false, code: 'gone' });
    const wish = { of: 0, path: 'pattern-A0.pdf', evenSo: false };
    expect(await bench.make(grounds, wish, () => {})).toEqual({ ok: false, code: 'gone' });
  });

  it('names the letters that the fonts lack', async () => {
    const file = fileOf((order) => {
      two(order);
      order.children[0].name = 'Aya 花';
    });
    const wish = { of: 0, path: 'checks.pdf', evenSo: false };
    const made = answered(await bench.make({ file, today: TODAY }, wish, () => {}));
    expect(made.missing.flatMap(({ letters }) => letters)).toContain('花');
  });

  it('are not made without a word where something must not be cut, and are marked when they are', async () => {
    const barred = { file: fileOf(withoutZip), today: TODAY };
    const wish = { of: 0, path: 'the-dress.pdf', evenSo: false };
    expect(await bench.make(barred, wish, () => {})).toEqual({ ok: false, code: 'stops', names: ['Amina'] });
    const pattern = answered(bench.look(barred, 0, ''));
    expect(JSON.stringify(pattern.pages)).toMatch(/DO NOT CUT|do not cut/i);
    expect(answered(await bench.make(barred, { ...wish, evenSo: true }, () => {})).pages).toBeGreaterThan(0);
  });
});

describe('the papers of the party', () => {
  it('are the lists of the pack', () => {
    const { papers, pages } = answered(bench.look(grounds, 'party', 'cut-list.pdf'));
    const ofParty = documents.filter(({ kind, path }) => kind === 'pages' && !path.includes('/'));
    expect(papers.map(({ path }) => path)).toEqual(ofParty.map(({ path }) => path));
    expect(papers.map(({ path }) => path)).toContain('checks.pdf');
    const list = documents.find(({ path }) => path === 'cut-list.pdf');
    expect(list?.kind === 'pages' && list.pages).toEqual(pages);
  });

  it('are refused with what is wrong', () => {
    const file = fileOf((order) => {
      two(order);
      order.children[1].measures.height = '3';
    });
    const refused = bench.look({ file, today: TODAY }, 'party', '');
    expect(refused.ok).toBe(false);
    if (refused.ok || refused.code !== 'problems') throw new Error('It is a problem.');
    expect(refused.problems[0]?.child).toBe('Tọ́lá');
  });

  it('are all in one zip, which other programs read, with the files of the pack', async () => {
    const steps: PaperStep[] = [];
    const wish = { of: 0, path: EVERYTHING, evenSo: false };
    const made = answered(await bench.make(grounds, wish, (step) => steps.push(step)));
    const bytes = await bytesOf(made.content);
    const files = unzipped(bytes);
    expect(Object.keys(files)).toEqual(documents.map(({ path }) => path));
    for (const document of documents) {
      if (document.kind !== 'pages') {
        expect(new TextDecoder().decode(files[document.path])).toBe(document.text);
      } else expect(new TextDecoder().decode(files[document.path]?.slice(0, 5))).toBe('%PDF-');
    }
    const pages = documents.flatMap((document) => (document.kind === 'pages' ? document.pages : []));
    expect(made.pages).toBe(pages.length);
    expect(steps.map(({ what }) => what)).toEqual(['Amina', 'Tọ́lá', 'Flower girls for a garden wedding']);
    // Python's zipfile, as a reader from outside: names in UTF-8, every checksum right, the day of the pack.
    const folder = mkdtempSync(join(tmpdir(), 'frockwright-zip-'));
    try {
      writeFileSync(join(folder, 'pack.zip'), bytes);
      const program =
        'import sys,zipfile; z=zipfile.ZipFile(sys.argv[1]); print(z.testzip(), len(z.namelist()), "Tọ́lá/checks.pdf" in z.namelist(), z.infolist()[0].date_time[:3])';
      const said = execFileSync('python3', ['-c', program, join(folder, 'pack.zip')], { encoding: 'utf8' });
      expect(said.trim()).toBe(`None ${documents.length} True (2027, 4, 24)`);
    } finally {
      rmSync(folder, { recursive: true });
    }
  });

  it('are not made in one zip where something must not be cut, unless she says so', async () => {
    const barred = { file: fileOf(withoutZip), today: TODAY };
    const wish = { of: 0, path: EVERYTHING, evenSo: false };
    expect(await bench.make(barred, wish, () => {})).toMatchObject({ ok: false, code: 'stops' });
  });
});
