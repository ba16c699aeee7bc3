import type { SkirtParts } from './gathered-panels.ts';

/**
 * Makes so many layers of gathered net. Net does not fray, so its foot is a cut edge; and its opening edges lie 1 in
 * back from the raw edges of the dress, on its stitching line, so that they meet at the closing and are not folded
 * into the seam (a maker's diary of a flower-girl dress, part 8).
 */
export function netLayers(parts: SkirtParts, layers: number): SkirtParts {
  return {
    ...parts,
    pieces: parts.pieces.map((piece) => ({
      ...piece,
      cutting: { ...piece.cutting, copies: piece.cutting.copies * layers },
      edges: piece.edges.map((edge) =>
        edge.kind === 'hem' || edge.kind === 'closing' ? { ...edge, allowance: 0 } : edge,
      ),
    })),
  };
}
