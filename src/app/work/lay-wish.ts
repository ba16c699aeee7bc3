import type { OrderFile, OrderProblem } from '../../engine/order/index.ts';
import type { Page } from '../../engine/sheet/index.ts';

/** What is to be laid, and for how long. */
export interface LayWish {
  readonly file: OrderFile;
  /** Printed on the pages where the order names no day. */
  readonly today: string;
  /** The child at that place of the order, or all. */
  readonly of: number | 'party';
  /** On all cloths together. */
  readonly seconds: number;
  readonly seed: number;
}

/** How far the search is; `length` in mm, null before the first lay. */
export interface LayProgress {
  readonly cloth: string;
  readonly length: number | null;
  /** Of the time, 0 to 1. */
  readonly gone: number;
}

export type OnLayProgress = (step: LayProgress) => void;

/** What came out for one cloth; lengths in mm, `buy` and `saves` as asked for in the shop. */
export interface LaidOn {
  readonly cloth: string;
  readonly child: string | null;
  readonly buy: string;
  readonly length: number;
  readonly percent: number;
  readonly saves: string | null;
}

export type LayAnswer =
  | {
      readonly ok: true;
      readonly cloths: readonly LaidOn[];
      readonly pages: readonly Page[];
      /** Sentences of what could not be laid. */
      readonly refused: readonly string[];
    }
  | { readonly ok: false; readonly problems: readonly OrderProblem[] };
