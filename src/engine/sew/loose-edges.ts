import { type Edge, type Piece, pieceAt } from '../piece/index.ts';
import { type SewLook, shellOver } from './look.ts';
import type { EdgeRef } from './step.ts';

/** The edges that no seam of the garment takes up, so that something else must finish them. */
export function looseEdges(look: SewLook): readonly EdgeRef[] {
  return look.garment.pieces.flatMap((piece) =>
    piece.edges
      .filter((edge) => edge.kind !== 'fold')
      .map((edge): EdgeRef => ({ piece: piece.id, edge: edge.name }))
      .filter((at) => look.seamsAt(at).length === 0 && twinOf(look, at) === null),
  );
}

/**
 * The edge that stands for this one in a seam: a piece cut singly whose left edge is named for both its sides, as one
 * gore between two that mirror each other.
 */
export function twinOf(look: SewLook, at: EdgeRef): EdgeRef | null {
  const piece = pieceAt(look, at);
  if (piece.cutting.as !== 'single') return null;
  const twin = piece.edges.find(
    (edge) => edge.name !== at.edge && isTwin(piece, edge, at.edge) && isUsedTwice(look, piece, edge),
  );
  return twin === undefined ? null : { piece: piece.id, edge: twin.name };
}

const isTwin = (piece: Piece, edge: Edge, other: string): boolean =>
  edge.kind === 'join' && piece.edges.find(({ name }) => name === other)?.kind === 'join';

const isUsedTwice = (look: SewLook, piece: Piece, edge: Edge): boolean =>
  look
    .seamsAt({ piece: piece.id, edge: edge.name })
    .flatMap((seam) => [...seam.a, ...seam.b])
    .filter((at) => at.piece === piece.id && at.edge === edge.name)
    .reduce((sum, at) => sum + at.times, 0) > piece.cutting.copies;

/** What becomes of a loose edge. */
export type Finish =
  | { readonly as: 'mounted' }
  | { readonly as: 'hem' | 'arm-hem' | 'narrow' | 'raw' | 'waist-edge' | 'own-edge'; readonly group: string }
  | { readonly as: 'felled' }
  | { readonly as: 'overlap' }
  /** Sewn to its own back, right sides together, and turned. */
  | { readonly as: 'made'; readonly group: string }
  | { readonly as: 'neatened' }
  /** Turned in where the seam is sewn that holds the piece. */
  | { readonly as: 'with-seam'; readonly seam: string }
  | { readonly as: 'caught'; readonly piece: string };

export function finishOf(look: SewLook, at: EdgeRef): Finish {
  const piece = pieceAt(look, at);
  const edge = piece.edges.find(({ name }) => name === at.edge);
  const held = holdingSeam(look, piece);
  switch (edge?.kind) {
    case 'hem':
    case 'curved-hem':
      return { as: 'hem', group: look.ringOf(piece.id) };
    case 'sleeve-hem':
    case 'curved-sleeve-hem':
      return { as: 'arm-hem', group: isSleevePart(piece) ? piece.id : 'arms' };
    case 'waist':
      return piece.layer === 'lining' ? { as: 'mounted' } : { as: 'waist-edge', group: 'waist' };
    case 'neck':
    case 'armhole':
      return piece.layer === 'lining' && shellOver(look, at) !== null
        ? { as: 'mounted' }
        : { as: 'raw', group: edge.kind };
    case 'closing':
    case 'centre':
      return piece.layer === 'lining' ? { as: 'felled' } : { as: 'own-edge', group: piece.id };
    case 'free':
      return freeFinish(look, piece, at, held);
    case 'attach':
    case 'join':
      if (held !== null) return { as: 'with-seam', seam: held };
      return { as: 'caught', piece: piece.id };
    default:
      if (piece.layer !== 'lining') return { as: 'own-edge', group: piece.id };
      return shellOver(look, at) !== null ? { as: 'mounted' } : { as: 'felled' };
  }
}

const isSleevePart = (piece: Piece): boolean =>
  piece.edges.every(({ kind }) => kind !== 'neck' && kind !== 'shoulder') &&
  !['front', 'back'].includes(piece.id.split('-')[0] ?? '');

function freeFinish(look: SewLook, piece: Piece, at: EdgeRef, held: string | null): Finish {
  if (at.edge === 'overlap-end' || at.edge.startsWith('overlap-end')) return { as: 'overlap' };
  if (at.edge.startsWith('keyhole') && piece.layer === 'lining') {
    const slit = look.garment.seams.find(({ id }) => id === 'keyhole-binding');
    return slit === undefined ? { as: 'felled' } : { as: 'with-seam', seam: slit.id };
  }
  const seam = look.garment.seams.find(({ id }) => id === held);
  switch (seam?.name) {
    case undefined:
      return piece.layer === 'lining' ? { as: 'neatened' } : { as: 'made', group: piece.id };
    case 'collar':
      return { as: 'made', group: piece.id };
    case 'placket':
      return piece.cutting.as === 'pair'
        ? { as: 'made', group: piece.id }
        : { as: 'with-seam', seam: seam.id };
    case 'facing':
      return piece.id.includes('facing') && !piece.id.startsWith('shoulder')
        ? { as: 'neatened' }
        : { as: 'with-seam', seam: seam.id };
    case 'binding':
    case 'cuff':
    case 'band':
      return { as: 'with-seam', seam: seam.id };
    case 'sleeve-cap': {
      const itself = look.garment.seams.find(
        (s) => s.name === 'facing' && s.a.some((e) => e.piece === piece.id),
      );
      return itself === undefined ? { as: 'narrow', group: piece.id } : { as: 'with-seam', seam: itself.id };
    }
    default:
      return { as: 'narrow', group: piece.id };
  }
}

/** The seam that sews a piece to another one; the last one, which closes over the others, where there are several. */
function holdingSeam(look: SewLook, piece: Piece): string | null {
  const touching = look.garment.seams.filter(
    (seam) =>
      !['own', 'dart'].includes(seam.name) && [...seam.a, ...seam.b].some((at) => at.piece === piece.id),
  );
  const toOthers = touching.filter((seam) => [...seam.a, ...seam.b].some((at) => at.piece !== piece.id));
  return toOthers.at(-1)?.id ?? touching.at(-1)?.id ?? null;
}
