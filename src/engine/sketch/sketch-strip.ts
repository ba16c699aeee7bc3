import {
  linePath,
  type Path,
  type Point,
  pathBounds,
  pathLength,
  pathMirrorX,
  pathReverse,
} from '../geometry/index.ts';
import { type Garment, outlineOf, type Piece, type Seam } from '../piece/index.ts';
import { bothHalves } from './sketch-bodice.ts';
import { bothOn, type LaidOn, NOTHING_ON } from './sketch-cover.ts';
import { closedShape, squareOff, through } from './sketch-path.ts';

/** On which hand of the line, as it is walked, a strip hangs. */
export type Hand = 'left' | 'right';

interface StripWish {
  readonly depth: number;
  /** How many times the line the free edge of the strip measures. */
  readonly fullness: number;
  /** Drawn together at the line; a ring cut from a circle is full without that. */
  readonly gathered: boolean;
  readonly hand: Hand;
  /** It ends at the centre, where the dress opens; else it runs on to the other half. */
  readonly parts?: boolean;
}

/** One wave of the free edge takes about so much of the line; it swings by this share of the depth, mm. */
const WAVE = 22;
const SWING = 0.07;
/** An end so near to the centre line lies on it, mm. */
const AT_CENTRE = 1;
/** Places of one wave through which the free edge is drawn. */
const PER_WAVE = 6;

/** A strip that is sewn along a line of one half and hangs from it; its mirror image is drawn with it. */
export function stripAlong(path: Path, wish: StripWish): LaidOn {
  const length = pathLength(path);
  const waves = Math.max(1, Math.round(length / WAVE));
  const swing = SWING * Math.min(1, Math.max(0, wish.fullness - 1));
  const hand = wish.hand === 'right' ? 1 : -1;
  // It meets that of the other half at the centre.
  const at = (share: number, depth: number): Point => {
    const { x, y } = squareOff(path, share * length, hand * depth * wish.depth);
    return { x: Math.max(0, x), y };
  };
  const count = waves * PER_WAVE;
  const edge = through(
    Array.from({ length: count + 1 }, (_, i) =>
      at(i / count, 1 - swing + swing * Math.cos((2 * Math.PI * i) / PER_WAVE)),
    ),
  );
  if (edge === null) return NOTHING_ON;
  const ends = [0, 1].map((share) => linePath(at(share, 0), at(share, 1)));
  const seenEnds = ends.filter(
    (line) => wish.parts === true || Math.abs(line.segments[0].from.x) > AT_CENTRE,
  );
  const shape = closedShape(
    linePath(at(0, 0), at(0, 1)),
    edge,
    linePath(at(1, 1), at(1, 0)),
    pathReverse(path),
  );
  const folds = Array.from({ length: waves }, (_, i) => (i + 0.5) / waves).flatMap((share, i) => {
    const [from, to] = wish.gathered ? [0.03, i % 2 === 0 ? 0.5 : 0.35] : [i % 2 === 0 ? 0.5 : 0.62, 0.9];
    const stroke = linePath(at(share, from), at(share, to));
    return bothHalves(wish.gathered ? 'gather' : 'pleat', stroke);
  });
  const full = wish.fullness > 1 + 1e-6 ? folds : [];
  return {
    lines: [
      ...bothHalves('outline', edge),
      ...seenEnds.flatMap((line) => bothHalves('outline', line)),
      ...full,
    ],
    covers: [shape, pathMirrorX(shape)],
  };
}

/** Every ruffle that is sewn to this edge, drawn along the line by which the edge is seen. */
export function ruffleOn(garment: Garment, piece: Piece, edge: string, path: Path, hand: Hand): LaidOn {
  const sewn = garment.seams.filter(
    ({ name, a, join }) =>
      name === 'trim' &&
      join.kind === 'gathered' &&
      a.some((at) => at.piece === piece.id && at.edge === edge),
  );
  return bothOn(...sewn.map((seam) => ruffle(garment, seam, path, hand)));
}

function ruffle(garment: Garment, seam: Seam, path: Path, hand: Hand): LaidOn {
  const strip = garment.pieces.find((piece) => piece.id === seam.b[0]?.piece);
  if (strip === undefined || seam.join.kind !== 'gathered') return NOTHING_ON;
  return stripAlong(path, { depth: depthOf(strip), fullness: seam.join.ratio, gathered: true, hand });
}

/** Across a strip, from the edge that is sewn on to the free one. */
export const depthOf = (strip: Piece): number => pathBounds(outlineOf(strip)).maxY;
