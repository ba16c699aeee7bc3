#!/usr/bin/env node
import type { Io } from './io.ts';
import { runCommand } from './run-command.ts';

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
};

process.exitCode = await runCommand(process.argv.slice(2), io);
