import { linePath, pathLength } from '../geometry/index.ts';
import { findEdge, type Garment, type Piece, type Seam, type SeamEdge } from '../piece/index.ts';
import type { SketchLine, SketchSide } from './sketch.ts';
import { bodiceOf, bothHalves } from './sketch-bodice.ts';
import type { SkirtLayer } from './sketch-skirt-shape.ts';

/** A seam so near to the side, as a share of the half, is the side seam, which is the outline. */
const AT_SIDE = 0.02;

/**
 * Seams that run down a skirt which is sewn flat to the waist, as those of its gores: where two pieces meet on the
 * waist ring. In gathers and pleats they are hidden.
 */
export function skirtSeams(garment: Garment, side: SketchSide, layer: SkirtLayer): readonly SketchLine[] {
  if (layer.seam.join.kind !== 'flat') return [];
  return seamShares(garment, side, layer.seam).flatMap((share): readonly SketchLine[] => {
    const line = linePath(layer.top(share), layer.foot(share));
    return share > 0 ? bothHalves('seam', line) : [{ stroke: 'seam', path: line }];
  });
}

/** Where pieces meet on half the waist of one side, as shares from the centre to the side. */
function seamShares(garment: Garment, side: SketchSide, seam: Seam): readonly number[] {
  const above = passages(garment, seam.a);
  const below = passages(garment, seam.b);
  const whole = below.reduce((sum, { length }) => sum + length, 0);
  const ring = above.reduce((sum, { length }) => sum + length, 0);
  const back = new Set(bodiceOf(garment, 'back').map((piece) => piece.id));
  // The ring is walked from the centre back; the first front piece begins at the side.
  const first = above.findIndex(({ piece }) => !back.has(piece.id));
  const toSide = above.slice(0, Math.max(0, first)).reduce((sum, { length }) => sum + length, 0);
  const sideAt = (toSide / ring) * whole;
  const meets: number[] = opensAtCentre(below) ? [] : [0];
  let at = 0;
  for (const [i, passage] of below.entries()) {
    at += passage.length;
    const next = below[i + 1];
    if (next !== undefined && !isOneFold(passage, next)) meets.push(at);
  }
  const half = whole / 2;
  const share = (place: number): number =>
    side === 'back' ? place / sideAt : (half - place) / (half - sideAt);
  // The ring is alike on both halves: what is seen of one is mirrored.
  return meets
    .filter((place) => place <= half + 1e-6)
    .map((place) => (Math.abs(share(place)) < 1e-6 ? 0 : share(place)))
    .filter((s) => s >= 0 && s < 1 - AT_SIDE);
}

interface Passage {
  readonly piece: Piece;
  readonly at: SeamEdge;
  readonly length: number;
}

const passages = (garment: Garment, side: readonly SeamEdge[]): readonly Passage[] =>
  side.flatMap((at) => {
    const piece = garment.pieces.find((p) => p.id === at.piece);
    const edge = piece === undefined ? undefined : findEdge(piece, at.edge);
    if (piece === undefined || edge === undefined) return [];
    return [{ piece, at, length: at.times * pathLength(edge.path) }];
  });

/** The edge of the piece beside the one that is sewn, where the ring leaves it or, `before`, comes to it. */
function besideEdge({ piece, at }: Passage, before: boolean): Piece['edges'][number] | undefined {
  const i = piece.edges.findIndex((edge) => edge.name === at.edge);
  return (at.reversed === true) === before
    ? piece.edges[(i + 1) % piece.edges.length]
    : piece.edges.at(i - 1);
}

/** Two passages of a piece that lies on the fold there are one piece of cloth. */
const isOneFold = (one: Passage, next: Passage): boolean =>
  one.piece === next.piece &&
  besideEdge(one, false)?.kind === 'fold' &&
  besideEdge(next, true)?.kind === 'fold';

/** An opening at the centre back is drawn with the closing; below it there is a seam all the same. */
const opensAtCentre = (ring: readonly Passage[]): boolean =>
  ring[0] !== undefined && besideEdge(ring[0], true)?.kind === 'fold';
