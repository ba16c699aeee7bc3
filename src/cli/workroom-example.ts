import type { WorkroomFile } from '../engine/order/index.ts';

/** A workroom to begin with: an invented maker, prices of cloth by the yard and the piece. */
export const EXAMPLE_WORKROOM: WorkroomFile = {
  maker: {
    name: 'Thimble & Thread',
    lines: ['3 Example Lane', 'Anytown', 'hello@example.org'],
    payTo: ['Please pay into account 00 00 00 00 at any branch, with the number above.'],
    quoteDays: 30,
    payDays: 14,
    closing: { invoice: 'Thank you. May she dance in it.' },
  },
  rates: {
    currency: 'GBP',
    perHour: '14.00',
    overhead: 10,
    profit: 5,
    sundries: 5,
    deposit: 50,
    materialsFirst: false,
  },
  week: {
    hours: { monday: 4, tuesday: 4, wednesday: 4, thursday: 4, friday: 4 },
    off: [{ from: '2027-05-01', to: '2027-05-03' }],
  },
  times: { measure: 45, paper: 30, toile: 60, cut: 75, sew: 100, fit: 30, finish: 15 },
  prices: [
    { what: 'ivory satin', price: '9.50', per: 'yd' },
    { what: 'ivory net', price: '3.20', per: 'yd' },
    { what: 'cotton lawn', price: '6.80', per: 'yd' },
    { what: 'thread', price: '2.10', per: 'each' },
    { what: 'concealed-zip', price: '1.90', per: 'each' },
    { what: 'hook', price: '0.15', per: 'each' },
    { what: 'interfacing', price: '3.60', per: 'yd' },
    { what: 'elastic', price: '0.90', per: 'yd' },
  ],
  stash: [
    { what: 'thread', count: 1 },
    { what: 'cotton lawn', length: '30 in', width: '44 in' },
  ],
};
