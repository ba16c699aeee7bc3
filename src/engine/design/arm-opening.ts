import type { Half } from '../block/index.ts';
import { pathBounds } from '../geometry/index.ts';
import { edgeOf, findEdge, type Garment, type SeamEdge } from '../piece/index.ts';
import { bodicePieces, HALVES } from './bodice.ts';

/** The edge of the bodice round the arm: the armhole, or the outer edge of a drop shoulder. */
export type OpenArm = 'armhole' | 'sleeve-edge';

/** Which edge round the arm is still to be finished; null where a sleeve, a band or a frill is sewn to it. */
export function openArm(garment: Garment): OpenArm | null {
  for (const name of ['armhole', 'sleeve-edge'] as const) {
    if (!HALVES.every((half) => armEdgesOf(garment, half, name).length > 0)) continue;
    const taken = garment.seams.some(
      (seam) =>
        seam.name !== 'armhole-lining' &&
        [...seam.a, ...seam.b].some((at) => at.edge === name && /^(front|back)/.test(at.piece)),
    );
    return taken ? null : name;
  }
  return null;
}

/** The edges of one half round the arm, from the shoulder down, or up with `up`; a style line may have cut them. */
export function armEdgesOf(garment: Garment, half: Half, name: OpenArm, up = false): readonly SeamEdge[] {
  const down = bodicePieces(garment, half)
    .filter((piece) => findEdge(piece, name) !== undefined)
    .map((piece) => ({ piece: piece.id, top: pathBounds(edgeOf(piece, name).path).minY }))
    .toSorted((p, q) => p.top - q.top)
    .map(({ piece }) => ({ piece, edge: name, times: 2, reversed: up }));
  return up ? down.toReversed() : down;
}
