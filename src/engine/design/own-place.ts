import type { Bench } from '../construct/index.ts';
import {
  cross,
  direction,
  distance,
  outlineArea,
  outlineSelfCrossings,
  type Point,
  pathAt,
  pathEnd,
  pathLength,
  pathStart,
  pathStartTangent,
} from '../geometry/index.ts';
import {
  type Edge,
  type EdgeName,
  findEdge,
  type Garment,
  outlineOf,
  type Piece,
  type PieceId,
  pieceOf,
  withPiece,
} from '../piece/index.ts';
import type { WordKey, WordValues } from '../words/index.ts';
import { type StepOutcome, textParam } from './step.ts';

/** Why a change can't be made on this dress. */
export type Refusal = Extract<StepOutcome, { readonly ok: false }>;
export type Found<T> = { readonly ok: true; readonly found: T } | Refusal;

export const found = <T>(value: T): Found<T> => ({ ok: true, found: value });

export const refused = (key: WordKey, values: WordValues): Refusal => ({
  ok: false,
  problem: { key, values },
});

/** Where the name of a piece or an edge comes from: she writes it, and the rule is only an example that works. */
const HER_NAME = 'named by the maker; the rule is an example';
export const pieceParam = (example: PieceId = 'front') =>
  ({ ...textParam(example, HER_NAME), names: 'piece' }) as const;
export const edgeParam = (example: EdgeName) => ({ ...textParam(example, HER_NAME), names: 'edge' }) as const;

export function ownPiece(garment: Garment, id: PieceId): Found<Piece> {
  const piece = garment.pieces.find((p) => p.id === id);
  const known = garment.pieces.map((p) => p.id).join(', ');
  return piece === undefined ? refused('own.no-piece', { piece: id, known }) : found(piece);
}

export interface OwnEdge {
  readonly piece: Piece;
  readonly edge: Edge;
  /** mm */
  readonly length: number;
}

export function ownEdge(garment: Garment, id: PieceId, name: EdgeName): Found<OwnEdge> {
  const piece = ownPiece(garment, id);
  if (!piece.ok) return piece;
  const edge = findEdge(piece.found, name);
  const known = piece.found.edges.map((e) => e.name).join(', ');
  return edge === undefined
    ? refused('own.no-edge', { piece: piece.found.title, edge: name, known })
    : found({ piece: piece.found, edge, length: pathLength(edge.path) });
}

/** A place on the outline; a share of an edge finds it again on every body. */
export interface OwnPlace extends OwnEdge {
  /** From the start of the edge, mm. */
  readonly at: number;
  readonly point: Point;
}

/** Nearer to a corner than this, a place is the corner itself, mm: what is left beside it could not be sewn. */
const CORNER = 5;

/** The place at a share of an edge, and this much (mm) further on, rounded as the bench rounds. */
export function ownPlace(
  garment: Garment,
  bench: Bench,
  [id, name]: readonly [PieceId, EdgeName],
  share: number,
  further = 0,
): Found<OwnPlace> {
  const on = ownEdge(garment, id, name);
  if (!on.ok) return on;
  const { piece, edge, length } = on.found;
  const wished = bench.rounded(share * length + further);
  if (wished > length + CORNER)
    return refused('own.beyond-edge', {
      piece: piece.title,
      edge: name,
      at: { mm: wished },
      length: { mm: length },
    });
  const at = wished < CORNER ? 0 : wished > length - CORNER ? length : wished;
  return found({ ...on.found, at, point: pathAt(edge.path, at).point });
}

/** An edge shorter than this can't be sewn, mm. */
const SHORTEST_EDGE = 1;

/** Puts changed pieces into the garment, if each of them can still be cut out. */
export function withChanged(garment: Garment, ...pieces: readonly Piece[]): Found<Garment> {
  let dress = garment;
  for (const piece of pieces) {
    const problem = unsound(pieceOf(garment, piece.id), piece);
    if (problem !== null) return problem;
    dress = withPiece(dress, piece);
  }
  return found(dress);
}

/** Why a changed piece can't be cut out; null when it can. A fold stays straight and keeps its direction. */
export function unsound(before: Piece, after: Piece): Refusal | null {
  const bent = after.edges.some((edge) => {
    const was = findEdge(before, edge.name);
    if (edge.kind !== 'fold' || was === undefined || was.path === edge.path) return false;
    const [from, to] = [pathStart(edge.path), pathEnd(edge.path)];
    const turned = cross(direction(from, to), pathStartTangent(was.path));
    return pathLength(edge.path) - distance(from, to) > 1e-6 || Math.abs(turned) > 1e-6;
  });
  if (bent) return refused('own.leaves-fold', { piece: after.title });
  const tooShort = after.edges.some((edge) => pathLength(edge.path) < SHORTEST_EDGE);
  const outline = outlineOf(after);
  return tooShort || outlineArea(outline) <= 0 || outlineSelfCrossings(outline).length > 0
    ? refused('own.spoils-outline', { piece: after.title })
    : null;
}

/** Notches stay at their share of an edge whose length has changed. */
export function notchesKept(before: Piece, after: Piece): Piece {
  return {
    ...after,
    notches: after.notches.map((notch) => {
      const [was, is] = [findEdge(before, notch.edge), findEdge(after, notch.edge)];
      if (was === undefined || is === undefined || was.path === is.path) return notch;
      return { ...notch, at: (notch.at * pathLength(is.path)) / pathLength(was.path) };
    }),
  };
}

/** A name that nothing in the list has yet: the stem itself, or with the first free number behind it. */
export function freeName(taken: readonly string[], stem: string): string {
  let name = stem;
  for (let n = 2; taken.includes(name); n++) name = `${stem}-${n}`;
  return name;
}

/** How often a piece occurs in the finished garment, halves of a fold counted apart. */
export const copiesOf = ({ cutting }: Piece): number =>
  cutting.as === 'fold' ? 2 * cutting.copies : cutting.copies;
