import type { Half } from '../block/index.ts';
import {
  type EdgeName,
  edgeLength,
  findEdge,
  type Garment,
  type Piece,
  pieceOf,
  type Seam,
  type SeamEdge,
  type SeamName,
} from '../piece/index.ts';
import { bodicePieces, HALVES } from './bodice.ts';

/**
 * The lining's own seams follow the shell's; its neck, armhole and waist are sewn to the shell. Whether corners run
 * through is judged on the shell: trimming for the turn of cloth shifts them a little, inside and unseen.
 */
export function liningSeams(garment: Garment): readonly Seam[] {
  const own: Seam[] = [];
  for (const seam of garment.seams) {
    const [a, b] = [liningSide(garment, seam.a), liningSide(garment, seam.b)];
    if (a !== null && b !== null && OWN_SEAMS.includes(seam.name))
      own.push({ ...seam, id: `${seam.id}-lining`, a, b, smoothStart: false, smoothEnd: false });
  }
  return [
    ...own,
    ...toShell(garment, 'neck-lining', ['neckline']),
    ...toShell(garment, 'armhole-lining', ['armhole', 'sleeve-edge']),
    ...toShell(garment, 'waist-lining', ['waist']),
  ];
}

const OWN_SEAMS: readonly SeamName[] = ['shoulder', 'side', 'yoke', 'closing'];

/** The same side of a seam on the lining; null when the lining has not all of its edges. */
function liningSide(garment: Garment, side: readonly SeamEdge[]): readonly SeamEdge[] | null {
  const found: SeamEdge[] = [];
  for (const edge of side) {
    const half = HALVES.find((h) => edge.piece === h || edge.piece === `${h}-yoke`);
    if (half === undefined) return null;
    const carrier = bodicePieces(garment, half, 'lining').find(
      (piece) =>
        findEdge(piece, edge.edge) !== undefined &&
        (piece.id === `${edge.piece}-lining` || isWhole(garment, half)),
    );
    if (carrier === undefined) return null;
    if (!found.some((e) => e.piece === carrier.id && e.edge === edge.edge))
      found.push({ ...edge, piece: carrier.id });
  }
  return found;
}

/** A lining cut whole stands for both parts of a shell that a yoke line has cut. */
const isWhole = (garment: Garment, half: Half): boolean =>
  garment.whole[half] !== undefined &&
  bodicePieces(garment, half, 'lining').every((piece) => findEdge(piece, 'yoke-line') === undefined);

/** The seam that joins the lining to the shell along these edges, over all that both of them have. */
function toShell(garment: Garment, name: SeamName, edges: readonly EdgeName[]): readonly Seam[] {
  const inside: SeamEdge[] = [];
  const shell: SeamEdge[] = [];
  for (const half of HALVES) {
    const linings = bodicePieces(garment, half, 'lining');
    const lined = bodicePieces(garment, half).filter(
      (piece) => isWhole(garment, half) || linings.some((l) => l.id === `${piece.id}-lining`),
    );
    inside.push(...linings.flatMap((piece) => carried(piece, edges)));
    shell.push(...lined.flatMap((piece) => carried(piece, edges)));
  }
  if (inside.length === 0 || shell.length === 0) return [];
  const length = (list: readonly SeamEdge[]): number =>
    list.reduce((sum, e) => sum + e.times * edgeLength(pieceOf(garment, e.piece), e.edge), 0);
  return [
    {
      id: name,
      name,
      a: shell,
      b: inside,
      join:
        name === 'waist-lining' ? { kind: 'flat' } : { kind: 'eased', ease: length(inside) - length(shell) },
      smoothStart: false,
      smoothEnd: false,
    },
  ];
}

const carried = (piece: Piece, edges: readonly EdgeName[]): readonly SeamEdge[] =>
  edges
    .filter((edge) => findEdge(piece, edge) !== undefined)
    .map((edge) => ({ piece: piece.id, edge, times: 2 }));
