import {
  type Bill,
  type ClothNeed,
  type Currency,
  costOfAll,
  currencyOf,
  type DaysResult,
  dressNeeds,
  type Extra,
  earnedPerHour,
  type Money,
  planDays,
  reckonBill,
  type ShoppingRow,
  shoppingList,
  standardMinutes,
  sumOf,
} from '../../bill/index.ts';
import type { ChildReport } from '../check-order.ts';
import { readDay } from '../day.ts';
import type { LaidCloths } from '../lay-cloths.ts';
import type { Order } from '../order.ts';
import { timedSteps } from '../sew/timed-steps.ts';
import { type PayFile, WORK_KINDS, type WorkKind } from './pay-form.ts';
import {
  amountAt,
  dayAt,
  numberAt,
  type PayDesk,
  type PayProblem,
  problem,
  readWorkroom,
  type Workroom,
} from './workroom.ts';
import type { WorkroomFile } from './workroom-form.ts';

export interface PayWish {
  readonly order: Order;
  readonly children: readonly ChildReport[];
  /** The lays of each child, and what is bought for all. */
  readonly alone: readonly LaidCloths[];
  readonly party: LaidCloths;
  readonly workroom: WorkroomFile;
  readonly today: string;
  /** Minutes that other orders keep, by day. */
  readonly taken: ReadonlyMap<string, number>;
  /** How long the sewing plan takes, min, by child; null where there is none. */
  readonly sewMinutes: readonly (number | null)[];
}

/** Minutes of one child by the sort of work. */
export type ChildTimes = Readonly<Record<WorkKind, number>>;

/** What an order takes, costs and when it is done, as far as it can be known. */
export interface PayWork {
  readonly currency: Currency;
  readonly names: readonly string[];
  readonly shopping: readonly ShoppingRow[];
  readonly materials: Money;
  /** Still without a price; the bill leaves them out. */
  readonly unpriced: readonly ShoppingRow[];
  readonly times: readonly ChildTimes[];
  /** Null while she has not said what an hour costs. */
  readonly bill: Bill | null;
  readonly tax: { readonly name: string; readonly percent: number } | null;
  readonly days: DaysResult;
  readonly fittings: number;
  /** Minutes that she wrote down, and what an hour brought by them; null while she wrote none. */
  readonly spent: number;
  readonly earned: Money | null;
  readonly problems: readonly PayProblem[];
}

const MOST_RUSH = 300;
const MOST_FITTINGS = 3;

/** Shopping list, price and days of an order. Nothing in it stops the rest: what can't be used is told and left out. */
export function payWork(wish: PayWish): PayWork {
  const { order, children, workroom: file, today } = wish;
  const { pay } = order;
  const wanted = wantedCurrency(pay);
  const room = readWorkroom(file, wanted.currency, order.units);
  const problems: PayProblem[] = [...wanted.problems, ...room.problems];
  const desk: PayDesk = { problems, units: order.units, currency: room.currency };
  for (const [i, { name }] of children.entries()) {
    if (wish.sewMinutes[i] === null)
      problems.push(problem(`children[${i}]`, 'pay.no-sewing', { child: name }));
  }
  const fittings = numberAt('pay.fittings', pay.fittings, [0, MOST_FITTINGS], 2, desk);
  const shopping = shoppingOf(wish, room);
  const { cost: materials, unpriced } = costOfAll(shopping, room.currency);
  const times = children.map((_, i) => timesOf(room, fittings, wish.sewMinutes[i] ?? 0, i));
  const bill = billOf(wish, room, shopping, times, desk);
  const timed = order.children.flatMap(({ sewing }) => timedSteps(sewing));
  const spent = [...(pay.spent ?? []), ...timed].reduce((sum, { minutes }) => sum + Math.max(0, minutes), 0);
  return {
    currency: room.currency,
    names: children.map(({ name }) => name),
    shopping,
    materials,
    unpriced,
    times,
    bill,
    tax: room.rates?.tax ?? null,
    days: daysOf(wish, room, times, fittings, today),
    fittings,
    spent,
    earned: bill === null ? null : earned(bill, materials, spent),
    problems,
  };
}

/** The order's currency, if it names one that exists. */
function wantedCurrency({ currency }: PayFile): {
  readonly currency: Currency | null;
  readonly problems: readonly PayProblem[];
} {
  if (currency === undefined) return { currency: null, problems: [] };
  const found = currencyOf(currency);
  const problems = found === null ? [problem('pay.currency', 'pay.not-a-currency', { found: currency })] : [];
  return { currency: found, problems };
}

function shoppingOf({ order, children, alone, party }: PayWish, room: Workroom): readonly ShoppingRow[] {
  const cloths = order.cloths.flatMap((cloth): ClothNeed[] => {
    const lists = party.lists.filter((list) => list.cloth === cloth);
    if (lists.length === 0) return [];
    const own = alone.map(({ lists: each }) =>
      each
        .filter((list) => list.cloth === cloth)
        .flatMap(({ lengths }) => lengths)
        .reduce((sum, { at, lay }) => (at === null ? sum + lay.length * (1 + cloth.extra) : sum), 0),
    );
    const { name, width, shrinkage, unit } = cloth;
    const toBuy = lists.reduce((sum, list) => sum + list.toBuy, 0);
    return [{ name, alone: own, toBuy, width, shrinkage, unit }];
  });
  return shoppingList({
    cloths,
    needs: children.map(({ dress: { garment } }) => dressNeeds(garment)),
    stash: room.stash,
    priceOf: room.priceOf,
    unit: order.units === 'in' ? 'eighth-yard' : 'ten-centimetres',
  });
}

/** The first child takes the talk about the order as well; every other is only measured (common practice, no source). */
const MEASURE_ONLY = 15;

function timesOf({ times, breaks }: Workroom, fittings: number, sewing: number, child: number): ChildTimes {
  return {
    ...times,
    measure: child === 0 ? times.measure : Math.min(times.measure, MEASURE_ONLY),
    toile: fittings >= 2 ? times.toile : 0,
    sew: Math.round(standardMinutes(sewing, times.sew, [breaks])),
    fit: times.fit * fittings,
  };
}

const minutesOf = (times: ChildTimes): number => WORK_KINDS.reduce((sum, kind) => sum + times[kind], 0);

function billOf(
  { order: { pay }, children }: PayWish,
  room: Workroom,
  shopping: readonly ShoppingRow[],
  times: readonly ChildTimes[],
  desk: PayDesk,
): Bill | null {
  const rush = numberAt('pay.rush', pay.rush, [0, MOST_RUSH], 0, desk);
  const agreed = pay.agreed === undefined ? null : amountAt('pay.agreed', pay.agreed, desk);
  const extras = (pay.extras ?? []).flatMap(({ about, price, minutes }, i): readonly Extra[] => {
    if (price === undefined) return minutes === undefined ? [] : [{ about, price: { minutes } }];
    const amount = amountAt(`pay.extras[${i}].price`, price, desk, true);
    return amount === null ? [] : [{ about, price: amount }];
  });
  const received = (pay.received ?? []).flatMap(({ amount, day }, i) => {
    dayAt(`pay.received[${i}].day`, day, desk);
    return amountAt(`pay.received[${i}].amount`, amount, desk) ?? [];
  });
  if (room.rates === null) return null;
  const work = children.map(({ name }, i) => ({
    name,
    materials: sumOf(
      shopping.flatMap(({ shares }) => shares[i] ?? []),
      room.currency,
    ),
    minutes: times[i] === undefined ? 0 : minutesOf(times[i]),
  }));
  return reckonBill({ children: work, extras, rush, agreed, received }, room.rates);
}

/** What is left for her hours: the price before tax less what was bought, sundries and overhead. */
function earned(bill: Bill, materials: Money, spent: number): Money | null {
  const costs = bill.children.flatMap(({ sundries, overhead }) => [sundries, overhead]);
  return earnedPerHour(bill.totals.net, [materials, ...costs], spent);
}

function daysOf(
  { order, taken }: PayWish,
  room: Workroom,
  times: readonly ChildTimes[],
  fittings: number,
  today: string,
): DaysResult {
  const all = (kind: WorkKind): number => times.reduce((sum, own) => sum + own[kind], 0);
  const [now, event] = [readDay(today), readDay(order.dueDay)];
  if (now === null || event === null) throw new Error('An order that was read has a day.');
  return planDays({
    today: now,
    event,
    work: {
      measure: all('measure'),
      toile: all('toile'),
      cut: all('paper') + all('cut'),
      sew: all('sew'),
      fitting: fittings === 0 ? 0 : all('fit') / fittings,
      finish: all('finish'),
    },
    fittings,
    week: room.week,
    taken: order.pay.roundOthers === true ? taken : new Map(),
  });
}
