import { extname } from 'node:path';
import type { Order } from '../engine/order/index.ts';
import type { Page, TextMeasure } from '../engine/sheet/index.ts';
import { say, type WordKey } from '../engine/words/index.ts';
import { createTextMeasure, writePdf } from '../pdf/index.ts';
import { loadFonts } from '../pdf/load-fonts.ts';
import { EXIT, type ExitCode, type Io } from './io.ts';
import { writeNewFile } from './new-file.ts';
import { type Refusal, refusal, sayRefusal } from './refusal.ts';

/** Why a sheet can't be drawn into a file of that name; null where it can. */
export const sheetProblem = (file: string | null): Refusal | null =>
  file === null || extname(file).toLowerCase() === '.pdf'
    ? null
    : refusal(EXIT.unusable, 'cli.sheet.not-pdf', { found: file });

/** Draws pages into a new PDF file and says so. */
export async function writeSheet(
  io: Io,
  order: Order,
  { file, title, json }: { readonly file: string; readonly title: WordKey; readonly json: boolean },
  draw: (tools: { readonly today: string; readonly measure: TextMeasure }) => readonly Page[],
): Promise<ExitCode> {
  const fonts = await loadFonts();
  const pages = draw({ today: io.today(), measure: createTextMeasure(fonts) });
  const creationDate = new Date(`${order.madeOn ?? io.today()}T00:00:00Z`);
  const bytes = await writePdf(pages, { title: say(title, {}, order.units), creationDate, fonts });
  const refused = await writeNewFile(io, file, bytes);
  if (refused !== null) return sayRefusal(io, refused, json);
  if (json) io.out(`${JSON.stringify({ ok: true, pages: pages.length, files: [file] }, null, 2)}\n`);
  else io.out(`${say('cli.sheet.drawn', { file }, order.units)}\n`);
  return EXIT.fine;
}
