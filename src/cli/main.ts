#!/usr/bin/env node
import { availableParallelism } from 'node:os';
import { isMainThread, parentPort } from 'node:worker_threads';
import type { Io } from './io.ts';
import { runCommand } from './run-command.ts';
import { helpThrough, startSearchHelper } from './search-helper.ts';

// The same file is the second thread of a long search.
if (isMainThread) await runProgram();
else if (parentPort !== null) helpThrough(parentPort);

async function runProgram(): Promise<void> {
  const breakOff = new AbortController();
  process.once('SIGINT', () => breakOff.abort());
  process.once('SIGTERM', () => breakOff.abort());
  // A reader that has seen enough, as `head`, closes the pipe; that is no mistake.
  process.stdout.on('error', () => process.exit());
  // Nobody reads the progress any more; the pack is made all the same.
  process.stderr.on('error', () => {});

  const io: Io = {
    out: (text) => process.stdout.write(text),
    err: (text) => process.stderr.write(text),
    errIsTerminal: process.stderr.isTTY === true,
    folder: process.cwd(),
    today: () => {
      const now = new Date();
      const two = (n: number): string => String(n).padStart(2, '0');
      return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
    },
    brokenOff: breakOff.signal,
    threads: availableParallelism(),
    startHelper: () => startSearchHelper(new URL(import.meta.url)),
  };

  process.exitCode = await runCommand(process.argv.slice(2), io);
}
