import type {
  CalendarNames,
  IssuedPaper,
  OrderFile,
  OrderProblem,
  PaperKind,
  PayList,
  PayWork,
  TimedStep,
  WorkroomFile,
} from '../../engine/order/index.ts';
import type { Saying } from '../../engine/words/index.ts';

/** What an order's shopping, days and price are reckoned from. */
export interface PayGrounds {
  readonly file: OrderFile;
  readonly workroom: WorkroomFile;
  readonly today: string;
  /** Minutes that her other orders keep, by day. */
  readonly taken: readonly (readonly [day: string, minutes: number])[];
  /** The steps of sewing that she has timed in her other orders. */
  readonly timed: readonly TimedStep[];
}

/** What is to be made: a list, a paper that was given out, or the calendar file. */
export type PayPaper =
  | { readonly kind: 'list'; readonly list: PayList }
  | { readonly kind: 'issued'; readonly issued: IssuedPaper }
  | { readonly kind: 'calendar'; readonly names: CalendarNames; readonly key: string };

/** What is to be given out. */
export interface IssueOrder {
  readonly kind: PaperKind;
  readonly number: string;
  readonly payment?: number;
}

export interface MadePayPaper {
  readonly fileName: string;
  readonly content: Blob;
}

export type PayAnswer<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly code: 'problems'; readonly problems: readonly OrderProblem[] }
  | { readonly ok: false; readonly code: 'refused'; readonly why: Saying };

export type { IssuedPaper, PayWork };
