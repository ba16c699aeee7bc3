import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { helpingSearch, type LegReport } from '../../src/engine/lay/index.ts';
import { changedExample, EXAMPLE_TEXT } from '../fixtures/example-order.ts';
import { createShell, smallOrder } from './shell.ts';

const two = changedExample((order) => {
  order.children = order.children.slice(0, 2);
});

describe('lay', () => {
  it('says what to buy of each cloth, and draws the lays', async () => {
    const shell = createShell();
    const file = shell.put('order.json', two);
    const { exit, out, err } = await shell.run('lay', file, '--tries', '800', '--sheet', 'lays.pdf');
    expect(err).toBe('');
    expect(exit).toBe(0);
    for (const cloth of ['ivory satin', 'ivory net', 'cotton lawn'])
      expect(out).toMatch(new RegExp(`${cloth}: buy [\\d/ ]+ yd\\. The lay takes `));
    expect(out).toContain('Drawn into lays.pdf.');
    expect(readFileSync(join(shell.folder, 'lays.pdf')).subarray(0, 5).toString()).toBe('%PDF-');
  });

  it('by tries is the same again, and another with another seed', async () => {
    const shell = createShell();
    const file = shell.put('order.json', two);
    const laid = async (...more: string[]) =>
      (await shell.run('lay', file, '--tries', '1500', '--json', ...more)).out;
    const first = await laid();
    expect(await laid()).toBe(first);
    expect(await laid('--seed', '7')).not.toBe(first);
    const { ok, stopped, cloths, problems } = JSON.parse(first);
    expect({ ok, stopped, problems }).toEqual({ ok: true, stopped: false, problems: [] });
    expect(cloths.map(({ cloth }: { cloth: string }) => cloth)).toEqual([
      'ivory satin',
      'ivory net',
      'cotton lawn',
    ]);
    for (const { mm, lengths, saved, offcuts } of cloths) {
      for (const { along, across, layers } of offcuts) {
        expect(Math.min(along, across)).toBeGreaterThanOrEqual(60);
        expect(layers).toBe(1);
      }
      expect(mm).toBeGreaterThanOrEqual(lengths[0].mm);
      expect(saved).toBeGreaterThanOrEqual(0);
    }
  });

  it('lays one child, and nobody else', async () => {
    const shell = createShell();
    const file = shell.put('order.json', EXAMPLE_TEXT);
    const one = await shell.run('lay', file, '--tries', '500', '--child', 'Lena', '--sheet', 'lena.svg');
    expect(one.exit).toBe(0);
    const files = readdirSync(shell.folder).filter((name) => name.endsWith('.svg'));
    expect(files.length).toBeGreaterThan(0);
    const text = files.map((name) => readFileSync(join(shell.folder, name), 'utf8')).join();
    expect(text).toContain('Lena');
    expect(text).not.toContain('Amina');
  });

  it('holds what is bought against the width table', async () => {
    const shell = createShell();
    const file = shell.put('order.json', EXAMPLE_TEXT);
    const { out } = await shell.run('lay', file, '--tries', '20000', '--child', 'Efua', '--json');
    const [satin] = JSON.parse(out).cloths;
    // Whole steps of the shop: 4 1/2 in.
    expect(satin.byTable / 114.3).toBeCloseTo(Math.round(satin.byTable / 114.3), 1);
    expect(satin.byTable).toBeGreaterThan(0.7 * satin.mm);
    expect(satin.byTable).toBeLessThan(1.8 * satin.mm);
  });

  it('stopped at once gives a valid lay all the same', async () => {
    const shell = createShell();
    const stop = new AbortController();
    stop.abort();
    const start = performance.now();
    const { exit, out } = await shell.runWith(
      { brokenOff: stop.signal },
      ...['lay', shell.put('order.json', two), '--json'],
    );
    expect(performance.now() - start).toBeLessThan(20_000);
    expect(exit).toBe(0);
    const { stopped, cloths } = JSON.parse(out);
    expect(stopped).toBe(true);
    expect(cloths).toHaveLength(3);
  });

  it('names a piece that is too wide, and what would do', async () => {
    const shell = createShell();
    const file = shell.put(
      'order.json',
      changedExample((order) => {
        order.cloths[0].width = '20';
      }),
    );
    const { exit, err } = await shell.run('lay', file, '--tries', '300', '--child', 'Efua');
    expect(exit).toBe(1);
    expect(err).toMatch(/takes .* across the cloth and ivory satin gives .* It does not fit\./);
    expect(err).toMatch(/Cloth of .* between the selvedges would do\./);
  });

  it.each([
    [['--seconds', 'long'], /--seconds wants a number above 0, not "long"/],
    [['--tries', '0'], /--tries wants a number above 0, not "0"/],
    [['--tries', '1e999'], /--tries wants a number/],
    [['--child', 'Nobody'], /There is no child "Nobody" in this order\. There are: Amina, /],
    [['--sheet', 'lay.txt'], /A lay is drawn into a \.pdf or \.svg file, not "lay\.txt"/],
  ])('refuses %j', async (given, says) => {
    const shell = createShell();
    const { exit, out, err } = await shell.run('lay', shell.put('order.json', EXAMPLE_TEXT), ...given);
    expect(exit).toBe(2);
    expect(out).toBe('');
    expect(err).toMatch(says);
  });

  it('never writes over a file', async () => {
    const shell = createShell();
    const file = shell.put('order.json', smallOrder());
    shell.put('lay.pdf', 'dear');
    const { exit, err } = await shell.run('lay', file, '--tries', '200', '--sheet', 'lay.pdf');
    expect(exit).toBe(3);
    expect(err).toContain('lay.pdf');
    expect(readFileSync(join(shell.folder, 'lay.pdf'), 'utf8')).toBe('dear');
  });

  it('long enough searches with a helper, which is ended', async () => {
    const shell = createShell();
    const order = JSON.parse(smallOrder());
    order.cloths = order.cloths.slice(0, 1);
    const file = shell.put('order.json', JSON.stringify(order));
    let [asked, told, ended] = [0, 0, 0];
    const startHelper = () => {
      const helper = helpingSearch();
      const reports: LegReport[] = [];
      return {
        link: {
          send: (request: Parameters<typeof helper.ask>[0]) => {
            asked++;
            helper.ask(structuredClone(request));
          },
          take: (job: number) => {
            const at = reports.findIndex((report) => report.job === job);
            return at < 0 ? undefined : reports.splice(at, 1)[0];
          },
        },
        arrived: async () => {
          while (reports.length === 0) {
            const report = helper.work();
            if (report !== null) reports.push(report);
          }
          told++;
        },
        end: async () => {
          ended++;
        },
      };
    };
    const { exit, out } = await shell.runWith({ startHelper }, 'lay', file, '--tries', '500000', '--json');
    expect(exit).toBe(0);
    expect(JSON.parse(out).cloths).toHaveLength(1);
    expect(asked).toBeGreaterThan(0);
    expect(told).toBeGreaterThan(0);
    expect(ended).toBe(1);
  });
});
