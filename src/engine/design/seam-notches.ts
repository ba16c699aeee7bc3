import {
  edgeLength,
  type Garment,
  type Notch,
  type PieceId,
  pieceOf,
  type Seam,
  type SeamEdge,
} from '../piece/index.ts';

/** Seams shorter than this need no notch: the two ends are enough, mm. */
const SHORT_SEAM = 60;

/**
 * Puts a notch half-way along every plain seam that has none yet, on both sides, so that long edges can be
 * pinned from the middle. Double where only back pieces meet (one front, two back: common practice, no source).
 */
export function notchSeams(garment: Garment): Garment {
  const added = new Map<PieceId, Notch[]>();
  for (const seam of garment.seams) {
    if (seam.join.kind !== 'flat' || NOT_NOTCHED.has(seam.name) || isNotched(garment, seam)) continue;
    const length = sideLength(garment, seam.a);
    if (length < SHORT_SEAM) continue;
    const isBack = [...seam.a, ...seam.b].every((edge) => edge.piece.includes('back'));
    for (const side of [seam.a, seam.b]) {
      const place = placeAt(garment, side, length / 2);
      if (place === null) continue;
      const notch: Notch = { ...place.notch, style: isBack ? 'double' : 'single', match: seam.id };
      added.set(place.piece, [...(added.get(place.piece) ?? []), notch]);
    }
  }
  return {
    ...garment,
    pieces: garment.pieces.map((piece) => ({
      ...piece,
      notches: [...piece.notches, ...(added.get(piece.id) ?? [])],
    })),
  };
}

/** A dart lies inside its piece; the two edges of a closing mirror each other; the waist is notched by what is sewn to it. */
const NOT_NOTCHED: ReadonlySet<string> = new Set(['dart', 'closing', 'waist-lining', 'skirt-waist']);

const isNotched = (garment: Garment, seam: Seam): boolean =>
  [...seam.a, ...seam.b].some((edge) =>
    pieceOf(garment, edge.piece).notches.some((n) => n.edge === edge.edge),
  );

const lengthOf = (garment: Garment, edge: SeamEdge): number =>
  edgeLength(pieceOf(garment, edge.piece), edge.edge);

const sideLength = (garment: Garment, side: readonly SeamEdge[]): number =>
  side.reduce((sum, edge) => sum + lengthOf(garment, edge), 0);

/** The place this far along one passage of a side, as a distance from the start of the edge that it falls on. */
function placeAt(
  garment: Garment,
  side: readonly SeamEdge[],
  along: number,
): { readonly piece: PieceId; readonly notch: { readonly edge: string; readonly at: number } } | null {
  let left = along;
  for (const edge of side) {
    const length = lengthOf(garment, edge);
    if (left <= length) {
      const at = edge.reversed === true ? length - left : left;
      return { piece: edge.piece, notch: { edge: edge.edge, at } };
    }
    left -= length;
  }
  return null;
}
