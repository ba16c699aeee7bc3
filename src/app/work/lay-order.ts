import {
  type ChildDrawing,
  drawChild,
  type LaidCloth,
  layChild,
  layParty,
  layRefusalSentence,
  type Order,
  ownerOf,
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

/** The lays that the order keeps, and short ones, as the papers have them, where it keeps none. */
export function laysShown({ order, children }: DrawnOrder): Omit<Extract<LayLook, { ok: true }>, 'ok'> {
  const isTogether = children.length > 1 && order.layTogether;
  const each = children.map(({ pieces }) => layChild(order, pieces, isTogether ? 'print' : 'show'));
  const all = children.flatMap(({ pieces }) => pieces);
  const { lists, problems } = layParty({ ...order, layTogether: isTogether }, all, each, 'show');
  return {
    laid: lists.map(clothLaid),
    refused: problems.map((problem) => layRefusalSentence(problem, order.units)),
  };
}

/** What the page needs of a lay. */
export const clothLaid = ({ cloth, pieces, lengths, kept, saved }: LaidCloth): ClothLaid => ({
  cloth,
  child: ownerOf(pieces),
  lengths: lengths.map(({ at, plan, placed }) => ({ at, plan, placed })),
  kept,
  alone: saved?.alone ?? null,
});
