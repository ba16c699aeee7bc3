import type { Body } from '../body/index.ts';
import type { Point } from '../geometry/index.ts';
import type { ClothRole, EdgeName, Garment, PieceId } from '../piece/index.ts';
import type { Saying, WordKey, WordValues } from '../words/index.ts';

export type CheckCode =
  | 'seam-lengths'
  | 'corners-run-smooth'
  | 'notches-meet'
  | 'outline-closed'
  | 'outline-simple'
  | 'lining-fits'
  | 'facing-matches'
  | 'collar-matches'
  | 'head-passes'
  | 'neck-clears'
  | 'arm-passes'
  | 'hand-passes'
  | 'cap-ease'
  | 'armhole-ratio'
  | 'chest-ease'
  | 'waist-ease'
  | 'armhole-depth'
  | 'pleats-whole'
  | 'pleat-joins'
  | 'tiers-match'
  | 'hem-walks'
  | 'gather-ratio'
  | 'closing-long-enough'
  | 'shoulder-narrow'
  | 'net-caution'
  | 'ties-and-bows'
  | 'small-parts';

/**
 * `ok`: fits. `note`: worth knowing, nothing to mend. `warn`: she may go on, but should look. `stop`: cut nothing
 * before this is mended.
 */
export type Level = 'ok' | 'note' | 'warn' | 'stop';

type Quantity =
  | { readonly mm: number }
  | { readonly degrees: number }
  | { readonly count: number }
  | { readonly ratio: number };

export interface CheckPlace {
  readonly pieces: readonly PieceId[];
  readonly edges: readonly { readonly piece: PieceId; readonly edge: EdgeName }[];
  /** In the coordinates of the first piece. */
  readonly at?: Point;
}

/** One finding: how it stands, what was measured and allowed, where, what is so and what to do about it. */
export interface Check {
  readonly code: CheckCode;
  readonly level: Level;
  readonly measured: Quantity | null;
  readonly allowed: { readonly from?: Quantity; readonly to?: Quantity } | null;
  readonly where: CheckPlace;
  readonly say: Saying;
  readonly todo: Saying | null;
}

/** What the maker allows round the finished garment beyond the body, mm, from least to most. */
export interface EaseBounds {
  readonly chestEase: readonly [number, number];
  readonly waistEase: readonly [number, number];
}

/** Sorts of cloth that sew differently. */
export const CLOTH_KINDS = [
  'satin',
  'taffeta',
  'net',
  'lace',
  'organza',
  'chiffon',
  'velvet',
  'cotton',
  'crepe',
  'lining',
] as const;

export type ClothKind = (typeof CLOTH_KINDS)[number];

export interface CheckInput {
  readonly garment: Garment;
  readonly body: Body;
  readonly bounds: EaseBounds;
  /** What the order fills the cloth roles with, as far as it says. */
  readonly clothKinds?: Readonly<Partial<Record<ClothRole, ClothKind | null>>>;
}

/** A sentence of the core catalogue; the key is checked by the compiler. */
export const tell = (key: WordKey, values: WordValues = {}): Saying => ({ key, values });

export const NOWHERE: CheckPlace = { pieces: [], edges: [] };
