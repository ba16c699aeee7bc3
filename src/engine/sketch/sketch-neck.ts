import { type Path, pathBounds, pathLength, pathSlice, pathStart } from '../geometry/index.ts';
import type { Garment } from '../piece/index.ts';
import type { SketchSide } from './sketch.ts';
import { bodiceOf } from './sketch-bodice.ts';
import { joinNear } from './sketch-path.ts';

/** Edges of the left half are called so on a piece that the maker has drawn out to both halves. */
const OTHER = 'other-';

/** Half the neck of one side from the centre line to the neck point, without a stand for buttons. */
export function neckOf(garment: Garment, side: SketchSide): Path | null {
  const edges = bodiceOf(garment, side)
    .flatMap((piece) => piece.edges.filter((edge) => edge.kind === 'neck' && !edge.name.startsWith(OTHER)))
    .toSorted((p, q) => pathBounds(p.path).minX - pathBounds(q.path).minX);
  const neck = joinNear(edges.map((edge) => edge.path));
  if (neck === null || side === 'front') return neck;
  const stand = Math.max(0, -pathStart(neck).x);
  return stand === 0 || stand >= pathLength(neck) ? neck : pathSlice(neck, stand, pathLength(neck));
}
