import { describe, expect, test } from 'vitest';
import type { CutPiece } from '../../src/engine/cut/index.ts';
import { type Point, pathFlatten } from '../../src/engine/geometry/index.ts';
import {
  drawPiece,
  type GroupMark,
  handSheetPages,
  type Mark,
  type Page,
  type PaperName,
  pageSvg,
  paperOf,
  patternSheets,
  piecePage,
} from '../../src/engine/sheet/index.ts';
import { createTextMeasure, writePdf } from '../../src/pdf/index.ts';
import { loadFonts } from '../../src/pdf/load-fonts.ts';
import { bodiceFront, cutPiece, dressOf, yokeFront } from '../fixtures/cut-pieces.ts';
import { realDress } from '../fixtures/real-dress.ts';
import { judgedBy, runOn } from './judges.ts';
import { type Box, boxOf, type ReadPage, type ReadPath, readPdf } from './pdf-reading.ts';

const fonts = await loadFonts();
const ink = { units: 'in', measure: createTextMeasure(fonts) } as const;
const settings = { title: 'Sheets', creationDate: new Date('2026-03-14T00:00:00Z'), fonts };
const wearer = { child: 'Adaeze', size: '4 years', date: '14 March 2026' };

const sheetsOf = (pieces: readonly CutPiece[], name: PaperName, rectangles: 'full' | 'figures' = 'full') =>
  patternSheets({
    ...wearer,
    pieces,
    paper: paperOf(name),
    printer: null,
    rectangles,
    ruler: null,
    ink,
  });

const isGroup = (mark: Mark): mark is GroupMark => mark.kind === 'group';

/** The frame that lays a piece on the large sheet, found by the outline that the drawing carries. */
function frameOf(pages: readonly Page[], piece: CutPiece): GroupMark['frame'] {
  for (const page of pages) {
    for (const window of page.marks.filter(isGroup)) {
      for (const group of window.marks.filter(isGroup)) {
        if (group.marks.some((m) => m.kind === 'hatch' && m.outline === piece.cuttingLine))
          return group.frame;
      }
    }
  }
  throw new Error(`${piece.label.title} is on no page.`);
}

/** 'B3' is row 1, column 2; where its window begins on the large sheet. */
function cornerOf(name: string, step: { readonly x: number; readonly y: number }): Point {
  const [, letter = '', number = ''] = /^([A-Z])(\d+)$/.exec(name) ?? [];
  return { x: (Number(number) - 1) * step.x, y: (letter.charCodeAt(0) - 65) * step.y };
}

const contains = (box: Box, p: Point, slack: number): boolean =>
  p.x >= box.minX - slack && p.x <= box.maxX + slack && p.y >= box.minY - slack && p.y <= box.maxY + slack;

function distanceToRun(p: Point, run: readonly Point[]): number {
  let best = Number.POSITIVE_INFINITY;
  for (const [i, a] of run.entries()) {
    const b = run[i + 1];
    if (b === undefined) continue;
    const [dx, dy] = [b.x - a.x, b.y - a.y];
    const length2 = dx * dx + dy * dy;
    const t = length2 === 0 ? 0 : Math.max(0, Math.min(1, ((p.x - a.x) * dx + (p.y - a.y) * dy) / length2));
    best = Math.min(best, Math.hypot(p.x - a.x - t * dx, p.y - a.y - t * dy));
  }
  return best;
}

const isHeavy = (path: ReadPath): boolean =>
  path.painted === 'stroke' && Math.abs(path.lineWidth - 0.6) < 1e-3;

/** Whether a heavy line passes through the place on this page and is not cut off there. */
const isDrawnAt = (page: ReadPage, p: Point): boolean =>
  page.paths.some(
    (path) =>
      isHeavy(path) &&
      path.clips.every((clip) => contains(clip, p, 1e-3)) &&
      path.runs.some((run) => distanceToRun(p, run) < 0.02),
  );

describe('every point of every cutting line, read back by PDF.js', () => {
  const cases: [PaperName, string, readonly CutPiece[]][] = [
    ['a4', 'sketched pieces', dressOf()],
    ['a4', 'sketched pieces, large', dressOf(1.37)],
    ['letter', 'sketched pieces, small', dressOf(0.8)],
    ['a3', 'sketched pieces', dressOf(1.2)],
    ['a0', 'sketched pieces', dressOf(1.2)],
    ['roll-36', 'sketched pieces', dressOf()],
    ['a4', 'a pleated dress', realDress(60, 'pleated-skirt')],
    ['letter', 'a dress with a circle skirt', realDress(18, 'circle-skirt')],
    ['a0', 'a dress with a circle skirt', realDress(140, 'circle-skirt')],
    ['roll-36', 'a gathered dress', realDress(108, 'gathered-skirt')],
  ];
  test.each(cases)('is printed in its place within the margins: %s, %s', async (name, _, pieces) => {
    const sheets = sheetsOf(pieces, name);
    const read = await readPdf(await writePdf(sheets.pages, settings));
    const paper = paperOf(name);
    const { margin, format } = paper;
    const overlap = format.joined ? paper.overlap : 0;
    const step = { x: format.width - 2 * margin - overlap, y: format.height - 2 * margin - overlap };
    const tiles = sheets.pages.flatMap((page, i) => {
      const shown = read[i];
      return /^[A-Z]\d+$/.test(page.name) && shown !== undefined
        ? [{ corner: cornerOf(page.name, step), shown }]
        : [];
    });
    expect(tiles).toHaveLength(sheets.tiles);
    for (const piece of pieces) {
      const { a, b, c, d, e, f } = frameOf(sheets.pages, piece);
      for (const p of pathFlatten(piece.cuttingLine, 0.5)) {
        const onSheet = { x: a * p.x + c * p.y + e, y: b * p.x + d * p.y + f };
        const isPrinted = tiles.some(({ corner, shown }) => {
          const here = { x: onSheet.x - corner.x + margin, y: onSheet.y - corner.y + margin };
          const printable = {
            minX: margin,
            minY: margin,
            maxX: shown.width - margin,
            maxY: shown.height - margin,
          };
          return contains(printable, here, 1e-3) && isDrawnAt(shown, here);
        });
        expect(isPrinted, `${piece.label.title} at ${onSheet.x}, ${onSheet.y}`).toBe(true);
      }
    }
  });
});

test('nothing is printed nearer to the edge of the paper than 10 mm', async () => {
  for (const name of ['a4', 'letter', 'a3', 'a0', 'roll-36'] as const) {
    for (const page of await readPdf(await writePdf(sheetsOf(dressOf(), name).pages, settings))) {
      const printable = { minX: 10, minY: 10, maxX: page.width - 10, maxY: page.height - 10 };
      for (const path of page.paths) {
        const boxes = path.clips.length > 0 ? path.clips : [boxOf(path.runs.flat())];
        const inside = boxes.some((box) =>
          [
            { x: box.minX, y: box.minY },
            { x: box.maxX, y: box.maxY },
          ].every((corner) => contains(printable, corner, 1e-3)),
        );
        expect(inside).toBe(true);
      }
    }
  }
});

test('pages say their place, their number, the child and the pieces on them', async () => {
  const sheets = sheetsOf(dressOf(), 'a4');
  const read = await readPdf(await writePdf(sheets.pages, settings));
  const titles = new Set<string>();
  for (const [i, page] of sheets.pages.entries()) {
    if (i === 0) continue;
    const text = read[i]?.text ?? '';
    expect(text.split('\n')).toContain(page.name);
    expect(text).toContain(`page ${i + 1} of ${sheets.pages.length} - Adaeze`);
    for (const piece of dressOf()) if (text.includes(piece.label.title)) titles.add(piece.label.title);
  }
  expect(titles.size).toBe(dressOf().length);
});

test('a page that names a neighbour to be joined is named by it, and lies beside it', () => {
  for (const pieces of [dressOf(), realDress(60, 'pleated-skirt'), realDress(108, 'circle-skirt')]) {
    const { pages } = sheetsOf(pieces, 'a4');
    const names = new Map<string, ReadonlySet<string>>();
    for (const page of pages.slice(1)) {
      const own = page.marks.filter(isGroup).at(-1)?.marks ?? [];
      const texts = own.flatMap((m) => (m.kind === 'text' && /^[A-Z]\d+$/.test(m.text) ? [m.text] : []));
      names.set(page.name, new Set(texts.filter((text) => text !== page.name)));
    }
    expect([...names.values()].some((neighbours) => neighbours.size > 0)).toBe(true);
    for (const [name, neighbours] of names) {
      for (const neighbour of neighbours) {
        expect(names.get(neighbour)?.has(name), `${name} and ${neighbour}`).toBe(true);
        const [a, b] = [cornerOf(name, { x: 1, y: 1 }), cornerOf(neighbour, { x: 1, y: 1 })];
        expect(Math.abs(a.x - b.x) + Math.abs(a.y - b.y)).toBe(1);
      }
    }
  }
});

test('the front page lists every piece with its cutting and shows every page on its map', async () => {
  const sheets = sheetsOf(dressOf(), 'a4');
  const [front] = await readPdf(await writePdf(sheets.pages.slice(0, 1), settings));
  for (const { label } of dressOf()) {
    expect(front?.text).toContain(label.title);
    expect(front?.text).toContain(label.cutting);
  }
  for (const page of sheets.pages.slice(1)) expect(front?.text.split('\n')).toContain(page.name);
});

test('a set of more pieces than one page can list goes on to a second', async () => {
  const pieces = Array.from({ length: 40 }, (_, i) => {
    const piece = yokeFront(0.4);
    return {
      ...piece,
      piece: { ...piece.piece, id: `p${i}` },
      label: { ...piece.label, title: `Part ${i + 1}` },
    };
  });
  const sheets = sheetsOf(pieces, 'letter');
  const read = await readPdf(
    await writePdf(sheets.pages.slice(0, sheets.pages.length - sheets.tiles), settings),
  );
  const listed = read.map((page) => page.text).join('\n');
  expect(read.length).toBe(2);
  for (let i = 1; i <= 40; i++) expect(listed).toContain(`Part ${i}`);
});

test('no text on any sheet is smaller than 2.5 mm', () => {
  const sizes = (marks: readonly Mark[]): readonly number[] =>
    marks.flatMap((m) => (m.kind === 'text' ? [m.size] : m.kind === 'group' ? sizes(m.marks) : []));
  const longNamed = { child: 'Oluwaseyifunmi Adébáyọ̀-Featherstonehaugh', size: 'made to measure, 18 months' };
  for (const name of ['a4', 'letter', 'a3', 'a0', 'roll-36'] as const) {
    for (const page of sheetsOf(dressOf(0.6, longNamed), name).pages) {
      expect(Math.min(...sizes(page.marks))).toBeGreaterThanOrEqual(2.5);
    }
  }
});

describe('straight pieces told by measures', () => {
  const dress = realDress(60, 'pleated-skirt');
  const skirts = dress.filter(({ piece }) => piece.id.startsWith('skirt-'));

  test.each(['a4', 'letter', 'a3'] as const)(
    'take fewer pages, and every piece is on a page or drawn with its measures: %s',
    async (name) => {
      const [full, figured] = [sheetsOf(dress, name), sheetsOf(dress, name, 'figures')];
      expect(figured.figures).toBeGreaterThan(0);
      expect(figured.pages.length).toBeLessThan(full.pages.length * (name === 'a3' ? 0.75 : 0.5));
      const read = await readPdf(await writePdf(figured.pages, settings));
      const front = read[0]?.text ?? '';
      for (const { label } of dress) {
        expect(front).toContain(label.title);
        expect(
          read.slice(1).some(({ text }) => text.replace(/\s+/g, ' ').includes(label.title)),
          label.title,
        ).toBe(true);
      }
      for (const [i, { text }] of read.entries()) {
        if (i > 0) expect(text).toContain(`page ${i + 1} of ${figured.pages.length} - Adaeze`);
      }
    },
  );

  test('give every fold and meeting line its running measure, in order, up to the cut width', async () => {
    const { pages, figures } = sheetsOf(dress, 'a4', 'figures');
    const read = await readPdf(await writePdf(pages.slice(-figures), settings));
    for (const { piece, cuttingLine, label } of skirts) {
      const text = read.find((page) => page.text.includes(label.title))?.text.replace(/\s+/g, ' ') ?? '';
      const table = text.slice(text.indexOf('From the left edge', text.indexOf(label.title)));
      const rows = [...table.matchAll(/(\d+) (fold|meet|stitch|notch|2 notches) ([\d /]+) in/g)].map(
        ([, number, kind, figure = '']) => ({ number: Number(number), kind, at: inchesOf(figure) }),
      );
      const next = rows.findIndex(({ number }, i) => i > 0 && number === 1);
      const ofSkirt = next < 0 ? rows : rows.slice(0, next);
      expect(ofSkirt.map(({ number }) => number)).toEqual(ofSkirt.map((_, i) => i + 1));
      for (const kind of ['fold', 'meet']) {
        const drawn = piece.markings.filter((marking) => marking.kind === `pleat-${kind}`);
        expect(ofSkirt.filter((row) => row.kind === kind)).toHaveLength(drawn.length);
      }
      for (const [i, { at }] of ofSkirt.entries()) expect(at).toBeGreaterThanOrEqual(ofSkirt[i - 1]?.at ?? 0);
      const [, width = ''] = /right edge ([\d /]+) in/.exec(table) ?? [];
      const box = boxOf(pathFlatten(cuttingLine, 0.05));
      expect(Math.abs(inchesOf(width) * 25.4 - (box.maxX - box.minX))).toBeLessThanOrEqual(25.4 / 16);
    }
  });

  test('go on A4 where the pattern is on a large sheet', async () => {
    for (const name of ['a0', 'roll-36'] as const) {
      const { pages, figures } = sheetsOf(dress, name, 'figures');
      const read = await readPdf(await writePdf(pages, settings));
      for (const page of read.slice(-figures)) {
        expect([page.width, page.height].map(Math.round)).toEqual([210, 297]);
      }
    }
  });

  test('may be all there is', () => {
    const { pages, tiles, figures } = sheetsOf(skirts, 'a4', 'figures');
    expect([tiles, pages.length]).toEqual([0, 1 + figures]);
  });
});

/** '12 3/4', '3/4' or '12' as a number. */
function inchesOf(text: string): number {
  return text
    .trim()
    .split(' ')
    .map((part) => {
      const [over = 0, under = 1] = part.split('/').map(Number);
      return over / under;
    })
    .reduce((sum, n) => sum + n, 0);
}

describe('SVG', () => {
  const hostile = `A<b>"c"&'d' ]]> <!-- --> \u0000\u0007\ud800 Ọ̀ṣun`;
  const piece = bodiceFront(1, { child: hostile, size: '4 years' });
  const named = { ...piece, label: { ...piece.label, title: hostile } };
  const svg = pageSvg(piecePage(drawPiece(named, ink)));

  test('one piece at true size: mm outside, the same numbers inside', () => {
    const [, width, height, viewBox] =
      /<svg [^>]*width="([\d.]+)mm" height="([\d.]+)mm" viewBox="([^"]+)"/.exec(svg) ?? [];
    expect(viewBox).toBe(`0 0 ${width} ${height}`);
    const box = boxOf(pathFlatten(piece.cuttingLine, 0.05));
    expect(Number(width)).toBeCloseTo(box.maxX - box.minX + 10, 3);
    expect(Number(height)).toBeCloseTo(box.maxY - box.minY + 10, 3);
  });

  test('names cannot break out of their element', () => {
    expect(svg).not.toContain('<b>');
    expect(svg).not.toContain('<!--');
    expect(svg).toContain('A&lt;b&gt;&quot;c&quot;&amp;&#39;d&#39; ]]&gt;');
  });

  judgedBy('python3', 'an XML parser reads the page and finds the name', () => {
    const script = [
      'import sys, xml.etree.ElementTree as E',
      'root = E.parse(sys.argv[1]).getroot()',
      "ns = '{http://www.w3.org/2000/svg}'",
      "print(root.tag == ns + 'svg', len(root.findall('.//' + ns + 'path')) > 10)",
      "print('|'.join(t.text for t in root.iter(ns + 'title')))",
    ].join('\n');
    const said = runOn(svg, 'python3', (file) => ['-c', script, file])
      .toString()
      .trim()
      .split('\n');
    expect(said[0]).toBe('True True');
    expect(said[1]?.startsWith(`A<b>"c"&'d' ]]> <!-- -->`)).toBe(true);
  });

  judgedBy('python3', 'an XML parser reads every sheet of a dress', () => {
    const parse = 'import sys, xml.etree.ElementTree as E; E.parse(sys.argv[1]); print("read")';
    for (const page of sheetsOf(dressOf(), 'a3').pages) {
      expect(
        runOn(pageSvg(page), 'python3', (file) => ['-c', parse, file])
          .toString()
          .trim(),
      ).toBe('read');
    }
  });
});

describe('the hand-drafting sheet', () => {
  const path = bodiceFront().cuttingLine;
  const steps = Array.from({ length: 23 }, (_, i) => ({
    sentence: `Step ${i + 1} of this part: from the neck point measure down ${i + 1} 3/16 in.`,
    diagram: {
      faint: [path],
      live: [path],
      points: [{ name: `point ${i + 1}`, at: { x: 10 * i, y: 5 * i } }],
      lengths: [{ text: `${i + 1} 3/16 in`, along: path }],
    },
  }));
  const parts = [
    { title: 'Front', steps },
    { title: 'Back', steps: steps.slice(0, 4) },
  ];

  test.each(['a4', 'letter'] as const)(
    'tells every step once, in order, number and figure kept together: %s',
    async (name) => {
      const pages = handSheetPages({ ...wearer, parts, paper: paperOf(name), ink });
      const read = await readPdf(await writePdf(pages, settings));
      const text = read
        .map((page) => page.text)
        .join('\n')
        .replace(/\s+/g, ' ');
      let from = text.indexOf('Front');
      for (const { sentence } of steps) {
        const at = text.indexOf(sentence, from);
        expect(at, sentence).toBeGreaterThanOrEqual(from);
        from = at;
      }
      const [, shrink = ''] = /Front drawn 1 : ([\d.]+) 1 Step 1/.exec(text) ?? [];
      const size = boxOf(pathFlatten(path, 0.05));
      const isToScale = read[0]?.paths.some(({ runs }) => {
        const box = boxOf(runs.flat());
        return Math.abs((box.maxY - box.minY) * Number(shrink) - (size.maxY - size.minY)) < 0.1;
      });
      expect(isToScale).toBe(true);
      for (let i = 1; i <= steps.length; i++) expect(text).toContain(` ${i} 3/16 in point ${i}`);
      for (const page of read) {
        for (const drawn of page.paths) {
          const box = boxOf(drawn.runs.flat());
          expect(box.maxY).toBeLessThanOrEqual(page.height - 10);
          expect(box.maxX).toBeLessThanOrEqual(page.width - 10 + 1e-3);
        }
      }
    },
  );
});

test('a piece without allowances says so', async () => {
  const corners = [
    { x: 0, y: 0 },
    { x: 120, y: 0 },
    { x: 120, y: 120 },
    { x: 0, y: 120 },
  ] as const;
  const sides = corners.map((from, i) => ({ kind: 'line', from, to: corners[(i + 1) % 4] ?? from }) as const);
  const bare = cutPiece({
    id: 'bare',
    title: 'Bare square',
    cuttingWords: 'Cut 1 in satin',
    cloth: 'main',
    cutting: { as: 'single', copies: 1 },
    edges: sides.map((side, i) => [`side-${i}`, 'join', { segments: [side] }, 0] as const),
    grain: [60, 110, 10],
    labelAt: [30, 60],
  });
  const [page] = await readPdf(await writePdf([piecePage(drawPiece(bare, ink))], settings));
  expect(page?.text.replace(/\s+/g, ' ')).toContain('No allowances: add your own.');
});
