import type { CutPiece } from '../cut/index.ts';
import {
  clothRefusals,
  type LayPiece,
  type LayPlan,
  type LayRefusal,
  type LayRunSettings,
  layOnLengths,
  type Packer,
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

/** How long to search on a cloth: as `LayRunSettings` say. */
export type ClothSearch = (cloth: OrderCloth) => Omit<LayRunSettings, 'start'>;

/** How far a search is: on which cloth, and the length that its pieces take so far, mm; null before there is a lay. */
export interface LayStep {
  readonly cloth: OrderCloth;
  readonly evaluations: number;
  readonly length: number | null;
}

/** Lays the pieces of one child on the cloths of the order, as a pack does. */
export function layChild(order: Order, pieces: readonly CutPiece[]): LaidCloths {
  const { seed, child: evaluations } = PACK_SEARCH;
  return ended(layInTurn(order, pieces, null, () => ({ seed, evaluations })));
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
  if (!order.layTogether) return laidApart(alone);
  const { seed, party: evaluations } = PACK_SEARCH;
  return ended(layInTurn(order, pieces, alone.length > 1 ? alone : null, () => ({ seed, evaluations })));
}

/** The lays of each child, one after another; what is refused of several is told once. */
export const laidApart = (each: readonly LaidCloths[]): LaidCloths => ({
  lists: each.flatMap(({ lists }) => lists),
  problems: uniqueRefusals(each.flatMap(({ problems }) => problems)),
});

function ended<T>(run: Generator<unknown, T, undefined>): T {
  for (;;) {
    const { value, done } = run.next();
    if (done === true) return value as T;
  }
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

/**
 * Lays pieces on their cloths, one after another, and tells of it after every little piece of work. `alone`: the lays
 * of each child, from which the lay of all begins and with which it is compared. `pack`: whoever searches, where it is
 * not one search of this thread.
 */
export function* layInTurn(
  order: Order,
  pieces: readonly CutPiece[],
  alone: readonly LaidCloths[] | null,
  search: ClothSearch,
  pack?: Packer,
): Generator<LayStep, LaidCloths, undefined> {
  const lists: LaidCloth[] = [];
  const problems: LayRefusal[] = [];
  for (const cloth of order.cloths) {
    const own = onCloth(order, cloth, pieces);
    if (own.length === 0) continue;
    const before = alone?.flatMap(({ lists: all }) => all.filter((list) => list.cloth === cloth)) ?? null;
    const laid = yield* layCloth(cloth, own, before, search(cloth), pack);
    if ('lengths' in laid) lists.push(laid);
    else problems.push(...laid);
  }
  return { lists, problems };
}

function* layCloth(
  cloth: OrderCloth,
  own: readonly CutPiece[],
  alone: readonly LaidCloth[] | null,
  search: Omit<LayRunSettings, 'start'>,
  pack: Packer | undefined,
): Generator<LayStep, LaidCloth | readonly LayRefusal[], undefined> {
  const pieces = piecesToLay(cloth, own);
  const found =
    cloth.atHand.length > 0
      ? yield* onLengths(pieces, cloth, search, pack)
      : yield* onRoll(pieces, cloth, alone, search, pack);
  if (!('lengths' in found)) return found;
  const lengths = found.lengths.map(
    ({ at, plan, placed }): FoundLength => ({ at, plan, placed, lay: readLay(plan, placed) }),
  );
  const toBuy = lengths.reduce((sum, { at, lay }) => sum + (at === null ? lay.toBuy.bought : 0), 0);
  const laid = { cloth, pieces: own, lengths, toBuy };
  const all = lengths.length === 1 && lengths[0]?.at === null ? lengths[0].lay : null;
  if (alone === null || all === null) return { ...laid, saved: null };
  const lays = alone.flatMap((list) => list.lengths.map(({ lay }) => lay));
  return { ...laid, saved: savedCloth(all, lays) };
}

type Found = { readonly lengths: readonly Omit<FoundLength, 'lay'>[] } | readonly LayRefusal[];

function* onRoll(
  pieces: readonly LayPiece[],
  cloth: OrderCloth,
  alone: readonly LaidCloth[] | null,
  search: Omit<LayRunSettings, 'start'>,
  pack: Packer | undefined,
): Generator<LayStep, Found, undefined> {
  const planned = planLay(pieces, cloth);
  if (!planned.ok) return planned.refusals;
  const { plan } = planned;
  const before = alone?.flatMap(({ lengths }) => lengths) ?? null;
  const start = before === null ? null : sideBySide(plan, before);
  let placed: readonly PlacedStretch[] | null = null;
  for (const { best, evaluations } of runLay(
    plan,
    { ...search, ...(start === null ? {} : { start }) },
    pack,
  )) {
    placed = best ?? placed;
    const last = placed?.at(-1);
    yield { cloth, evaluations, length: last === undefined ? null : last.from + last.length };
  }
  return placed === null ? noPlace(cloth) : { lengths: [{ at: null, plan, placed }] };
}

function* onLengths(
  pieces: readonly LayPiece[],
  cloth: OrderCloth,
  search: Omit<LayRunSettings, 'start'>,
  pack: Packer | undefined,
): Generator<LayStep, Found, undefined> {
  const run = layOnLengths(pieces, cloth, cloth.atHand, { ...search, mayBuy: true }, pack);
  for (;;) {
    const { value, done } = run.next();
    if (done === true) return value.lengths === null ? value.refusals : { lengths: value.lengths };
    yield { cloth, evaluations: value.evaluations, length: null };
  }
}

const noPlace = ({ name }: OrderCloth): readonly LayRefusal[] => [
  { key: 'lay.does-not-fit', values: { cloth: name }, pieces: [], advice: [] },
];

function uniqueRefusals(refusals: readonly LayRefusal[]): readonly LayRefusal[] {
  return refusals.filter((r, i) => i === refusals.findIndex((q) => JSON.stringify(q) === JSON.stringify(r)));
}
