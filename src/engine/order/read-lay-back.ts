import type { CutPiece } from '../cut/index.ts';
import {
  type LayPiece,
  type LayPlan,
  type LayRefusal,
  layMark,
  type PlacedStretch,
  pinsOf,
  placedAgain,
  placedFaults,
  planOnLength,
  type ShapeStore,
} from '../lay/index.ts';
import type { KeptLay, KeptLength, Order, OrderCloth } from './order.ts';

/** A kept lay on the pieces and the cloth as they are now. */
export interface LayReadBack {
  readonly lengths: readonly LengthReadBack[];
  /**
   * `same`: nothing has changed since, and it holds. `changed`: a piece or the cloth is another, yet all lies well.
   * `spoiled`: something overlaps, leaves the cloth or has no place, so that it must not be cut.
   */
  readonly state: 'same' | 'changed' | 'spoiled';
}

interface LengthReadBack {
  readonly at: number | null;
  readonly plan: LayPlan;
  readonly placed: readonly PlacedStretch[];
}

/** The child whose pieces these are; null where they are of several. */
export function ownerOf(pieces: readonly CutPiece[]): string | null {
  const children = new Set(pieces.map(({ label }) => label.child));
  return children.size === 1 ? ([...children][0] ?? null) : null;
}

/** The lay that is kept of these pieces on this cloth. */
export function keptLayOf(
  { lays }: Pick<Order, 'lays'>,
  { name }: OrderCloth,
  pieces: readonly CutPiece[],
): KeptLay | null {
  const owner = ownerOf(pieces);
  return lays.find(({ cloth, child }) => cloth === name && child === owner) ?? null;
}

/**
 * Finds the places of a kept lay again and judges them. `hold`: what is pinned can't be moved by a search of the plan.
 * Refuses what no lay of these pieces could be made for, and with `hold` pins off the cloth or over each other.
 */
export function readLayBack(
  cloth: OrderCloth,
  pieces: readonly LayPiece[],
  kept: readonly KeptLength[],
  hold: boolean,
  store: ShapeStore,
): LayReadBack | readonly LayRefusal[] {
  const lengths: LengthReadBack[] = [];
  let state: LayReadBack['state'] = 'same';
  for (const { at, mark, places, wanted } of lengthsFor(cloth, pieces, kept)) {
    const hand = at === null ? null : (cloth.atHand[at] ?? null);
    const pins = hold ? pinsOf({ pieces }, places) : [];
    const planned = planOnLength(pieces, wanted, cloth, hand, pins, store);
    if (!planned.ok) return planned.refusals;
    const { plan } = planned;
    const { placed, lost } = placedAgain(plan, places);
    lengths.push({ at, plan, placed });
    if (lost.length > 0 || placedFaults(plan, placed).length > 0) state = 'spoiled';
    else if (state === 'same' && layMark(plan) !== mark) state = 'changed';
  }
  return { lengths, state };
}

interface WantedLength extends KeptLength {
  /** Which of the pieces. */
  readonly wanted: ReadonlySet<number>;
}

/** Each piece goes to the length on which it was; what is new, or was on a length that is gone, to cloth to be bought. */
function lengthsFor(
  { atHand }: OrderCloth,
  pieces: readonly LayPiece[],
  kept: readonly KeptLength[],
): readonly WantedLength[] {
  const there = kept.filter(({ at }) => at === null || atHand[at] !== undefined);
  const lies = ({ child, cut }: LayPiece, { places }: KeptLength): boolean =>
    places.some((place) => place.child === child && place.piece === cut.piece.id);
  const known = there.map((length): WantedLength => {
    const first = (piece: LayPiece): boolean => there.find((other) => lies(piece, other)) === length;
    return { ...length, wanted: new Set([...pieces.keys()].filter((i) => pieces[i] && first(pieces[i]))) };
  });
  const taken = new Set(known.flatMap(({ wanted }) => [...wanted]));
  const left = [...pieces.keys()].filter((i) => !taken.has(i));
  const withLeft = known.map((length) =>
    length.at === null ? { ...length, wanted: new Set([...length.wanted, ...left]) } : length,
  );
  const isPlaced = left.length === 0 || known.some(({ at }) => at === null);
  const all = isPlaced ? withLeft : [...withLeft, { at: null, mark: '', places: [], wanted: new Set(left) }];
  return all.filter(({ wanted }) => wanted.size > 0);
}
