import type { CutPiece } from '../cut/index.ts';
import type { TimedStep } from '../sew/index.ts';
import {
  cutListPages,
  drawPiece,
  type Ink,
  layPages,
  type Page,
  type Paper,
  pageSvg,
  paperOf,
  patternSheets,
  piecePage,
  type TextMeasure,
} from '../sheet/index.ts';
import { say, type WordKey } from '../words/index.ts';
import { type BookPart, bookPages } from './book-pages.ts';
import { type ChildReport, mustNotBeCut } from './check-order.ts';
import { checkPages } from './check-pages.ts';
import { markedNotToCut } from './cut-dress.ts';
import { dressPages } from './dress-pages.ts';
import { safeFileName } from './file-names.ts';
import { growthPages } from './growth-pages.ts';
import { type GrowthReport, growthOf } from './growth-report.ts';
import { handPages } from './hand-pages.ts';
import type { LaidCloths } from './lay-cloths.ts';
import { measuringPages } from './measuring-pages.ts';
import type { Order, OrderChild } from './order.ts';
import { formatName } from './read-paper.ts';
import type { ReadmeFile } from './readme-text.ts';
import { sewPages } from './sew/sew-pages.ts';

/** One file of a pack; `path` is relative, with `/` between folders. */
export type PackDocument =
  | { readonly path: string; readonly kind: 'pages'; readonly title: string; readonly pages: readonly Page[] }
  | { readonly path: string; readonly kind: 'text' | 'svg'; readonly text: string };

/** What every paper of a pack is made with. */
export interface Desk {
  readonly order: Order;
  readonly day: string;
  /** For lists and sheets of text. */
  readonly paper: Paper;
  readonly ink: Ink;
  /** Steps of sewing that she has timed in other orders. */
  readonly timed: readonly TimedStep[];
}

/** What the engine has not of its own and the way to paper needs. */
export interface PaperTools {
  /** Today, `2027-04-24`: printed on the pieces where the order names no day. */
  readonly today: string;
  /** Measures text in the fonts that will be embedded. */
  readonly measure: TextMeasure;
  /** Steps of sewing that she has timed in other orders, where they are at hand: minutes follow them. */
  readonly timed?: readonly TimedStep[];
}

export function deskOf(order: Order, { today, measure, timed = [] }: PaperTools): Desk {
  return {
    order,
    day: order.madeOn ?? today,
    paper: deskPaper(order),
    ink: { units: order.units, measure },
    timed,
  };
}

/** Lists are printed on the first small format of the order, on A4 if it has none. */
const deskPaper = ({ papers }: Order): Paper => papers.find(({ format }) => format.joined) ?? paperOf('a4');

/** One paper of a child: a document, or a folder of them. */
export interface ChildPaper extends ReadmeFile {
  readonly documents: readonly PackDocument[];
}

/** All papers of one child, in `folder`. */
export function childPapers(
  desk: Desk,
  report: ChildReport,
  cloths: LaidCloths,
  folder: string,
): readonly ChildPaper[] {
  const { order, day, paper, ink, timed } = desk;
  const { name, pieces } = report;
  const title = (about: string): string => `${about}: ${name}`;
  const papers: ChildPaper[] = [];
  const add = (file: string, about: string, pages: readonly Page[]): void => {
    const document = { path: `${folder}/${file}`, kind: 'pages', title: title(about), pages } as const;
    papers.push({ path: file, about, documents: [document] });
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
  if (report.dress.child.growth !== null) {
    const grown = growthOf(report.dress.child, report.dress, null);
    add(GROWTH_SHEET, told('order.file.growth'), growthPages(report.dress.child, grown, paper, ink, day));
  }
  papers.push(measuringPaper(desk, report.dress.child, folder));
  const lays = { title: name, date: day, cloths: cloths.lists, paper, ink };
  add('cut-list.pdf', told('order.file.cut-list'), cutListPages(lays));
  if (cloths.lists.length > 0) add('lay.pdf', told('order.file.lay'), layPages(lays));
  add('sewing.pdf', told('order.file.sewing'), sewPages(order, report, paper, ink, day, timed));
  const parts = papers.filter(({ path }) => IN_BOOK.includes(path)).map(bookPart);
  add('work-book.pdf', told('order.file.book'), bookPages(name, [report], parts, desk));
  const drawn = pieceFiles(pieces, ink).map((file) => ({ ...file, path: `${folder}/pieces/${file.path}` }));
  return [...papers, { path: 'pieces/', about: told('order.file.pieces'), documents: drawn }];
}

const GROWTH_SHEET = 'growth.pdf';

/** The papers that follow one another in a child's work book. */
const IN_BOOK: readonly string[] = [
  'the-dress.pdf',
  'checks.pdf',
  GROWTH_SHEET,
  'cut-list.pdf',
  'lay.pdf',
  'sewing.pdf',
];

const bookPart = ({ about, documents }: ChildPaper): BookPart => ({
  about,
  pages: documents.flatMap((document) => (document.kind === 'pages' ? document.pages : [])),
});

/** What is told of a child's growth, on pages with its charts. */
export function growthSheet(
  order: Order,
  child: OrderChild,
  report: GrowthReport,
  tools: PaperTools,
): readonly Page[] {
  const { day, paper, ink } = deskOf(order, tools);
  return growthPages(child, report, paper, ink, day);
}

/** The name of the measuring sheet among the papers of a child. */
export const MEASURING_SHEET = 'measuring-sheet.pdf';

function measuringPaper(
  desk: Desk,
  child: OrderChild,
  folder: string,
): ChildPaper & { readonly pages: readonly Page[] } {
  const { order, day, paper, ink } = desk;
  const about = say('order.file.measuring', {}, ink.units);
  const pages = measuringPages(order, child, paper, ink, day);
  const path = `${folder}/${MEASURING_SHEET}`;
  return {
    path: MEASURING_SHEET,
    about,
    pages,
    documents: [{ path, kind: 'pages', title: `${about}: ${child.name}`, pages }],
  };
}

/** The measuring sheet of a child, alone: it can be had also where the dress can't be drawn or must not be cut. */
export const measuringSheet = (order: Order, child: OrderChild, tools: PaperTools) =>
  measuringPaper(deskOf(order, tools), child, safeFileName(child.name, 'child'));

/** Every piece in a drawing of its own at true size. */
function pieceFiles(pieces: readonly CutPiece[], ink: Ink): readonly PackDocument[] {
  const digits = String(pieces.length).length;
  return pieces.map((piece, i) => {
    const number = String(i + 1).padStart(digits, '0');
    const name = safeFileName(`${number} ${piece.label.title}`, number);
    return { path: `${name}.svg`, kind: 'svg', text: pageSvg(piecePage(drawPiece(piece, ink))) };
  });
}

/** The report as it goes onto paper: where something must not be cut, every piece says so. */
export function forPaper(report: ChildReport, order: Order): ChildReport {
  if (!mustNotBeCut(report)) return report;
  return { ...report, pieces: markedNotToCut(report.pieces, order.units) };
}
