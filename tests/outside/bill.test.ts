import { describe, expect, it } from 'vitest';
import {
  CURRENCY_CODES,
  type Currency,
  currencyOf,
  earnedPerHour,
  money,
  moneyText,
  plainMoney,
  type Rates,
  reckonBill,
  standardMinutes,
  totalsOf,
} from '../../src/engine/bill/index.ts';

const cur = (code: string): Currency => {
  const found = currencyOf(code);
  if (found === null) throw new Error(code);
  return found;
};
const GBP = cur('GBP');
const pounds = (amount: number) => money(Math.round(100 * amount), GBP);
const RATES: Rates = {
  currency: GBP,
  perHour: pounds(15),
  overhead: 0,
  profit: 0,
  sundries: 0,
  deposit: { percent: 50, materialsFirst: false },
  tax: null,
};
const wish = { extras: [], rush: 0, agreed: null, received: [] };

describe('sums that dressmakers have published', () => {
  it('cloth 36 and ten hours at 15 come to 186 (an example invoice on a pricing page for dressmakers)', () => {
    const children = [{ name: 'A', materials: pounds(36), minutes: 600 }];
    expect(reckonBill({ ...wish, children }, RATES).totals.total).toEqual(pounds(186));
  });

  it('overhead of a tenth of a labour of 30 is 3 (a pricing page for one maker alone)', () => {
    const children = [{ name: 'A', materials: pounds(0), minutes: 120 }];
    const { children: priced } = reckonBill({ ...wish, children }, { ...RATES, overhead: 10 });
    expect(priced[0]?.labour).toEqual(pounds(30));
    expect(priced[0]?.overhead).toEqual(pounds(3));
  });

  it('0.60 min at 80 % are 0.48, and 0.624 with a tenth and a fifth (a garment engineering page)', () => {
    expect(standardMinutes(0.6, 80, [])).toBeCloseTo(0.48, 10);
    expect(standardMinutes(0.6, 80, [10, 20])).toBeCloseTo(0.624, 10);
  });

  it('three hours for 50 are 16.67 an hour (a skirt maker, 2018)', () => {
    expect(earnedPerHour(pounds(50), [], 180)).toEqual(pounds(16.67));
  });

  it('small sundries of a fifth of the materials (a price sheet of a leather trade)', () => {
    const children = [{ name: 'A', materials: pounds(36), minutes: 0 }];
    const { children: priced } = reckonBill({ ...wish, children }, { ...RATES, sundries: 20 });
    expect(priced[0]?.sundries).toEqual(pounds(7.2));
  });

  it('half as deposit with the materials whole; a quarter of the labour and all cloth (two dressmakers’ terms)', () => {
    const children = [{ name: 'A', materials: pounds(80), minutes: 600 }];
    const half = { ...RATES, deposit: { percent: 50, materialsFirst: true } };
    const quarter = { ...RATES, deposit: { percent: 25, materialsFirst: true } };
    expect(reckonBill({ ...wish, children }, half).deposit).toEqual(pounds(80 + 75));
    expect(reckonBill({ ...wish, children }, quarter).deposit).toEqual(pounds(80 + 37.5));
  });
});

describe('an invoice of an open standard', () => {
  /**
   * The base example of the Peppol BIS Billing 3.0 invoice, which keeps the rules of EN 16931-1: seven at 400, three
   * taken back at 500, a charge of 25, tax 25 %. Figures from memory; the sums follow BR-CO-10 to BR-CO-16.
   */
  it('the sums of the Peppol base example', () => {
    const EUR = cur('EUR');
    const euros = (amount: number) => money(Math.round(100 * amount), EUR);
    const lines = [euros(7 * 400), euros(-3 * 500), euros(25)];
    expect(totalsOf(lines, 25, [], EUR)).toEqual({
      net: euros(1325),
      tax: euros(331.25),
      total: euros(1656.25),
      received: euros(0),
      due: euros(1656.25),
    });
  });

  /** The foot of the UBL 2.1 example invoice (OASIS, UBL-Invoice-2.1-Example.xml; from memory): prepaid 1000 of 1729. */
  it('what is left to pay after a payment before', () => {
    const EUR = cur('EUR');
    expect(totalsOf([money(172900, EUR)], 0, [money(100000, EUR)], EUR).due).toEqual(money(72900, EUR));
  });
});

describe('currencies', () => {
  /**
   * The engine's list is that of Unicode CLDR, which writes fewer decimals than ISO 4217 where coins have gone out of
   * use; ECMA-402 asks for those of ISO 4217, and engines differ. These have two, three or none in ISO 4217 (from memory).
   */
  const CLDR_WRITES_LESS =
    'AFN ALL COP HUF IDR IQD IRR KPW LAK LBP MGA MMK PKR RSD SLL SOS SYP TZS UZS YER ZMK CRC GYD MNT MRO MUR ISK TMT AMD CLP';

  it('every code is one of the JavaScript engine’s, with its decimals', () => {
    const known = new Set(Intl.supportedValuesOf('currency'));
    const late = new Set(['VED', 'SLE']);
    for (const code of CURRENCY_CODES) {
      if (!late.has(code)) expect(known.has(code), code).toBe(true);
      if (CLDR_WRITES_LESS.split(' ').includes(code)) continue;
      const { maximumFractionDigits } = new Intl.NumberFormat('en', {
        style: 'currency',
        currency: code,
      }).resolvedOptions();
      const written = plainMoney(money(0, code)).split('.')[1]?.length ?? 0;
      expect(`${code} ${written}`).toBe(`${code} ${maximumFractionDigits}`);
    }
    expect(CURRENCY_CODES.length).toBeGreaterThan(150);
  });

  it('amounts are written as an English writer of the place does', () => {
    for (const [code, place] of [
      ['GBP', 'en-GB'],
      ['USD', 'en-US'],
      ['EUR', 'en-IE'],
      ['NGN', 'en-NG'],
      ['INR', 'en-US'],
    ] as const) {
      for (const minor of [0, 5, 123456, 100000000, -4321]) {
        const their = new Intl.NumberFormat(place, { style: 'currency', currency: code }).format(minor / 100);
        expect(moneyText(money(minor, cur(code)))).toBe(their);
      }
    }
  });
});
