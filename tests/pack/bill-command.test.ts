import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import ical from 'node-ical';
import { describe, expect, it } from 'vitest';
import { readPdf } from '../outside/pdf-reading.ts';
import { createShell, type Shell, smallOrder } from './shell.ts';

/** A shell with an order of one child and the example of a workroom, as a maker would begin. */
async function workplace(): Promise<Shell> {
  const shell = createShell();
  shell.put('o.json', smallOrder());
  expect((await shell.run('workroom', 'room.json')).exit).toBe(0);
  return shell;
}

describe('workroom', () => {
  it('writes a file that `bill` takes, and never over another', async () => {
    const shell = await workplace();
    const again = await shell.run('workroom', 'room.json');
    expect([again.exit, again.err]).toEqual([3, expect.stringContaining('room.json')]);
    const { out } = await shell.run('workroom');
    expect(readFileSync(join(shell.folder, 'room.json'), 'utf8')).toBe(out);
    expect(JSON.parse(out).rates.currency).toBe('GBP');
  });
});

describe('bill', () => {
  it('says what is bought, what a dress costs, and that deposit and rest make the whole', async () => {
    const shell = await workplace();
    const { exit, out, err } = await shell.run('bill', 'o.json', '--workroom', 'room.json');
    expect([exit, err]).toEqual([0, '']);
    expect(out).toMatch(/^ivory satin: .+ yd, £\d+\.\d\d$/m);
    expect(out).toMatch(/^Amina: £\d+\.\d\d \([\d.]+ h\)$/m);
    const said = JSON.parse((await shell.run('bill', 'o.json', '--workroom', 'room.json', '--json')).out);
    const { totals, deposit } = said.bill;
    // Half of the total, as the workroom asks, to the penny.
    expect(totals.total.minor).toBeGreaterThan(0);
    expect(Math.abs(2 * deposit.minor - totals.total.minor)).toBeLessThanOrEqual(1);
    // Handed over before the event of 12 June.
    expect(said.days.at(-1)).toMatchObject({ kind: 'deliver', to: { year: 2027, month: 6, day: 9 } });
  });

  it('writes the papers that are asked for, and they hold the figures that it said', async () => {
    const shell = await workplace();
    const paid = { ...JSON.parse(smallOrder()), pay: { received: [{ day: '2027-04-24', amount: '60' }] } };
    shell.put('o.json', JSON.stringify(paid));
    const papers = 'shopping,timetable,quote,invoice,receipt,calendar';
    const asked = ['--papers', papers, '--number', 'R-0007', '--into', 'out'];
    const { exit, out, err } = await shell.run('bill', 'o.json', '--workroom', 'room.json', ...asked);
    expect([exit, err]).toEqual([0, '']);
    const total = out.match(/; to pay £(\d+\.\d\d)/)?.[1] ?? 'no total';
    const read = async (file: string): Promise<string> =>
      (await readPdf(readFileSync(join(shell.folder, 'out', file)))).map((page) => page.text).join('\n');
    expect(await read('invoice.pdf')).toContain(total);
    expect(await read('invoice.pdf')).toContain('R-0007');
    expect(await read('receipt.pdf')).toMatch(/R-0007[\s\S]*60\.00/);
    expect(await read('quote.pdf')).toContain(total);
    expect(await read('shopping.pdf')).toContain('ivory satin');
    expect(await read('timetable.pdf')).toContain('Hand over');
    // Read by a general library for calendars.
    const days = Object.values(
      ical.sync.parseICS(readFileSync(join(shell.folder, 'out', 'days.ics'), 'utf8')),
    );
    expect(days.filter((entry) => entry?.type === 'VEVENT').length).toBeGreaterThan(5);
    expect((await shell.run('bill', 'o.json', '--workroom', 'room.json', ...asked)).exit).toBe(3);
  });

  it.each([
    [[], /--workroom/],
    [['--workroom', 'room.json', '--papers', 'poem'], /“poem”.*shopping/],
    [['--workroom', 'room.json', '--papers', 'invoice'], /--number/],
    [['--workroom', 'room.json', '--papers', 'calendar', '--names', 'all'], /“all”.*title/],
  ])('gives 2 and a sentence for what can not be done: %j', async (wish, said) => {
    const shell = await workplace();
    const { exit, err } = await shell.run('bill', 'o.json', ...wish);
    expect([exit, err]).toEqual([2, expect.stringMatching(said)]);
    expect(existsSync(join(shell.folder, 'invoice.pdf'))).toBe(false);
  });

  it('gives no receipt before anything was paid', async () => {
    const shell = await workplace();
    const asked = ['--papers', 'receipt', '--number', 'R-0007'];
    const { exit, err } = await shell.run('bill', 'o.json', '--workroom', 'room.json', ...asked);
    expect([exit, err]).toEqual([2, expect.stringContaining('No payment is written down yet')]);
    expect(existsSync(join(shell.folder, 'receipt.pdf'))).toBe(false);
  });

  it('gives 1 without a rate and without a price, and still says what to buy', async () => {
    const shell = await workplace();
    const room = JSON.parse(readFileSync(join(shell.folder, 'room.json'), 'utf8'));
    delete room.rates.perHour;
    room.prices = [];
    const bare = shell.put('bare.json', JSON.stringify(room));
    const { exit, out, err } = await shell.run('bill', 'o.json', '--workroom', bare);
    expect(exit).toBe(1);
    expect(out).toMatch(/^ivory satin: .+ yd$/m);
    expect(err).toContain('ivory satin');
  });

  it('says which field of a workroom can not be read', async () => {
    const shell = await workplace();
    const bad = shell.put('bad.json', JSON.stringify({ rates: { currency: 5 } }));
    const { exit, err } = await shell.run('bill', 'o.json', '--workroom', bad);
    expect([exit, err]).toEqual([2, expect.stringContaining('rates.currency')]);
  });
});
