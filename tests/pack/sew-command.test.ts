import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { changedExample, EXAMPLE_TEXT } from '../fixtures/example-order.ts';
import { readPdf } from '../outside/pdf-reading.ts';
import { createShell, smallOrder } from './shell.ts';

describe('sew', () => {
  it('says the steps of a child in their order, with minutes, reasons and what can hurt', async () => {
    const shell = createShell();
    const { exit, out, err } = await shell.run('sew', shell.put('o.json', EXAMPLE_TEXT), '--child', 'Amina');
    expect(exit).toBe(0);
    expect(err).toBe('');
    expect(out).toMatch(/^Amina\n {2}! This dress has net\./);
    expect(out).toMatch(/She is under three: no beads/);
    expect(out).toMatch(/not legal advice/);
    const steps = [...out.matchAll(/^ {2}(\d+)\. (.+) \((\d+) min\)$/gm)];
    expect(steps.map(([, number]) => Number(number))).toEqual(steps.map((_, i) => i + 1));
    const total = steps.reduce((sum, [, , , minutes]) => sum + Number(minutes), 0);
    expect(out).toContain(`Steps: ${Math.floor(total / 60)} h ${total % 60} min in all`);
    expect(out).not.toContain('Efua');
  });

  it('says the party in batches', async () => {
    const shell = createShell();
    const { out } = await shell.run('sew', shell.put('o.json', EXAMPLE_TEXT), '--batches');
    expect(out).toMatch(/^\d+\. Zip: Back.*: Amina, Tọ́lá, Efua, Lena, Noor \(\d+ min\)$/m);
    expect(out).toMatch(/^\d+\. Set the sleeves: .*: Efua \(\d+ min\)$/m);
  });

  it('says the same to other programs, with what each step needs', async () => {
    const shell = createShell();
    const { out } = await shell.run('sew', shell.put('o.json', EXAMPLE_TEXT), '--json');
    const said = JSON.parse(out);
    expect(said.ok).toBe(true);
    for (const { steps } of said.children) {
      const done = new Set<string>();
      for (const { id, needs } of steps) {
        for (const need of needs) expect(done).toContain(need);
        done.add(id);
      }
    }
  });

  it('keeps her own order and times, and says what her changes break', async () => {
    const shell = createShell();
    const text = changedExample((order) => {
      order.children[0].sewing = {
        done: [{ step: 'zip', kind: 'zip', minutes: 56, estimate: 28 }],
        order: ['zip', 'no-such-step', 'shoulder'],
        leftOut: ['turn'],
      };
    });
    const { exit, out } = await shell.run('sew', shell.put('o.json', text));
    expect(exit).toBe(0);
    expect(out).toMatch(/! Zip: .* now comes before .*, which it needs\./);
    expect(out).toMatch(/! Turn: .* is left out\./);
    expect(out.match(/Zip: Back.* \(56 min\)/g)).toHaveLength(5);
  });

  it('gives 1 and says what to change where a dress can’t be sewn', async () => {
    const shell = createShell();
    const text = changedExample((order) => {
      order.allowances.all = { side: '1', hem: '0' };
      delete order.allowances.lining;
    });
    const { exit, out } = await shell.run('sew', shell.put('o.json', text), '--child', 'Noor');
    expect(exit).toBe(1);
    expect(out).toMatch(/This can not be finished: nothing closes the hem line of .* at least 1\/4 in/);
  });

  it('writes the plan with its drawings into a new file, and never over another', async () => {
    const shell = createShell();
    const order = shell.put('o.json', smallOrder());
    const { exit, out } = await shell.run('sew', order, '--sheet', 'plan.pdf');
    expect(exit).toBe(0);
    expect(out).toContain('plan.pdf');
    const pages = await readPdf(readFileSync(join(shell.folder, 'plan.pdf')));
    const text = pages.map((page) => page.text).join('\n');
    for (const words of [
      'Sewing plan: Amina',
      'Before you begin',
      'For the care label',
      '1. Hold the curves',
    ])
      expect(text).toContain(words);
    // Needle lines: heavy and broken, at least one for most steps.
    const needles = pages
      .flatMap(({ paths }) => paths)
      .filter(({ dashed, lineWidth }) => dashed && lineWidth > 0.6);
    expect(needles.length).toBeGreaterThan(30);
    expect((await shell.run('sew', order, '--sheet', 'plan.pdf')).exit).toBe(3);
  });

  it('says which children there are, and that a plan is a PDF', async () => {
    const shell = createShell();
    const order = shell.put('o.json', EXAMPLE_TEXT);
    const stranger = await shell.run('sew', order, '--child', 'Ada');
    expect([stranger.exit, stranger.err]).toEqual([2, expect.stringMatching(/"Ada".*Amina/)]);
    const sheet = await shell.run('sew', order, '--sheet', 'plan.txt');
    expect([sheet.exit, sheet.err]).toEqual([2, expect.stringContaining('plan.txt')]);
  });

  it('lies in the pack, for each child and for all', async () => {
    const shell = createShell();
    const { exit } = await shell.run('pack', shell.put('o.json', smallOrder()), '--into', 'p');
    expect(exit).toBe(0);
    const [own, party] = await Promise.all(
      ['Amina/sewing.pdf', 'sewing.pdf'].map((file) => readPdf(readFileSync(join(shell.folder, 'p', file)))),
    );
    expect(own?.[0]?.text).toContain('Sewing plan: Amina');
    expect(party?.[0]?.text).toContain('Sewing in batches');
  });
});

describe('an order whose sewing makes no sense', () => {
  it.each([
    [{ done: 5 }, /sewing\.done/],
    [{ leftout: ['zip'] }, /leftOut/],
    [{ done: [{ step: 'zip', kind: 'flying' }] }, /kind/],
  ])('is refused with a sentence: %j', async (sewing, said) => {
    const shell = createShell();
    const text = changedExample((order) => {
      order.children[0].sewing = sewing;
    });
    const { exit, err } = await shell.run('sew', shell.put('o.json', text));
    expect(exit).toBe(2);
    expect(err).toMatch(said);
  });
});
