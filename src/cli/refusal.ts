import { tell } from '../engine/design/index.ts';
import { type OrderProblem, problemSentence } from '../engine/order/index.ts';
import type { UnitSystem } from '../engine/units/index.ts';
import type { WordKey, WordValues } from '../engine/words/index.ts';
import { EXIT, type ExitCode, type Io } from './io.ts';

/** One thing that is wrong, for people (`sentence`) and for other programs (the rest). */
export interface ToldProblem {
  readonly code: string;
  readonly child: string | null;
  readonly path: string;
  readonly values: WordValues;
  readonly sentence: string;
}

/** Why a command can't do what it was asked to. */
export interface Refusal {
  readonly ok: false;
  readonly exit: ExitCode;
  readonly problems: readonly ToldProblem[];
}

/** The order can't be used. */
export function orderRefusal(problems: readonly OrderProblem[], units: UnitSystem): Refusal {
  const told = problems.map((problem): ToldProblem => {
    const { code, child, path, values } = problem;
    return { code, child, path, values, sentence: problemSentence(problem, units) };
  });
  return { ok: false, exit: EXIT.unusable, problems: told };
}

/** One sentence of the catalogue as a refusal. */
export function refusal(exit: ExitCode, code: WordKey, values: WordValues): Refusal {
  const sentence = tell({ key: code, values }, 'cm');
  return { ok: false, exit, problems: [{ code, child: null, path: '', values, sentence }] };
}

/** What stands behind a failed call of the file system, as a sentence about `file`. Throws on anything else. */
export function fileRefusal(error: unknown, doing: 'read' | 'write', file: string): Refusal {
  if (!(error instanceof Error) || !('code' in error) || typeof error.code !== 'string') throw error;
  const why = WHY[error.code];
  const what = `cli.file.${doing}` satisfies WordKey;
  return refusal(EXIT.files, what, { file, why: why === undefined ? error.code : { word: why } });
}

const WHY: Readonly<Record<string, WordKey>> = {
  ENOENT: 'cli.file.why.missing',
  ENOTDIR: 'cli.file.why.no-folder',
  EACCES: 'cli.file.why.not-allowed',
  EPERM: 'cli.file.why.not-allowed',
  EROFS: 'cli.file.why.read-only',
  EISDIR: 'cli.file.why.is-folder',
  EEXIST: 'cli.file.why.exists',
  ENOSPC: 'cli.file.why.full',
  EDQUOT: 'cli.file.why.full',
  ENAMETOOLONG: 'cli.file.why.long-name',
  EBUSY: 'cli.file.why.in-use',
  EMFILE: 'cli.file.why.in-use',
};

/** Says a refusal in the way that was asked for, and gives the exit code. */
export function sayRefusal(io: Io, { exit, problems }: Refusal, asJson: boolean): ExitCode {
  if (asJson) io.out(`${JSON.stringify({ ok: false, problems }, null, 2)}\n`);
  else for (const { sentence } of problems) io.err(`${sentence}\n`);
  return exit;
}
