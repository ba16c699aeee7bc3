import type { Garment, Piece } from '../../engine/piece/index.ts';

/** What is worn over what, from the outside in. */
export const LAYERS = ['over', 'shell', 'facing', 'lining', 'petticoat'] as const;
export type DressLayer = (typeof LAYERS)[number];

/** Which layer of the dress a piece belongs to. */
export function layerOf(piece: Piece): DressLayer {
  if (piece.id.startsWith('overskirt')) return 'over';
  if (piece.id.startsWith('petticoat')) return 'petticoat';
  if (piece.id.includes('facing')) return 'facing';
  return piece.layer === 'lining' ? 'lining' : 'shell';
}

/** The layers that a dress has, from the outside in. */
export const layersOf = (garment: Garment): readonly DressLayer[] =>
  LAYERS.filter((layer) => garment.pieces.some((piece) => layerOf(piece) === layer));

/** The two halves of a bodice, and of what is cut from its shape. */
export const HALVES = ['front', 'back'] as const;
export type Half = (typeof HALVES)[number];

/** Pieces of a layer of one half of the bodice, which all keep the coordinates in which the half was drafted. */
export function halfPieces(garment: Garment, half: Half, layer: DressLayer = 'shell'): readonly Piece[] {
  return garment.pieces.filter((piece) => {
    if (layerOf(piece) !== layer) return false;
    if (layer === 'facing') return piece.id === `facing-${half}` || piece.id === `armhole-facing-${half}`;
    return piece.id === half || piece.id.startsWith(`${half}-`);
  });
}
