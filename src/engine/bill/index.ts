export { calendarFile } from './calendar-file.ts';
export { CURRENCY_CODES, type Currency, currencyOf } from './currencies.ts';
export {
  type Money,
  type MoneyProblem,
  money,
  moneyText,
  noMoney,
  plainMoney,
  readMoney,
  sumOf,
} from './money.ts';
export { dressNeeds } from './needs.ts';
export {
  type Bill,
  type Extra,
  earnedPerHour,
  type Rates,
  reckonBill,
  standardMinutes,
  totalsOf,
} from './reckon.ts';
export {
  type ClothNeed,
  costOfAll,
  type Goods,
  PRICE_UNITS,
  type Price,
  type ShoppingRow,
  type StashItem,
  type StashNote,
  shoppingList,
  toBuyText,
} from './shopping.ts';
export {
  type DaysProblem,
  type DaysResult,
  type FullWeek,
  fullWeeks,
  type PlannedWork,
  planDays,
  type WorkWeek,
} from './timetable.ts';
