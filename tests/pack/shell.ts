import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { onTestFinished } from 'vitest';
import type { Io } from '../../src/cli/io.ts';
import { runCommand } from '../../src/cli/run-command.ts';
import { EXAMPLE_TEXT } from '../fixtures/example-order.ts';

export interface Ran {
  readonly exit: number;
  readonly out: string;
  readonly err: string;
}

export interface Shell {
  readonly folder: string;
  /** Writes a file into the folder and gives its name. */
  put(name: string, text: string | Uint8Array): string;
  run(...argv: readonly string[]): Promise<Ran>;
  runWith(io: Partial<Io>, ...argv: readonly string[]): Promise<Ran>;
}

/** A folder of its own to run commands in, taken away when the test is over. */
export function createShell(): Shell {
  const folder = mkdtempSync(join(tmpdir(), 'frockwright-shell-'));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  const runWith = async (io: Partial<Io>, ...argv: readonly string[]): Promise<Ran> => {
    let [out, err] = ['', ''];
    const exit = await runCommand(argv, {
      out: (text) => {
        out += text;
      },
      err: (text) => {
        err += text;
      },
      errIsTerminal: false,
      folder,
      today: () => '2027-04-01',
      brokenOff: new AbortController().signal,
      threads: 1,
      startHelper: () => {
        throw new Error('No test of a command starts a thread.');
      },
      ...io,
    });
    return { exit, out, err };
  };
  return {
    folder,
    put: (name, text) => {
      const path = join(folder, name);
      mkdirSync(join(path, '..'), { recursive: true });
      writeFileSync(path, text);
      return name;
    },
    run: (...argv) => runWith({}, ...argv),
    runWith,
  };
}

/** One child of the example and one paper, so that a pack is made quickly. */
export function smallOrder(): string {
  const order = JSON.parse(EXAMPLE_TEXT);
  order.children = order.children.slice(0, 1);
  order.paper.formats = ['A4'];
  return JSON.stringify(order);
}
