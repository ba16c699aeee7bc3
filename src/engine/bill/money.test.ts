import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Currency, currencyOf } from './currencies.ts';
import { money, moneyText, plainMoney, readMoney, shareOut, sumOf, timesMoney } from './money.ts';

const cur = (code: string): Currency => {
  const found = currencyOf(code);
  if (found === null) throw new Error(code);
  return found;
};
const GBP = cur('GBP');
const minorOf = (text: string, currency = GBP) => {
  const read = readMoney(text, currency);
  return read.ok ? read.money.minor : read.problem.code;
};

describe('an amount as she writes it', () => {
  it.each([
    ['12.50', 1250],
    ['12,50', 1250],
    ['12', 1200],
    ['12.5', 1250],
    ['£12.50', 1250],
    ['12.50 gbp', 1250],
    ['GBP 12.50', 1250],
    ['1,250', 125000],
    ['1,250.00', 125000],
    ['1.250,00', 125000],
    ['1 250,00', 125000],
    ['1,234,567.89', 123456789],
    ['0', 0],
  ])('%s', (text, minor) => expect(minorOf(text)).toBe(minor));

  it.each([
    ['', 'bill.money.empty'],
    ['a lot', 'bill.money.unreadable'],
    ['12 ducats', 'bill.money.unreadable'],
    ['1.2.3', 'bill.money.unreadable'],
    ['1,2345,6', 'bill.money.unreadable'],
    ['12.505', 'bill.money.too-fine'],
    ['12.5051', 'bill.money.too-fine'],
    ['-3', 'bill.money.negative'],
    ['99999999999999', 'bill.money.too-large'],
    ['€12', 'bill.money.other-currency'],
    ['12 USD', 'bill.money.other-currency'],
  ])('%s is refused', (text, code) => expect(minorOf(text)).toBe(code));

  it('takes as many decimals as the currency has', () => {
    expect(minorOf('1250', cur('JPY'))).toBe(1250);
    expect(minorOf('12.5', cur('JPY'))).toBe('bill.money.too-fine');
    expect(minorOf('1.250', cur('KWD'))).toBe(1250);
    expect(minorOf('₦1,000', cur('NGN'))).toBe(100000);
  });

  it('is read back from how it is written, in every currency', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 1e11 }),
        fc.constantFrom('GBP', 'JPY', 'KWD', 'NGN', 'XOF', 'GHS'),
        (minor, code) => {
          const amount = money(minor, cur(code));
          expect(minorOf(moneyText(amount), cur(code))).toBe(minor);
          expect(minorOf(plainMoney(amount), cur(code))).toBe(minor);
        },
      ),
      { seed: 5, numRuns: 300 },
    );
  });
});

describe('a product', () => {
  it('is rounded once, halves away from zero', () => {
    const p = (minor: number, over: number | string, under: number | string = 1) =>
      timesMoney(money(minor, GBP), { over, under }).minor;
    expect(p(5, 1, 2)).toBe(3);
    expect(p(-5, 1, 2)).toBe(-3);
    expect(p(1, 1, 3)).toBe(0);
    expect(p(2, 1, 3)).toBe(1);
    expect(p(3, 1, 3)).toBe(1);
    // 1.005 x 100 is 100.49999999999999 in binary numbers.
    expect(p(100, '1.005')).toBe(101);
    expect(p(1015, 10, 100)).toBe(102);
  });

  it('agrees with whole numbers of any length', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -1e9, max: 1e9 }),
        fc.integer({ min: 0, max: 1e6 }),
        fc.integer({ min: 1, max: 1e6 }),
        (minor, over, under) => {
          const [n, d] = [BigInt(Math.abs(minor)) * BigInt(over), BigInt(under)];
          const half = (2n * n + d) / (2n * d);
          const size = Math.abs(timesMoney(money(minor, GBP), { over, under }).minor);
          expect(BigInt(size)).toBe(half);
        },
      ),
      { seed: 5, numRuns: 500 },
    );
  });
});

describe('sharing out', () => {
  it('adds up, and no part is off by one or more', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 1e9 }),
        fc.array(fc.integer({ min: 0, max: 5000 }), { minLength: 1, maxLength: 12 }),
        (minor, weights) => {
          const parts = shareOut(money(minor, GBP), weights);
          expect(sumOf(parts, GBP).minor).toBe(minor);
          const all = weights.reduce((a, b) => a + b, 0);
          for (const [i, part] of parts.entries()) {
            const share = all === 0 ? 1 / weights.length : (weights[i] ?? 0) / all;
            expect(Math.abs(part.minor - minor * share)).toBeLessThan(1);
          }
        },
      ),
      { seed: 5, numRuns: 300 },
    );
  });
});

it('two currencies are never added', () => {
  expect(() => sumOf([money(1, GBP), money(1, cur('USD'))], GBP)).toThrow('USD');
});
