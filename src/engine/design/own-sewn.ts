import {
  type EdgeName,
  edgeLength,
  type Garment,
  type PieceId,
  pieceOf,
  type Seam,
  type SeamEdge,
} from '../piece/index.ts';

/** The place that is sewn to a place of hers. */
export interface SewnPlace {
  readonly seam: Seam;
  readonly piece: PieceId;
  readonly edge: EdgeName;
  /** From the start of that edge, mm. */
  readonly at: number;
  /** Whether both edges run the same way along the seam. */
  readonly sameWay: boolean;
}

/** One walk over an edge of a seam. */
interface Passage {
  readonly piece: PieceId;
  readonly edge: EdgeName;
  readonly length: number;
  readonly backwards: boolean;
}

/**
 * What is sewn to a place, seam by seam. Ease and gathers are taken as spread evenly; pleats and seams that are
 * only gathered in part have no such place, and an edge sewn to its own mirror image needs none.
 */
export function sewnTo(garment: Garment, id: PieceId, name: EdgeName, at: number): readonly SewnPlace[] {
  return garment.seams.flatMap((seam) => {
    if (!isEven(seam)) return [];
    const [a, b] = sidesOf(garment, seam);
    return acrossFrom(seam, a, b, id, name, at) ?? acrossFrom(seam, b, a, id, name, at) ?? [];
  });
}

const isEven = ({ join, bareEnd = 0 }: Seam): boolean =>
  bareEnd === 0 &&
  (join.kind === 'flat' || join.kind === 'eased' || (join.kind === 'gathered' && !join.plainEnd));

function acrossFrom(
  seam: Seam,
  ours: readonly Passage[],
  others: readonly Passage[],
  id: PieceId,
  name: EdgeName,
  at: number,
): readonly SewnPlace[] | null {
  const index = ours.findIndex((p) => p.piece === id && p.edge === name);
  const here = ours[index];
  if (here === undefined) return null;
  const into = here.backwards ? here.length - at : at;
  const along = lengthOf(ours.slice(0, index)) + into;
  const wanted = (along / lengthOf(ours)) * lengthOf(others);
  // A place between two edges is the end of the first or the start of the second, as it is on our side.
  const lean = into > here.length / 2 ? -TOUCHES : TOUCHES;
  let before = 0;
  for (const passage of others) {
    const reaches = before + passage.length;
    if (wanted + lean < reaches || passage === others.at(-1)) {
      if (passage.piece === id && passage.edge === name) return [];
      const walked = Math.min(Math.max(wanted - before, 0), passage.length);
      return [
        {
          seam,
          piece: passage.piece,
          edge: passage.edge,
          at: passage.backwards ? passage.length - walked : walked,
          sameWay: passage.backwards === here.backwards,
        },
      ];
    }
    before = reaches;
  }
  return [];
}

/** Places nearer than this are one, mm. */
const TOUCHES = 0.2;

const lengthOf = (side: readonly Passage[]): number => side.reduce((sum, p) => sum + p.length, 0);

/** Both sides as they are walked: one of several alike seams, or a whole ring with its copies mirrored in turn. */
function sidesOf(garment: Garment, seam: Seam): readonly [readonly Passage[], readonly Passage[]] {
  const alike = new Set([...seam.a, ...seam.b].map((edge) => edge.times)).size === 1;
  const walk = (side: readonly SeamEdge[]): readonly Passage[] =>
    side.flatMap((edge) => {
      const piece = pieceOf(garment, edge.piece);
      const mirrored = piece.cutting.as !== 'single';
      return Array.from({ length: alike ? 1 : edge.times }, (_, i) => ({
        piece: edge.piece,
        edge: edge.edge,
        length: edgeLength(piece, edge.edge),
        backwards: (edge.reversed === true) !== (mirrored && i % 2 === 1),
      }));
    });
  return [walk(seam.a), walk(seam.b)];
}
