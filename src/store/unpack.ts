import { Unzip, type UnzipFile, UnzipInflate } from 'fflate';
import { idOfPart, LIMITS, MANIFEST, SETTINGS_PART } from './backup-form.ts';
import { failure } from './problem.ts';
import type { Answer, Failure } from './types.ts';

/** The parts of a zip by name; null for one that could not be unpacked. */
export type Parts = ReadonlyMap<string, Uint8Array<ArrayBuffer> | null>;

/** Little pieces: one can unpack to a thousand times its size before the count is looked at. */
const STRIDE = 16_384;

/**
 * Unpacks a backup without trusting what it says about itself: every name must be one of ours, sizes are checked before
 * unpacking where the file tells them, and counted again while it unpacks, so that a file that unpacks to gigabytes is
 * given up as soon as it has grown past the limits.
 */
export function unpack(bytes: Uint8Array): Answer<Parts> {
  if (bytes.length > LIMITS.fileBytes) {
    const [megabytes, most] = [Math.ceil(bytes.length / 1e6), LIMITS.fileBytes / 1e6];
    return failure('bad-backup', 'store.backup.too-large', { megabytes, most });
  }
  const parts = new Map<string, Uint8Array<ArrayBuffer> | null>();
  const state: State = { parts, unpacked: 0, refused: null };
  const unzip = new Unzip((file) => startPart(file, state));
  unzip.register(UnzipInflate);
  for (let at = 0; at < bytes.length && state.refused === null; at += STRIDE) {
    try {
      unzip.push(bytes.subarray(at, at + STRIDE), at + STRIDE >= bytes.length);
    } catch (error) {
      // The library throws where the zip makes no sense. What came before is whole.
      if (!isUnzipError(error)) throw error;
      break;
    }
  }
  if (state.refused !== null) return state.refused;
  if (parts.size === 0) return failure('bad-backup', 'store.backup.not-zip');
  return { ok: true, value: parts };
}

/** The two ways of packing that a backup has (APPNOTE.TXT of the zip format, 4.4.5). */
const STORED = 0;
const DEFLATED = 8;

interface State {
  readonly parts: Map<string, Uint8Array<ArrayBuffer> | null>;
  unpacked: number;
  refused: Failure | null;
}

function startPart(file: UnzipFile, state: State): void {
  if (state.refused !== null) return;
  state.refused = refusedBefore(file, state);
  if (state.refused !== null) return;
  const { name } = file;
  const chunks: Uint8Array[] = [];
  let length = 0;
  state.parts.set(name, null);
  file.ondata = (error, chunk, final) => {
    // A part that can't be unpacked stays null; the others go on.
    if (error !== null || state.refused !== null) return;
    length += chunk.length;
    state.unpacked += chunk.length;
    state.refused = tooLarge(name, length, state.unpacked);
    if (state.refused !== null) return;
    chunks.push(chunk);
    if (final) state.parts.set(name, joined(chunks, length));
  };
  if (file.compression === STORED || file.compression === DEFLATED) file.start();
}

/** What its name and the size that it claims say against a part. */
function refusedBefore({ name, originalSize }: UnzipFile, { parts, unpacked }: State): Failure | null {
  const part = name.slice(0, 80);
  if (name !== MANIFEST && name !== SETTINGS_PART && idOfPart(name) === null) {
    return failure('bad-backup', 'store.backup.part-name', { part });
  }
  if (parts.has(name)) return failure('bad-backup', 'store.backup.part-twice', { part });
  if (parts.size >= LIMITS.parts) return failure('bad-backup', 'store.backup.too-many-parts');
  return tooLarge(name, originalSize ?? 0, unpacked + (originalSize ?? 0));
}

function tooLarge(part: string, length: number, unpacked: number): Failure | null {
  if (length > LIMITS.partBytes) return failure('bad-backup', 'store.backup.part-too-large', { part });
  if (unpacked > LIMITS.unpackedBytes) return failure('bad-backup', 'store.backup.unpacks-too-large');
  return null;
}

function joined(chunks: readonly Uint8Array[], length: number): Uint8Array<ArrayBuffer> {
  const whole = new Uint8Array(length);
  let at = 0;
  for (const chunk of chunks) {
    whole.set(chunk, at);
    at += chunk.length;
  }
  return whole;
}

function isUnzipError(error: unknown): boolean {
  return (
    error instanceof Error &&
    (('code' in error && typeof error.code === 'number') || error instanceof RangeError)
  );
}
