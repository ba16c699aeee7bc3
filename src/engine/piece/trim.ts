import type { PieceId } from './piece.ts';

/** Where on the dress a trim sits; the cautions differ by place. */
export type TrimPlace =
  | 'neck'
  | 'nape'
  | 'shoulder'
  | 'chest'
  | 'waist-front'
  | 'waist-back'
  | 'back'
  | 'sleeve'
  | 'skirt';

/** What the cautions must know of a trim: cords and ties by their free ends, small parts by their size. */
export type Trim = HangingTrim | ButtonTrim;

export interface HangingTrim {
  /** `sewn-bow`: sewn on and not meant to be undone. The others can be tied and untied. */
  readonly kind: 'sash' | 'tied-bow' | 'sewn-bow' | 'ties' | 'lacing';
  readonly place: TrimPlace;
  /** Free end beyond the place where it is tied or sewn on, undone, mm; 0 for a bow without tails. */
  readonly tail: number;
  readonly pieces: readonly PieceId[];
}

export interface ButtonTrim {
  readonly kind: 'buttons' | 'studs';
  readonly place: TrimPlace;
  readonly diameter: number;
  readonly pieces: readonly PieceId[];
}
