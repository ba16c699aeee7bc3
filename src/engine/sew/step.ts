import type { EdgeName, PieceId } from '../piece/index.ts';
import type { Saying } from '../words/index.ts';

/** What a step of the work is; her own times are kept by it. */
export const STEP_KINDS = [
  'staystitch',
  'dart',
  'tuck',
  'elastic',
  'gather',
  'pleats',
  'seam',
  'princess',
  'yoke',
  'shoulder',
  'side',
  'sides-in-one',
  'mount',
  'layers',
  'wrap',
  'collar',
  'frill',
  'trim-edge',
  'neck',
  'face',
  'bind',
  'understitch',
  'armholes',
  'turn',
  'shoulders-last',
  'sleeve-seam',
  'set-sleeve',
  'cuff',
  'widths',
  'waist',
  'net-waist',
  'tier',
  'close-below',
  'zip',
  'opening',
  'studs',
  'placket',
  'fell',
  'hem',
  'narrow-hem',
  'trim-net',
  'bind-raw',
  'neaten',
  'turn-edge',
  'make-trim',
  'catch-trim',
  'sew-on',
  'fasten',
  'press',
] as const;
export type StepKind = (typeof STEP_KINDS)[number];

/** Where the work is done; a change from one to the other costs time. */
export type Station = 'machine' | 'iron' | 'hand';

export interface EdgeRef {
  readonly piece: PieceId;
  readonly edge: EdgeName;
}

/**
 * What becomes of the raw allowances of the seams that a step sews. `enclosed`: they come to lie between two layers.
 * `neatened`: overcast or otherwise held. `narrow`: trimmed and sewn over, as a French seam in net.
 */
export type Allowances = 'enclosed' | 'neatened' | 'narrow';

/** One step of the work, before it has found its place in the order. */
export interface SewStep {
  /** The same on every child and after every change of the design that keeps the step. */
  readonly id: string;
  readonly kind: StepKind;
  readonly station: Station;
  /** Seams of the garment that are sewn in this step, by id. */
  readonly sews: readonly string[];
  /** Front and back of a ring are sewn one by one, before they are joined. */
  readonly inParts?: true;
  readonly allowances: Allowances | null;
  /** Raw edges that are finished here without a seam of the garment. */
  readonly finishes: readonly EdgeRef[];
  /** What is handled, in the order of the seam: drawn with the edges lifted out. */
  readonly sideA: readonly EdgeRef[];
  readonly sideB: readonly EdgeRef[];
  /** `Shoulders: Front and Back`. */
  readonly title: Saying;
  readonly say: Saying;
  readonly reasons: readonly Saying[];
}

/** What must be done before what, with the reason for those who wonder. */
export interface Before {
  readonly earlier: string;
  readonly later: string;
}
