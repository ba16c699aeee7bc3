import { describe, expect, it } from 'vitest';
import { type Currency, currencyOf } from './currencies.ts';
import { money, sumOf } from './money.ts';
import {
  type ClothNeed,
  costOfAll,
  type Price,
  type ShoppingWish,
  shoppingList,
  toBuyText,
} from './shopping.ts';

const GBP = currencyOf('GBP') as Currency;
const satin: ClothNeed = {
  name: 'Ivory satin',
  alone: [900, 1200, 0],
  toBuy: 2000,
  width: 1400,
  shrinkage: 0,
  unit: 'ten-centimetres',
};
const price = (minor: number, per: Price['per']): Price => ({ amount: money(minor, GBP), per });
const wish = (change: Partial<ShoppingWish> = {}): ShoppingWish => ({
  cloths: [satin],
  needs: [
    [
      { good: { kind: 'thread', size: 0 }, amount: 0.6 },
      { good: { kind: 'concealed-zip', size: 300 }, amount: 1 },
    ],
    [
      { good: { kind: 'thread', size: 0 }, amount: 0.7 },
      { good: { kind: 'concealed-zip', size: 350 }, amount: 1 },
    ],
    [{ good: { kind: 'elastic', size: 0 }, amount: 340 }],
  ],
  stash: [],
  priceOf: (key) => ({ 'ivory satin': price(1250, 'm'), thread: price(199, 'each') })[key] ?? null,
  unit: 'ten-centimetres',
  ...change,
});

describe('a shopping list', () => {
  it('adds up what the children take and rounds up to what shops sell', () => {
    const list = shoppingList(wish());
    expect(list.map((row) => [row.key, toBuyText(row)])).toEqual([
      ['ivory satin', '2 m'],
      ['thread', '2'],
      ['concealed-zip 300 mm', '1'],
      ['concealed-zip 350 mm', '1'],
      ['elastic', '0.4 m'],
    ]);
    const [cloth] = list;
    expect(cloth?.cost?.minor).toBe(2500);
    // By the lays of the children: 900 and 1200 of 2100.
    expect(cloth?.shares.map(({ minor }) => minor)).toEqual([1071, 1429, 0]);
    expect(sumOf(cloth?.shares ?? [], GBP).minor).toBe(2500);
  });

  it('says what has no price, and adds up the rest', () => {
    const { cost, unpriced } = costOfAll(shoppingList(wish()), GBP);
    expect(cost.minor).toBe(2500 + 398);
    expect(unpriced.map(({ key }) => key)).toEqual([
      'concealed-zip 300 mm',
      'concealed-zip 350 mm',
      'elastic',
    ]);
  });

  it('a price for a yard and a length in metres, and the other way', () => {
    const yard = shoppingList(wish({ priceOf: (key) => (key === 'ivory satin' ? price(1000, 'yd') : null) }));
    // 2 m are 2.18723 yd.
    expect(yard[0]?.cost?.minor).toBe(2187);
    const eighths = { ...satin, toBuy: (13 * 914.4) / 8, unit: 'eighth-yard' as const };
    const metre = shoppingList(wish({ cloths: [eighths] }));
    // 1 5/8 yd are 1.4859 m.
    expect(toBuyText(metre[0] ?? { toBuy: 0, unit: null })).toBe('1 5/8 yd');
    expect(metre[0]?.cost?.minor).toBe(1857);
  });

  it('a price for a piece is none for a length', () => {
    const list = shoppingList(wish({ priceOf: () => price(100, 'each') }));
    expect(list[0]?.cost).toBeNull();
    expect(list[1]?.cost?.minor).toBe(200);
  });
});

describe('what she has', () => {
  const item = (length: number, width: number | null) => ({ key: 'ivory satin', length, width, count: 0 });

  it('a remnant that takes one child leaves only the others to buy', () => {
    const [cloth] = shoppingList(wish({ stash: [item(1250, 1400)] }));
    expect(cloth?.notes).toEqual([{ code: 'bill.stash.cuts', length: 1250, children: [1] }]);
    expect(cloth?.toBuy).toBe(900);
  });

  it('a remnant that takes everybody leaves nothing to buy', () => {
    const [cloth] = shoppingList(wish({ stash: [item(2500, null)] }));
    expect(cloth?.toBuy).toBe(0);
    expect(cloth?.cost?.minor).toBe(0);
    expect(cloth?.notes.map(({ code }) => code)).toEqual(['bill.stash.cuts', 'bill.stash.enough']);
  });

  it('one that is too short or too narrow is told, with what it would need', () => {
    for (const small of [item(800, 1400), item(2000, 1100)]) {
      const [cloth] = shoppingList(wish({ stash: [small] }));
      expect(cloth?.toBuy).toBe(2000);
      expect(cloth?.notes).toEqual([
        {
          code: 'bill.stash.too-small',
          length: small.length,
          width: small.width,
          needsLength: 900,
          needsWidth: 1400,
        },
      ]);
    }
  });

  it('shrinkage counts', () => {
    const [cloth] = shoppingList(
      wish({ cloths: [{ ...satin, alone: [960, 0, 0], shrinkage: 0.05 }], stash: [item(1000, 1400)] }),
    );
    expect(cloth?.notes.map(({ code }) => code)).toEqual(['bill.stash.too-small']);
  });

  it('reels and zips are counted off', () => {
    const stash = [
      { key: 'thread', length: 0, width: null, count: 1 },
      { key: 'concealed-zip 300 mm', length: 0, width: null, count: 4 },
    ];
    const list = shoppingList(wish({ stash }));
    expect(list.find(({ key }) => key === 'thread')?.toBuy).toBe(1);
    expect(list.find(({ key }) => key === 'concealed-zip 300 mm')?.toBuy).toBe(0);
  });
});
