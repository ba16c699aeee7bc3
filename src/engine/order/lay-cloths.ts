import type { CutPiece } from '../cut/index.ts';
import {
  clothRefusals,
  type LayPiece,
  type LayRefusal,
  type Packer,
  readLay,
  type ShapeStore,
  type StripeMatch,
  savedCloth,
  shapeStore,
} from '../lay/index.ts';
import type { ClothCutList, LaidOnLength } from '../sheet/index.ts';
import {
  type ClothSearch,
  type ClothSettings,
  findLay,
  goOn,
  type LayStep,
  type PlacedLength,
} from './find-lay.ts';
import type { KeptLay, Order, OrderCloth } from './order.ts';
import { clothOf } from './read-cloths.ts';
import { keptLayOf, type LayReadBack, readLayBack } from './read-lay-back.ts';

/** A cloth with all that is cut from it laid out, of one child or of several. */
export interface LaidCloth extends ClothCutList {
  readonly cloth: OrderCloth;
  readonly lengths: readonly FoundLength[];
  /** How it stands with the lay that was kept of these pieces; null where none was, or another had to be found. */
  readonly kept: LayReadBack['state'] | null;
}

interface FoundLength extends LaidOnLength, PlacedLength {}

export interface LaidCloths {
  /** Every cloth from which something is cut and onto which all of it fits, in the order's order. */
  readonly lists: readonly LaidCloth[];
  readonly problems: readonly LayRefusal[];
}

/** The search tries as many places for each lay of a pack, so that a pack is soon made and always the same. */
export const PACK_SEARCH = { seed: 1, child: 3000, party: 20_000 } as const;

/**
 * What is done with a lay that the order keeps. `print`: it is taken as it is; where it no longer holds, another is
 * searched for. `show`: it is taken as it is, also where it no longer holds. `go-on`: the search begins from it, and
 * what is pinned stays where it is.
 */
export type KeptUse = 'print' | 'show' | 'go-on';

/**
 * The shapes of the pieces of an order, kept as long as the order is: each child alone, all together and what the cloths
 * refuse are looked at one after another, and growing an outline takes longer than a short search of the lay.
 */
const shapes = new WeakMap<Order, ShapeStore>();

function shapesOf(order: Order): ShapeStore {
  const known = shapes.get(order);
  if (known !== undefined) return known;
  const made = shapeStore();
  shapes.set(order, made);
  return made;
}

/** Lays the pieces of one child on the cloths of the order, as a pack does. */
export function layChild(
  order: Order,
  pieces: readonly CutPiece[],
  use: Exclude<KeptUse, 'go-on'> = 'print',
): LaidCloths {
  const { seed, child: evaluations } = PACK_SEARCH;
  return ended(layInTurn(order, pieces, null, () => ({ seed, evaluations }), use));
}

/**
 * Lays the pieces of all children, in their order: together where the order says so, else as each child's own lay has
 * them.
 */
export function layParty(
  order: Order,
  pieces: readonly CutPiece[],
  alone: readonly LaidCloths[],
  use: Exclude<KeptUse, 'go-on'> = 'print',
): LaidCloths {
  if (!order.layTogether) return laidApart(alone);
  const { seed, party: evaluations } = PACK_SEARCH;
  const search = () => ({ seed, evaluations });
  return ended(layInTurn(order, pieces, alone.length > 1 ? alone : null, search, use));
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
    clothRefusals(piecesToLay(cloth, onCloth(order, cloth, pieces)), cloth, shapesOf(order)),
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
    return {
      cut,
      child,
      grain: cloth.grain.get(cut.piece.id) ?? 'lengthwise',
      ...(matches.length === 0 ? {} : { matches }),
      ...(cloth.oneLength ? { together: child } : {}),
    };
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
  use: KeptUse,
  pack?: Packer,
): Generator<LayStep, LaidCloths, undefined> {
  const lists: LaidCloth[] = [];
  const problems: LayRefusal[] = [];
  for (const cloth of order.cloths) {
    const own = onCloth(order, cloth, pieces);
    const settings = search(cloth);
    if (own.length === 0 || settings === null) continue;
    const before = alone?.flatMap(({ lists: all }) => all.filter((list) => list.cloth === cloth)) ?? null;
    const kept = keptLayOf(order, cloth, own);
    const laid = yield* layCloth(cloth, own, before, kept, settings, use, shapesOf(order), pack);
    if ('lengths' in laid) lists.push(laid);
    else problems.push(...laid);
  }
  return { lists, problems };
}

function* layCloth(
  cloth: OrderCloth,
  own: readonly CutPiece[],
  alone: readonly LaidCloth[] | null,
  kept: KeptLay | null,
  search: ClothSettings,
  use: KeptUse,
  store: ShapeStore,
  pack: Packer | undefined,
): Generator<LayStep, LaidCloth | readonly LayRefusal[], undefined> {
  const pieces = piecesToLay(cloth, own);
  const back = kept === null ? null : readLayBack(cloth, pieces, kept.lengths, use === 'go-on', store);
  if (back !== null && !('lengths' in back)) return back;
  const isTaken = back !== null && (use === 'show' || (use === 'print' && back.state !== 'spoiled'));
  const before = alone?.flatMap(({ lengths }) => lengths) ?? null;
  const found = isTaken
    ? back
    : back !== null && use === 'go-on'
      ? yield* goOn(cloth, back.lengths, search, pack)
      : yield* findLay(cloth, pieces, before, search, store, pack);
  if (!('lengths' in found)) return found;
  const lengths = found.lengths.map(
    ({ at, plan, placed }): FoundLength => ({ at, plan, placed, lay: readLay(plan, placed) }),
  );
  const toBuy = lengths.reduce((sum, { at, lay }) => sum + (at === null ? lay.toBuy.bought : 0), 0);
  const laid = { cloth, pieces: own, lengths, toBuy, kept: isTaken ? back.state : null };
  const all = lengths.length === 1 && lengths[0]?.at === null ? lengths[0].lay : null;
  if (alone === null || all === null) return { ...laid, saved: null };
  const lays = alone.flatMap((list) => list.lengths.map(({ lay }) => lay));
  return { ...laid, saved: savedCloth(all, lays) };
}

function uniqueRefusals(refusals: readonly LayRefusal[]): readonly LayRefusal[] {
  return refusals.filter((r, i) => i === refusals.findIndex((q) => JSON.stringify(q) === JSON.stringify(r)));
}
