import { type Affine, midpoint, type Point, pathAt, pathEnd, pathStart } from '../geometry/index.ts';
import { findEdge } from '../piece/index.ts';
import type { ClothRepeat, LayPiece, StripeMatch } from './cloth-rules.ts';
import { foldOf } from './piece-shape.ts';
import { type Turn, turnPoint } from './turns.ts';

/** The point of a piece that decides where it may lie on the stripes, and the phase on which that point must fall, mm. */
export interface StripeAnchor {
  /** As the piece lies unmirrored in its first turn, before it is put anywhere. */
  readonly point: Point;
  readonly phase: Point;
}

/** A match that cannot be had together with those before it: the stripes miss by `off` mm. */
interface StripeClash {
  readonly piece: number;
  readonly group: string;
  readonly off: number;
}

/** A piece with its points as it lies; `opened`: its own centre line where it was opened out of a half. */
export interface MatchedPiece {
  readonly piece: number;
  readonly points: readonly { readonly group: string; readonly at: Point }[];
  readonly opened: Point | null;
}

/** Where a match lies on the cloth before the piece is put anywhere; null for an edge that the piece does not have. */
export function matchedPoint(piece: LayPiece, match: StripeMatch, frame: Affine, turn: Turn): Point | null {
  const edge = findEdge(piece.cut.piece, match.edge);
  if (edge === undefined) return null;
  const own =
    match.at === 'start'
      ? pathStart(edge.path)
      : match.at === 'end'
        ? pathEnd(edge.path)
        : pathAt(edge.path, match.at).point;
  return turnPoint(turn, inFrame(frame, own));
}

export function inFrame({ a, b, c, d, e, f }: Affine, p: Point): Point {
  return { x: a * p.x + c * p.y + e, y: b * p.x + d * p.y + f };
}

/** Stripes that miss by less are not seen, mm (common practice, no source). */
const UNSEEN = 0.5;

/**
 * Gives every group of matched points one phase of the repeat, piece after piece along the matches: the first of each
 * chain falls on the line of the stripe. A piece opened out has its centre line on the line of the check, so that both
 * its sides meet a pair. Pieces of a chain that do not agree keep what comes first; the rest is told.
 */
export function stripePhases(
  pieces: readonly MatchedPiece[],
  repeat: ClothRepeat,
): { readonly anchors: ReadonlyMap<number, StripeAnchor>; readonly clashes: readonly StripeClash[] } {
  const along = chained(pieces, repeat.along?.every, (p) => p.x, false);
  const across = chained(pieces, repeat.across?.every, (p) => p.y, true);
  const anchors = new Map<number, StripeAnchor>();
  for (const { piece, points } of pieces) {
    const point = points[0]?.at;
    if (point === undefined) continue;
    const phase = { x: along.phases.get(piece) ?? 0, y: across.phases.get(piece) ?? 0 };
    anchors.set(piece, { point, phase });
  }
  return { anchors, clashes: [...along.clashes, ...across.clashes] };
}

/** Phase of the first point of each piece, in one direction. */
function chained(
  pieces: readonly MatchedPiece[],
  every: number | undefined,
  part: (p: Point) => number,
  centred: boolean,
): { readonly phases: ReadonlyMap<number, number>; readonly clashes: readonly StripeClash[] } {
  const phases = new Map<number, number>();
  const clashes: StripeClash[] = [];
  if (every === undefined) return { phases, clashes };
  const groups = new Map<string, number>();
  const waiting = pieces.filter(({ points }) => points.length > 0);
  /** `base`: the phase of the place from which the points of the piece are measured. */
  const settle = (piece: MatchedPiece, base: number): void => {
    waiting.splice(waiting.indexOf(piece), 1);
    for (const [i, { group, at }] of piece.points.entries()) {
      const phase = base + part(at);
      if (i === 0) phases.set(piece.piece, phase);
      const known = groups.get(group);
      if (known === undefined) groups.set(group, phase);
      else if (missedBy(phase, known, every) > UNSEEN) {
        clashes.push({ piece: piece.piece, group, off: missedBy(phase, known, every) });
      }
    }
  };
  if (centred) {
    for (const piece of [...waiting]) if (piece.opened !== null) settle(piece, -part(piece.opened));
  }
  while (waiting.length > 0) {
    const bound = waiting.find(({ points }) => points.some(({ group }) => groups.has(group)));
    const next = bound ?? waiting[0];
    if (next === undefined) break;
    const hold = next.points.find(({ group }) => groups.has(group)) ?? next.points[0];
    if (hold === undefined) break;
    settle(next, (groups.get(hold.group) ?? 0) - part(hold.at));
  }
  return { phases, clashes };
}

function missedBy(a: number, b: number, every: number): number {
  const off = Math.abs(a - b) % every;
  return Math.min(off, every - off);
}

/** The centre line of a piece drawn as half: any point of it, as the piece lies. */
export function centrePoint(piece: LayPiece, frame: Affine, turn: Turn): Point | null {
  const fold = foldOf(piece.cut);
  if (fold === null) return null;
  return turnPoint(turn, inFrame(frame, midpoint(pathStart(fold), pathEnd(fold))));
}
