import type { Block, Half } from '../block/index.ts';
import { edgeEnd, edgeStart, findEdge, type Garment, type Piece, type Seam } from '../piece/index.ts';

export const HALVES = ['front', 'back'] as const satisfies readonly Half[];

/** The plain dress bodice that every design starts from: two halves, sewn at shoulder and side. */
export function plainBodice(block: Block): Garment {
  const seam = (name: 'shoulder' | 'side'): Seam => ({
    id: name,
    name,
    a: [{ piece: 'front', edge: name, times: 2 }],
    b: [{ piece: 'back', edge: name, times: 2 }],
    join: { kind: 'flat' },
    smoothStart: true,
    smoothEnd: true,
  });
  return {
    pieces: [block.front, block.back],
    seams: [seam('shoulder'), seam('side')],
    whole: {},
    closing: null,
    trims: [],
  };
}

/** The pieces of one half of the bodice from the top down: the yoke, if there is one, then the rest. */
export function bodicePieces(
  garment: Garment,
  half: Half,
  layer: 'shell' | 'lining' = 'shell',
): readonly Piece[] {
  return garment.pieces.filter(
    (piece) => piece.layer === layer && (piece.id === half || piece.id.startsWith(`${half}-`)),
  );
}

/** The piece of this half that carries the edge; when a style line has cut the edge, the upper one. */
export function bodicePieceWith(garment: Garment, half: Half, edge: string): Piece | undefined {
  return bodicePieces(garment, half).find((piece) => findEdge(piece, edge) !== undefined);
}

/** Straight depth of a half's armhole: from the shoulder tip down to the level of the underarm, mm. */
export function armholeDepth(garment: Garment, half: Half): number {
  const piece = bodicePieceWith(garment, half, 'armhole');
  return piece === undefined ? 0 : edgeEnd(piece, 'armhole').y - edgeStart(piece, 'armhole').y;
}
