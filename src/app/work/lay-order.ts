import { type Packer, packAtOnce } from '../../engine/lay/index.ts';
import {
  type ChildDrawing,
  drawChild,
  type LaidCloth,
  type LaidCloths,
  laidApart,
  layInTurn,
  layRefusalSentence,
  type Order,
  ownerOf,
  PACK_SEARCH,
  readOrderValue,
} from '../../engine/order/index.ts';
import type { ClothLaid, LayGrounds, LayLook } from './lay-wish.ts';

/** An order with the pieces of all children whose lays are wanted. */
export interface DrawnOrder {
  readonly order: Order;
  readonly children: readonly Pick<ChildDrawing, 'name' | 'pieces'>[];
}

type Drawn = ({ readonly ok: true } & DrawnOrder) | Extract<LayLook, { ok: false }>;

/** Reads and draws an order; while nothing but its lays changes, what was drawn last is taken again. */
export function drawnOnce(): (grounds: LayGrounds) => Drawn {
  let known: { readonly key: string; readonly children: DrawnOrder['children'] } | null = null;
  return ({ file, today, of }) => {
    // Where one child's lay is wanted, a slip at another does not matter: of her only the name is needed.
    const only = file.children.map((child, i) => (of === 'party' || i === of ? child : { name: child.name }));
    const read = readOrderValue({ ...file, children: only });
    if (!read.ok) return { ok: false, problems: read.problems };
    const { order } = read;
    const key = JSON.stringify([{ ...file, lays: [] }, today, of]);
    if (known?.key === key) return { ok: true, order, children: known.children };
    const results = order.children
      .filter((_, i) => of === 'party' || i === of)
      .map((child) => drawChild(order, child, today));
    const problems = results.flatMap((result) => (result.ok ? [] : result.problems));
    if (problems.length > 0) return { ok: false, problems };
    const children = results.flatMap((result) => (result.ok ? [result.drawing] : []));
    known = { key, children };
    return { ok: true, order, children };
  };
}

type LaysShown = Omit<Extract<LayLook, { ok: true }>, 'ok'>;

/**
 * The lays that the order keeps, and short ones, as the papers have them, where it keeps none. On the way each is told as
 * soon as it is there, first in a form that takes no search, so that she soon sees something; null: still at work.
 */
export function* laysShown({ order, children }: DrawnOrder): Generator<ClothLaid | null, LaysShown> {
  const isTogether = children.length > 1 && order.layTogether;
  const all = children.flatMap(({ pieces }) => pieces);
  for (const pieces of isTogether ? [all] : children.map((child) => child.pieces)) {
    yield* clothByCloth(order, pieces, null, { seed: 1, evaluations: 1 }, 'show', packAtOnce);
  }
  const { seed, child, party } = PACK_SEARCH;
  const each: LaidCloths[] = [];
  for (const { pieces } of children) {
    const own = clothByCloth(
      order,
      pieces,
      null,
      { seed, evaluations: child },
      isTogether ? 'print' : 'show',
    );
    each.push(yield* isTogether ? silently(own) : own);
  }
  const { lists, problems } = isTogether
    ? yield* clothByCloth(order, all, each, { seed, evaluations: party }, 'show')
    : laidApart(each);
  const refused = problems.map((problem) => layRefusalSentence(problem, order.units));
  return { laid: lists.map(clothLaid), refused: [...new Set(refused)] };
}

/** Lays one cloth after another, and tells each as soon as it is laid. */
function* clothByCloth(
  order: Order,
  pieces: ChildDrawing['pieces'],
  alone: readonly LaidCloths[] | null,
  settings: { readonly seed: number; readonly evaluations: number },
  use: 'print' | 'show',
  pack?: Packer,
): Generator<ClothLaid | null, LaidCloths> {
  const laid: LaidCloths[] = [];
  for (const { name } of order.cloths) {
    const onlyThere = (other: { readonly name: string }) => (other.name === name ? settings : null);
    const one = yield* silently(layInTurn(order, pieces, alone, onlyThere, use, pack));
    yield* one.lists.map(clothLaid);
    laid.push(one);
  }
  return laidApart(laid);
}

function* silently<T>(run: Generator<unknown, T>): Generator<null, T> {
  for (;;) {
    const { value, done } = run.next();
    if (done === true) return value as T;
    yield null;
  }
}

/** What the page needs of a lay. */
const clothLaid = ({ cloth, pieces, lengths, kept, saved }: LaidCloth): ClothLaid => ({
  cloth,
  child: ownerOf(pieces),
  lengths: lengths.map(({ at, plan, placed }) => ({ at, plan, placed })),
  kept,
  alone: saved?.alone ?? null,
});
