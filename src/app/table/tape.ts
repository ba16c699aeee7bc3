import { distance, type Point, pathAt, pathLength, pathNearest } from '../../engine/geometry/index.ts';
import { type EdgeName, edgeOf, edgeStart, type Piece } from '../../engine/piece/index.ts';
import type { LaidPiece } from './lay-pieces.ts';
import { applyTo, inverse } from './motion.ts';

/** An end of the measuring tape, on the table; `on` where it has caught on the outline of a piece. */
export interface TapeEnd {
  readonly at: Point;
  readonly on: { readonly key: string; readonly edge: EdgeName; readonly along: number } | null;
  readonly caught: 'corner' | 'notch' | 'edge' | null;
}

/** The tape catches on the ends of edges and on notches first, then anywhere on an edge, else it lies free. */
export function tapeEnd(laid: readonly LaidPiece[], at: Point, reach: number): TapeEnd {
  let best: (TapeEnd & { readonly far: number }) | null = null;
  const offer = (far: number, make: () => TapeEnd): void => {
    if (far <= reach && (best === null || far < best.far)) best = { ...make(), far };
  };
  for (const { key, cut, frame } of laid) {
    const here = applyTo(inverse(frame), at);
    const { piece } = cut;
    const end = (edge: EdgeName, along: number, caught: TapeEnd['caught']): TapeEnd => ({
      at: applyTo(frame, pathAt(edgeOf(piece, edge).path, along).point),
      on: { key, edge, along },
      caught,
    });
    for (const { name, path } of piece.edges) {
      const nearest = pathNearest(path, here);
      // A corner or a notch draws the tape from twice as far as the line between.
      offer(distance(edgeStart(piece, name), here) / 2, () => end(name, 0, 'corner'));
      offer(Math.max(nearest.distance, reach * 0.25), () => end(name, nearest.at, 'edge'));
    }
    for (const { edge, at: along } of piece.notches) {
      const stands = pathAt(edgeOf(piece, edge).path, along).point;
      offer(distance(stands, here) / 2, () => end(edge, along, 'notch'));
    }
  }
  return best ?? { at, on: null, caught: null };
}

export interface TapeReading {
  /** The tape pulled straight, mm. */
  readonly straight: number;
  /** The tape stood on its edge along the outline, the shorter way round; null unless both ends lie on one piece. */
  readonly along: number | null;
}

export function readTape(laid: readonly LaidPiece[], from: TapeEnd, to: TapeEnd): TapeReading {
  const straight = distance(from.at, to.at);
  if (from.on === null || to.on === null || from.on.key !== to.on.key) return { straight, along: null };
  const piece = laid.find(({ key }) => key === from.on?.key)?.cut.piece;
  if (piece === undefined) return { straight, along: null };
  const [a, b] = [placeRound(piece, from.on), placeRound(piece, to.on)];
  const whole = piece.edges.reduce((sum, { path }) => sum + pathLength(path), 0);
  const way = Math.abs(a - b);
  return { straight, along: Math.min(way, whole - way) };
}

/** How far round the outline a place lies, mm from the start of the first edge. */
function placeRound(
  piece: Piece,
  { edge, along }: { readonly edge: EdgeName; readonly along: number },
): number {
  const index = piece.edges.findIndex(({ name }) => name === edge);
  return piece.edges.slice(0, index).reduce((sum, { path }) => sum + pathLength(path), along);
}
