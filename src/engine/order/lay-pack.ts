import { type Packer, roundUpToUnit } from '../lay/index.ts';
import { layPages, type Page } from '../sheet/index.ts';
import { type ChildReport, checkOrder } from './check-order.ts';
import { deskOf, type PaperTools } from './child-papers.ts';
import type { ClothSearch, LayStep } from './find-lay.ts';
import { boughtByTable } from './lay-by-table.ts';
import { type LaidCloth, type LaidCloths, laidApart, layChild, layInTurn } from './lay-cloths.ts';
import type { Order } from './order.ts';
import type { OrderProblem } from './problem.ts';

export interface LaidPack {
  readonly cloths: LaidCloths;
  readonly pages: readonly Page[];
}

export type LayPackResult =
  | { readonly ok: true; readonly laid: LaidPack }
  | { readonly ok: false; readonly problems: readonly OrderProblem[] };

/**
 * Lays an order's cloths as long as `search` says, and draws the lays. `child`: the place of one child in the order;
 * null lays all, together or one lay a child as the order says. A lay that the order keeps is gone on from. `pack`:
 * whoever searches, as `layInTurn` takes it.
 */
export function* layPack(
  order: Order,
  tools: PaperTools,
  child: number | null,
  search: ClothSearch,
  pack?: Packer,
): Generator<LayStep, LayPackResult, undefined> {
  const report = checkOrder(order, tools.today);
  if (!report.ok) return { ok: false, problems: report.problems };
  const wanted = report.children.filter((_, i) => child === null || i === child);
  const { day, paper, ink } = deskOf(order, tools);
  let cloths: LaidCloths;
  if (wanted.length > 1 && order.layTogether) {
    const alone = wanted.map(({ pieces }) => layChild(order, pieces));
    const all = wanted.flatMap(({ pieces }) => pieces);
    cloths = yield* layInTurn(order, all, alone, search, 'go-on', pack);
  } else {
    const each: LaidCloths[] = [];
    for (const { pieces } of wanted) each.push(yield* layInTurn(order, pieces, null, search, 'go-on', pack));
    cloths = laidApart(each);
  }
  const lists = cloths.lists.map((list) => withTable(order, list, wanted));
  const [only] = wanted;
  const title = wanted.length === 1 && only !== undefined ? only.name : order.title;
  const pages = layPages({ title, date: day, cloths: lists, paper, ink });
  return { ok: true, laid: { cloths: { ...cloths, lists }, pages } };
}

/** What is bought for a lay, held against the width table; what lies on lengths at hand is not. */
function withTable(
  order: Order,
  list: LaidCloth,
  children: readonly Pick<ChildReport, 'pieces'>[],
): LaidCloth {
  if (list.lengths.some(({ at }) => at !== null)) return list;
  const laid = new Set(list.pieces);
  const each = children.map(({ pieces }) => pieces.filter((piece) => laid.has(piece)));
  const byTable = boughtByTable(order, list.cloth.name, each);
  return byTable === null ? list : { ...list, byTable: roundUpToUnit(byTable, list.cloth.unit) };
}
