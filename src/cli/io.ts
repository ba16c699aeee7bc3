import type { HelperLink } from '../engine/lay/index.ts';

/** A second thread that helps a search. */
export interface SearchHelper {
  readonly link: HelperLink;
  /** Until a report may have come. */
  arrived(): Promise<void>;
  end(): Promise<void>;
}

/** What a command may touch of the world beside files; tests bring their own. */
export interface Io {
  /** Results: standard output. */
  out(text: string): void;
  /** Progress and what is wrong: standard error. */
  err(text: string): void;
  readonly errIsTerminal: boolean;
  /** Relative paths are meant from here. */
  readonly folder: string;
  /** Today where the maker is, `2027-04-24`. */
  today(): string;
  /** Set off when the maker breaks off; what is half-written is then taken away. */
  readonly brokenOff: AbortSignal;
  /** How many threads run at once on this machine. */
  readonly threads: number;
  /** Starts the helper of a long search. */
  startHelper(): SearchHelper;
}

/** What the program hands back to the shell. */
export const EXIT = {
  fine: 0,
  /** A check found something that must not be cut. */
  stop: 1,
  /** The order or the arguments can't be used. */
  unusable: 2,
  /** A file can't be read or written. */
  files: 3,
  /** A mistake of the program itself. */
  fault: 4,
  /** Broken off by the maker; what a shell expects after Ctrl-C. */
  brokenOff: 130,
} as const;

export type ExitCode = (typeof EXIT)[keyof typeof EXIT];
