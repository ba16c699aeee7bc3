import {
  add,
  direction,
  lineCrossing,
  linePath,
  midpoint,
  type Point,
  pathEnd,
  pathMirrorLine,
  pathStart,
  pathStartTangent,
} from '../geometry/index.ts';
import type { AllowedEdge } from './allowed-edge.ts';

/**
 * The stitching lines that the cutting line follows: over the mouth of a dart runs, in the place of its two legs,
 * what the neighbouring edge makes of it when the dart is folded toward the edge that comes after it and the whole
 * is cut in one line. Opened out that is the neighbour, mirrored on the leg as far as the fold and on the fold from
 * there; the allowance then lies true, and the cutting line never runs into the dart.
 */
export function bridgeDarts(edges: readonly AllowedEdge[]): readonly AllowedEdge[] {
  return edges.flatMap((own, i) => {
    if (own.edge.kind !== 'dart') return [own];
    const next = edges[(i + 1) % edges.length];
    const before = edges[(i + edges.length - 1) % edges.length];
    const after = edges[(i + 2) % edges.length];
    if (next?.edge.kind === 'dart' && before?.edge.kind !== 'dart' && after !== undefined)
      return mouth(own, next, after);
    return before?.edge.kind === 'dart' ? [] : [own];
  });
}

function mouth(outer: AllowedEdge, inner: AllowedEdge, after: AllowedEdge): readonly AllowedEdge[] {
  const [from, tip, to] = [pathStart(outer.edge.path), pathEnd(outer.edge.path), pathEnd(inner.edge.path)];
  const peak = peakOf(from, tip, to, after) ?? midpoint(from, to);
  return [linePath(from, peak), linePath(peak, to)].map((path) => ({
    ...after,
    edge: { ...after.edge, path },
  }));
}

/** Where the mirrored neighbour meets the fold of the dart; null where it does not, beyond the tip say. */
function peakOf(from: Point, tip: Point, to: Point, after: AllowedEdge): Point | null {
  const along = pathStartTangent(after.edge.path);
  const folded = pathMirrorLine(linePath(to, add(to, along)), tip, to);
  const fold = direction(tip, midpoint(from, to));
  const peak = lineCrossing(to, pathStartTangent(folded), tip, fold);
  if (peak === null) return null;
  const [deep, reach] = [peak.x - tip.x, peak.y - tip.y];
  const down = deep * fold.x + reach * fold.y;
  const legDown = (to.x - tip.x) * fold.x + (to.y - tip.y) * fold.y;
  // A peak far from the mouth comes from a neighbour that was never drawn to meet the leg.
  return down > legDown / 2 && down < legDown * 1.5 ? peak : null;
}
