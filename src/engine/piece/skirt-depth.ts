import { pathEnd, pathStart } from '../geometry/index.ts';
import { edgeLength, findEdge } from './edges.ts';
import type { Garment } from './garment.ts';
import type { Piece } from './piece.ts';

/** The pieces of the outer skirt that hang from the waist, without what lies over or under it. */
export const skirtTops = (garment: Garment): readonly Piece[] =>
  garment.pieces.filter(
    (piece) =>
      piece.layer === 'shell' && piece.id.startsWith('skirt-') && findEdge(piece, 'waist')?.kind === 'waist',
  );

/** Finished length of the skirt where it is shortest, tiers together, mm; null when there is no skirt. */
export function skirtDepth(garment: Garment): number | null {
  const depths = skirtTops(garment).map((piece) => {
    const tiers = [piece, ...tiersBelow(garment, piece)];
    return tiers.reduce((sum, tier) => sum + shortestDown(tier), 0);
  });
  return depths.length === 0 ? null : Math.min(...depths);
}

/** The tiers that hang from a piece of skirt, from the top down, front under front and back under back. */
export function tiersBelow(garment: Garment, piece: Piece): readonly Piece[] {
  const seam = garment.seams.find((s) => s.name === 'tier' && s.a.some((edge) => edge.piece === piece.id));
  const half = piece.id.endsWith('front') ? 'front' : 'back';
  const next = garment.pieces.find(
    (p) => p.id.endsWith(half) && seam?.b.some((edge) => edge.piece === p.id) === true,
  );
  return next === undefined ? [] : [next, ...tiersBelow(garment, next)];
}

/** The shorter of the two edges that run down from the waist, with tucks sewn. */
function shortestDown(piece: Piece): number {
  const waist = piece.edges.findIndex((edge) => edge.name === 'waist');
  const beside = [piece.edges.at(waist - 1), piece.edges.at((waist + 1) % piece.edges.length)];
  const cloth = Math.min(...beside.map((edge) => (edge === undefined ? 0 : edgeLength(piece, edge.name))));
  return cloth - takenByTucks(piece);
}

/** A tuck round the skirt takes the cloth between its two stitching lines, which lie level. */
function takenByTucks(piece: Piece): number {
  const levels = piece.markings
    .filter(({ kind, path }) => kind === 'pleat-meet' && pathStart(path).y === pathEnd(path).y)
    .map(({ path }) => pathStart(path).y)
    .sort((a, b) => a - b);
  return levels.reduce((sum, y, i) => sum + (i % 2 === 1 ? y - (levels[i - 1] ?? y) : 0), 0);
}
