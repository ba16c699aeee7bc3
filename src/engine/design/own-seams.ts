import type { EdgeName, PieceId, Seam, SeamEdge } from '../piece/index.ts';

/** Every seam, with each use of an edge put through `change`. */
export function seamsThrough(
  seams: readonly Seam[],
  change: (edge: SeamEdge) => readonly SeamEdge[],
): readonly Seam[] {
  return seams.map((seam) => ({ ...seam, a: seam.a.flatMap(change), b: seam.b.flatMap(change) }));
}

/** Lets every seam follow an edge that now lies in several parts, listed as the outline is walked. */
export function seamsOverParts(
  seams: readonly Seam[],
  piece: PieceId,
  edge: EdgeName,
  parts: readonly EdgeName[],
): readonly Seam[] {
  return seamsThrough(seams, (use) => {
    if (use.piece !== piece || use.edge !== edge) return [use];
    const inOrder = use.reversed === true ? parts.toReversed() : parts;
    return inOrder.map((part) => ({ ...use, edge: part }));
  });
}

/** The seam that closes a dart or a tuck: two edges of one piece that follow each other. */
export const foldedSeam = (
  id: string,
  name: 'dart' | 'own',
  piece: PieceId,
  [first, second]: readonly [EdgeName, EdgeName],
  times: number,
): Seam => ({
  id,
  name,
  a: [{ piece, edge: first, times }],
  b: [{ piece, edge: second, times, reversed: true }],
  join: { kind: 'flat' },
  smoothStart: false,
  smoothEnd: false,
});
