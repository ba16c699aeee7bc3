import { cutListPages, layPages, type Page } from '../sheet/index.ts';
import { say, type WordKey } from '../words/index.ts';
import { bookPages } from './book-pages.ts';
import { type ChildReport, checkChild, checkOrder, mustNotBeCut, type OrderReport } from './check-order.ts';
import { partyCheckPages } from './check-pages.ts';
import {
  type ChildPaper,
  childPapers,
  type Desk,
  deskOf,
  forPaper,
  type PackDocument,
  type PaperTools,
} from './child-papers.ts';
import { distinctFileNames, safeFileName } from './file-names.ts';
import { type LaidCloths, layChild, layParty } from './lay-cloths.ts';
import type { Order, OrderChild } from './order.ts';
import type { OrderProblem } from './problem.ts';
import { type ReadmeChild, type ReadmeFile, readmeText } from './readme-text.ts';
import { partySewPages } from './sew/sew-pages.ts';
import { drawSizeRun } from './size-run.ts';

export interface PackTools extends PaperTools {
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

/** What is known of a pack beside its documents. */
export interface PackFacts {
  /** Printed on the pieces. */
  readonly day: string;
  readonly report: DrawnOrder;
  /** What to buy for all children together. */
  readonly cloths: LaidCloths;
}

export interface Pack extends PackFacts {
  readonly documents: readonly PackDocument[];
}

export type PackRefusal =
  /** Some dress can't be drawn. */
  | { readonly ok: false; readonly code: 'problems'; readonly problems: readonly OrderProblem[] }
  /** All can be drawn, but something must not be cut. */
  | { readonly ok: false; readonly code: 'stops'; readonly report: DrawnOrder };

export type PackResult = { readonly ok: true; readonly pack: Pack } | PackRefusal;

type DrawnOrder = Extract<OrderReport, { ok: true }>;

/**
 * The whole way from an order to its papers: bodies, dresses, checks, cut pieces, cloth, sheets. Pure: the same order
 * and tools give the same pack. Refuses an order with a dress that can't be drawn, and, unless told even so, one of
 * which a check says that something must not be cut.
 */
export function makePack(order: Order, tools: PackTools): PackResult {
  const documents: PackDocument[] = [];
  const making = packInTurn(order, tools);
  for (;;) {
    const next = making.next();
    if (next.done !== true) documents.push(next.value);
    else if (next.value.ok) return { ok: true, pack: { ...next.value.facts, documents } };
    else return next.value;
  }
}

/**
 * The same, handing over one document after another, so that whoever keeps none of them has room for a large party.
 * Those of the children come first, the index last. What is refused is refused before the first document.
 */
export function* packInTurn(
  order: Order,
  tools: PackTools,
): Generator<PackDocument, { readonly ok: true; readonly facts: PackFacts } | PackRefusal> {
  const report = checkOrder(order, tools.today);
  if (!report.ok) return { ok: false, code: 'problems', problems: report.problems };
  if (!tools.evenSo && report.children.some(mustNotBeCut)) return { ok: false, code: 'stops', report };

  const desk = deskOf(order, tools);
  const sizes = order.sizes.length === 0 ? null : drawSizeRun(order, desk.ink, desk.day);
  if (sizes?.ok === false) return { ok: false, code: 'problems', problems: sizes.problems };
  const total = report.children.length + 1;
  const folders = foldersOf(report);
  const children: ReadmeChild[] = [];
  const alone: LaidCloths[] = [];
  const paths: string[] = [];
  for (const [i, child] of report.children.entries()) {
    tools.progress?.({ done: i, total, next: child.name });
    const told = forPaper(child, order);
    const folder = folders[i] ?? child.name;
    const cloths = layChild(order, told.pieces);
    alone.push(cloths);
    const papers = childPapers(desk, told, cloths, folder);
    children.push({ report: told, folder, files: papers.map(({ path, about }) => ({ path, about })) });
    for (const document of papers.flatMap(({ documents }) => documents)) {
      paths.push(document.path);
      yield document;
    }
  }
  tools.progress?.({ done: total - 1, total, next: order.title });
  const party = partyPapers(
    desk,
    report,
    children.map(({ report: told }) => told),
    alone,
    sizes?.pages ?? null,
  );
  for (const document of party.documents) {
    paths.push(document.path);
    yield document;
  }
  const contents = { path: PACK_CONTENTS.path, about: say('order.file.contents', {}, order.units) };
  const files = [...party.documents.map(({ path, about }) => ({ path, about })), contents];
  const facts: PackFacts = { day: desk.day, report, cloths: party.cloths };
  const text = readmeText({ order, date: desk.day, children, files, cloths: party.cloths });
  yield { path: README, kind: 'text', text };
  yield contentsOf([...paths, README]);
  return { ok: true, facts };
}

export type ChildPackResult =
  | { readonly ok: true; readonly report: ChildReport; readonly papers: readonly ChildPaper[] }
  | { readonly ok: false; readonly problems: readonly OrderProblem[] };

/**
 * The papers of one child of the order, the same as in the pack. They are made even where something must not be cut:
 * every piece then says so, and `mustNotBeCut` of the report is for the caller to ask.
 */
export function childPack(order: Order, child: OrderChild, tools: PaperTools): ChildPackResult {
  const checked = checkChild(order, child, tools.today);
  if (!checked.ok) return checked;
  const report = forPaper(checked.report, order);
  return {
    ok: true,
    report,
    papers: childPapers(
      deskOf(order, tools),
      report,
      layChild(order, report.pieces),
      safeFileName(child.name, 'child'),
    ),
  };
}

export type PartyPackResult =
  | { readonly ok: true; readonly report: DrawnOrder; readonly papers: readonly PartyPaper[] }
  | { readonly ok: false; readonly problems: readonly OrderProblem[] };

/** The papers for all children together, the same as in the pack, without those of each child. */
export function partyPack(order: Order, tools: PaperTools): PartyPackResult {
  const report = checkOrder(order, tools.today);
  if (!report.ok) return report;
  const desk = deskOf(order, tools);
  const sizes = order.sizes.length === 0 ? null : drawSizeRun(order, desk.ink, desk.day);
  if (sizes?.ok === false) return sizes;
  const told = report.children.map((child) => forPaper(child, order));
  const alone = told.map(({ pieces }) => layChild(order, pieces));
  const { documents } = partyPapers(desk, report, told, alone, sizes?.pages ?? null);
  return { ok: true, report, papers: documents };
}

/** The file that names all files of a pack, so that a pack is known again and nothing else is ever taken away. */
export const PACK_CONTENTS = { path: 'contents.json', kind: 'frockwright-pack' } as const;

function contentsOf(paths: readonly string[]): PackDocument {
  const { path, kind } = PACK_CONTENTS;
  const files = [...paths, path];
  return { path, kind: 'text', text: `${JSON.stringify({ kind, files }, null, 2)}\n` };
}

/** Names at the top of a pack; a child's folder must be none of them. */
const README = 'README.txt';
const CHECKS = 'checks.pdf';
const CUT_LIST = 'cut-list.pdf';
const LAY = 'lay.pdf';
const SIZES = 'all-sizes.pdf';
const SEWING = 'sewing.pdf';
const BOOK = 'work-book.pdf';

const foldersOf = ({ children }: DrawnOrder): readonly string[] =>
  distinctFileNames(
    children.map(({ name }) => safeFileName(name, 'child')),
    [README, CHECKS, CUT_LIST, LAY, SIZES, SEWING, BOOK, PACK_CONTENTS.path],
  );

/** A paper for all children together. */
export type PartyPaper = Extract<PackDocument, { kind: 'pages' }> & ReadmeFile;

function partyPapers(
  desk: Desk,
  report: DrawnOrder,
  told: readonly ChildReport[],
  alone: readonly LaidCloths[],
  sizes: readonly Page[] | null,
): { readonly documents: readonly PartyPaper[]; readonly cloths: LaidCloths } {
  const { order, day, paper, ink, timed } = desk;
  const cloths = layParty(
    order,
    told.flatMap(({ pieces }) => pieces),
    alone,
  );
  const document = (path: string, key: WordKey, pages: readonly Page[]): PartyPaper => {
    const about = say(key, {}, ink.units);
    return { path, about, kind: 'pages', title: `${about}: ${order.title}`, pages };
  };
  const lays = { title: order.title, date: day, cloths: cloths.lists, paper, ink };
  const documents = [
    document(CHECKS, 'order.file.party-checks', partyCheckPages(order, report, paper, ink, day)),
    document(CUT_LIST, 'order.file.party-cut-list', cutListPages(lays)),
    ...(cloths.lists.length === 0 ? [] : [document(LAY, 'order.file.party-lay', layPages(lays))]),
    document(SEWING, 'order.file.party-sewing', partySewPages(order, told, paper, ink, day, timed)),
    ...(sizes === null ? [] : [document(SIZES, 'order.file.sizes', sizes)]),
  ];
  const parts = documents.filter(({ path }) => path !== SIZES);
  const book = document(BOOK, 'order.file.book', bookPages(order.title, told, parts, desk));
  return { documents: [...documents, book], cloths };
}
