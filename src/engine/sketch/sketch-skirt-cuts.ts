import {
  between,
  type Path,
  type Point,
  pathEnd,
  pathLength,
  pathNearest,
  pathStart,
} from '../geometry/index.ts';
import type { Piece } from '../piece/index.ts';
import type { SketchLine } from './sketch.ts';
import { bothHalves } from './sketch-bodice.ts';
import { through } from './sketch-path.ts';
import type { SkirtLayer } from './sketch-skirt-shape.ts';

/** A place of a skirt: its share of the way from the centre to the side, and of that from the top to the hem. */
interface OnSkirt {
  readonly across: number;
  readonly down: number;
}

const PLACES = 8;

/** Lines along which the maker has cut a skirt, each from where it leaves the outline straight to where it ends. */
export const skirtCuts = (layer: SkirtLayer, cuts: readonly Path[]): readonly SketchLine[] =>
  cuts.flatMap((cut) => {
    const [from, to] = [placeOn(layer.piece, pathStart(cut)), placeOn(layer.piece, pathEnd(cut))];
    const mix = (p: number, q: number, i: number): number => p + ((q - p) * i) / PLACES;
    const line = through(
      Array.from({ length: PLACES + 1 }, (_, i) => {
        const across = mix(from.across, to.across, i);
        return between(layer.top(across), layer.foot(across), mix(from.down, to.down, i));
      }),
    );
    return line === null ? [] : bothHalves('seam', line);
  });

function placeOn(piece: Piece, p: Point): OnSkirt {
  const near = piece.edges
    .map((edge) => ({ edge, ...pathNearest(edge.path, p) }))
    .reduce((best, next) => (next.distance < best.distance ? next : best));
  const { path, kind, name } = near.edge;
  const [start, end] = [pathStart(path), pathEnd(path)];
  const share = near.at / pathLength(path);
  // Pieces are drawn with the centre on the side of smaller x.
  const across = start.x < end.x ? share : 1 - share;
  if (kind === 'hem' || kind === 'curved-hem') return { across, down: 1 };
  if (name === 'side' || name === 'right') return { across: 1, down: downShare(start, end, share) };
  if (kind === 'fold' || kind === 'centre' || kind === 'closing' || name === 'left')
    return { across: 0, down: downShare(start, end, share) };
  return { across, down: 0 };
}

const downShare = (start: Point, end: Point, share: number): number => (start.y < end.y ? share : 1 - share);
