import {
  cornerBetween,
  meetAtCorners,
  outlineWithoutLoops,
  type Path,
  pathEnd,
  pathEndTangent,
  pathJoin,
  pathOffset,
  pathReverse,
  pathStart,
  pathStartTangent,
} from '../geometry/index.ts';
import type { EdgeKind } from '../piece/index.ts';
import type { AllowedEdge } from './allowed-edge.ts';
import { bridgeDarts } from './dart-mouth.ts';
import { mirrorBelowHem } from './turned-corner.ts';

/** Edges that are folded back unless they are bagged. */
export const HEMS: readonly EdgeKind[] = ['hem', 'curved-hem', 'sleeve-hem', 'curved-sleeve-hem'];

/**
 * The closed line to cut along: every edge moved out by its own allowance. Neighbours are drawn on to where
 * they meet, sharp corners squared off at four times the greater allowance. A fold stays on its stitching
 * line and its neighbours run out to it. Below a hem line the allowance of the neighbouring edge is the
 * mirror image of what lies above. Where an allowance does not fit into a tight hollow, the loop that would
 * result is cut off.
 */
export function cuttingLineOf(allowed: readonly AllowedEdge[]): Path {
  const edges = bridgeDarts(allowed);
  const at = (i: number) => edges[(i + edges.length) % edges.length];
  const parallels = edges.map((own, i) => {
    const moved = pathOffset(own.edge.path, own.allowance);
    return own.edge.kind === 'fold' || own.turnsUp
      ? moved
      : beside(moved, own.allowance, at(i - 1), at(i + 1));
  });
  const corners = edges.map((own, i) => {
    const next = at(i + 1) ?? own;
    return cornerBetween(own.edge.path, next.edge.path, own.allowance, next.allowance);
  });
  const [first, ...rest] = meetAtCorners(parallels, corners);
  if (first === undefined) throw new Error('A piece has at least one edge.');
  return outlineWithoutLoops(pathJoin(first, ...rest));
}

/** The parallel of an edge, prepared at the ends where it comes to a hem. */
function beside(
  parallel: Path,
  side: number,
  before: AllowedEdge | undefined,
  after: AllowedEdge | undefined,
): Path {
  let path = parallel;
  if (after?.turnsUp) {
    const hem = after.edge.path;
    path = mirrorBelowHem(path, {
      point: pathStart(hem),
      along: pathStartTangent(hem),
      hem: after.allowance,
      side,
    });
  }
  if (before?.turnsUp) {
    const hem = before.edge.path;
    const corner = { point: pathEnd(hem), along: pathEndTangent(hem), hem: before.allowance, side };
    path = pathReverse(mirrorBelowHem(pathReverse(path), corner));
  }
  return path;
}
