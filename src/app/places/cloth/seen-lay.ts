import {
  type Lay,
  type LayPlan,
  layMark,
  type PlacedFault,
  type PlacedStretch,
  placedAgain,
  placedFaults,
  readLay,
} from '../../../engine/lay/index.ts';
import { type KeptLay, keptLays, type LayFile, type OrderFile } from '../../../engine/order/index.ts';
import type { ClothLaid, LengthFound } from '../../work/lay-wish.ts';

/** One placing of a lay: on which length, in which stretch of it, which item. */
export interface ItemAt {
  readonly length: number;
  readonly stretch: number;
  readonly item: number;
}

/** What lies on one length as she sees it. */
export interface SeenLength {
  readonly at: number | null;
  readonly plan: LayPlan;
  readonly placed: readonly PlacedStretch[];
  readonly lay: Lay;
  readonly faults: readonly PlacedFault[];
  /** What she has pinned, by `pinName`. */
  readonly pinned: ReadonlySet<string>;
}

export interface SeenLay {
  readonly cloth: ClothLaid['cloth'];
  readonly child: string | null;
  readonly lengths: readonly SeenLength[];
  /** Null where the order keeps none, and a short search has found this one. */
  readonly kept: KeptLay | null;
  /** A piece or the cloth is another since it was laid. */
  readonly isOld: boolean;
  /** What is bought for the children one by one, mm. */
  readonly alone: number | null;
}

/** Which lay is meant, among those of an order. */
export const layKey = (lay: { readonly cloth: string; readonly child?: string | null | undefined }): string =>
  JSON.stringify([lay.cloth, lay.child ?? null]);

export const keyOf = ({ cloth, child }: Pick<ClothLaid, 'cloth' | 'child'>): string =>
  layKey({ cloth: cloth.name, child });

/** The lay of that name as the file keeps it. */
export const layIn = ({ lays = [] }: Pick<OrderFile, 'lays'>, key: string): LayFile | undefined =>
  lays.find((lay) => layKey(lay) === key);

/**
 * What she sees: the places that the order keeps on the pieces that the worker has planned, or, where it keeps none,
 * the short lay. `found`: the best of a search that is under way stands before both.
 */
export function seenLay(
  laid: ClothLaid,
  file: LayFile | undefined,
  found: readonly LengthFound[] | null,
): SeenLay {
  const kept = file === undefined ? null : (keptLays([file])[0] ?? null);
  let isOld = false;
  const lengths = laid.lengths.map(({ at, plan, placed: short }): SeenLength => {
    const own = kept?.lengths.find((length) => length.at === at);
    if (kept !== null && own?.mark !== layMark(plan)) isOld = true;
    const known = own === undefined ? short : placedAgain(plan, own.places).placed;
    const placed = found?.find((length) => length.at === at)?.placed ?? known;
    const pins = (own?.places ?? []).filter(({ pinned }) => pinned);
    return seenLength(at, plan, placed, new Set(pins.map(placeName)));
  });
  const { cloth, child, alone } = laid;
  return { cloth, child, lengths, kept, isOld, alone };
}

export const seenLength = (
  at: number | null,
  plan: LayPlan,
  placed: readonly PlacedStretch[],
  pinned: ReadonlySet<string>,
): SeenLength => ({
  at,
  plan,
  placed,
  lay: readLay(plan, placed),
  faults: placedFaults(plan, placed),
  pinned,
});

interface Named {
  readonly child: string;
  readonly piece: string;
  readonly copy: number;
}
const placeName = ({ child, piece, copy }: Named): string => JSON.stringify([child, piece, copy]);

/** By what a pinned item is known, also when the pieces have been planned anew. */
export function pinName({ stretches, pieces }: LayPlan, stretch: number, item: number): string {
  const one = stretches[stretch]?.items[item];
  const piece = pieces[one?.piece ?? -1];
  return placeName({
    child: piece?.child ?? '',
    piece: piece?.cut.piece.id ?? '',
    copy: one?.copies[0] ?? 0,
  });
}

export const isPinned = ({ plan, pinned }: SeenLength, stretch: number, item: number): boolean =>
  pinned.has(pinName(plan, stretch, item));

/** Whether a fault concerns one item. */
export const concerns = (fault: PlacedFault, stretch: number, item: number): boolean =>
  fault.stretch === stretch && (fault.code === 'overlap' ? fault.items.includes(item) : fault.item === item);
