import { writeFile } from 'node:fs/promises';
import { resolve } from 'node:path';
import wedding from '../../examples/wedding-party.json?raw';
import { say } from '../engine/words/index.ts';
import { EXIT, type ExitCode, type Io } from './io.ts';
import { fileRefusal, sayRefusal } from './refusal.ts';

/** Writes the example order to a file that is not there yet, or to standard output. */
export async function exampleCommand(io: Io, file: string | null, json: boolean): Promise<ExitCode> {
  if (file === null) {
    io.out(wedding);
    return EXIT.fine;
  }
  try {
    await writeFile(resolve(io.folder, file), wedding, { flag: 'wx' });
  } catch (error) {
    return sayRefusal(io, fileRefusal(error, 'write', file), json);
  }
  if (json) io.out(`${JSON.stringify({ ok: true, file })}\n`);
  else io.out(`${say('cli.example.written', { file }, 'cm')}\n`);
  return EXIT.fine;
}
