import type { Half } from '../block/index.ts';
import {
  edgeLength,
  findEdge,
  type Garment,
  type Notch,
  pieceOf,
  type SeamEdge,
  withPiece,
} from '../piece/index.ts';
import { armEdgesOf, type OpenArm } from './arm-opening.ts';

/** The edges of one half to which a sleeve or a band can be sewn, from the shoulder down to the underarm. */
export const armEdges = (garment: Garment, half: Half, name: OpenArm): readonly SeamEdge[] =>
  armEdgesOf(garment, half, name).filter(
    ({ piece, edge }) => findEdge(pieceOf(garment, piece), edge)?.kind === 'armhole',
  );

export const armEdgeLength = (garment: Garment, half: Half, name: OpenArm): number =>
  armEdges(garment, half, name).reduce(
    (sum, { piece }) => sum + edgeLength(pieceOf(garment, piece), name),
    0,
  );

/** The whole ring of one arm as a side of a seam: from the underarm up the front and down the back. */
export const armRing = (garment: Garment, name: OpenArm): readonly SeamEdge[] => [
  ...armEdges(garment, 'front', name)
    .toReversed()
    .map((edge) => ({ ...edge, reversed: true })),
  ...armEdges(garment, 'back', name),
];

/** One notch on fronts, two on backs (common practice, no source). */
export const notchStyle = (half: Half): Notch['style'] => (half === 'front' ? 'single' : 'double');

/** Puts a notch on the arm edge of one half, this far below the shoulder. */
export function notchArmEdge(
  garment: Garment,
  half: Half,
  name: OpenArm,
  fromShoulder: number,
  match: string,
): Garment {
  let left = fromShoulder;
  for (const { piece: id } of armEdges(garment, half, name)) {
    const piece = pieceOf(garment, id);
    const length = edgeLength(piece, name);
    if (left <= length) {
      const notch: Notch = { edge: name, at: left, style: notchStyle(half), match };
      return withPiece(garment, { ...piece, notches: [...piece.notches, notch] });
    }
    left -= length;
  }
  throw new Error(`A notch ${fromShoulder} mm down the ${half} lies beyond the underarm.`);
}
