import type { CutPiece } from '../cut/index.ts';
import { type LayProblem, layInRows } from '../lay/index.ts';
import type { ClothCutList } from '../sheet/index.ts';
import type { Order } from './order.ts';
import { clothOf } from './read-cloths.ts';

export interface LaidCloths {
  /** Every cloth from which something is cut and onto which all of it fits, in the order's order. */
  readonly lists: readonly ClothCutList[];
  readonly problems: readonly LayProblem[];
}

/** Lays pieces of one child, or of several together, on the cloths of the order. */
export function layCloths(order: Order, pieces: readonly CutPiece[]): LaidCloths {
  const lists: ClothCutList[] = [];
  const problems: LayProblem[] = [];
  for (const cloth of order.cloths) {
    const own = pieces.filter(({ piece }) => clothOf(order.cloths, piece.cloth) === cloth);
    if (own.length === 0) continue;
    const laid = layInRows(own, cloth);
    if (laid.ok) lists.push({ cloth, pieces: own, lay: laid.lay });
    else problems.push(...laid.problems);
  }
  return { lists, problems };
}
