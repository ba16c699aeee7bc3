import type { OrderFile, OrderProblem, TimedStep } from '../../engine/order/index.ts';
import type { Page } from '../../engine/sheet/index.ts';
import type { MissingLetters } from '../../pdf/index.ts';

/** Whose papers are meant: the child at that place of the order, or the party as a whole. */
export type PaperOf = number | 'party';

/** What papers are made from. */
export interface PaperGrounds {
  readonly file: OrderFile;
  /** Printed on the pieces where the order names no day. */
  readonly today: string;
  /** Steps of sewing that she has timed in her other orders: the minutes of the plan follow them. */
  readonly timed?: readonly TimedStep[];
}

/** One paper that can be made. */
export interface PaperKind {
  /** Its name in the pack, which tells it from the others: `pattern-A4.pdf`; `pieces/` is a folder. */
  readonly path: string;
  /** What is on it, in words of the engine. */
  readonly about: string;
  /** Number of pages; of a folder the number of its files. */
  readonly count: number;
}

/** All papers of a child or of the party, and the pages of one of them. */
export interface PaperLook {
  readonly papers: readonly PaperKind[];
  /** The paper that was asked for, or where there is no such one, the first pattern or the first paper. */
  readonly path: string;
  readonly pages: readonly Page[];
}

/** Which paper is to be made. */
export interface PaperWish {
  readonly of: PaperOf;
  /** As in `PaperKind`; `everything` for the whole pack in one zip. */
  readonly path: string;
  /** Make it although a check says that something must not be cut; the pieces then say so. */
  readonly evenSo: boolean;
}

export const EVERYTHING = 'everything';

/** A file to be saved. */
export interface MadePaper {
  readonly fileName: string;
  readonly content: Blob;
  /** Pages of the PDFs in it. */
  readonly pages: number;
  /** Letters of names that the fonts lack. */
  readonly missing: readonly MissingLetters[];
}

export type PaperAnswer<T> = { readonly ok: true; readonly value: T } | PaperRefusal;

export type PaperRefusal =
  /** A field can't be read, or the dress can't be drawn. */
  | { readonly ok: false; readonly code: 'problems'; readonly problems: readonly OrderProblem[] }
  /** Something must not be cut, and `evenSo` was not said. */
  | { readonly ok: false; readonly code: 'stops'; readonly names: readonly string[] }
  /** The order has no such child or paper any more. */
  | { readonly ok: false; readonly code: 'gone' };

/** How far the work is; `what` is the child or the paper at hand. */
export interface PaperStep {
  readonly done: number;
  readonly total: number;
  readonly what: string;
}

export type OnPaperStep = (step: PaperStep) => void;
