import ical from 'node-ical';
import { expect, test } from 'vitest';
import {
  calendarOf,
  issuedDocument,
  issuePaper,
  laidOrder,
  payListDocument,
  payOfOrder,
  type WorkroomFile,
} from '../../src/engine/order/index.ts';
import { createTextMeasure, writePdf } from '../../src/pdf/index.ts';
import { loadFonts } from '../../src/pdf/load-fonts.ts';
import { exampleOrder } from '../fixtures/example-order.ts';
import { readPdf } from './pdf-reading.ts';

/** The calendar file is read by node-ical, the papers by PDF.js: general libraries that know nothing of this program. */

const TODAY = '2027-03-01';
const ROOM: WorkroomFile = {
  maker: { name: 'Thimble & Thread', lines: ['3 Example Lane'], titles: { invoice: 'Bill' } },
  rates: { currency: 'NGN', perHour: '4500', taxName: 'VAT', taxPercent: 7.5 },
  week: { hours: { monday: 5, tuesday: 5, wednesday: 5, thursday: 5 } },
  prices: [{ what: 'ivory satin', price: '6000', per: 'yd' }],
};
const order = exampleOrder((raw) => {
  raw.children = raw.children.slice(0, 1);
  raw.customer = 'Ms Ọ̀ṣun';
});
const found = laidOrder(order, TODAY);
if (!found.ok) throw new Error('The example can be drawn.');
const work = payOfOrder(order, found.laid, ROOM, TODAY);

test('an invoice on paper holds every figure and her own words', async () => {
  const issued = issuePaper({ order, work, kind: 'invoice', number: 'I-BCDF-0042', day: TODAY });
  if (!issued.ok) throw new Error(issued.why.key);
  const fonts = await loadFonts();
  const tools = { today: TODAY, measure: createTextMeasure(fonts) };
  const document = issuedDocument(issued.paper, order, ROOM, tools);
  const bytes = await writePdf(document.pages, { title: document.title, creationDate: new Date(0), fonts });
  const text = (await readPdf(bytes)).map((page) => page.text).join('\n');
  const { lines, net, tax, total } = issued.paper;
  for (const figure of [...lines.map(({ amount }) => amount), net, tax?.amount, total])
    expect(text).toContain(String(figure));
  for (const word of [
    'Bill',
    'I-BCDF-0042',
    'Thimble & Thread',
    '3 Example Lane',
    'VAT, 7.5 %',
    'Amount, NGN',
  ])
    expect(text).toContain(word);
  expect(text).toContain('Ms Ọ̀ṣun'.normalize('NFC'));
});

test('the lists on paper hold their goods and days', async () => {
  const fonts = await loadFonts();
  const tools = { today: TODAY, measure: createTextMeasure(fonts) };
  const read = async (list: 'shopping' | 'timetable'): Promise<string> => {
    const document = payListDocument(list, order, work, ROOM, tools);
    const bytes = await writePdf(document.pages, { title: document.title, creationDate: new Date(0), fonts });
    return (await readPdf(bytes)).map((page) => page.text).join('\n');
  };
  const shopping = await read('shopping');
  for (const word of ['ivory satin', 'sewing thread', '₦6,000.00 a yard', 'No price yet for'])
    expect(shopping).toContain(word);
  const timetable = await read('timetable');
  for (const word of ['Measure again', 'Last fitting', 'Sat 12 June 2027']) expect(timetable).toContain(word);
});

test('a general reader of calendars finds the days, and no child', () => {
  const text = calendarOf(order, work, 'title', 'order-7', TODAY);
  if (text === null || !work.days.ok) throw new Error('The days can be planned.');
  // RFC 5545, 3.1: lines end with CRLF and are no longer than 75 octets.
  for (const line of text.split('\r\n')) {
    expect(line).not.toContain('\n');
    expect(new TextEncoder().encode(line).length).toBeLessThanOrEqual(75);
  }
  const events = Object.values(ical.sync.parseICS(text)).flatMap((one) =>
    one?.type === 'VEVENT' ? [one] : [],
  );
  expect(events).toHaveLength(work.days.days.length + 1);
  expect(new Set(events.map(({ uid }) => uid)).size).toBe(events.length);
  const two = (n: number): string => String(n).padStart(2, '0');
  const shown = (at: Date): string => `${at.getFullYear()}-${two(at.getMonth() + 1)}-${two(at.getDate())}`;
  const deliver = events.find(({ uid }) => uid.includes('deliver'));
  const plan = work.days.days.find(({ kind }) => kind === 'deliver');
  expect(deliver === undefined ? '' : shown(deliver.start)).toBe(
    plan === undefined ? '-' : `${plan.to.year}-${two(plan.to.month)}-${two(plan.to.day)}`,
  );
  for (const event of events) expect(event.datetype).toBe('date');
  expect(text).not.toContain('Amina');
});

test('a title that names a child leaves by letters only; names leave only when asked for', () => {
  const named = { ...order, title: 'Amina’s christening' };
  expect(calendarOf(named, work, 'title', 'k', TODAY)).not.toContain('Amina');
  expect(calendarOf(named, work, 'letters', 'k', TODAY)).not.toContain('Amina');
  expect(calendarOf(named, work, 'children', 'k', TODAY)).toContain('Amina');
});
