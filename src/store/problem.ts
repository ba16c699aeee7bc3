import type { WordValues } from '../engine/words/index.ts';
import type { Failure, StoreProblem, StoreProblemCode, StoreWord } from './types.ts';

export function storeProblem(code: StoreProblemCode, key: StoreWord, values: WordValues = {}): StoreProblem {
  return { code, say: { key, values } };
}

export function failure(code: StoreProblemCode, key: StoreWord, values: WordValues = {}): Failure {
  return { ok: false, problem: storeProblem(code, key, values) };
}

/**
 * What a browser may answer when nothing is wrong with the program: the disk, the quota, the connection. Other names
 * (`DataError`, `DataCloneError`, `TransactionInactiveError`, ...) would be our own bugs and are thrown on.
 */
const OF_THE_DEVICE: ReadonlySet<string> = new Set([
  'AbortError',
  'InvalidStateError',
  'NotFoundError',
  'NotReadableError',
  'SecurityError',
  'TimeoutError',
  'UnknownError',
  'VersionError',
]);

/** The problem behind an error of the storage; null for a bug. */
export function problemOfError(error: unknown): StoreProblem | null {
  if (!(error instanceof Error)) return null;
  if (error.name === 'QuotaExceededError') return storeProblem('storage-full', 'store.storage-full');
  if (!OF_THE_DEVICE.has(error.name)) return null;
  return storeProblem('failed', 'store.failed', { said: error.message || error.name });
}
