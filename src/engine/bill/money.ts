import Big from 'big.js';
import { type Currency, currencyOf, decimalsOf, signOf } from './currencies.ts';

/** An amount in whole smallest parts of its currency: 1250 of GBP are 12.50 pounds. Never a broken number. */
export interface Money {
  readonly minor: number;
  readonly currency: Currency;
}

/** More than any dress costs, and far below what a number holds exactly, in smallest parts. */
const MOST_MINOR = 1e12;

export const money = (minor: number, currency: Currency): Money => {
  if (!Number.isSafeInteger(minor)) throw new Error(`Money is counted in whole parts, not ${minor}.`);
  return { minor, currency };
};

export const noMoney = (currency: Currency): Money => money(0, currency);

/** Two currencies are never added: orders that name two are refused when they are read, so this is a bug. */
export function sumOf(amounts: readonly Money[], currency: Currency): Money {
  const other = amounts.find((amount) => amount.currency !== currency);
  if (other !== undefined) throw new Error(`${other.currency} can't be added to ${currency}.`);
  return money(
    amounts.reduce((sum, { minor }) => sum + minor, 0),
    currency,
  );
}

export const lessMoney = (from: Money, taken: Money): Money =>
  sumOf([from, { ...taken, minor: -taken.minor }], from.currency);

/**
 * An amount times an exact number, rounded once to the smallest part: the half goes away from zero, as on any bill
 * (common practice, no source). The factor is a decimal text, a number as it is written, or a fraction.
 */
export function timesMoney(amount: Money, factor: Factor): Money {
  const { over, under } = typeof factor === 'object' ? factor : { over: factor, under: 1 };
  // Multiplied before it is divided, so that a third of three is one.
  const exact = new Big(amount.minor).times(over);
  return money(roundedQuotient(exact, new Big(under)), amount.currency);
}

export type Factor = string | number | { readonly over: number | string; readonly under: number | string };

/** So many hundredths of an amount, rounded in the same way. */
export const percentOf = (amount: Money, percent: number): Money =>
  timesMoney(amount, { over: percent, under: 100 });

/** Exact even where the quotient has no end: halves are decided on the remainder, not on cut-off digits. */
function roundedQuotient(over: Big, under: Big): number {
  const whole = wholeQuotient(over.abs(), under.abs());
  const rest = over.abs().minus(new Big(whole).times(under.abs()));
  const up = rest.times(2).gte(under.abs()) ? 1 : 0;
  const size = whole + up;
  const isBelow = over.lt(0) !== under.lt(0);
  return size === 0 ? 0 : isBelow ? -size : size;
}

function wholeQuotient(over: Big, under: Big): number {
  const guess = over.div(under).round(0, Big.roundDown);
  return Number(guess.times(under).gt(over) ? guess.minus(1) : guess);
}

/**
 * Shares an amount out by weights so that the parts add up to it exactly: each gets its rounded-down share, and the
 * parts left over go to those that lost most by it, the first of equals first (largest remainders). All weights zero:
 * shared out evenly.
 */
export function shareOut(amount: Money, weights: readonly number[]): readonly Money[] {
  if (weights.length === 0) return [];
  const given = weights.some((weight) => weight > 0)
    ? weights.map((w) => Math.max(0, w))
    : weights.map(() => 1);
  const all = given.reduce((sum, weight) => sum.plus(weight), new Big(0));
  const sign = amount.minor < 0 ? -1 : 1;
  const size = Math.abs(amount.minor);
  const parts = given.map((weight, at) => {
    const exact = new Big(size).times(weight);
    const whole = wholeQuotient(exact, all);
    return { at, whole, lost: exact.minus(all.times(whole)) };
  });
  let left = size - parts.reduce((sum, { whole }) => sum + whole, 0);
  const luck = new Set<number>();
  for (const { at } of [...parts].sort((a, b) => b.lost.cmp(a.lost) || a.at - b.at)) {
    if (left-- <= 0) break;
    luck.add(at);
  }
  return parts.map(({ at, whole }) => money(sign * (whole + (luck.has(at) ? 1 : 0)), amount.currency));
}

export type MoneyProblem =
  | { readonly code: 'bill.money.empty' | 'bill.money.negative' | 'bill.money.too-large' }
  | { readonly code: 'bill.money.unreadable'; readonly found: string }
  | { readonly code: 'bill.money.too-fine'; readonly currency: Currency; readonly decimals: number }
  | { readonly code: 'bill.money.other-currency'; readonly found: Currency; readonly currency: Currency };

export type ReadMoney =
  | { readonly ok: true; readonly money: Money }
  | { readonly ok: false; readonly problem: MoneyProblem };

/**
 * Reads an amount as it is written: `12.50`, `12,50`, `1,250.00`, `1 250`, `£12.50`, `12.50 GBP`. A lone point parts
 * the decimals; a lone comma does too, unless three digits follow it. Refuses another currency than the order's, parts
 * smaller than the currency has, and what is below zero.
 */
export function readMoney(text: string | number, currency: Currency): ReadMoney {
  const given = String(text).trim();
  if (given === '') return wrong({ code: 'bill.money.empty' });
  const found = /^([^\d\s.,-]*)\s*(-?[\d\s.,'’]*\d)\s*([^\d\s.,-]*)$/u.exec(given);
  if (found === null) return wrong({ code: 'bill.money.unreadable', found: given.slice(0, 30) });
  const [, before = '', digits = '', after = ''] = found;
  for (const word of [before, after]) {
    if (word === '') continue;
    const named = currencyOf(word);
    if (named === null) return wrong({ code: 'bill.money.unreadable', found: given.slice(0, 30) });
    if (named !== currency) return wrong({ code: 'bill.money.other-currency', found: named, currency });
  }
  const plain = plainNumber(digits.replace(/[\s'’]/gu, ''));
  if (plain === null) return wrong({ code: 'bill.money.unreadable', found: given.slice(0, 30) });
  const exact = new Big(plain).times(10 ** decimalsOf(currency));
  if (exact.lt(0)) return wrong({ code: 'bill.money.negative' });
  if (exact.gt(MOST_MINOR)) return wrong({ code: 'bill.money.too-large' });
  if (!exact.eq(exact.round(0, Big.roundDown)))
    return wrong({ code: 'bill.money.too-fine', currency, decimals: decimalsOf(currency) });
  return { ok: true, money: money(Number(exact), currency) };
}

const wrong = (problem: MoneyProblem): ReadMoney => ({ ok: false, problem });

/** `1,250.00` and `1.250,00` as `1250.00`: of two marks the last is the point, if it stands once. */
function plainNumber(text: string): string | null {
  const marks = [...text.matchAll(/[.,]/g)].map((match) => match.index);
  const last = marks.at(-1);
  if (last === undefined) return /^-?\d+$/.test(text) ? text : null;
  const mark = text[last];
  const after = text.length - last - 1;
  const kinds = new Set(marks.map((at) => text[at])).size;
  const isPoint =
    kinds === 2
      ? marks.filter((at) => text[at] === mark).length === 1
      : marks.length === 1 && (mark === '.' || after !== 3);
  const whole = isPoint ? text.slice(0, last) : text;
  if (!/^-?\d{1,3}([.,]\d{3})*$|^-?\d+$/.test(whole)) return null;
  const plain = whole.replace(/[.,]/g, '');
  return isPoint ? `${plain}.${text.slice(last + 1)}` : plain;
}

/**
 * `£1,250.00`, `XOF 12,500`: the sign or the code first, thousands parted by a comma, all decimals of the currency, as
 * English is written. By a rule of our own, so that paper and page agree on every device.
 */
export function moneyText({ minor, currency }: Money): string {
  const sign = signOf(currency);
  const lead = sign === currency ? `${sign} ` : sign;
  return `${minor < 0 ? '-' : ''}${lead}${plainMoney({ minor: Math.abs(minor), currency })}`;
}

/** The amount alone: `1,250.00`. */
export function plainMoney({ minor, currency }: Money): string {
  const decimals = decimalsOf(currency);
  const digits = String(Math.abs(minor)).padStart(decimals + 1, '0');
  const whole = digits.slice(0, digits.length - decimals).replace(/\B(?=(\d{3})+$)/g, ',');
  const sign = minor < 0 ? '-' : '';
  return decimals === 0 ? `${sign}${whole}` : `${sign}${whole}.${digits.slice(-decimals)}`;
}
