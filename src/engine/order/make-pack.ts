import type { CutPiece } from '../cut/index.ts';
import {
  cutListPages,
  drawPiece,
  type Ink,
  type Page,
  type Paper,
  pageSvg,
  paperOf,
  patternSheets,
  piecePage,
  type TextMeasure,
} from '../sheet/index.ts';
import { say, type WordKey } from '../words/index.ts';
import { type ChildReport, checkOrder, mustNotBeCut, type OrderReport } from './check-order.ts';
import { checkPages, partyCheckPages } from './check-pages.ts';
import { markedNotToCut } from './cut-dress.ts';
import { dressPages } from './dress-pages.ts';
import { distinctFileNames, safeFileName } from './file-names.ts';
import { growthPages } from './growth-pages.ts';
import { growthOf } from './growth-report.ts';
import { handPages } from './hand-pages.ts';
import { type LaidCloths, layCloths } from './lay-cloths.ts';
import type { Order } from './order.ts';
import type { OrderProblem } from './problem.ts';
import { formatName } from './read-paper.ts';
import { type ReadmeFile, readmeText } from './readme-text.ts';
import { drawSizeRun } from './size-run.ts';

/** What the engine has not of its own and the way to paper needs. */
export interface PackTools {
  /** Today, `2027-04-24`: printed on the pieces where the order names no day. */
  readonly today: string;
  /** Measures text in the fonts that will be embedded. */
  readonly measure: TextMeasure;
  /** Make the pack although a check says that something must not be cut; the pieces concerned are marked. */
  readonly evenSo: boolean;
  /** Told before each piece of work. */
  readonly progress?: (step: PackStep) => void;
}

export interface PackStep {
  readonly done: number;
  readonly total: number;
  /** The child or the list that comes next. */
  readonly next: string;
}

/** One file of a pack; `path` is relative, with `/` between folders. */
export type PackDocument =
  | { readonly path: string; readonly kind: 'pages'; readonly title: string; readonly pages: readonly Page[] }
  | { readonly path: string; readonly kind: 'text' | 'svg'; readonly text: string };

export interface Pack {
  /** Printed on the pieces. */
  readonly day: string;
  readonly documents: readonly PackDocument[];
  readonly report: Extract<OrderReport, { ok: true }>;
  /** What to buy for all children together. */
  readonly cloths: LaidCloths;
}

export type PackResult =
  | { readonly ok: true; readonly pack: Pack }
  /** Some dress can't be drawn. */
  | { readonly ok: false; readonly code: 'problems'; readonly problems: readonly OrderProblem[] }
  /** All can be drawn, but something must not be cut. */
  | { readonly ok: false; readonly code: 'stops'; readonly report: Extract<OrderReport, { ok: true }> };

/**
 * The whole way from an order to its papers: bodies, dresses, checks, cut pieces, cloth, sheets. Pure: the same order
 * and tools give the same pack. Refuses an order with a dress that can't be drawn, and, unless told even so, one of
 * which a check says that something must not be cut.
 */
export function makePack(order: Order, tools: PackTools): PackResult {
  const report = checkOrder(order, tools.today);
  if (!report.ok) return { ok: false, code: 'problems', problems: report.problems };
  if (!tools.evenSo && report.children.some(mustNotBeCut)) return { ok: false, code: 'stops', report };

  const day = order.madeOn ?? tools.today;
  const desk: Desk = {
    order,
    day,
    paper: deskPaper(order),
    ink: { units: order.units, measure: tools.measure },
  };
  const total = report.children.length + 1;
  const folders = foldersOf(report);
  const children = report.children.map((child, i) => {
    tools.progress?.({ done: i, total, next: child.name });
    return childPapers(desk, mustNotBeCut(child) ? marked(child, order) : child, folders[i] ?? child.name);
  });
  const sizes = order.sizes.length === 0 ? null : drawSizeRun(order, desk.ink, day);
  if (sizes?.ok === false) return { ok: false, code: 'problems', problems: sizes.problems };
  tools.progress?.({ done: total - 1, total, next: order.title });
  const cloths = layCloths(
    order,
    children.flatMap((child) => child.report.pieces),
  );
  const papers = [
    ...partyPapers(desk, report, children, cloths, sizes?.pages ?? null),
    ...children.flatMap((child) => child.documents),
  ];
  const documents = [...papers, contentsOf(papers)];
  return { ok: true, pack: { day, documents, report, cloths } };
}

/** The file that names all files of a pack, so that a pack is known again and nothing else is ever taken away. */
export const PACK_CONTENTS = { path: 'contents.json', kind: 'frockwright-pack' } as const;

function contentsOf(papers: readonly PackDocument[]): PackDocument {
  const { path, kind } = PACK_CONTENTS;
  const files = [...papers.map((paper) => paper.path), path];
  return { path, kind: 'text', text: `${JSON.stringify({ kind, files }, null, 2)}\n` };
}

/** What every paper of a pack is made with. */
interface Desk {
  readonly order: Order;
  readonly day: string;
  /** For lists and sheets of text. */
  readonly paper: Paper;
  readonly ink: Ink;
}

/** Lists are printed on the first small format of the order, on A4 if it has none. */
const deskPaper = ({ papers }: Order): Paper => papers.find(({ format }) => format.joined) ?? paperOf('a4');

function marked(child: ChildReport, order: Order): ChildReport {
  const pieces = markedNotToCut(child.pieces, order.units);
  return { ...child, pieces, cloths: layCloths(order, pieces) };
}

/** Names at the top of a pack; a child's folder must be none of them. */
const README = 'README.txt';
const CHECKS = 'checks.pdf';
const CUT_LIST = 'cut-list.pdf';
const SIZES = 'all-sizes.pdf';

const foldersOf = ({ children }: Extract<OrderReport, { ok: true }>): readonly string[] =>
  distinctFileNames(
    children.map(({ name }) => safeFileName(name, 'child')),
    [README, CHECKS, CUT_LIST, SIZES, PACK_CONTENTS.path],
  );

interface ChildPapers {
  readonly report: ChildReport;
  readonly folder: string;
  readonly documents: readonly PackDocument[];
  readonly files: readonly ReadmeFile[];
}

function childPapers(desk: Desk, report: ChildReport, folder: string): ChildPapers {
  const { order, day, paper, ink } = desk;
  const { name, pieces } = report;
  const title = (about: string): string => `${about}: ${name}`;
  const documents: PackDocument[] = [];
  const files: ReadmeFile[] = [];
  const add = (file: string, about: string, pages: readonly Page[]): void => {
    documents.push({ path: `${folder}/${file}`, kind: 'pages', title: title(about), pages });
    files.push({ path: file, about });
  };
  const told = (key: WordKey, values = {}): string => say(key, values, ink.units);

  add('the-dress.pdf', told('order.file.dress'), dressPages(report.dress, paper, ink, day));
  const size = pieces[0]?.label.size ?? '';
  for (const format of order.papers) {
    const { printer, ruler } = order;
    const rectangles = order.rectangles ?? (format.format.joined ? 'figures' : 'full');
    const job = { pieces, child: name, size, date: day, paper: format, printer, rectangles, ruler, ink };
    const { pages, figures } = patternSheets(job);
    const counts = { format: formatName(format), count: pages.length, figures };
    const about = told(figures === 0 ? 'order.file.pattern' : 'order.file.pattern-figures', counts);
    add(`pattern-${formatName(format).replaceAll(' ', '-')}.pdf`, about, pages);
  }
  const hand = handPages(order, report.dress, pieces, paper, ink.measure, day);
  if (hand !== null) add('draw-by-hand.pdf', told('order.file.by-hand'), hand);
  add('checks.pdf', told('order.file.checks'), checkPages(report, paper, ink, day));
  const { lists } = report.cloths;
  if (report.dress.child.growth !== null) {
    const grown = growthOf(report.dress.child, report.dress, null);
    add('growth.pdf', told('order.file.growth'), growthPages(report.dress.child, grown, paper, ink, day));
  }
  add(
    'cut-list.pdf',
    told('order.file.cut-list'),
    cutListPages({ title: name, date: day, cloths: lists, paper, ink }),
  );
  documents.push(
    ...pieceFiles(pieces, ink).map((file) => ({ ...file, path: `${folder}/pieces/${file.path}` })),
  );
  files.push({ path: 'pieces/', about: told('order.file.pieces') });
  return { report, folder, documents, files };
}

/** Every piece in a drawing of its own at true size. */
function pieceFiles(pieces: readonly CutPiece[], ink: Ink): readonly PackDocument[] {
  const digits = String(pieces.length).length;
  return pieces.map((piece, i) => {
    const number = String(i + 1).padStart(digits, '0');
    const name = safeFileName(`${number} ${piece.label.title}`, number);
    return { path: `${name}.svg`, kind: 'svg', text: pageSvg(piecePage(drawPiece(piece, ink))) };
  });
}

function partyPapers(
  { order, day, paper, ink }: Desk,
  report: Extract<OrderReport, { ok: true }>,
  children: readonly ChildPapers[],
  cloths: LaidCloths,
  sizes: readonly Page[] | null,
): readonly PackDocument[] {
  const about = {
    checks: say('order.file.party-checks', {}, ink.units),
    cutList: say('order.file.party-cut-list', {}, ink.units),
    sizes: say('order.file.sizes', {}, ink.units),
  };
  const files = [
    { path: CHECKS, about: about.checks },
    { path: CUT_LIST, about: about.cutList },
    ...(sizes === null ? [] : [{ path: SIZES, about: about.sizes }]),
    { path: PACK_CONTENTS.path, about: say('order.file.contents', {}, ink.units) },
  ];
  const list = cutListPages({ title: order.title, date: day, cloths: cloths.lists, paper, ink });
  return [
    { path: README, kind: 'text', text: readmeText({ order, date: day, children, files, cloths }) },
    {
      path: CHECKS,
      kind: 'pages',
      title: `${about.checks}: ${order.title}`,
      pages: partyCheckPages(order, report, paper, ink, day),
    },
    { path: CUT_LIST, kind: 'pages', title: `${about.cutList}: ${order.title}`, pages: list },
    ...(sizes === null
      ? []
      : [{ path: SIZES, kind: 'pages', title: `${about.sizes}: ${order.title}`, pages: sizes } as const]),
  ];
}
