import { writeFile } from 'node:fs/promises';
import { resolve } from 'node:path';
import type { Io } from './io.ts';
import { fileRefusal, type Refusal } from './refusal.ts';

/** Writes a file that is not there yet; says why where it can't, and never writes over another. */
export async function writeNewFile(
  io: Io,
  file: string,
  contents: string | Uint8Array,
): Promise<Refusal | null> {
  try {
    await writeFile(resolve(io.folder, file), contents, { flag: 'wx' });
    return null;
  } catch (error) {
    return fileRefusal(error, 'write', file);
  }
}
