import { edgeAt, layPleats, pieceAt, type Seam } from '../piece/index.ts';
import { type Check, tell } from './check.ts';
import { type Look, placeOfSeam, type Rule, seamWords } from './look.ts';
import { SLACK, TRADE_FORGIVES } from './tolerance.ts';

/**
 * Widths of cloth are joined on the inner fold of a pleat, never on its face or its outer fold, where the join would
 * be seen (common practice, no source).
 */
export const pleatJoins: Rule = (look) =>
  look.garment.seams.flatMap((seam) => {
    const check = joinsOf(look, seam);
    return check === null ? [] : [check];
  });

/** Null where nothing is joined, or where the pleats themselves are wrong, which is told elsewhere. */
function joinsOf(look: Look, seam: Seam): Check | null {
  const { join } = seam;
  if (join.kind !== 'pleated' || !Number.isInteger(join.pleats) || join.pleats < 1) return null;
  const joins = joinPlaces(look, seam);
  if (joins.length === 0) return null;
  const inner = layPleats(join).folds.flatMap((fold) => (fold.kind === 'inner' ? [fold.at] : []));
  const off = Math.max(...joins.map((at) => Math.min(...inner.map((fold) => Math.abs(fold - at)))));
  const ok = off <= TRADE_FORGIVES + SLACK;
  const values = { seam: seamWords(seam), joins: joins.length, off: { mm: off } };
  return {
    code: 'pleat-joins',
    level: ok ? 'ok' : 'warn',
    measured: { mm: off },
    allowed: { to: { mm: TRADE_FORGIVES } },
    where: placeOfSeam(seam),
    say: tell(ok ? 'check.pleat-joins.ok' : 'check.pleat-joins.seen', values),
    todo: ok ? null : tell('check.pleat-joins.todo', values),
  };
}

/** Where one width ends and the next begins, mm from the opening; a fold in the cloth is no join. */
function joinPlaces(look: Look, { b }: Seam): readonly number[] {
  if (b.some((edge) => edge.times !== 1)) return [];
  let at = 0;
  return b.slice(0, -1).flatMap((edge, i) => {
    at += look.lengthOf(edgeAt(look, edge).path);
    const onFold = b[i + 1]?.piece === edge.piece && pieceAt(look, edge).cutting.as === 'fold';
    return onFold ? [] : [at];
  });
}
