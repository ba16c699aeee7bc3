import { execFile, spawn } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { EXAMPLE_TEXT } from '../fixtures/example-order.ts';
import { smallOrder } from './shell.ts';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));

/** Inside the project, so that the program finds its packages and fonts as it does from `dist`. */
const built = mkdtempSync(join(ROOT, 'node_modules', '.frockwright-built-'));
const folder = mkdtempSync(join(tmpdir(), 'frockwright-program-'));

beforeAll(async () => {
  await build({
    root: ROOT,
    configFile: join(ROOT, 'vite.config.ts'),
    logLevel: 'error',
    build: { outDir: built, emptyOutDir: true },
  });
});
afterAll(() => {
  for (const path of [built, folder]) rmSync(path, { recursive: true, force: true });
});

interface Ran {
  readonly exit: number;
  readonly out: string;
  readonly err: string;
}

const run = (...argv: readonly string[]): Promise<Ran> =>
  new Promise((done) => {
    const program = join(built, 'frockwright.js');
    execFile(process.execPath, [program, ...argv], { cwd: folder }, (error, out, err) => {
      done({ exit: typeof error?.code === 'number' ? error.code : error === null ? 0 : -1, out, err });
    });
  });

describe('the built program, from another folder', () => {
  it('goes the whole way: example, check, pack', async () => {
    expect(await run('example', 'party.json')).toMatchObject({ exit: 0, err: '' });
    expect(readFileSync(join(folder, 'party.json'), 'utf8')).toBe(EXAMPLE_TEXT);
    expect(await run('check', 'party.json')).toMatchObject({ exit: 0, err: '' });
    const start = performance.now();
    const packed = await run('pack', 'party.json', '--into', 'pack');
    const seconds = (performance.now() - start) / 1000;
    console.log(`the example pack took ${seconds.toFixed(1)} s`);
    expect(packed).toMatchObject({ exit: 0, err: '' });
    expect(readdirSync(join(folder, 'pack'))).toContain('README.txt');
    // Wanted are 6 s; a busy machine may take longer without anything being wrong.
    expect(seconds).toBeLessThan(30);
  });

  it('makes the pack as a whole although nobody reads its progress any more', async () => {
    const small = join(folder, 'small.json');
    writeFileSync(small, smallOrder());
    const program = join(built, 'frockwright.js');
    const child = spawn(process.execPath, [program, 'pack', small, '--progress'], { cwd: folder });
    child.stderr.destroy();
    child.stdout.destroy();
    const exit = await new Promise((done) => child.on('close', done));
    expect(exit).toBe(0);
    expect(readdirSync(folder).filter((name) => name.startsWith('.'))).toEqual([]);
    expect(readdirSync(join(folder, 'small'))).toContain('README.txt');
  });

  it('lays with a second thread, and ends', async () => {
    const order = JSON.parse(smallOrder());
    order.cloths = order.cloths.slice(0, 1);
    writeFileSync(join(folder, 'one-cloth.json'), JSON.stringify(order));
    const { exit, out, err } = await run('lay', 'one-cloth.json', '--tries', '500000', '--json');
    expect({ exit, err }).toEqual({ exit: 0, err: '' });
    expect(JSON.parse(out).cloths).toHaveLength(1);
  });

  it('hands its exit codes to the shell', async () => {
    expect(await run('pack', 'nothing.json')).toMatchObject({ exit: 3, out: '' });
    expect((await run('nonsense')).exit).toBe(2);
    expect((await run('--help')).exit).toBe(0);
  });
});
