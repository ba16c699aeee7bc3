import { describe, expect, test } from 'vitest';
import { linePath } from '../../src/engine/geometry/index.ts';
import {
  type Mark,
  PAPER_FORMATS,
  type Page,
  type PaperName,
  type PrinterError,
  paperOf,
  patternSheets,
} from '../../src/engine/sheet/index.ts';
import { en } from '../../src/engine/words/en/index.ts';
import { createTextMeasure, missingLetters, writePdf } from '../../src/pdf/index.ts';
import { loadFonts } from '../../src/pdf/load-fonts.ts';
import { dressOf } from '../fixtures/cut-pieces.ts';
import { judgedBy, runOn } from './judges.ts';
import { boxOf, type ReadPage, readPdf } from './pdf-reading.ts';

const fonts = await loadFonts();
const measure = createTextMeasure(fonts);
const settings = { title: 'Sheets', creationDate: new Date('2026-03-14T00:00:00Z'), fonts };

const sheets = (name: PaperName, units: 'in' | 'cm' = 'cm', printer: PrinterError | null = null) =>
  patternSheets({
    pieces: dressOf(),
    child: 'Adaeze',
    size: '4 years',
    date: '14 March 2026',
    paper: paperOf(name),
    printer,
    rectangles: 'full',
    ruler: null,
    ink: { units, measure },
  });

const pageWith = (marks: readonly Mark[], width = 100, height = 100): Page => ({
  name: 'test',
  width,
  height,
  marks,
});

const textPage = (...texts: readonly string[]): Page =>
  pageWith(
    texts.map((text, i) => ({
      kind: 'text',
      text,
      at: { x: 5, y: 10 + i * 8 },
      size: 5,
      weight: i % 2 === 0 ? 'regular' : 'bold',
      align: 'left',
      turn: 0,
    })),
    200,
    200,
  );

/** The largest grey field of a page: the 100 mm test square. */
function greySquare(page: ReadPage) {
  const fills = page.paths
    .filter((path) => path.painted === 'fill' && path.runs.length > 0)
    .map((path) => boxOf(path.runs.flat()));
  const area = (box: (typeof fills)[number]): number => (box.maxX - box.minX) * (box.maxY - box.minY);
  return fills.reduce((a, b) => (area(b) > area(a) ? b : a));
}

describe('page sizes, read by PDF.js', () => {
  // ISO 216: A4 210 x 297, A3 297 x 420, A0 841 x 1189 mm. ANSI/ASME Y14.1: Letter 8 1/2 x 11 in.
  const published: [PaperName, number, number][] = [
    ['a4', 210, 297],
    ['a3', 297, 420],
    ['a0', 841, 1189],
    ['letter', 215.9, 279.4],
  ];
  test.each(published)('%s', async (name, width, height) => {
    const pages = await readPdf(await writePdf(sheets(name).pages, settings));
    for (const page of pages) {
      expect(page.width).toBeCloseTo(width, 4);
      expect(page.height).toBeCloseTo(height, 4);
    }
  });

  test('a 36 in roll is 914.4 mm wide and as long as the pieces need', async () => {
    const [page] = await readPdf(await writePdf(sheets('roll-36').pages, settings));
    expect(page?.width).toBeCloseTo(914.4, 4);
    expect(page?.height).toBeGreaterThan(500);
    expect(page?.height).toBeLessThanOrEqual(5000);
  });

  test('a page longer than 5.08 m has a larger user unit and keeps its true size', async () => {
    const page = pageWith(
      [{ kind: 'stroke', path: linePath({ x: 10, y: 10 }, { x: 10, y: 5990 }), line: 'cutting' }],
      914.4,
      6000,
    );
    const [read] = await readPdf(await writePdf([page], settings));
    expect(read?.width).toBeCloseTo(914.4, 3);
    expect(read?.height).toBeCloseTo(6000, 3);
    const box = boxOf(read?.paths[0]?.runs.flat() ?? []);
    expect(box.maxY - box.minY).toBeCloseTo(5980, 2);
    expect(read?.paths[0]?.lineWidth).toBeCloseTo(0.6, 4);
  });
});

describe('the test square, read by PDF.js', () => {
  test.each(Object.keys(PAPER_FORMATS) as PaperName[])('is 100 mm and 4 in on %s', async (name) => {
    const [page] = await readPdf(await writePdf(sheets(name).pages, settings));
    if (page === undefined) throw new Error('There is a page.');
    const grey = greySquare(page);
    expect(grey.maxX - grey.minX).toBeCloseTo(100, 4);
    expect(grey.maxY - grey.minY).toBeCloseTo(100, 4);
    const strokes = page.paths
      .filter((path) => path.painted === 'stroke')
      .map((path) => boxOf(path.runs.flat()));
    const outer = strokes.find(
      (box) => box.minX === grey.minX && box.minY === grey.minY && box.maxX - box.minX > 101,
    );
    expect((outer?.maxX ?? 0) - grey.minX).toBeCloseTo(101.6, 4);
    expect((outer?.maxY ?? 0) - grey.minY).toBeCloseTo(101.6, 4);
  });

  test('comes out at 100 mm again from a printer that made it 98 mm across and 101 mm down', async () => {
    const printer = { across: 98, down: 101 };
    const [page] = await readPdf(await writePdf(sheets('a4', 'cm', printer).pages, settings));
    if (page === undefined) throw new Error('There is a page.');
    const grey = greySquare(page);
    expect(((grey.maxX - grey.minX) * printer.across) / 100).toBeCloseTo(100, 4);
    expect(((grey.maxY - grey.minY) * printer.down) / 100).toBeCloseTo(100, 4);
    expect(page.text).toContain('98 mm across and 101 mm down');
    expect(page.width).toBeCloseTo(210, 4);
  });
});

describe('the check lines, read by PDF.js', () => {
  test.each(Object.keys(PAPER_FORMATS) as PaperName[])(
    'are at least 150 mm and as long as they say on %s',
    async (name) => {
      for (const units of ['in', 'cm'] as const) {
        const [page] = await readPdf(await writePdf(sheets(name, units).pages, settings));
        const said = [...(page?.text ?? '').matchAll(/check line: exactly .*?\(?([\d.]+) (mm|cm)\)?$/gm)].map(
          ([, n, unit]) => Number(n) * (unit === 'cm' ? 10 : 1),
        );
        expect(said.length).toBeGreaterThan(0);
        const lengths = (page?.paths ?? [])
          .filter((path) => path.painted === 'stroke' && !path.dashed)
          .map((path) => boxOf(path.runs.flat()))
          .map((box) => Math.max(box.maxX - box.minX, box.maxY - box.minY));
        for (const length of said) {
          expect(length).toBeGreaterThanOrEqual(150);
          expect(lengths.some((drawn) => Math.abs(drawn - length) < 1e-3)).toBe(true);
        }
      }
    },
  );
});

describe('text', () => {
  // Letters of Yoruba, Igbo, Ewe, Hausa, Fula, Akan and the Naira, Cedi, Euro and Pound signs; names are invented.
  const names = [
    'Ọ̀ṣun Ẹ̀bùn Ṣọlá àáèéẹ́ìíòóọ́ùú',
    'Ụzọ Ịfụnanya Ṅgọ ÑŃ',
    'Ɖɛŋɔ Ƒafa Ɣevi Ʋuvi Ɔkpe ɖɛƒɣŋɔʋ',
    'Ɓala Ɗanladi Ƙauna ɓɗƙƴ',
    'Ama Ɛsi Kɔkɔ',
    '₦ ₵ € £ 20 1/2 in ½ ¼ ⅛ ⅝ × − …',
    'Åse Łucja Øyvind Žofia Çağla Þórunn Nguyễn ß',
  ];

  test('names and currency signs of West Africa and Europe are embedded and read back', async () => {
    expect(missingLetters([textPage(...names)], fonts)).toEqual([]);
    const [page] = await readPdf(await writePdf([textPage(...names)], settings));
    for (const name of names) expect(page?.text).toContain(name.normalize('NFC'));
  });

  test('letters typed apart from their marks are composed', async () => {
    const [page] = await readPdf(await writePdf([textPage('S\u0323o\u0323la\u0301')], settings));
    expect(page?.text).toContain('\u1e62\u1ecdl\u00e1');
  });

  test('letters that the fonts lack are named and stood in for', async () => {
    const page = textPage('Ada አበበ', 'Plain', '✂ →');
    expect(missingLetters([page], fonts)).toEqual([
      { text: 'Ada አበበ', letters: ['አ', 'በ'] },
      { text: '✂ →', letters: ['✂', '→'] },
    ]);
    const [read] = await readPdf(await writePdf([page], settings));
    expect(read?.text).toContain('Ada ???');
  });

  test('every sentence of the catalogue has all its letters in the fonts', () => {
    expect(missingLetters([textPage(...Object.values(en))], fonts)).toEqual([]);
  });

  test('signs that PDF strings use themselves pass through', async () => {
    const hostile = '(a) \\b <c> [d] %e /f';
    const [page] = await readPdf(await writePdf([textPage(hostile)], { ...settings, title: hostile }));
    expect(page?.text).toContain(hostile);
  });

  test('a width that was measured is the width that is drawn', async () => {
    const text = 'Front bodice lining 20 1/2';
    const mark: Mark = {
      kind: 'text',
      text,
      at: { x: 90, y: 20 },
      size: 5,
      weight: 'bold',
      align: 'right',
      turn: 0,
    };
    const bytes = await writePdf([pageWith([mark])], settings);
    const { getDocument } = await import('pdfjs-dist/legacy/build/pdf.mjs');
    const page = await (await getDocument({ data: new Uint8Array(bytes), verbosity: 0 }).promise).getPage(1);
    const items = (await page.getTextContent()).items.flatMap((item) =>
      'str' in item && item.str !== '' ? [item] : [],
    );
    const left = Math.min(...items.map((item) => Number(item.transform[4]))) * (25.4 / 72);
    expect(90 - left).toBeCloseTo(measure.width(text, 5, 'bold'), 3);
  });
});

test('the same pages give the same bytes, also when the fonts are read anew', async () => {
  const first = await writePdf(sheets('a4').pages, settings);
  expect(await writePdf(sheets('a4').pages, settings)).toEqual(first);
  expect(await writePdf(sheets('a4').pages, { ...settings, fonts: await loadFonts() })).toEqual(first);
});

describe('other readers', () => {
  judgedBy('qpdf', 'the structure of every format is sound', async () => {
    for (const name of Object.keys(PAPER_FORMATS) as PaperName[]) {
      const said = runOn(await writePdf(sheets(name).pages, settings), 'qpdf', (file) => [
        '--check',
        file,
      ]).toString();
      expect(said).toContain('No syntax or stream encoding errors found');
    }
  });

  judgedBy('pdfinfo', 'page size of A4 and of the roll', async () => {
    const size = async (name: PaperName): Promise<readonly number[]> => {
      const info = runOn(await writePdf(sheets(name).pages, settings), 'pdfinfo', (file) => [
        file,
      ]).toString();
      const [, w, h] = /Page size: +([\d.]+) x ([\d.]+) pts/.exec(info) ?? [];
      return [Number(w), Number(h)];
    };
    const [width = 0, height = 0] = await size('a4');
    expect(width).toBeCloseTo((210 * 72) / 25.4, 2);
    expect(height).toBeCloseTo((297 * 72) / 25.4, 2);
    expect((await size('roll-36'))[0]).toBeCloseTo(36 * 72, 2);
  });

  judgedBy('pdftoppm', 'at 254 dots an inch the test square is 1000 dots wide and high', async () => {
    const bytes = await writePdf(sheets('a4').pages.slice(0, 1), settings);
    const picture = greyPicture(
      runOn(bytes, 'pdftoppm', (file) => ['-r', '254', '-gray', '-aa', 'no', '-singlefile', file]),
    );
    // 210 x 297 mm; a last dot may be begun.
    expect([2100, 2101]).toContain(picture.width);
    expect([2970, 2971]).toContain(picture.height);
    const [wide, high] = squareInDots(picture);
    expect(Math.abs(wide - 1000)).toBeLessThanOrEqual(1);
    expect(Math.abs(high - 1000)).toBeLessThanOrEqual(1);
  });
});

interface GreyPicture {
  readonly width: number;
  readonly height: number;
  readonly dots: Uint8Array;
}

/** Reads a PGM (P5) picture. */
function greyPicture(bytes: Uint8Array): GreyPicture {
  const [head, width, height] =
    /^P5\s+(\d+)\s+(\d+)\s+255\s/.exec(Buffer.from(bytes).toString('latin1', 0, 40)) ?? [];
  if (head === undefined) throw new Error('Not a grey picture.');
  return { width: Number(width), height: Number(height), dots: bytes.subarray(head.length) };
}

/** From the first to the last dot of the square's tint (0.85 of white), along a row and down a column through it. */
function squareInDots({ width, height, dots }: GreyPicture): readonly [number, number] {
  const isTint = (x: number, y: number): boolean => Math.abs((dots[y * width + x] ?? 0) - 217) <= 2;
  const span = (count: number, at: (i: number) => boolean): number => {
    const found = Array.from({ length: count }, (_, i) => i).filter(at);
    return (found.at(-1) ?? 0) - (found[0] ?? 0) + 1;
  };
  // Above the captions; below, the map of the pages has the same tint.
  const [row, column, squareFoot] = [500, 130, 1450];
  return [span(1150, (x) => isTint(x, row)), span(Math.min(height, squareFoot), (y) => isTint(column, y))];
}
