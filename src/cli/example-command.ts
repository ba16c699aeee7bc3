import wedding from '../../examples/wedding-party.json?raw';
import { say } from '../engine/words/index.ts';
import { EXIT, type ExitCode, type Io } from './io.ts';
import { writeNewFile } from './new-file.ts';
import { sayRefusal } from './refusal.ts';

/** Writes the example order to a file that is not there yet, or to standard output. */
export async function exampleCommand(io: Io, file: string | null, json: boolean): Promise<ExitCode> {
  if (file === null) {
    io.out(wedding);
    return EXIT.fine;
  }
  const refused = await writeNewFile(io, file, wedding);
  if (refused !== null) return sayRefusal(io, refused, json);
  if (json) io.out(`${JSON.stringify({ ok: true, file })}\n`);
  else io.out(`${say('cli.example.written', { file }, 'cm')}\n`);
  return EXIT.fine;
}
