import type { CutPiece } from '../cut/index.ts';
import { type Lay, planLay, readLay, runLay, savedAgainstTable } from '../lay/index.ts';
import { MM_PER_INCH } from '../units/index.ts';
import { onCloth, PACK_SEARCH, piecesToLay } from './lay-cloths.ts';
import type { Order, OrderCloth } from './order.ts';

/** Home patterns name their length for cloth 45 in wide first; for such cloth the comparison is with 60 in. */
const WIDTHS = [45 * MM_PER_INCH, 60 * MM_PER_INCH] as const;
const NEAR = 2 * MM_PER_INCH;

/**
 * What a maker would buy of a cloth who lays each child's pieces on cloth of another width and looks the length up in
 * the width table, mm; `each`: the pieces child by child. A child whose length the table does not have, or whose pieces
 * are too large for the other width, counts with her own lay on this cloth; null where that is so of all of them.
 */
export function boughtByTable(
  order: Order,
  name: string,
  each: readonly (readonly CutPiece[])[],
): number | null {
  const cloth = order.cloths.find((one) => one.name === name);
  if (cloth === undefined) return null;
  const [first, second] = WIDTHS;
  const other = Math.abs(cloth.width - first) > NEAR ? first : second;
  let sum = 0;
  let isInTable = false;
  for (const all of each) {
    const pieces = onCloth(order, cloth, all);
    if (pieces.length === 0) continue;
    const lay = laidOn({ ...cloth, usableWidth: other - (cloth.width - cloth.usableWidth) }, pieces);
    const found = lay === null ? null : savedAgainstTable(lay, cloth.width, lay, other);
    isInTable ||= found !== null;
    sum += found?.byTable ?? laidOn(cloth, pieces)?.toBuy.bought ?? 0;
  }
  return isInTable ? sum : null;
}

function laidOn(cloth: OrderCloth, own: readonly CutPiece[]): Lay | null {
  const planned = planLay(piecesToLay(cloth, own), cloth);
  if (!planned.ok) return null;
  let last = null;
  const search = { seed: PACK_SEARCH.seed, evaluations: PACK_SEARCH.child };
  for (const { best } of runLay(planned.plan, search)) last = best ?? last;
  return last === null ? null : readLay(planned.plan, last);
}
