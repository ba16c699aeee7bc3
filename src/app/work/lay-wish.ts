import type { LaidCloth, OrderFile, OrderProblem, PlacedLength } from '../../engine/order/index.ts';

/** What is laid: the children of an order, or one of them. */
export interface LayGrounds {
  readonly file: OrderFile;
  /** For orders that name no day. */
  readonly today: string;
  /** The child at that place of the order, or all. */
  readonly of: number | 'party';
}

/** A longer search for one lay, which goes on from the one that the file keeps. */
export interface LayWish extends LayGrounds {
  readonly cloth: string;
  /** Where each child has a lay of her own, whose; null for that of all. */
  readonly child: string | null;
  readonly seed: number;
  /** By the clock, or by the count of places that are tried: then it comes out the same everywhere. */
  readonly until: { readonly seconds: number } | { readonly evaluations: number };
}

/** A lay of one cloth. `kept`: how it stands with the one that the file keeps, null where another was searched for. */
export interface ClothLaid extends Pick<LaidCloth, 'cloth' | 'kept'> {
  /** Whose pieces alone lie on it; null for those of several children. */
  readonly child: string | null;
  readonly lengths: readonly PlacedLength[];
  /** What is bought for the children one by one, mm; null where only one is laid. */
  readonly alone: number | null;
}

/** All lays at a glance. */
export type LayLook =
  | {
      readonly ok: true;
      readonly laid: readonly ClothLaid[];
      /** Sentences of what could not be laid. */
      readonly refused: readonly string[];
    }
  | { readonly ok: false; readonly problems: readonly OrderProblem[] };

export type OnLaid = (laid: ClothLaid) => void;

/** Where everything lies on a length, by the plan that the look has brought. */
export type LengthFound = Pick<PlacedLength, 'at' | 'placed'>;

/** How far a search is; `lengths` only where they are better than those told before. */
export interface LayProgress {
  /** Of the time or the tries, 0 to 1. */
  readonly gone: number;
  readonly evaluations: number;
  readonly lengths: readonly LengthFound[] | null;
}

export type OnLayProgress = (step: LayProgress) => void;

export type LayAnswer =
  | { readonly ok: true; readonly lengths: readonly LengthFound[]; readonly evaluations: number }
  /** No lay: sentences why. */
  | { readonly ok: false; readonly refused: readonly string[] };
