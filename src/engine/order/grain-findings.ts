import type { CutPiece } from '../cut/index.ts';
import type { Finding } from './finding.ts';
import { onCloth } from './lay-cloths.ts';
import { nearest } from './nearest.ts';
import type { Order } from './order.ts';

/**
 * Pieces that a cloth lets lie otherwise, of which nothing is cut from it in this dress: told, since a slip in a name
 * would else be passed over. No mistake where another child of the order has such a piece.
 */
export function grainFindings(order: Order, pieces: readonly CutPiece[]): readonly Finding[] {
  return order.cloths.flatMap((cloth) => {
    const known = [...new Set(onCloth(order, cloth, pieces).map(({ piece }) => piece.id))];
    const unknown = [...cloth.grain.keys()].filter((id) => !known.includes(id));
    return unknown.map((piece): Finding => {
      const meant = nearest(piece, known);
      const key = meant === null ? 'order.cloth.grain-unknown' : 'order.cloth.grain-meant';
      const values = { cloth: cloth.name, piece, pieces: known.join(', '), meant: meant ?? '' };
      return { code: 'order.cloth.grain-unknown', level: 'note', say: { key, values }, todo: null };
    });
  });
}
