import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { readOrder } from '../../src/engine/order/index.ts';
import { changedExample, EXAMPLE_TEXT } from '../fixtures/example-order.ts';
import { createShell, smallOrder } from './shell.ts';

const stopped = changedExample((order) => {
  order.dress = order.dress.filter(({ step }: { step: string }) => step !== 'back-zip');
});

describe('check', () => {
  it('says what was found of every child, and that it may be cut', async () => {
    const shell = createShell();
    const { exit, out, err } = await shell.run('check', shell.put('order.json', EXAMPLE_TEXT));
    expect(exit).toBe(0);
    expect(err).toBe('');
    for (const name of ['Amina', 'Efua', 'Lena', 'Noor']) expect(out).toContain(`${name} (height `);
    expect(out).toMatch(/more checks fit\.[\s\S]*Nothing stands against cutting\./);
  });

  it('says what fits too when asked', async () => {
    const shell = createShell();
    const file = shell.put('order.json', EXAMPLE_TEXT);
    const [short, long] = [await shell.run('check', file), await shell.run('check', file, '--all')];
    expect(long.out.split('\n').length).toBeGreaterThan(short.out.split('\n').length + 100);
    expect(long.out).toContain('Shoulder seam agrees');
  });

  it('gives 1 and names the children when something must not be cut', async () => {
    const shell = createShell();
    const { exit, out } = await shell.run('check', shell.put('order.json', stopped));
    expect(exit).toBe(1);
    expect(out).toMatch(/stop {2}The head does not pass/);
    expect(out).toMatch(/DO NOT CUT YET for Amina, /);
  });

  it('says the same to other programs', async () => {
    const shell = createShell();
    const { exit, out } = await shell.run('check', shell.put('order.json', stopped), '--json');
    const said = JSON.parse(out);
    expect(exit).toBe(1);
    expect(said.ok).toBe(false);
    expect(said.children[0].findings[0]).toMatchObject({ code: 'head-passes', level: 'stop' });
    expect(said.children[0].findings[0].sentence).toMatch(/^The head does not pass/);
  });
});

describe('an order that cannot be used', () => {
  it.each(['check', 'pack', 'measures'])('%s gives 2 and a sentence for each problem', async (command) => {
    const shell = createShell();
    const text = changedExample((order) => {
      order.children[0].measures.chestGirth = '-20';
      order.title = 5;
    });
    const { exit, out, err } = await shell.run(command, shell.put('order.json', text));
    expect(exit).toBe(2);
    expect(out).toBe('');
    expect(err.trimEnd().split('\n')).toEqual([expect.stringMatching(/^Title: .*\[title\]$/)]);
  });

  it('gives the problems as data', async () => {
    const shell = createShell();
    const text = changedExample((order) => {
      order.children[0].measures.chestGirth = '-20';
    });
    const { exit, out, err } = await shell.run('check', shell.put('order.json', text), '--json');
    expect(exit).toBe(2);
    expect(err).toBe('');
    expect(JSON.parse(out)).toEqual({
      ok: false,
      problems: [
        {
          code: 'length.negative',
          child: 'Amina',
          path: 'children[0].measures.chestGirth',
          values: { text: '-20' },
          sentence: expect.stringMatching(/^Amina, chest girth: /),
        },
      ],
    });
  });

  const CASES: readonly [string, string | Uint8Array, number, RegExp][] = [
    [
      'another version',
      changedExample((order) => {
        order.frockwright = 9;
      }),
      2,
      /version 9.*reads: 1/,
    ],
    ['an empty file', '', 2, /file is empty/],
    ['a file of another kind', new Uint8Array([0x89, 0x50, 0x4e, 0x47, 0xff]), 2, /not plain text in UTF-8/],
    ['UTF-16, as some shells write it', Buffer.from(`\ufeff${EXAMPLE_TEXT}`, 'utf16le'), 2, /UTF-8/],
    ['a file of three megabytes', ' '.repeat(3_000_000), 2, /larger than 2 MB/],
  ];
  it.each(CASES)('%s', async (_, bytes, code, says) => {
    const shell = createShell();
    const { exit, err } = await shell.run('check', shell.put('order.json', bytes));
    expect(exit).toBe(code);
    expect(err).toMatch(says);
    expect(err).not.toMatch(/\n {4}at |Error:/);
  });

  it('a file that is not there, or is a folder, gives 3', async () => {
    const shell = createShell();
    shell.put('folder/x', '');
    for (const [file, says] of [
      ['none.json', /no such file/],
      ['folder', /is a folder/],
      ['folder/x/y', /path is a file/],
    ] as const) {
      const { exit, err } = await shell.run('check', file);
      expect(exit).toBe(3);
      expect(err).toMatch(says);
    }
  });
});

describe('measures', () => {
  it('says what was measured, what was filled in, and how it is taken', async () => {
    const shell = createShell();
    const { exit, out } = await shell.run('measures', shell.put('order.json', smallOrder()));
    expect(exit).toBe(0);
    expect(out).toMatch(/Measured:[\s\S]* chest girth +18 1\/2 in\n[\s\S]*Filled in from averages/);
    expect(out).toMatch(/ neck base girth +about 9 7\/16 in, give or take .* in\n +Where the neck grows/);
  });

  it('tells other programs where each value comes from', async () => {
    const shell = createShell();
    const { out } = await shell.run('measures', shell.put('order.json', smallOrder()), '--json');
    const [child] = JSON.parse(out).children;
    const of = (id: string) => child.measures.find(({ measure }: { measure: string }) => measure === id);
    expect(of('chestGirth')).toMatchObject({ from: 'measured', mm: 469.9, isoTerm: 'chest girth' });
    expect(of('backWidth')).toMatchObject({ from: 'estimated', rule: 'body.rule.back-width' });
  });

  it('says what has changed since the measuring before, and marks what was grown for other programs', async () => {
    const shell = createShell();
    const text = changedExample((order) => {
      order.children = order.children.slice(1, 2);
      order.children[0].measured = '2027-03-20';
      order.children[0].earlier = [{ measured: '2026-09-20', measures: { height: '95 cm' } }];
      order.growth = 'to-the-day';
    });
    const file = shell.put('order.json', text);
    const { out } = await shell.run('measures', file);
    expect(out).toMatch(
      /Measured before, on 2026-09-20:\n +height +37 3\/8 in; now 38 1\/2 in, 1 1\/8 in more\n/,
    );
    const [child] = JSON.parse((await shell.run('measures', file, '--json')).out).children;
    const height = child.measures.find(({ measure }: { measure: string }) => measure === 'height');
    expect(height).toMatchObject({ from: 'grown', measured: 977.9 });
    expect(height.mm).toBeGreaterThan(980);
    expect(height.band).toBeGreaterThan(1);
  });

  it('draws measuring sheets into a new PDF file only', async () => {
    const shell = createShell();
    const file = shell.put('order.json', EXAMPLE_TEXT);
    const drawn = await shell.run('measures', file, '--sheet', 'sheet.pdf', '--child', 'Amina', '--json');
    expect(JSON.parse(drawn.out)).toEqual({ ok: true, pages: 3, files: ['sheet.pdf'] });
    expect(readFileSync(join(shell.folder, 'sheet.pdf')).subarray(0, 5).toString()).toBe('%PDF-');
    const again = await shell.run('measures', file, '--sheet', 'sheet.pdf', '--child', 'Amina');
    expect(again).toMatchObject({ exit: 3, err: expect.stringMatching(/is there already/) });
    const svg = await shell.run('measures', file, '--sheet', 'sheet.svg');
    expect(svg).toMatchObject({ exit: 2, err: expect.stringMatching(/ends in \.pdf/) });
    const nobody = await shell.run('measures', file, '--child', 'Ida');
    expect(nobody).toMatchObject({ exit: 2, err: expect.stringMatching(/There are: Amina, /) });
  });

  it('answers for a design without an order', async () => {
    const shell = createShell();
    const plain = await shell.run('measures', '--steps', 'neckline');
    const sleeved = await shell.run('measures', '--steps', 'neckline, set-in-sleeve');
    expect(plain.exit).toBe(0);
    expect(plain.out).toMatch(/Measurements to take:\n +height\n/);
    expect(plain.out).not.toContain('arm length');
    expect(sleeved.out).toContain('arm length');
  });

  it('wants an order or a design', async () => {
    const shell = createShell();
    expect(await shell.run('measures')).toMatchObject({
      exit: 2,
      err: expect.stringMatching(/Name an order/),
    });
    const wrong = await shell.run('measures', '--steps', 'neckline,yok');
    expect(wrong).toMatchObject({ exit: 2, err: expect.stringMatching(/Is "yoke" meant\?/) });
  });
});

describe('example', () => {
  it('prints an order that can be used', async () => {
    const { exit, out } = await createShell().run('example');
    expect(exit).toBe(0);
    expect(out).toBe(EXAMPLE_TEXT);
    expect(readOrder(out).ok).toBe(true);
  });

  it('writes it to a new file, and over none', async () => {
    const shell = createShell();
    expect(await shell.run('example', 'my.json')).toMatchObject({ exit: 0, err: '' });
    expect(readFileSync(join(shell.folder, 'my.json'), 'utf8')).toBe(EXAMPLE_TEXT);
    shell.put('mine.json', 'dear');
    const again = await shell.run('example', 'mine.json');
    expect(again).toMatchObject({ exit: 3, err: expect.stringMatching(/there already/) });
    expect(readFileSync(join(shell.folder, 'mine.json'), 'utf8')).toBe('dear');
  });
});

describe('steps and help', () => {
  it('lists every step with its numbers', async () => {
    const shell = createShell();
    const { exit, out } = await shell.run('steps');
    expect(exit).toBe(0);
    expect(out).toMatch(/yoke: The upper bodice is cut apart.*\n[\s\S]* rise +Front line rises/);
    const said = JSON.parse((await shell.run('steps', '--json')).out);
    expect(said.steps.map(({ step }: { step: string }) => step)).toContain('drop-shoulder');
  });

  it('helps without being asked, and when asked', async () => {
    const shell = createShell();
    for (const argv of [[], ['--help'], ['pack', '--help']]) {
      const { exit, out } = await shell.run(...argv);
      expect(exit).toBe(0);
      expect(out).toContain('Usage: frockwright');
    }
  });

  it.each([
    [['pck'], /^Unknown command 'pck'\. Did you mean pack\?$/],
    [['check'], /^Missing required argument 'order'\.$/],
    [['check', 'a', '--al'], /^Unknown option '--al'\. Did you mean --all\?$/],
    [['pack', 'a', '--into'], /^Option '--into <folder>' argument missing\.$/],
  ])('%j is answered with a sentence and 2', async (argv, says) => {
    const { exit, err } = await createShell().run(...argv);
    expect(exit).toBe(2);
    expect(err.trim()).toMatch(says);
  });

  it('a mistake of the program is told as one, not as a trace', async () => {
    const shell = createShell();
    const out = (): void => {
      throw new Error('no paper');
    };
    const { exit, err } = await shell.runWith({ out }, 'example');
    expect(exit).toBe(4);
    expect(err).toBe(
      'This is a mistake of the program, not of your order (no paper). Please report it with the order that you used.\n',
    );
  });
});

describe('dresses', () => {
  it('lists the dresses to begin with, and draws them into a new file only', async () => {
    const shell = createShell();
    const listed = await shell.run('dresses');
    expect(listed.exit).toBe(0);
    expect(listed.out).toMatch(/^clover +Net yoke/m);
    const drawn = await shell.run('dresses', '--sheet', 'dresses.pdf', '--json');
    expect(JSON.parse(drawn.out).dresses.length).toBeGreaterThanOrEqual(10);
    const again = await shell.run('dresses', '--sheet', 'dresses.pdf');
    expect(again.exit).toBe(3);
    expect(again.err).toMatch(/is there already/);
  });
});

describe('growth', () => {
  const measured = changedExample((order) => {
    order.children = order.children.slice(1, 3);
    order.children[0].measured = '2027-03-20';
  });

  it('says where a child stands and what it will measure, and what is missing of the other', async () => {
    const shell = createShell();
    const { exit, out, err } = await shell.run('growth', shell.put('order.json', measured));
    expect([exit, err]).toEqual([0, '']);
    expect(out).toMatch(/^Tọ́lá: measured on 2027-03-20 at 38 months; the day is 2027-06-12, 84 days later\n/);
    expect(out).toMatch(/ height +38 1\/2 in, more than \d+ of 100; height by age \(WHO 2006 and 2007\)\n/);
    expect(out).toMatch(/Advice:\n +The dress is drafted as Tọ́lá was measured\./);
    expect(out).toMatch(/Efua\n +Efua: growth can be told from the birthday and the day of measuring\./);
  });

  it('draws it with charts into a new PDF file', async () => {
    const shell = createShell();
    const file = shell.put('order.json', measured);
    const { out } = await shell.run('growth', file, '--sheet', 'growth.pdf', '--json');
    expect(JSON.parse(out)).toMatchObject({ ok: true, files: ['growth.pdf'] });
    const wrong = await shell.run('growth', file, '--sheet', 'growth.txt');
    expect(wrong).toMatchObject({ exit: 2, err: expect.stringMatching(/ends in \.pdf, not growth\.txt/) });
  });

  it('tells other programs the numbers', async () => {
    const shell = createShell();
    const { out } = await shell.run('growth', shell.put('order.json', measured), '--json');
    const [girl, other] = JSON.parse(out).children;
    expect(other).toMatchObject({
      name: 'Efua',
      told: false,
      problems: ['growth.report.no-days'],
      labels: { us: {} },
    });
    expect(girl.values[0]).toMatchObject({
      measure: 'height',
      from: { kind: 'centile', reference: 'who-height' },
    });
    expect(girl.advice.measureAgain.day).toMatch(/^2027-\d\d-\d\d$/);
  });
});

describe('average', () => {
  it('says a whole body by age, by height, and by height and weight', async () => {
    const shell = createShell();
    const byAge = await shell.run('average', '--age', '72');
    expect(byAge.exit).toBe(0);
    // WHO 2007, girls of 72 months: 115.1 cm. Snyder 1977, girls of 66-78 months: mean chest 56.8 cm.
    expect(byAge.out).toMatch(/^height +115\.1 cm, give or take .*; the middle of children of this age\n/);
    expect(byAge.out).toMatch(/\nchest girth +56\.8 cm, /);
    expect(byAge.out).toMatch(/\nback width .*please measure it\n/);
    const heavy = await shell.run('average', '--height', '46 in', '--weight', '50 lb', '--boy', '--inches');
    expect(heavy.out).toMatch(/^height +as given\n/);
    expect(heavy.out).toMatch(/\nchest girth +2\d.* in, give or take .* in; .*height and weight/);
    const { measures } = JSON.parse((await shell.run('average', '--height', '116 cm', '--json')).out);
    expect(measures[1]).toMatchObject({ measure: 'chestGirth', from: 'height' });
  });

  it.each([
    [[], /Write --age/],
    [['--age', 'six'], /--age: "six" is not a number/],
    [['--height', 'tall'], /--height: "tall" is not a length/],
    [['--height', '300 cm'], /heights of 55 cm to 190 cm/],
    [['--height', '116 cm', '--weight', '21'], /--weight: "21" is not a weight/],
    [['--height', '116 cm', '--weight', '90 kg'], /No child of 116 cm weighs 90 kg/],
  ])('%j is refused with what would do', async (given, sentence) => {
    const { exit, err } = await createShell().run('average', ...given);
    expect(exit).toBe(2);
    expect(err).toMatch(sentence);
  });
});
