import {
  childPack,
  MEASURING_SHEET,
  measuringSheet,
  mustNotBeCut,
  type Order,
  type OrderFile,
  type PackDocument,
  packInTurn,
  partyPack,
  readOrderValue,
  safeFileName,
} from '../../engine/order/index.ts';
import {
  createTextMeasure,
  type MissingLetters,
  missingLetters,
  type PaperFonts,
  writePdf,
} from '../../pdf/index.ts';
import {
  EVERYTHING,
  type MadePaper,
  type OnPaperStep,
  type PaperAnswer,
  type PaperGrounds,
  type PaperLook,
  type PaperOf,
  type PaperRefusal,
  type PaperWish,
} from './paper-wish.ts';
import { openZip } from './zip-file.ts';

/** Makes the papers of orders. Runs in a worker; remembers what it drew last, so that seeing and making draw once. */
export interface PaperBench {
  look(grounds: PaperGrounds, of: PaperOf, path: string): PaperAnswer<PaperLook>;
  make(grounds: PaperGrounds, wish: PaperWish, onStep: OnPaperStep): Promise<PaperAnswer<MadePaper>>;
}

interface DrawnPaper {
  readonly path: string;
  readonly about: string;
  readonly documents: readonly PackDocument[];
}

interface Drawn {
  readonly day: string;
  /** Begins the names of the files. */
  readonly name: string;
  readonly papers: readonly DrawnPaper[];
  /** Whose pieces must not be cut. */
  readonly barred: readonly string[];
}

export function createPaperBench(fonts: PaperFonts): PaperBench {
  const measure = createTextMeasure(fonts);
  let last: { readonly key: string; readonly drawn: PaperAnswer<Drawn> } | null = null;

  const drawnOf = (grounds: PaperGrounds, of: PaperOf): PaperAnswer<Drawn> => {
    const key = JSON.stringify([grounds, of]);
    if (last?.key !== key) {
      last = null;
      last = { key, drawn: draw(grounds, of) };
    }
    return last.drawn;
  };

  const draw = ({ file, today, timed = [] }: PaperGrounds, of: PaperOf): PaperAnswer<Drawn> => {
    const read = readFor(file, of);
    if (!read.ok) return read;
    const order = read.value;
    const day = order.madeOn ?? today;
    if (of === 'party') {
      const made = partyPack(order, { today, measure, timed });
      if (!made.ok) return { ok: false, code: 'problems', problems: made.problems };
      const papers = made.papers.map((paper) => ({ ...paper, documents: [paper] }));
      const barred = made.report.children.filter(mustNotBeCut).map(({ name }) => name);
      return { ok: true, value: { day, name: safeFileName(order.title, 'order'), papers, barred } };
    }
    const child = order.children[of];
    if (child === undefined) return { ok: false, code: 'gone' };
    const made = childPack(order, child, { today, measure, timed });
    if (!made.ok) return { ok: false, code: 'problems', problems: made.problems };
    const barred = mustNotBeCut(made.report) ? [child.name] : [];
    return {
      ok: true,
      value: { day, name: safeFileName(child.name, 'child'), papers: made.papers, barred },
    };
  };

  /** The only date in a file is the day of the pack, as everywhere. */
  const pdfOf = (
    { title, pages }: Extract<PackDocument, { kind: 'pages' }>,
    day: string,
    onPage: (done: number) => void,
  ): Promise<Uint8Array> =>
    writePdf(pages, { title, creationDate: new Date(`${day}T00:00:00Z`), fonts, onPage });

  const makeOne = async (
    { day, name }: Drawn,
    paper: DrawnPaper,
    onStep: OnPaperStep,
  ): Promise<MadePaper> => {
    const [only, ...others] = paper.documents;
    if (only !== undefined && others.length === 0 && only.kind === 'pages') {
      const total = only.pages.length;
      const bytes = await pdfOf(only, day, (done) => onStep({ done, total, what: paper.path }));
      return {
        fileName: `${name} - ${paper.path}`,
        content: new Blob([new Uint8Array(bytes)], { type: 'application/pdf' }),
        pages: total,
        missing: missingLetters(only.pages, fonts),
      };
    }
    const zip = openZip(day);
    for (const [i, document] of paper.documents.entries()) {
      onStep({ done: i, total: paper.documents.length, what: document.path });
      zip.add(
        document.path,
        document.kind === 'pages' ? await pdfOf(document, day, () => {}) : document.text,
      );
    }
    const fileName = `${name} - ${paper.path.replace(/\/$/, '')}.zip`;
    return { fileName, content: zip.end(), pages: 0, missing: [] };
  };

  /** One document is drawn, written and let go before the next, so that a large party needs no more room than one. */
  const makeAll = async (
    { file, today, timed = [] }: PaperGrounds,
    evenSo: boolean,
    onStep: OnPaperStep,
  ): Promise<PaperAnswer<MadePaper>> => {
    last = null;
    const read = readFor(file, 'party');
    if (!read.ok) return read;
    const order = read.value;
    const zip = openZip(order.madeOn ?? today);
    const progress = ({ done, total, next }: { done: number; total: number; next: string }): void =>
      onStep({ done, total, what: next });
    const making = packInTurn(order, { today, measure, timed, evenSo, progress });
    const missing = new Map<string, MissingLetters>();
    let pages = 0;
    for (;;) {
      const next = making.next();
      if (next.done === true) {
        if (!next.value.ok) return refusalOf(next.value);
        break;
      }
      const document = next.value;
      if (document.kind !== 'pages') {
        zip.add(document.path, document.text);
        continue;
      }
      zip.add(document.path, await pdfOf(document, order.madeOn ?? today, () => {}));
      pages += document.pages.length;
      for (const letters of missingLetters(document.pages, fonts)) missing.set(letters.text, letters);
    }
    const fileName = `${safeFileName(order.title, 'order')}.zip`;
    return { ok: true, value: { fileName, content: zip.end(), pages, missing: [...missing.values()] } };
  };

  /** Asks for no dress: a child is measured before there is one that can be drawn. */
  const makeSheet = async (
    { file, today }: PaperGrounds,
    of: number,
    onStep: OnPaperStep,
  ): Promise<PaperAnswer<MadePaper>> => {
    const read = readFor(file, of);
    if (!read.ok) return read;
    const child = read.value.children[of];
    if (child === undefined) return { ok: false, code: 'gone' };
    const day = read.value.madeOn ?? today;
    const sheet = measuringSheet(read.value, child, { today, measure });
    const drawn: Drawn = { day, name: safeFileName(child.name, 'child'), papers: [sheet], barred: [] };
    return { ok: true, value: await makeOne(drawn, sheet, onStep) };
  };

  return {
    look(grounds, of, path) {
      const drawn = drawnOf(grounds, of);
      if (!drawn.ok) return drawn;
      const { papers } = drawn.value;
      const shown =
        papers.find((paper) => paper.path === path) ??
        papers.find((paper) => paper.path.startsWith('pattern')) ??
        papers[0];
      if (shown === undefined) return { ok: false, code: 'gone' };
      const value = {
        papers: papers.map(({ path, about, documents }) => ({ path, about, count: countOf(documents) })),
        path: shown.path,
        pages: shown.documents.flatMap((document) => (document.kind === 'pages' ? document.pages : [])),
      };
      return { ok: true, value };
    },
    async make(grounds, { of, path, evenSo }, onStep) {
      if (path === EVERYTHING) return makeAll(grounds, evenSo, onStep);
      if (path === MEASURING_SHEET && of !== 'party') return makeSheet(grounds, of, onStep);
      const drawn = drawnOf(grounds, of);
      if (!drawn.ok) return drawn;
      const paper = drawn.value.papers.find((one) => one.path === path);
      if (paper === undefined) return { ok: false, code: 'gone' };
      const { barred } = drawn.value;
      if (barred.length > 0 && !evenSo) return { ok: false, code: 'stops', names: barred };
      return { ok: true, value: await makeOne(drawn.value, paper, onStep) };
    },
  };
}

function countOf(documents: readonly PackDocument[]): number {
  const [first] = documents;
  return documents.length === 1 && first?.kind === 'pages' ? first.pages.length : documents.length;
}

function refusalOf(
  refused: Extract<ReturnType<ReturnType<typeof packInTurn>['next']>['value'], { ok: false }>,
): PaperRefusal {
  if (refused.code === 'problems') return refused;
  const names = refused.report.children.filter(mustNotBeCut).map(({ name }) => name);
  return { ok: false, code: 'stops', names };
}

/**
 * Reads the order for the papers of one child even where a field of another child can't be read: the others are then
 * held by their names alone, so that every child keeps its place and its name.
 */
function readFor(file: OrderFile, of: PaperOf): PaperAnswer<Order> {
  const read = readOrderValue(file);
  if (read.ok) return { ok: true, value: read.order };
  if (of !== 'party') {
    const children = file.children.map((child, i) => (i === of ? child : { name: child.name }));
    const again = readOrderValue({ ...file, children });
    if (again.ok) return { ok: true, value: again.order };
    return { ok: false, code: 'problems', problems: again.problems };
  }
  return { ok: false, code: 'problems', problems: read.problems };
}
