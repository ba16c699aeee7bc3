import type { Currency } from './currencies.ts';
import { lessMoney, type Money, noMoney, percentOf, sumOf, timesMoney } from './money.ts';

/** What the maker asks for her time and her workroom. Percentages in hundredths. */
export interface Rates {
  readonly currency: Currency;
  /** For an hour of her work; a wage, not a profit. */
  readonly perHour: Money;
  /** Rent, light, machine: of her labour. 10 is what one maker's published sum takes. */
  readonly overhead: number;
  /** Of materials, labour and overhead together. A wage is not a profit, so it stands apart. */
  readonly profit: number;
  /** Needles, chalk, press cloths: of the materials. */
  readonly sundries: number;
  readonly deposit: { readonly percent: number; readonly materialsFirst: boolean };
  /** Null where she adds no tax. */
  readonly tax: { readonly name: string; readonly percent: number } | null;
}

/** One child's part of the work. */
export interface ChildWork {
  readonly name: string;
  readonly materials: Money;
  readonly minutes: number;
}

/** Something beside the dresses: a change after the fitting, a journey, a reduction (below zero). */
export interface Extra {
  readonly about: string;
  /** In money, or in minutes of work at her rate and overhead. */
  readonly price: Money | { readonly minutes: number };
}

export interface BillWish {
  readonly children: readonly ChildWork[];
  readonly extras: readonly Extra[];
  /** Added for work in a hurry, of the dresses and extras; 0 for none. */
  readonly rush: number;
  /** The price before tax that was agreed, in the place of what is reckoned; null where none was. */
  readonly agreed: Money | null;
  readonly received: readonly Money[];
}

/** How the price of one child's dress comes about. */
export interface ChildPrice {
  readonly name: string;
  readonly minutes: number;
  readonly materials: Money;
  readonly sundries: Money;
  readonly labour: Money;
  readonly overhead: Money;
  readonly profit: Money;
  readonly price: Money;
}

export interface Bill {
  readonly children: readonly ChildPrice[];
  readonly extras: readonly { readonly about: string; readonly price: Money }[];
  readonly rush: Money;
  /** What it comes to by her rates, before tax. */
  readonly reckoned: Money;
  /** Agreed less reckoned; nothing where none was agreed. */
  readonly difference: Money;
  readonly totals: Totals;
  readonly deposit: Money;
}

/** The foot of a bill. `due` is what is still to pay; below zero where too much was paid. */
export interface Totals {
  readonly net: Money;
  readonly tax: Money;
  readonly total: Money;
  readonly received: Money;
  readonly due: Money;
}

/** `minutes` at her rate for an hour, rounded once. */
export const labourFor = (perHour: Money, minutes: number): Money =>
  timesMoney(perHour, { over: minutes, under: 60 });

/**
 * The price of an order: for each child materials + sundries + hours x rate + overhead + profit (price = materials +
 * hours x rate + overhead + profit, a dressmakers' teaching page; overhead as a share of labour, another), then the
 * extras and the rush. Every figure that is printed is rounded where it stands and the sums are sums of what is printed,
 * so that a customer who adds up finds the same.
 */
export function reckonBill(wish: BillWish, rates: Rates): Bill {
  const { currency } = rates;
  const children = wish.children.map((child) => childPrice(child, rates));
  const extras = wish.extras.map(({ about, price }) => ({ about, price: extraPrice(price, rates) }));
  const before = sumOf(
    [...children, ...extras].map(({ price }) => price),
    currency,
  );
  const rush = percentOf(before, wish.rush);
  const reckoned = sumOf([before, rush], currency);
  const net = wish.agreed ?? reckoned;
  const totals = totalsOf([net], rates.tax?.percent ?? 0, wish.received, currency);
  const materials = sumOf(
    children.map((child) => child.materials),
    currency,
  );
  return {
    children,
    extras,
    rush,
    reckoned,
    difference: lessMoney(net, reckoned),
    totals,
    deposit: depositOf(totals.total, materials, rates),
  };
}

function childPrice({ name, materials, minutes }: ChildWork, rates: Rates): ChildPrice {
  const { currency } = rates;
  const sundries = percentOf(materials, rates.sundries);
  const labour = labourFor(rates.perHour, minutes);
  const overhead = percentOf(labour, rates.overhead);
  const cost = sumOf([materials, sundries, labour, overhead], currency);
  const profit = percentOf(cost, rates.profit);
  const price = sumOf([cost, profit], currency);
  return { name, minutes, materials, sundries, labour, overhead, profit, price };
}

function extraPrice(price: Extra['price'], rates: Rates): Money {
  if (!('minutes' in price)) return price;
  const labour = labourFor(rates.perHour, price.minutes);
  return sumOf([labour, percentOf(labour, rates.overhead)], rates.currency);
}

/** Part of the total, or the materials whole and part of the rest; never more than the total. */
function depositOf(total: Money, materials: Money, { deposit, currency }: Rates): Money {
  const first = deposit.materialsFirst ? materials : noMoney(currency);
  if (first.minor >= total.minor) return total;
  return sumOf([first, percentOf(lessMoney(total, first), deposit.percent)], currency);
}

/** Adds up lines before tax, adds the tax once to their sum, and takes off what was paid. */
export function totalsOf(
  lines: readonly Money[],
  taxPercent: number,
  received: readonly Money[],
  currency: Currency,
): Totals {
  const net = sumOf(lines, currency);
  const tax = percentOf(net, taxPercent);
  const total = sumOf([net, tax], currency);
  const paid = sumOf(received, currency);
  return { net, tax, total, received: paid, due: lessMoney(total, paid) };
}

/**
 * What an hour brought in the end: the price before tax less materials and overhead, over the hours that she wrote
 * down. Null while there are none.
 */
export function earnedPerHour(price: Money, costs: readonly Money[], minutes: number): Money | null {
  if (!(minutes > 0)) return null;
  const left = lessMoney(price, sumOf(costs, price.currency));
  return timesMoney(left, { over: 60, under: minutes });
}

/**
 * The time to allow for work that was once timed: the timed minutes x how quick that hand was (100 as usual, 80 for one
 * that went at it slowly), and so many hundredths on top for threading, tea and interruptions (the sum of a garment
 * engineering page: 0.60 min x 80 % = 0.48; + 10 % + 20 % = 0.624). Rounded to no step.
 */
export function standardMinutes(timed: number, rating: number, allowances: readonly number[]): number {
  const usual = (timed * rating) / 100;
  return usual * (1 + allowances.reduce((sum, percent) => sum + percent, 0) / 100);
}
