import { designDress } from '../../engine/design/index.ts';
import { type Point, pathAt, pathLength, pathStart, type Vector } from '../../engine/geometry/index.ts';
import type { EdgeName, Garment, Piece, PieceId } from '../../engine/piece/index.ts';
import { type ParamNow, type ParamRef, paramNow, type Wish, withParam } from './param-now.ts';

/** A point of the drawing that moves with a number. `middle`: the middle of the edge, else its start. */
export interface GovernedPoint {
  readonly piece: PieceId;
  readonly edge: EdgeName;
  readonly middle: boolean;
  /** Which way and how far it moves for each mm (or each whole unit of a ratio), in the piece's coordinates. */
  readonly moves: Vector;
}

/** What a number governs: how it stands, every point that it moves, and the ones by which it can be dragged. */
export interface Governed {
  readonly ref: ParamRef;
  readonly now: ParamNow;
  readonly points: readonly GovernedPoint[];
  /** At most one for each piece: the point that follows the number most plainly. */
  readonly handles: readonly GovernedPoint[];
}

/** How far a length is moved to see what follows, mm; far enough for what is rounded, near enough to be straight. */
const NUDGE = 1;
const RATIO_NUDGE = 0.01;
/** A point that moves less than this share of the number does not belong to it. */
const FOLLOWS = 0.03;
/** A point to drag by must follow the number at least by this share, or the number would run away under the thumb. */
const DRAGS = 0.2;

/**
 * Finds what a number governs by moving it a little and drawing the dress again: no step has to declare it, so it
 * holds for steps that nobody has thought of yet. Null where the number can't be moved, or nothing follows it.
 */
export function governedPlaces(wish: Wish, ref: ParamRef): Governed | null {
  const now = paramNow(wish, ref);
  const here = now === null ? null : garmentOf(wish);
  if (now === null || here === null) return null;
  const nudge = now.kind === 'length' ? NUDGE : RATIO_NUDGE;
  for (const by of now.value + nudge <= now.range[1] ? [nudge, -nudge] : [-nudge, nudge]) {
    const value = now.value + by;
    if (value < now.range[0] || value > now.range[1]) continue;
    const there = garmentOf(withParam(wish, ref, now.kind, value));
    if (there === null) continue;
    const points = movedPoints(here, there, by, now.kind);
    return points.length === 0 ? null : { ref, now, points, handles: handlesOf(here, points, now.kind) };
  }
  return null;
}

function garmentOf(wish: Wish): Garment | null {
  const dress = designDress(wish);
  return dress.ok ? dress.garment : null;
}

function movedPoints(here: Garment, there: Garment, by: number, kind: ParamNow['kind']): GovernedPoint[] {
  const least = kind === 'length' ? FOLLOWS : 1;
  return here.pieces.flatMap((piece) => {
    const other = there.pieces.find(({ id }) => id === piece.id);
    if (other === undefined || !sameEdges(piece, other)) return [];
    const found = piece.edges.flatMap(({ name: edge }) =>
      [false, true].flatMap((middle): readonly GovernedPoint[] => {
        const [from, to] = [governedAt(piece, edge, middle), governedAt(other, edge, middle)];
        if (from === null || to === null) return [];
        return [
          { piece: piece.id, edge, middle, moves: { x: (to.x - from.x) / by, y: (to.y - from.y) / by } },
        ];
      }),
    );
    return found.filter(({ moves }) => Math.hypot(moves.x, moves.y) >= least);
  });
}

const sameEdges = (a: Piece, b: Piece): boolean =>
  a.edges.length === b.edges.length && a.edges.every(({ name }, i) => name === b.edges[i]?.name);

/** Where a governed point lies on a piece as it is now drawn; null where the piece has no such edge any more. */
export function governedAt(piece: Piece, edge: EdgeName, middle: boolean): Point | null {
  const found = piece.edges.find(({ name }) => name === edge);
  if (found === undefined) return null;
  return middle ? pathAt(found.path, pathLength(found.path) / 2).point : pathStart(found.path);
}

/**
 * One point a piece. A corner is better than the middle of an edge, which may bend; of the corners that move alike the
 * one that moves most plainly along one direction of the drawing, as numbers are measured down, up or outward.
 */
function handlesOf(
  garment: Garment,
  points: readonly GovernedPoint[],
  kind: ParamNow['kind'],
): readonly GovernedPoint[] {
  const moved = garment.pieces.filter(({ id }) => points.some(({ piece }) => piece === id));
  const outer = moved.filter(({ layer }) => layer === 'shell');
  // A lining follows the dress; it is dragged only by what is its own.
  const pieces = (outer.length > 0 ? outer : moved).map(({ id }) => id);
  return pieces.flatMap((piece) => {
    const own = points
      .filter((p) => p.piece === piece && Math.hypot(p.moves.x, p.moves.y) >= (kind === 'length' ? DRAGS : 1))
      .toSorted((a, b) => plainness(b) - plainness(a));
    return own.slice(0, 1);
  });
}

/** Best where the point moves just as far as the number changes, straight down or across. */
function plainness({ moves, middle }: GovernedPoint): number {
  const reach = Math.hypot(moves.x, moves.y);
  const straight = Math.max(Math.abs(moves.x), Math.abs(moves.y)) / reach;
  return straight - Math.abs(Math.log2(Math.min(8, Math.max(0.125, reach)))) * 0.5 - (middle ? 0.4 : 0);
}

export const governedKey = ({ piece, edge, middle }: GovernedPoint): string =>
  `${piece} ${edge} ${middle ? 'middle' : 'start'}`;
