import { LIBRARY, tell } from '../engine/design/index.ts';
import { libraryPages } from '../engine/order/index.ts';
import { paperOf } from '../engine/sheet/index.ts';
import { say } from '../engine/words/index.ts';
import { createTextMeasure, writePdf } from '../pdf/index.ts';
import { loadFonts } from '../pdf/load-fonts.ts';
import { EXIT, type ExitCode, type Io } from './io.ts';
import { writeNewFile } from './new-file.ts';
import { sayRefusal } from './refusal.ts';

/** Lists the dresses to begin with; with `sheet`, draws them front and back into a new PDF file. */
export async function dressesCommand(io: Io, sheet: string | null, json: boolean): Promise<ExitCode> {
  const told = (key: string): string => tell({ key, values: {} }, 'cm');
  if (sheet !== null) {
    const fonts = await loadFonts();
    const pages = libraryPages(paperOf('a4'), { units: 'cm', measure: createTextMeasure(fonts) });
    const creationDate = new Date(`${io.today()}T00:00:00Z`);
    const bytes = await writePdf(pages, { title: say('order.library.title', {}, 'cm'), creationDate, fonts });
    const refused = await writeNewFile(io, sheet, bytes);
    if (refused !== null) return sayRefusal(io, refused, json);
  }
  const dresses = LIBRARY.map(({ id, steps }) => ({
    dress: id,
    name: told(`dress.${id}`),
    about: told(`dress.${id}.about`),
    steps,
  }));
  if (json) io.out(`${JSON.stringify({ ok: true, sheet, dresses }, null, 2)}\n`);
  else {
    for (const { dress, about } of dresses) io.out(`${dress.padEnd(12)}${about}\n`);
    io.out(`\n${say('cli.dresses.use', {}, 'cm')}\n`);
    if (sheet !== null) io.out(`${say('cli.dresses.drawn', { file: sheet }, 'cm')}\n`);
  }
  return EXIT.fine;
}
