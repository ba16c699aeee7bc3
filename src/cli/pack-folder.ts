import { randomBytes } from 'node:crypto';
import { lstat, mkdir, readdir, readFile, realpath, rename, rm, rmdir, writeFile } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import { PACK_CONTENTS } from '../engine/order/index.ts';
import { EXIT } from './io.ts';
import { fileRefusal, type Refusal, refusal } from './refusal.ts';

/** One file to write; its bytes are made only when it is its turn. */
export interface PackFile {
  /** Relative, with `/` between folders. */
  readonly path: string;
  readonly bytes: () => Promise<Uint8Array | string>;
}

export interface PackTarget {
  /** Where the pack will stand, absolute. */
  readonly folder: string;
  readonly state: 'free' | 'empty' | 'pack';
}

/**
 * Looks whether a pack may be put into `folder`: it must be free, empty, or hold an older pack and nothing else,
 * which is only replaced if that was asked for. Touches nothing.
 */
export async function findTarget(folder: string, replace: boolean): Promise<PackTarget | Refusal> {
  try {
    const found = await lstat(folder).catch(missingIsNull);
    if (found === null) return { folder, state: 'free' };
    const real = await realpath(folder);
    if (!(await lstat(real)).isDirectory()) return refusal(EXIT.files, 'cli.folder.is-file', { folder });
    const files = await filesIn(real);
    if (files.length === 0) return { folder: real, state: 'empty' };
    const ours = await contentsOf(real);
    if (ours === null) return refusal(EXIT.files, 'cli.folder.not-ours', { folder, file: files[0] ?? '' });
    const foreign = files.find((file) => !ours.has(file.normalize('NFC')) && !isDropping(file));
    if (foreign !== undefined) return refusal(EXIT.files, 'cli.folder.foreign', { folder, file: foreign });
    return replace ? { folder: real, state: 'pack' } : refusal(EXIT.files, 'cli.folder.old-pack', { folder });
  } catch (error) {
    return fileRefusal(error, 'write', folder);
  }
}

/**
 * Writes a pack so that it is there as a whole or not at all: everything goes into a folder beside the target, which
 * takes the target's name at the end. `brokenOff` is asked between files.
 */
export async function writePack(
  { folder, state }: PackTarget,
  files: readonly PackFile[],
  before: (file: PackFile, index: number) => void,
  brokenOff: AbortSignal,
): Promise<{ readonly ok: true } | Refusal> {
  const beside = (ending: string): string =>
    join(dirname(folder), `.${basename(folder).slice(0, 60)}.${randomBytes(4).toString('hex')}.${ending}`);
  const half = beside('tmp');
  const old = beside('old');
  let firstMade: string | undefined;
  let done = false;
  try {
    firstMade = await mkdir(dirname(folder), { recursive: true });
    await mkdir(half);
    for (const [i, file] of files.entries()) {
      if (brokenOff.aborted) return refusal(EXIT.brokenOff, 'cli.broken-off', {});
      before(file, i);
      const path = join(half, ...file.path.split('/'));
      await mkdir(dirname(path), { recursive: true });
      await writeFile(path, await file.bytes());
    }
    if (brokenOff.aborted) return refusal(EXIT.brokenOff, 'cli.broken-off', {});
    if (state === 'empty') await rmdir(folder);
    if (state === 'pack') await rename(folder, old);
    try {
      await rename(half, folder);
    } catch (error) {
      if (state === 'pack') await rename(old, folder);
      throw error;
    }
    done = true;
    await rm(old, { recursive: true, force: true });
    return { ok: true };
  } catch (error) {
    return fileRefusal(error, 'write', folder);
  } finally {
    await rm(half, { recursive: true, force: true });
    if (!done && firstMade !== undefined) await removeEmpty(dirname(folder), firstMade);
  }
}

/** Takes away the folders from `deepest` up to `top` that were made for nothing; one that holds something stays. */
async function removeEmpty(deepest: string, top: string): Promise<void> {
  for (let folder = deepest; folder.length >= top.length; folder = dirname(folder)) {
    try {
      await rmdir(folder);
    } catch {
      return;
    }
  }
}

/** What file managers leave behind in a folder that was only looked at. */
const isDropping = (file: string): boolean => /(^|\/)(\.DS_Store|Thumbs\.db|desktop\.ini)$/i.test(file);

/** The files that a pack says it consists of; null when the folder is no pack. */
async function contentsOf(folder: string): Promise<ReadonlySet<string> | null> {
  const text = await readFile(join(folder, PACK_CONTENTS.path), 'utf8').catch(missingIsNull);
  if (text === null) return null;
  try {
    const contents: unknown = JSON.parse(text);
    if (typeof contents !== 'object' || contents === null) return null;
    if (!('kind' in contents) || contents.kind !== PACK_CONTENTS.kind) return null;
    if (!('files' in contents) || !Array.isArray(contents.files)) return null;
    return new Set(contents.files.map((file) => String(file).normalize('NFC')));
  } catch {
    return null;
  }
}

async function filesIn(folder: string, inside = ''): Promise<readonly string[]> {
  const entries = await readdir(join(folder, inside), { withFileTypes: true });
  const found = await Promise.all(
    entries.map((entry) => {
      const path = inside === '' ? entry.name : `${inside}/${entry.name}`;
      return entry.isDirectory() ? filesIn(folder, path) : [path];
    }),
  );
  return found.flat().sort();
}

function missingIsNull(error: unknown): null {
  if (error instanceof Error && 'code' in error && error.code === 'ENOENT') return null;
  throw error;
}
