import type { CutPiece } from '../cut/index.ts';
import {
  clothRefusals,
  type LayPiece,
  type LayPlan,
  type LayRefusal,
  layOnLengths,
  type PlacedStretch,
  planLay,
  readLay,
  runLay,
  type StripeMatch,
  savedCloth,
  sideBySide,
} from '../lay/index.ts';
import type { ClothCutList, LaidOnLength } from '../sheet/index.ts';
import type { Order, OrderCloth } from './order.ts';
import { clothOf } from './read-cloths.ts';

/** A cloth with all that is cut from it laid out, of one child or of several. */
export interface LaidCloth extends ClothCutList {
  readonly cloth: OrderCloth;
  readonly lengths: readonly FoundLength[];
}

interface FoundLength extends LaidOnLength {
  readonly plan: LayPlan;
  readonly placed: readonly PlacedStretch[];
}

export interface LaidCloths {
  /** Every cloth from which something is cut and onto which all of it fits, in the order's order. */
  readonly lists: readonly LaidCloth[];
  readonly problems: readonly LayRefusal[];
}

/** The search tries as many places for each lay of a pack, so that a pack is soon made and always the same. */
export const PACK_SEARCH = { seed: 1, child: 1500, party: 4000 } as const;

/** Lays the pieces of one child on the cloths of the order. */
export function layChild(order: Order, pieces: readonly CutPiece[]): LaidCloths {
  return laidCloths(order, pieces, (cloth, own) => layCloth(cloth, own, PACK_SEARCH.child, null));
}

/**
 * Lays the pieces of all children, in their order: together where the order says so, else as each child's own lay has
 * them.
 */
export function layParty(
  order: Order,
  pieces: readonly CutPiece[],
  alone: readonly LaidCloths[],
): LaidCloths {
  if (!order.layTogether) {
    return {
      lists: alone.flatMap(({ lists }) => lists),
      problems: uniqueRefusals(alone.flatMap(({ problems }) => problems)),
    };
  }
  return laidCloths(order, pieces, (cloth, own) => {
    const before = alone.flatMap(({ lists }) => lists.filter((list) => list.cloth === cloth));
    return layCloth(cloth, own, PACK_SEARCH.party, alone.length > 1 ? before : null);
  });
}

/** What keeps pieces from being laid on their cloths, found without laying them. */
export function refusedByCloths(order: Order, pieces: readonly CutPiece[]): readonly LayRefusal[] {
  return order.cloths.flatMap((cloth) =>
    clothRefusals(piecesToLay(cloth, onCloth(order, cloth, pieces)), cloth),
  );
}

/** What to buy of each cloth, mm; a cloth that was laid child by child is bought in one. */
export function clothsToBuy({
  lists,
}: LaidCloths): readonly { readonly cloth: OrderCloth; readonly length: number }[] {
  const cloths = [...new Set(lists.map(({ cloth }) => cloth))];
  return cloths.map((cloth) => ({
    cloth,
    length: lists.filter((list) => list.cloth === cloth).reduce((sum, { toBuy }) => sum + toBuy, 0),
  }));
}

/** The pieces of one cloth as the lay wants them. */
export function piecesToLay(cloth: OrderCloth, pieces: readonly CutPiece[]): readonly LayPiece[] {
  return pieces.map((cut): LayPiece => {
    const matches = cloth.repeat === undefined ? [] : stripeMatches(cut);
    const { child } = cut.label;
    return { cut, child, grain: 'lengthwise', ...(matches.length === 0 ? {} : { matches }) };
  });
}

export const onCloth = (order: Order, cloth: OrderCloth, pieces: readonly CutPiece[]): readonly CutPiece[] =>
  pieces.filter(({ piece }) => clothOf(order.cloths, piece.cloth) === cloth);

/** Seams down the body, on which a stripe that misses is seen (common practice, no source). */
const MATCHED = ['side', 'closing', 'join'] as const satisfies readonly string[];

/** Stripes meet where the notches of a seam meet: on the stitching line, not at the cut edge. */
function stripeMatches({ piece, label }: CutPiece): readonly StripeMatch[] {
  return piece.notches.flatMap(({ edge, at, match }) => {
    const kind = piece.edges.find(({ name }) => name === edge)?.kind;
    return MATCHED.some((k) => k === kind) ? [{ group: `${label.child} ${match}`, edge, at }] : [];
  });
}

function laidCloths(
  order: Order,
  pieces: readonly CutPiece[],
  lay: (cloth: OrderCloth, own: readonly CutPiece[]) => LaidCloth | readonly LayRefusal[],
): LaidCloths {
  const lists: LaidCloth[] = [];
  const problems: LayRefusal[] = [];
  for (const cloth of order.cloths) {
    const own = onCloth(order, cloth, pieces);
    if (own.length === 0) continue;
    const laid = lay(cloth, own);
    if ('lengths' in laid) lists.push(laid);
    else problems.push(...laid);
  }
  return { lists, problems };
}

function layCloth(
  cloth: OrderCloth,
  own: readonly CutPiece[],
  evaluations: number,
  alone: readonly LaidCloth[] | null,
): LaidCloth | readonly LayRefusal[] {
  const pieces = piecesToLay(cloth, own);
  const found =
    cloth.atHand.length > 0
      ? onLengths(pieces, cloth, evaluations)
      : onRoll(pieces, cloth, evaluations, alone);
  if (!('lengths' in found)) return found;
  const lengths = found.lengths.map(({ at, plan, placed }): FoundLength => {
    const lay = readLay(plan, placed);
    return { at, plan, placed, lay };
  });
  const toBuy = lengths.reduce((sum, { at, lay }) => sum + (at === null ? lay.toBuy.bought : 0), 0);
  const laid = { cloth, pieces: own, lengths, toBuy };
  const all = lengths.length === 1 && lengths[0]?.at === null ? lengths[0].lay : null;
  if (alone === null || all === null) return { ...laid, saved: null };
  const lays = alone.flatMap((list) => list.lengths.map(({ lay }) => lay));
  return { ...laid, saved: savedCloth(all, lays) };
}

type Found =
  | {
      readonly lengths: readonly {
        readonly at: number | null;
        readonly plan: LayPlan;
        readonly placed: readonly PlacedStretch[];
      }[];
    }
  | readonly LayRefusal[];

function onRoll(
  pieces: readonly LayPiece[],
  cloth: OrderCloth,
  evaluations: number,
  alone: readonly LaidCloth[] | null,
): Found {
  const planned = planLay(pieces, cloth);
  if (!planned.ok) return planned.refusals;
  const { plan } = planned;
  const start =
    alone === null
      ? null
      : sideBySide(
          plan,
          alone.flatMap(({ lengths }) => lengths),
        );
  const settings = { seed: PACK_SEARCH.seed, evaluations, ...(start === null ? {} : { start }) };
  let placed: readonly PlacedStretch[] | null = null;
  for (const step of runLay(plan, settings)) placed = step.best ?? placed;
  return placed === null ? noPlace(cloth) : { lengths: [{ at: null, plan, placed }] };
}

function onLengths(pieces: readonly LayPiece[], cloth: OrderCloth, evaluations: number): Found {
  const settings = { seed: PACK_SEARCH.seed, evaluations, mayBuy: true };
  const run = layOnLengths(pieces, cloth, cloth.atHand, settings);
  for (;;) {
    const { value, done } = run.next();
    if (done === true) return value.lengths === null ? value.refusals : { lengths: value.lengths };
  }
}

const noPlace = ({ name }: OrderCloth): readonly LayRefusal[] => [
  { key: 'lay.does-not-fit', values: { cloth: name }, pieces: [], advice: [] },
];

function uniqueRefusals(refusals: readonly LayRefusal[]): readonly LayRefusal[] {
  return refusals.filter((r, i) => i === refusals.findIndex((q) => JSON.stringify(q) === JSON.stringify(r)));
}
