import { type Path, pathLength } from '../geometry/index.ts';
import {
  type Edge,
  type EdgeKind,
  type EdgeName,
  edgeAt,
  type Piece,
  type PieceId,
  pieceAt,
  type Seam,
  type SeamEdge,
  seamsNamed,
} from '../piece/index.ts';
import type { WordKey, WordValue } from '../words/index.ts';
import type { Check, CheckInput, CheckPlace } from './check.ts';

/** What every check looks at: the input, and lengths that are measured only once for all of them. */
export interface Look extends CheckInput {
  readonly lengthOf: (path: Path) => number;
}

/** One rule of the trade, asked of a whole garment. */
export type Rule = (look: Look) => readonly Check[];

export function lookAt(input: CheckInput): Look {
  const known = new Map<Path, number>();
  const lengthOf = (path: Path): number => {
    const before = known.get(path);
    if (before !== undefined) return before;
    const length = pathLength(path);
    known.set(path, length);
    return length;
  };
  return { ...input, lengthOf };
}

/** Length of one side of a seam over all its copies, mm. */
export const sideLength = (look: Look, side: readonly SeamEdge[]): number =>
  side.reduce((sum, at) => sum + at.times * look.lengthOf(edgeAt(look, at).path), 0);

/**
 * How many separate seams one entry stands for: two shoulder seams, but one neck seam, whose halves run into each
 * other over the fold. Lengths are told and judged for one of them.
 */
export function sewnTimes(look: Look, seam: Seam): number {
  const all = [...seam.a, ...seam.b];
  const times = all[0]?.times ?? 1;
  if (times === 1 || all.some((at) => at.times !== times)) return 1;
  return seam.a.some((at) => meetsFold(pieceAt(look, at), at.edge)) ? 1 : times;
}

function meetsFold(piece: Piece, name: EdgeName): boolean {
  const here = piece.edges.findIndex((edge) => edge.name === name);
  return [here - 1, here + 1].some((i) => piece.edges.at(i % piece.edges.length)?.kind === 'fold');
}

/** How often an edge of this piece occurs in the finished garment. */
export const copiesOf = (piece: Piece): number =>
  piece.cutting.as === 'fold' ? 2 * piece.cutting.copies : piece.cutting.copies;

export interface PieceEdge {
  readonly piece: Piece;
  readonly edge: Edge;
}

export const edgesOfKind = (pieces: readonly Piece[], ...kinds: readonly EdgeKind[]): readonly PieceEdge[] =>
  pieces.flatMap((piece) =>
    piece.edges.filter((edge) => kinds.includes(edge.kind)).map((edge) => ({ piece, edge })),
  );

/** Length of edges over all their copies in the finished garment, mm. */
export const girthOf = (look: Look, edges: readonly PieceEdge[]): number =>
  edges.reduce((sum, { piece, edge }) => sum + copiesOf(piece) * look.lengthOf(edge.path), 0);

const HEMS: readonly EdgeKind[] = ['hem', 'curved-hem'];

const hasKind = (piece: Piece, ...kinds: readonly EdgeKind[]): boolean =>
  piece.edges.some((edge) => kinds.includes(edge.kind));

/** The outer pieces between neck and waist: no skirt, no sleeve, no lining. */
export const bodiceOf = (look: Look): readonly Piece[] =>
  look.garment.pieces.filter(
    (piece) =>
      piece.layer === 'shell' &&
      piece.cloth !== 'skirt' &&
      hasKind(piece, 'neck', 'shoulder', 'armhole', 'side', 'waist') &&
      !hasKind(piece, ...HEMS, 'cap'),
  );

/** The outer edge of a cap or of a sleeve in one with the bodice. */
export const SLEEVE_EDGES: readonly EdgeKind[] = ['sleeve-hem', 'curved-sleeve-hem'];

/** Whether the shoulder runs on over the arm: it has an overarm beside the shoulder, or a sleeve edge of its own. */
export const runsOverArm = (look: Look): boolean =>
  bodiceOf(look).some(
    (piece) =>
      hasKind(piece, ...SLEEVE_EDGES) ||
      // A shoulder that a dart parts runs on beyond the legs, not over the arm.
      piece.edges.some((edge, i) => edge.kind === 'shoulder' && piece.edges[i + 1]?.kind === 'shoulder'),
  );

/** A piece and those that a style line cut from it; they share its coordinates. */
export function withYokes(look: Look, piece: Piece): readonly Piece[] {
  const ids = new Set<PieceId>([piece.id]);
  for (const seam of seamsNamed(look, 'yoke', 'princess', 'own')) {
    const joined = [...seam.a, ...seam.b].map((at) => at.piece);
    if (joined.some((id) => ids.has(id))) for (const id of joined) ids.add(id);
  }
  return look.garment.pieces.filter((p) => ids.has(p.id));
}

export const placeOf = (edges: readonly PieceEdge[]): CheckPlace => ({
  pieces: [...new Set(edges.map(({ piece }) => piece.id))],
  edges: edges.map(({ piece, edge }) => ({ piece: piece.id, edge: edge.name })),
});

export const placeOfSeam = (seam: Seam): CheckPlace => {
  const all = [...seam.a, ...seam.b];
  return {
    pieces: [...new Set(all.map((at) => at.piece))],
    edges: all.map((at) => ({ piece: at.piece, edge: at.edge })),
  };
};

export const titleOf = (piece: Piece): WordValue => piece.title;

/** One side of a seam in words: its piece, or the part of the dress when it runs over several pieces. */
export function sideWords(look: Look, side: readonly SeamEdge[]): WordValue {
  const pieces = [...new Set(side.map((at) => pieceAt(look, at)))];
  const [first, ...others] = pieces;
  if (first !== undefined && others.length === 0) return titleOf(first);
  const part: WordKey = pieces.every((piece) => piece.layer === 'lining')
    ? 'check.part.lining'
    : pieces.every((piece) => piece.cloth === 'skirt' || hasKind(piece, ...HEMS))
      ? 'check.part.skirt'
      : 'check.part.bodice';
  return { word: part };
}

export const seamWords = (seam: Seam): WordValue => ({ word: `check.seam.${seam.name}` satisfies WordKey });
export const kindWords = (kind: EdgeKind): WordValue => ({ word: `check.edge.${kind}` satisfies WordKey });
