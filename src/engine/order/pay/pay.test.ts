import { describe, expect, it } from 'vitest';
import { exampleOrder, type RawOrder } from '../../../../tests/fixtures/example-order.ts';
import { tell } from '../../design/index.ts';
import type { Order } from '../order.ts';
import { issuePaper } from './issue.ts';
import { laidOrder, payOfOrder } from './pay-order.ts';
import type { PayWork } from './pay-work.ts';
import { readWorkroomFile } from './read-workroom-file.ts';
import type { WorkroomFile } from './workroom-form.ts';

const TODAY = '2027-03-01';

const orderWith = (pay: object, change: (raw: RawOrder) => void = () => {}): Order =>
  exampleOrder((raw) => {
    raw.children = raw.children.slice(0, 2);
    raw.pay = pay;
    change(raw);
  });

const plain = orderWith({});
const first = laidOrder(plain, TODAY);
if (!first.ok) throw new Error('The example can be drawn.');
const { laid } = first;

const ROOM: WorkroomFile = {
  rates: { currency: 'GBP', perHour: '12', overhead: 10, profit: 5, taxName: 'VAT', taxPercent: 20 },
  week: { hours: { monday: 5, tuesday: 5, wednesday: 5 } },
  prices: [
    { what: 'ivory satin', price: '9.50', per: 'yd' },
    { what: 'ivory net', price: '3.20', per: 'yd' },
    { what: 'cotton lawn', price: '6.80', per: 'yd' },
    { what: 'thread', price: '2.10', per: 'each' },
    { what: 'concealed-zip', price: '1.90', per: 'each' },
    { what: 'hook', price: '0.15', per: 'each' },
    { what: 'interfacing', price: '3.60', per: 'yd' },
  ],
};

/** Money and days of the same dresses; the lays know the cloths of the order that was laid. */
const workOn = (pay: object, room: WorkroomFile = ROOM, today = TODAY): PayWork =>
  payOfOrder({ ...orderWith(pay), cloths: plain.cloths }, laid, room, today);

const sentences = ({ problems }: PayWork): readonly string[] =>
  problems.map(({ path, say }) => `${path}: ${tell(say, 'in')}`);

describe('an order with prices', () => {
  const work = workOn({});

  it('adds up: lines to the price, shares to the cost of each good, children to the materials', () => {
    expect(work.problems).toEqual([]);
    expect(work.unpriced).toEqual([]);
    const { bill } = work;
    if (bill === null) throw new Error('It has a rate.');
    for (const { cost, shares } of work.shopping)
      expect(shares.reduce((sum, { minor }) => sum + minor, 0)).toBe(cost?.minor);
    const materials = bill.children.reduce((sum, child) => sum + child.materials.minor, 0);
    expect(materials).toBe(work.materials.minor);
    for (const { price, materials: own, sundries, labour, overhead, profit } of bill.children)
      expect(price.minor).toBe(own.minor + sundries.minor + labour.minor + overhead.minor + profit.minor);
    const { net, tax, total } = bill.totals;
    expect(net.minor).toBe(bill.children.reduce((sum, { price }) => sum + price.minor, 0));
    expect(total.minor).toBe(net.minor + tax.minor);
    expect(tax.minor).toBe(Math.round(net.minor / 5));
  });

  it('buys what the dresses take', () => {
    const keys = work.shopping.map(({ key }) => key);
    expect(keys).toEqual(
      expect.arrayContaining(['ivory satin', 'ivory net', 'cotton lawn', 'thread', 'hook']),
    );
    expect(keys.filter((key) => key.startsWith('concealed-zip'))).not.toHaveLength(0);
  });

  it('gives out a quote whose lines make its sum, and which later prices leave alone', () => {
    const issued = issuePaper({ order: plain, work, kind: 'quote', number: 'Q-1', day: TODAY });
    if (!issued.ok) throw new Error(issued.why.key);
    const { lines, net, tax, total, due, deposit } = issued.paper;
    const pence = (text: string | number | undefined) =>
      Math.round(100 * Number(String(text).replaceAll(',', '')));
    expect(lines).toHaveLength(2);
    expect(lines.reduce((sum, { amount }) => sum + pence(amount), 0)).toBe(pence(net));
    expect(pence(net) + pence(tax?.amount)).toBe(pence(total));
    expect(pence(due)).toBe(pence(total));
    expect(Math.abs(2 * pence(deposit) - pence(total))).toBeLessThanOrEqual(1);
  });

  it('takes deposits off what is to pay, and gives a receipt for each', () => {
    const received = [
      { day: '2027-03-02', amount: '50', how: 'cash' },
      { day: '2027-05-30', amount: '25.50' },
    ];
    const paid = workOn({ received });
    const order = { ...plain, pay: { received } };
    const receipt = issuePaper({ order, work: paid, kind: 'receipt', number: 'R-1', day: TODAY, payment: 0 });
    if (!receipt.ok || paid.bill === null) throw new Error('It was paid.');
    expect(receipt.paper.total).toBe('50.00');
    expect(receipt.paper.lines[0]?.about).toContain('cash');
    const { total, due, received: sum } = paid.bill.totals;
    expect(sum.minor).toBe(7550);
    expect(due.minor).toBe(total.minor - 7550);
  });

  it('an agreed price takes the place of the reckoned one, and says so on the paper', () => {
    const agreed = workOn({ agreed: '400', rush: 10 });
    expect(agreed.bill?.totals.net.minor).toBe(40000);
    const issued = issuePaper({
      order: orderWith({ agreed: '400', rush: 10 }),
      work: agreed,
      kind: 'invoice',
      number: 'I-1',
      day: TODAY,
    });
    if (!issued.ok) throw new Error(issued.why.key);
    expect(issued.paper.lines.map(({ about }) => about).slice(-2)).toEqual([
      'For work in a hurry, 10 %',
      'As agreed',
    ]);
  });

  it('says what an hour brought by her own times', () => {
    const { bill, materials, earned, spent } = workOn({ spent: [{ on: 'sew', minutes: 600 }] });
    if (bill === null) throw new Error('It has a rate.');
    const overhead = bill.children.reduce((sum, child) => sum + child.overhead.minor, 0);
    expect(spent).toBe(600);
    expect(earned?.minor).toBe(Math.round((bill.totals.net.minor - materials.minor - overhead) / 10));
  });
});

describe('what can not be used is told, and the rest goes on', () => {
  it('no price', () => {
    const work = workOn({}, { ...ROOM, prices: [] });
    expect(work.unpriced.length).toBe(work.shopping.length);
    expect(work.bill?.totals.net.minor).toBeGreaterThan(0);
  });

  it('no rate: no bill, but the list and the days', () => {
    const work = workOn({}, { ...ROOM, rates: {} });
    expect(work.bill).toBeNull();
    expect(work.shopping.length).toBeGreaterThan(3);
    expect(work.days.ok).toBe(true);
    const issued = issuePaper({ order: plain, work, kind: 'quote', number: '', day: TODAY });
    expect(issued).toMatchObject({ ok: false, why: { key: 'pay.no-rate' } });
  });

  it('two currencies in one order', () => {
    const work = workOn({ currency: 'EUR', received: [{ day: '2027-03-01', amount: '£20' }] });
    expect(work.currency).toBe('EUR');
    expect(sentences(work)).toEqual([
      expect.stringMatching(/^pay.currency: The order is in EUR, your prices are in GBP/),
      expect.stringMatching(/^pay.received\[0\].amount: this is in GBP, but the order is reckoned in EUR/),
    ]);
  });

  it('zero hours, an event that has passed, a week too short', () => {
    expect(workOn({}, { ...ROOM, week: {} }).days).toMatchObject({ problem: { code: 'bill.days.no-hours' } });
    expect(workOn({}, ROOM, '2027-06-13').days).toMatchObject({ problem: { code: 'bill.days.event-past' } });
    expect(workOn({}, ROOM, '2027-06-09').days).toMatchObject({ problem: { code: 'bill.days.too-late' } });
  });

  it('a remnant that is too small', () => {
    const work = workOn({}, { ...ROOM, stash: [{ what: 'Ivory Satin', length: '3 in', width: '58 in' }] });
    const satin = work.shopping.find(({ key }) => key === 'ivory satin');
    expect(satin?.notes.map(({ code }) => code)).toEqual(['bill.stash.too-small']);
    expect(satin?.toBuy).toBe(workOn({}).shopping.find(({ key }) => key === 'ivory satin')?.toBuy);
  });

  it('nonsense in any field stands beside it', () => {
    const work = workOn(
      { agreed: 'a lot', rush: 900, fittings: 7, extras: [{ about: 'x', price: '--' }], currency: 'XYZ' },
      {
        rates: { currency: 'pounds', perHour: 'ten', overhead: 900 },
        week: { hours: { monday: 30 }, off: [{ from: 'May' }] },
        times: { cut: -3 },
        prices: [{ what: 'thread', price: 'much', per: 'each' }],
        stash: [{ what: 'thread', length: 'long' }],
      },
    );
    expect(work.problems.map(({ path }) => path).sort()).toEqual(
      [
        'pay.agreed',
        'pay.currency',
        'pay.extras[0].price',
        'pay.fittings',
        'pay.rush',
        'prices[0].price',
        'rates.currency',
        'rates.perHour',
        'stash[0].length',
        'times.cut',
        'week.hours.monday',
        'week.off[0].from',
        'week.off[0].to',
      ].sort(),
    );
    for (const { say } of work.problems) expect(tell(say, 'in').length).toBeGreaterThan(10);
  });
});

describe('a workroom file', () => {
  it('is read whole', () =>
    expect(readWorkroomFile(JSON.stringify(ROOM))).toEqual({ ok: true, workroom: ROOM }));
  it.each([
    ['', 'order.empty'],
    ['{"rates": ', 'pay.workroom-broken'],
    ['{"rats": {}}', 'pay.unknown-field'],
    ['{"rates": {"perHours": "12"}}', 'pay.unknown-field'],
    ['{"prices": [{"what": "satin", "price": "1", "per": "pound"}]}', 'pay.workroom-form'],
  ])('%s is refused', (text, code) => {
    const read = readWorkroomFile(text);
    if (read.ok) throw new Error('It can not be read.');
    expect(read.problems[0]?.say.key).toBe(code);
    for (const { say } of read.problems) expect(tell(say, 'in').length).toBeGreaterThan(10);
  });
});
