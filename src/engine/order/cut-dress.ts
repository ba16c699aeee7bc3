import type { Body } from '../body/index.ts';
import { type CutPiece, cuttingSaying, makeCutPieces, type PieceLabel } from '../cut/index.ts';
import { tell } from '../design/index.ts';
import type { UnitSystem } from '../units/index.ts';
import type { Saying, WordKey } from '../words/index.ts';
import type { Order } from './order.ts';
import { clothOf } from './read-cloths.ts';
import type { ChildDress } from './work-child.ts';

/** The pieces of one child with their allowances, and what stands on each: in which cloth, for whom, of which day. */
export function cutDress(
  order: Order,
  { child, body, garment }: Pick<ChildDress, 'child' | 'body' | 'garment'>,
  day: string,
): readonly CutPiece[] {
  const size = sizeText(body, order.units);
  return makeCutPieces(garment, {
    own: order.allowances,
    label: (piece): PieceLabel => ({
      title: tell(piece.title, order.units),
      cutting: tell(cuttingSaying(piece, clothOf(order.cloths, piece.cloth).name), order.units),
      child: child.name,
      size,
      date: day,
    }),
  });
}

/** The same pieces with a warning in every place where one is named: in the drawing, the lists and the files. */
export function markedNotToCut(pieces: readonly CutPiece[], units: UnitSystem): readonly CutPiece[] {
  return pieces.map((piece) => {
    const { cutting } = piece.label;
    const cuttingMarked = tell({ key: 'order.not-to-cut' satisfies WordKey, values: { cutting } }, units);
    return { ...piece, label: { ...piece.label, cutting: cuttingMarked } };
  });
}

/** Which size it is: what was measured of height and chest, or else the age. */
export function sizeText(body: Body, units: UnitSystem): string {
  const { height, chestGirth } = body.values;
  const say = (key: WordKey, values: Saying['values']): string => tell({ key, values }, units);
  if (height.from === 'measured' && chestGirth.from === 'measured')
    return say('order.size.both', { height, chest: chestGirth });
  if (height.from === 'measured') return say('order.size.height', { height });
  if (chestGirth.from === 'measured') return say('order.size.chest', { chest: chestGirth });
  return say('order.size.age', { months: body.ageMonths ?? 0 });
}
