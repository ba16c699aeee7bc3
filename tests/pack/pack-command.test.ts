import {
  chmodSync,
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { changedExample } from '../fixtures/example-order.ts';
import { createShell, smallOrder } from './shell.ts';

/** Every file below a folder, hidden ones too. */
const filesIn = (folder: string): readonly string[] =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((path) => statSync(join(folder, path)).isFile())
    .map((path) => path.replaceAll('\\', '/'))
    .sort();

const IS_ROOT = process.getuid?.() === 0;

describe('pack', () => {
  it('makes the folder beside the order, with all that the index names', async () => {
    const shell = createShell();
    const { exit, out, err } = await shell.run('pack', shell.put('orders/spring.json', smallOrder()));
    expect(err).toBe('');
    expect(exit).toBe(0);
    const folder = join(shell.folder, 'orders', 'spring');
    expect(out).toContain(`Open README.txt first: ${folder}`);
    expect(out).toMatch(/Buy \S+.* yd of ivory satin\./);
    const files = filesIn(folder);
    for (const path of [
      'README.txt',
      'checks.pdf',
      'cut-list.pdf',
      'Amina/pattern-A4.pdf',
      'Amina/draw-by-hand.pdf',
    ]) {
      expect(files).toContain(path);
    }
    for (const path of files.filter((name) => name.endsWith('.pdf'))) {
      const bytes = readFileSync(join(folder, path), 'latin1');
      expect(bytes.startsWith('%PDF-1.'), path).toBe(true);
      expect(bytes.trimEnd().endsWith('%%EOF'), path).toBe(true);
    }
    const contents = JSON.parse(readFileSync(join(folder, 'contents.json'), 'utf8'));
    expect([...contents.files].sort()).toEqual(files);
    expect(readdirSync(join(shell.folder, 'orders')).sort()).toEqual(['spring', 'spring.json']);
  });

  it('gives the same bytes each time, and says what it made as data', async () => {
    const shell = createShell();
    const order = shell.put('order.json', smallOrder());
    const first = await shell.run('pack', order, '--into', 'a', '--json');
    await shell.runWith({ today: () => '2030-01-01' }, 'pack', order, '--into', 'b');
    const said = JSON.parse(first.out);
    expect(said).toMatchObject({ ok: true, folder: join(shell.folder, 'a'), warnings: [] });
    expect(said.cloths[0]).toMatchObject({ cloth: 'ivory satin' });
    expect(said.files.length).toBeGreaterThan(10);
    for (const path of said.files) {
      const [a, b] = ['a', 'b'].map((folder) => readFileSync(join(shell.folder, folder, path)));
      expect(a?.equals(b ?? Buffer.alloc(0)), path).toBe(true);
    }
  });

  it('says on lines of their own how far it is, where no terminal is', async () => {
    const shell = createShell();
    const order = shell.put('order.json', smallOrder());
    const quiet = await shell.run('pack', order, '--into', 'a');
    const lines = await shell.run('pack', order, '--into', 'b', '--progress');
    const terminal = await shell.runWith({ errIsTerminal: true }, 'pack', order, '--into', 'c');
    expect(quiet.err).toBe('');
    expect(lines.err).toMatch(/^1 of 2 {2}drawing: Amina\n2 of 2 {2}drawing: Flower girls/);
    expect(lines.err).toMatch(/\n(\d+) of \1 {2}writing: /);
    expect(terminal.err).toContain('\r\u001b[K1 of 2  drawing: Amina');
    expect(terminal.err.endsWith('\r\u001b[K')).toBe(true);
  });

  it('names the letters that the fonts lack', async () => {
    const shell = createShell();
    const text = JSON.stringify({ ...JSON.parse(smallOrder()), title: 'Hochzeit 小花' });
    const { exit, err } = await shell.run('pack', shell.put('order.json', text));
    expect(exit).toBe(0);
    expect(err).toMatch(/no shape for 小 花 in "/);
  });

  it('refuses what must not be cut with 1 and writes nothing; even so it marks it', async () => {
    const shell = createShell();
    const text = changedExample((order) => {
      order.children = order.children.slice(0, 1);
      order.dress = order.dress.filter(({ step }: { step: string }) => step !== 'back-zip');
    });
    const order = shell.put('order.json', text);
    const refused = await shell.run('pack', order);
    expect(refused).toMatchObject({ exit: 1, out: '' });
    expect(refused.err).toMatch(/The head does not pass[\s\S]*No pack was made: for Amina/);
    expect(readdirSync(shell.folder)).toEqual(['order.json']);
    const even = await shell.run('pack', order, '--even-so');
    expect(even.exit).toBe(1);
    expect(even.err).toMatch(/DO NOT CUT YET for Amina/);
    expect(readFileSync(join(shell.folder, 'order', 'README.txt'), 'utf8')).toContain(
      'DO NOT CUT YET for Amina',
    );
  });
});

describe('the folder of a pack', () => {
  it('is replaced only when that was asked for', async () => {
    const shell = createShell();
    const order = shell.put('order.json', smallOrder());
    await shell.run('pack', order, '--into', 'p');
    const before = statSync(join(shell.folder, 'p', 'README.txt')).mtimeMs;
    const again = await shell.run('pack', order, '--into', 'p');
    expect(again).toMatchObject({
      exit: 3,
      err: expect.stringMatching(/holds an older pack. Say --replace/),
    });
    expect(statSync(join(shell.folder, 'p', 'README.txt')).mtimeMs).toBe(before);
    rmSync(join(shell.folder, 'p', 'cut-list.pdf'));
    shell.put('p/Amina/.DS_Store', 'left by a file manager');
    expect(await shell.run('pack', order, '--into', 'p', '--replace')).toMatchObject({ exit: 0, err: '' });
    expect(existsSync(join(shell.folder, 'p', 'cut-list.pdf'))).toBe(true);
    expect(readdirSync(shell.folder).sort()).toEqual(['order.json', 'p']);
  });

  it('is never taken away when it holds anything else', async () => {
    const shell = createShell();
    const order = shell.put('order.json', smallOrder());
    shell.put('photos/girls.jpg', 'dear');
    const foreign = await shell.run('pack', order, '--into', 'photos', '--replace');
    expect(foreign).toMatchObject({
      exit: 3,
      err: expect.stringMatching(/no pack of this program, for instance "girls.jpg"/),
    });
    await shell.run('pack', order, '--into', 'p');
    shell.put('p/Amina/notes.txt', 'dear');
    const noted = await shell.run('pack', order, '--into', 'p', '--replace');
    expect(noted).toMatchObject({
      exit: 3,
      err: expect.stringMatching(/also "Amina\/notes.txt", which would be lost/),
    });
    expect(readFileSync(join(shell.folder, 'photos/girls.jpg'), 'utf8')).toBe('dear');
    expect(readFileSync(join(shell.folder, 'p/Amina/notes.txt'), 'utf8')).toBe('dear');
  });

  it('may be there if it is empty, and its parents are made', async () => {
    const shell = createShell();
    const order = shell.put('order.json', smallOrder());
    mkdirSync(join(shell.folder, 'empty'));
    for (const folder of ['empty', 'new/and/deep']) {
      expect(await shell.run('pack', order, '--into', folder)).toMatchObject({ exit: 0, err: '' });
      expect(existsSync(join(shell.folder, folder, 'README.txt'))).toBe(true);
    }
  });

  it('must be a folder that can be written to: nothing is left behind where it is not', async () => {
    const shell = createShell();
    const order = shell.put('order.json', smallOrder());
    shell.put('file', 'dear');
    mkdirSync(join(shell.folder, 'locked'));
    chmodSync(join(shell.folder, 'locked'), 0o555);
    const places: [string, RegExp][] = [
      ['file', /is a file/],
      ['file/inside', /path is a file/],
      [`${'x'.repeat(300)}`, /name is too long/],
    ];
    if (process.platform === 'linux') places.push(['/proc/pack', /cannot be written/]);
    if (!IS_ROOT) places.push(['locked/pack', /no permission/]);
    for (const [folder, says] of places) {
      const { exit, err } = await shell.run('pack', order, '--into', folder);
      expect(err, folder).toMatch(says);
      expect(exit, folder).toBe(3);
    }
    expect(readdirSync(shell.folder).sort()).toEqual(['file', 'locked', 'order.json']);
    expect(readFileSync(join(shell.folder, 'file'), 'utf8')).toBe('dear');
  });

  it('is not there by half when the maker breaks off, nor are folders made for it', async () => {
    const shell = createShell();
    const order = shell.put('order.json', smallOrder());
    const breakOff = new AbortController();
    const told: string[] = [];
    const io = {
      brokenOff: breakOff.signal,
      err: (text: string): void => {
        told.push(text);
        if (/writing: Amina\/checks/.test(text)) breakOff.abort();
      },
    };
    const { exit } = await shell.runWith(io, 'pack', order, '--into', 'a/b', '--progress');
    expect(exit).toBe(130);
    expect(told.slice(-2)).toEqual([
      expect.stringMatching(/writing: Amina\/checks/),
      'Broken off. Nothing was written.\n',
    ]);
    expect(readdirSync(shell.folder)).toEqual(['order.json']);
  });

  it('stays as it was when writing fails in the middle', async () => {
    const shell = createShell();
    const order = shell.put('order.json', smallOrder());
    await shell.run('pack', order, '--into', 'p');
    const before = filesIn(join(shell.folder, 'p'));
    let spoiled = '';
    const err = (text: string): void => {
      // The half-written folder loses a place that a later file needs, as when a disk goes away.
      if (!/writing: Amina\/checks/.test(text)) return;
      const half = readdirSync(shell.folder).find((name) => name.endsWith('.tmp'));
      spoiled = join(shell.folder, half ?? 'none', 'Amina', 'pieces');
      writeFileSync(spoiled, 'in the way');
    };
    const { exit } = await shell.runWith({ err }, 'pack', order, '--into', 'p', '--replace', '--progress');
    expect(spoiled).not.toBe('');
    expect(exit).toBe(3);
    expect(filesIn(join(shell.folder, 'p'))).toEqual(before);
    expect(readdirSync(shell.folder).sort()).toEqual(['order.json', 'p']);
  });
});
