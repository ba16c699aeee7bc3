import type { Check } from '../../engine/check/index.ts';
import type { DraftPart } from '../../engine/construct/index.ts';
import type { CutPiece } from '../../engine/cut/index.ts';
import type { EdgeName, Garment, PieceId } from '../../engine/piece/index.ts';

/** What lies on the table: one child's dress, as drawn, as cut, and as its steps were told. */
export interface TableDress {
  readonly name: string;
  readonly garment: Garment;
  readonly pieces: readonly CutPiece[];
  readonly draft: readonly DraftPart[];
}

/** What can be touched on a dress. A corner is named by the edge that starts there. */
export type TablePlace =
  | { readonly kind: 'piece'; readonly piece: PieceId }
  | { readonly kind: 'edge'; readonly piece: PieceId; readonly edge: EdgeName }
  | { readonly kind: 'corner'; readonly piece: PieceId; readonly edge: EdgeName };

/** Something that does not fit, and where; `id` is the caller's own name for it. */
export interface TableMark {
  readonly id: string;
  readonly level: 'stop' | 'warn';
  readonly where: Check['where'];
}

export const TABLE_VIEWS = ['pieces', 'sewn', 'sketch', 'children', 'drafting'] as const;
export type TableView = (typeof TABLE_VIEWS)[number];

export const SHOWABLE = ['allowances', 'net', 'lining', 'construction', 'names', 'measures'] as const;
export type Showable = (typeof SHOWABLE)[number];

/** How she looks at the dress. */
export interface TableLook {
  readonly view: TableView;
  readonly shown: Readonly<Record<Showable, boolean>>;
  /** Where the sewn view joins front and back: paper can't lie flat at both seams at once. */
  readonly joined: 'shoulder' | 'side';
  /** How many layers are lifted off the sewn view, from the top. */
  readonly lifted: number;
}

export const FIRST_LOOK: TableLook = {
  view: 'pieces',
  shown: { allowances: true, net: true, lining: true, construction: false, names: true, measures: true },
  joined: 'shoulder',
  lifted: 0,
};
