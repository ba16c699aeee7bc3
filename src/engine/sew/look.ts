import type { ClothKind } from '../check/index.ts';
import type { CutPiece } from '../cut/index.ts';
import { pathLength } from '../geometry/index.ts';
import {
  type ClothRole,
  type EdgeKind,
  edgeAt,
  findEdge,
  type Garment,
  opensBack,
  type Piece,
  type PieceId,
  pieceAt,
  type Seam,
  type SeamEdge,
  seamsNamed,
} from '../piece/index.ts';
import { ringsOf } from './rings.ts';
import type { EdgeRef } from './step.ts';

/** What the sewing plan is made from. */
export interface SewInput {
  readonly garment: Garment;
  /** The same pieces with their allowances; without them every edge counts as having enough. */
  readonly cut?: readonly CutPiece[];
  /** What the order fills the cloth roles with, as far as it says. */
  readonly clothKinds?: Readonly<Partial<Record<ClothRole, ClothKind | null>>>;
}

/** A garment as the one who sews it looks at it, with what many rules ask found once. */
export interface SewLook extends SewInput {
  /** How the armholes of shell and lining are brought together. */
  readonly armholes: ArmholeWay;
  /** Pieces joined side by side into one length or ring, by the name of it: the widths of one layer of a skirt. */
  readonly ringOf: (piece: PieceId) => string;
  readonly seamsAt: (at: EdgeRef) => readonly Seam[];
}

/**
 * `through-shoulder`: neck and armholes bagged, then each back drawn through its shoulder. `shoulders-last`: bagged
 * front and back apart, the shoulders closed afterwards. `by-hand`: the lining is felled to the armhole at the end.
 */
export type ArmholeWay = 'through-shoulder' | 'shoulders-last' | 'by-hand' | 'none';

/**
 * The back must pass through the finished shoulder, about 4 cm wide at least, mm (common practice; a maker's page of
 * 15 Aug 2011 tells of narrow shoulders that would not turn, and sews the shoulders last).
 */
const TURNS_THROUGH = 40;

export function lookAtSewing(input: SewInput): SewLook {
  const { garment } = input;
  const seams = new Map<string, Seam[]>();
  for (const seam of garment.seams) {
    for (const key of new Set([...seam.a, ...seam.b].map(keyOf))) {
      seams.set(key, [...(seams.get(key) ?? []), seam]);
    }
  }
  const rings = ringsOf(garment);
  const look: SewLook = {
    ...input,
    armholes: 'none',
    ringOf: (piece) => rings.get(piece) ?? piece,
    seamsAt: (at) => seams.get(keyOf(at)) ?? [],
  };
  return { ...look, armholes: armholeWay(look) };
}

export const keyOf = ({ piece, edge }: EdgeRef): string => `${piece}/${edge}`;

export const usesOf = (seam: Seam): readonly SeamEdge[] => [...seam.a, ...seam.b];

/** Each edge of a side once, as it is named. */
export function refsOf(side: readonly EdgeRef[]): readonly EdgeRef[] {
  const seen = new Map(side.map(({ piece, edge }) => [keyOf({ piece, edge }), { piece, edge }]));
  return [...seen.values()];
}

export const layerOf = (look: SewLook, seam: Seam): 'shell' | 'lining' =>
  usesOf(seam).every((at) => pieceAt(look, at).layer === 'lining') ? 'lining' : 'shell';

export const hasKind = (piece: Piece, ...kinds: readonly EdgeKind[]): boolean =>
  piece.edges.some((edge) => kinds.includes(edge.kind));

/** A piece between neck and waist, of either layer: no skirt, no sleeve, no trim. */
export const isBodice = (piece: Piece): boolean =>
  hasKind(piece, 'neck', 'shoulder', 'armhole', 'style-line') && !hasKind(piece, 'hem', 'curved-hem', 'cap');

/** Facings are pieces of the inside too; they cover a narrow strip only. */
export const isFacing = (look: SewLook, piece: Piece): boolean =>
  seamsNamed(look, 'facing').some(
    (seam) => seam.b.some((at) => at.piece === piece.id) && seam.a.every((at) => at.piece !== piece.id),
  ) || piece.id.includes('facing');

/** What the order cuts a piece from; a net role without a word of it is net. */
export function clothKindOf(look: SewLook, piece: Piece): ClothKind | null {
  return look.clothKinds?.[piece.cloth] ?? (piece.cloth === 'net' ? 'net' : null);
}

/** Length of edges over all copies that the seam counts, mm; a list without counts counts each edge once. */
export const lengthAlong = (
  look: SewLook,
  side: readonly (EdgeRef & { readonly times?: number })[],
): number => side.reduce((sum, at) => sum + (at.times ?? 1) * pathLength(edgeAt(look, at).path), 0);

/** How often an edge of this piece occurs in the finished garment. */
export const copiesOf = ({ cutting }: Piece): number =>
  cutting.as === 'fold' ? 2 * cutting.copies : cutting.copies;

/** The edges before and after this one on the outline of its piece. */
export function neighboursOf(look: SewLook, at: EdgeRef): readonly EdgeRef[] {
  const { edges } = pieceAt(look, at);
  const here = edges.findIndex(({ name }) => name === at.edge);
  return [edges.at(here - 1), edges[(here + 1) % edges.length]].flatMap((edge) =>
    edge === undefined ? [] : [{ piece: at.piece, edge: edge.name }],
  );
}

function armholeWay(look: SewLook): ArmholeWay {
  const bagged = seamsNamed(look, 'armhole-lining');
  if (bagged.length === 0) return 'none';
  const others = bagged.flatMap((seam) => seam.a).flatMap((at) => look.seamsAt(at));
  const sides = seamsNamed(look, 'side').some((seam) => layerOf(look, seam) === 'shell');
  if (others.some(({ name }) => name !== 'armhole-lining') || !sides || neckIsClosedOver(look))
    return 'by-hand';
  const opening = look.garment.closing;
  if (opensBack(opening) && shoulderWidth(look) >= TURNS_THROUGH - 0.05) return 'through-shoulder';
  return neckWaits(look) ? 'shoulders-last' : 'by-hand';
}

/** What goes over both layers, so that shell and lining are first laid wrong sides together there. */
export const isClosedOver = (look: SewLook, seam: Seam): boolean =>
  seam.a.some((at) => look.seamsAt(at).some(({ name }) => name === 'binding' || name === 'facing'));

/** Layers that lie wrong sides together at the neck can't be sewn right sides together at the armhole. */
const neckIsClosedOver = (look: SewLook): boolean =>
  seamsNamed(look, 'neck-lining').some((seam) => isClosedOver(look, seam));

/** Finished width of the shell's shoulder, mm; none where no shoulder is sewn. */
export function shoulderWidth(look: SewLook): number {
  const shell = seamsNamed(look, 'shoulder').filter((seam) => layerOf(look, seam) === 'shell');
  const widths = shell.map((seam) => seam.a.reduce((sum, at) => sum + pathLength(edgeAt(look, at).path), 0));
  return widths.length === 0 ? 0 : Math.min(...widths);
}

/** Whether the neck may be sewn front and back apart: nothing but the lining runs round it over the shoulder. */
const neckWaits = (look: SewLook): boolean =>
  look.garment.pieces
    .filter(({ layer }) => layer === 'shell')
    .flatMap((piece) =>
      piece.edges.filter(({ kind }) => kind === 'neck').map(({ name }) => ({ piece: piece.id, edge: name })),
    )
    .every((at) => look.seamsAt(at).every(({ name }) => name === 'neck-lining'));

/** The edge of the shell that lies over an edge of the lining, under the same name. */
export function shellOver(look: SewLook, at: EdgeRef): EdgeRef | null {
  const id = at.piece.replace(/-lining$/, '');
  const over = [id, `${id}-yoke`, `${id}-side`]
    .map((name) => look.garment.pieces.find((piece) => piece.id === name))
    .find((piece) => piece !== undefined && piece.id !== at.piece && findEdge(piece, at.edge) !== undefined);
  return over === undefined ? null : { piece: over.id, edge: at.edge };
}
