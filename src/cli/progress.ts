import type { Io } from './io.ts';

/** Says on standard error how far the work is. */
export interface Progress {
  at(done: number, total: number, what: string): void;
  /** Takes the line away, so that the result stands alone. */
  end(): void;
}

/**
 * On a terminal one line that is written over; else nothing, unless plain lines were asked for. Lines that are
 * written over are kept short, as a line that wraps is not cleared.
 */
export function createProgress(io: Io, plainLines: boolean): Progress {
  const line = (done: number, total: number, what: string): string => `${done} of ${total}  ${what}`;
  if (plainLines) return { at: (...step) => io.err(`${line(...step)}\n`), end: () => {} };
  if (!io.errIsTerminal) return { at: () => {}, end: () => {} };
  return {
    at: (...step) => io.err(`\r\u001b[K${[...line(...step)].slice(0, 70).join('')}`),
    end: () => io.err('\r\u001b[K'),
  };
}
