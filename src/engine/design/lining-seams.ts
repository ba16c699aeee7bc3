import type { Half } from '../block/index.ts';
import {
  type EdgeName,
  edgeLength,
  findEdge,
  type Garment,
  type Piece,
  type PieceId,
  pieceOf,
  type Seam,
  type SeamEdge,
  type SeamName,
} from '../piece/index.ts';
import { bodicePieces, HALVES } from './bodice.ts';
import { dartSeams } from './darts.ts';
import { waistRing } from './waist-ring.ts';
import { wrapSeams } from './wrap-overlap.ts';

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
  const within = garment.pieces
    .filter((piece) => piece.layer === 'lining')
    .flatMap((piece) => [...dartSeams(piece), ...wrapSeams(piece)]);
  return [
    ...own,
    ...within,
    ...toShell(garment, 'neck-lining', ['neckline']),
    ...toShell(garment, 'armhole-lining', ['armhole', 'sleeve-edge']),
    ...waistToShell(garment),
  ];
}

const OWN_SEAMS: readonly SeamName[] = ['shoulder', 'side', 'yoke', 'closing'];

/** The same side of a seam on the lining; null when the lining has not all of its edges. */
function liningSide(garment: Garment, side: readonly SeamEdge[]): readonly SeamEdge[] | null {
  const found: SeamEdge[] = [];
  for (const edge of side) {
    const half = HALVES.find((h) => [h, `${h}-yoke`, `${h}-side`].includes(edge.piece));
    if (half === undefined) return null;
    const carrier = bodicePieces(garment, half, 'lining').find(
      (piece) =>
        findEdge(piece, edge.edge) !== undefined &&
        (piece.id === liningIdOf(edge.piece) || isWhole(garment, half)),
    );
    if (carrier === undefined) return null;
    if (!found.some((e) => e.piece === carrier.id && e.edge === edge.edge))
      found.push({ ...edge, piece: carrier.id });
  }
  return found;
}

/** The lining has no side panel: what a princess seam takes out of the shell is a dart in it. */
const liningIdOf = (piece: PieceId): PieceId => `${piece.replace(/-side$/, '')}-lining`;

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
      (piece) => isWhole(garment, half) || linings.some((l) => l.id === liningIdOf(piece.id)),
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
      join: { kind: 'eased', ease: length(inside) - length(shell) },
      smoothStart: false,
      smoothEnd: false,
    },
  ];
}

/** The waist may be parted by darts and seams, in the shell and the lining at different places. */
function waistToShell(garment: Garment): readonly Seam[] {
  const [shell, inside] = [waistRing(garment), waistRing(garment, 'lining')];
  if (shell === null || inside === null) return [];
  return [
    {
      id: 'waist-lining',
      name: 'waist-lining',
      a: shell.side,
      b: inside.side,
      join: { kind: 'flat' },
      smoothStart: false,
      smoothEnd: false,
    },
  ];
}

const carried = (piece: Piece, edges: readonly EdgeName[]): readonly SeamEdge[] =>
  edges
    .filter((edge) => findEdge(piece, edge) !== undefined)
    .map((edge) => ({ piece: piece.id, edge, times: 2 }));
