import { formatSellingLength, roundUpToUnit, SELLING_UNITS, type SellingUnit } from '../lay/index.ts';
import { type Money, shareOut, sumOf, timesMoney } from './money.ts';
import { byLength, GOOD_KINDS, type Good, goodKey, type Need } from './needs.ts';

/** Something to buy, for whom, and what it costs. Lengths in mm. */
export interface ShoppingRow {
  readonly what: Goods;
  /** Finds its price and its place among what she has; the same in every order. */
  readonly key: string;
  /** What the work takes. */
  readonly needed: number;
  readonly fromStash: number;
  /** In whole shop units; 0 where she has enough. */
  readonly toBuy: number;
  /** Step of the shop for lengths; null for what is sold by the piece. */
  readonly unit: SellingUnit | null;
  /** For a metre, a yard or a piece; null while she has not said it. */
  readonly price: Price | null;
  readonly cost: Money | null;
  /** What each child takes of it, in the order of the children. */
  readonly each: readonly number[];
  /** Each child's part of the cost, in the order of the children; empty while there is no price. */
  readonly shares: readonly Money[];
  readonly notes: readonly StashNote[];
}

export type Goods = { readonly kind: 'cloth'; readonly name: string } | Good;

export interface Price {
  readonly amount: Money;
  readonly per: PriceUnit;
}
/** What a price is for: a metre or a yard of what is sold by length, one of what is sold by the piece. */
export const PRICE_UNITS = ['m', 'yd', 'each'] as const;
export type PriceUnit = (typeof PRICE_UNITS)[number];

/** A cloth of the order with its lays, all that is bought of it in one length of one dye lot. */
export interface ClothNeed {
  readonly name: string;
  /** Without shrinkage and rounding, by child, as each one's own lay has it; 0 for a child who takes none. */
  readonly alone: readonly number[];
  /** What is bought for all, by the lay. */
  readonly toBuy: number;
  readonly width: number;
  readonly shrinkage: number;
  readonly unit: SellingUnit;
}

/** What lies in her cupboard: a cloth by length and width, or a number of pieces. */
export interface StashItem {
  readonly key: string;
  readonly length: number;
  /** Null where it is no matter. */
  readonly width: number | null;
  readonly count: number;
}

export type StashNote =
  /** A remnant is too narrow or too short for the lay of any child. */
  | {
      readonly code: 'bill.stash.too-small';
      readonly length: number;
      readonly width: number;
      readonly needsLength: number;
      readonly needsWidth: number;
    }
  /** These children are cut from a remnant. */
  | { readonly code: 'bill.stash.cuts'; readonly length: number; readonly children: readonly number[] }
  | { readonly code: 'bill.stash.enough' };

export interface ShoppingWish {
  readonly cloths: readonly ClothNeed[];
  /** By child. */
  readonly needs: readonly (readonly Need[])[];
  readonly stash: readonly StashItem[];
  readonly priceOf: (key: string, kind: string) => Price | null;
  /** Step of the shop for elastic, cord and interfacing. */
  readonly unit: SellingUnit;
}

/** The shopping list of a party: each cloth and each good once, less what is at hand, rounded up to what shops sell. */
export function shoppingList(wish: ShoppingWish): readonly ShoppingRow[] {
  const cloths = wish.cloths.map((cloth) => clothRow(cloth, wish));
  const goods = new Map<string, Good>();
  for (const need of wish.needs.flat()) goods.set(goodKey(need.good), need.good);
  const inOrder = [...goods].sort(
    ([, a], [, b]) => GOOD_KINDS.indexOf(a.kind) - GOOD_KINDS.indexOf(b.kind) || a.size - b.size,
  );
  const rows = inOrder.map(([key, good]) => goodRow(key, good, wish));
  return [...cloths, ...rows];
}

/** A remnant may be a selvedge narrower than the cloth is named, mm. */
const NARROWER = 30;

function clothRow(cloth: ClothNeed, { stash, priceOf }: ShoppingWish): ShoppingRow {
  const key = cloth.name.toLowerCase();
  const shrunk = cloth.alone.map((length) => length / (1 - cloth.shrinkage));
  const notes: StashNote[] = [];
  const cutFrom = new Set<number>();
  let fromStash = 0;
  for (const { length, width } of stash.filter((item) => item.key === key && item.length > 0)) {
    const children = wideEnough(width, cloth) ? thatFit(shrunk, length, cutFrom) : [];
    if (children.length === 0) {
      const left = shrunk.filter((need, i) => need > 0 && !cutFrom.has(i));
      if (left.length === 0) continue;
      const needsLength = Math.min(...left);
      const needsWidth = cloth.width;
      notes.push({
        code: 'bill.stash.too-small',
        length,
        width: width ?? needsWidth,
        needsLength,
        needsWidth,
      });
      continue;
    }
    for (const child of children) cutFrom.add(child);
    fromStash += children.reduce((sum, child) => sum + (shrunk[child] ?? 0), 0);
    notes.push({ code: 'bill.stash.cuts', length, children });
  }
  const left = shrunk.filter((_, i) => !cutFrom.has(i)).reduce((sum, length) => sum + length, 0);
  // The lay for all may be shorter than the lays of those that are left, side by side.
  const toBuy = cutFrom.size === 0 ? cloth.toBuy : Math.min(cloth.toBuy, roundUpToUnit(left, cloth.unit));
  if (toBuy === 0 && cutFrom.size > 0) notes.push({ code: 'bill.stash.enough' });
  const needed = cloth.toBuy;
  const what = { kind: 'cloth', name: cloth.name } as const;
  return priced(
    { what, key, needed, fromStash, toBuy, unit: cloth.unit, notes },
    priceOf(key, 'cloth'),
    cloth.alone,
  );
}

const wideEnough = (width: number | null, cloth: ClothNeed): boolean =>
  width === null || width >= cloth.width - NARROWER;

/** The children whose own lays fit one after another on a length, the longest first. */
function thatFit(lengths: readonly number[], length: number, taken: ReadonlySet<number>): readonly number[] {
  let left = length;
  const found: number[] = [];
  const longestFirst = [...lengths.entries()].sort(([i, a], [j, b]) => b - a || i - j);
  for (const [child, need] of longestFirst) {
    if (need <= 0 || taken.has(child) || need > left) continue;
    left -= need;
    found.push(child);
  }
  return found.sort((a, b) => a - b);
}

function goodRow(key: string, good: Good, { needs, stash, priceOf, unit }: ShoppingWish): ShoppingRow {
  const weights = needs.map((own) =>
    own.filter((need) => goodKey(need.good) === key).reduce((sum, { amount }) => sum + amount, 0),
  );
  const needed = weights.reduce((sum, amount) => sum + amount, 0);
  const long = byLength(good.kind);
  const here = stash
    .filter((item) => item.key === key || item.key === good.kind)
    .reduce((sum, { length, count }) => sum + (long ? length : count), 0);
  const fromStash = Math.min(needed, here);
  const least = Math.max(
    0,
    ...needs.flat().map((need) => (goodKey(need.good) === key ? (need.least ?? 0) : 0)),
  );
  const left = needed === fromStash ? 0 : Math.max(needed - fromStash, least);
  const toBuy = long ? roundUpToUnit(left, unit) : Math.max(0, Math.ceil(left - 1e-9));
  const notes: StashNote[] = toBuy === 0 ? [{ code: 'bill.stash.enough' }] : [];
  const row = { what: good, key, needed, fromStash, toBuy, unit: long ? unit : null, notes };
  return priced(row, priceOf(key, good.kind), weights);
}

function priced(
  row: Omit<ShoppingRow, 'price' | 'cost' | 'shares' | 'each'>,
  found: Price | null,
  weights: readonly number[],
): ShoppingRow {
  // A price for a piece says nothing of a length.
  const price = found !== null && (row.unit === null) === (found.per === 'each') ? found : null;
  const each = weights;
  if (price === null) return { ...row, each, price, cost: null, shares: [] };
  const cost = costOf(row.toBuy, row.unit, price);
  return { ...row, each, price, cost, shares: shareOut(cost, weights) };
}

/** Exact by steps of the shop: three eighths of a yard are 3/8, whatever they are in millimetres. */
function costOf(toBuy: number, unit: SellingUnit | null, { amount, per }: Price): Money {
  if (unit === null) return timesMoney(amount, toBuy);
  const { step, perWhole, symbol } = SELLING_UNITS[unit];
  const steps = Math.round(toBuy / step);
  if (symbol === per) return timesMoney(amount, { over: steps, under: perWhole });
  // The yard is 0.9144 m exactly (international yard, 1959).
  return per === 'm'
    ? timesMoney(amount, { over: steps * 9144, under: perWhole * 10_000 })
    : timesMoney(amount, { over: steps * 10_000, under: perWhole * 9144 });
}

/** What all that has a price costs, and how many rows have none. */
export function costOfAll(
  rows: readonly ShoppingRow[],
  currency: Money['currency'],
): { readonly cost: Money; readonly unpriced: readonly ShoppingRow[] } {
  return {
    cost: sumOf(
      rows.flatMap(({ cost }) => cost ?? []),
      currency,
    ),
    unpriced: rows.filter(({ cost, toBuy }) => cost === null && toBuy > 0),
  };
}

/** `1 5/8 yd`, `2.4 m`, or a plain number of pieces. */
export const toBuyText = ({ toBuy, unit }: Pick<ShoppingRow, 'toBuy' | 'unit'>): string =>
  unit === null ? String(toBuy) : formatSellingLength(toBuy, unit);
