import { join, parse, resolve } from 'node:path';
import { tell } from '../engine/design/index.ts';
import { formatSellingLength } from '../engine/lay/index.ts';
import {
  clothsToBuy,
  makePack,
  mustNotBeCut,
  type Order,
  type OrderReport,
  type Pack,
  type PackDocument,
} from '../engine/order/index.ts';
import { say } from '../engine/words/index.ts';
import { createTextMeasure, missingLetters, type PaperFonts, writePdf } from '../pdf/index.ts';
import { loadFonts } from '../pdf/load-fonts.ts';
import { EXIT, type ExitCode, type Io } from './io.ts';
import { openOrder } from './order-file.ts';
import { findTarget, type PackFile, writePack } from './pack-folder.ts';
import { createProgress } from './progress.ts';
import { orderRefusal, sayRefusal, type ToldProblem } from './refusal.ts';
import { findingLines, reportData } from './tables.ts';

export interface PackWish {
  /** Where the pack goes; beside the order under the order's name where it is not said. */
  readonly into: string | null;
  readonly replace: boolean;
  readonly evenSo: boolean;
  readonly progress: boolean;
  readonly json: boolean;
}

/** Makes the pack of an order: all its papers in a folder, as a whole or not at all. */
export async function packCommand(io: Io, file: string, wish: PackWish): Promise<ExitCode> {
  const opened = await openOrder(io, file);
  if (!opened.ok) return sayRefusal(io, opened, wish.json);
  const { order } = opened;
  const folder = resolve(io.folder, wish.into ?? besideOrder(file));
  const target = await findTarget(folder, wish.replace);
  if ('ok' in target) return sayRefusal(io, target, wish.json);

  const fonts = await loadFonts();
  const progress = createProgress(io, wish.progress);
  const made = makePack(order, {
    today: io.today(),
    measure: createTextMeasure(fonts),
    evenSo: wish.evenSo,
    progress: ({ done, total, next }) =>
      progress.at(done + 1, total, say('cli.pack.drawing', { what: next }, order.units)),
  });
  if (!made.ok) {
    progress.end();
    if (made.code === 'problems') return sayRefusal(io, orderRefusal(made.problems, order.units), wish.json);
    return sayStops(io, order, made.report, wish.json);
  }
  const { documents, day } = made.pack;
  const files = documents.map((document) => packFile(document, day, fonts));
  const written = await writePack(
    target,
    files,
    ({ path }, i) => progress.at(i + 1, files.length, say('cli.pack.writing', { what: path }, order.units)),
    io.brokenOff,
  );
  progress.end();
  if (!written.ok) return sayRefusal(io, written, wish.json);
  sayDone(io, order, made.pack, target.folder, unprintable(documents, fonts, order), wish.json);
  return made.pack.report.children.some(mustNotBeCut) ? EXIT.stop : EXIT.fine;
}

function besideOrder(file: string): string {
  const { dir, name, ext } = parse(file);
  return join(dir, ext === '' ? `${name}-pack` : name);
}

/** The only date in the files is the day of the pack, so that the same order gives the same bytes. */
function packFile(document: PackDocument, day: string, fonts: PaperFonts): PackFile {
  const { path } = document;
  if (document.kind !== 'pages') return { path, bytes: async () => document.text };
  const creationDate = new Date(`${day}T00:00:00Z`);
  return { path, bytes: () => writePdf(document.pages, { title: document.title, creationDate, fonts }) };
}

/** Letters of names that the fonts lack: the papers show a stand-in, and the maker must know. */
function unprintable(
  documents: readonly PackDocument[],
  fonts: PaperFonts,
  order: Order,
): readonly ToldProblem[] {
  const pages = documents.flatMap((document) => (document.kind === 'pages' ? document.pages : []));
  return missingLetters(pages, fonts).map(({ text, letters }) => {
    const values = { text, letters: letters.join(' ') };
    const sentence = say('cli.pack.unprintable', values, order.units);
    return { code: 'cli.pack.unprintable', child: null, path: '', values, sentence };
  });
}

type Drawn = Extract<OrderReport, { ok: true }>;

function sayStops(io: Io, order: Order, report: Drawn, json: boolean): ExitCode {
  const barred = report.children.filter(mustNotBeCut);
  const values = { names: barred.map(({ name }) => name).join(', ') };
  if (json) {
    const children = report.children.map((child) => reportData(child, order.units));
    const sentence = say('cli.pack.stop', values, order.units);
    const problems = [{ code: 'cli.pack.stop', child: null, path: '', values, sentence }];
    io.out(`${JSON.stringify({ ok: false, problems, children }, null, 2)}\n`);
  } else {
    for (const child of barred) io.err(`${findingLines(child, order.units, false).join('\n')}\n\n`);
    io.err(`${say('cli.pack.stop', values, order.units)}\n`);
  }
  return EXIT.stop;
}

function sayDone(
  io: Io,
  order: Order,
  { documents, report, cloths }: Pack,
  folder: string,
  warnings: readonly ToldProblem[],
  json: boolean,
): void {
  const { units } = order;
  const buy = clothsToBuy(cloths).map(({ cloth, length }) => ({
    cloth: cloth.name,
    buy: formatSellingLength(length, cloth.unit),
    mm: Math.round(length),
  }));
  if (json) {
    const children = report.children.map((child) => reportData(child, units));
    const files = documents.map(({ path }) => path);
    io.out(`${JSON.stringify({ ok: true, folder, files, cloths: buy, warnings, children }, null, 2)}\n`);
    return;
  }
  for (const { sentence } of warnings) io.err(`${sentence}\n`);
  for (const child of report.children) io.out(`${findingLines(child, units, false).join('\n')}\n\n`);
  for (const { cloth, buy: length } of buy) io.out(`${say('cli.pack.buy', { cloth, length }, units)}\n`);
  for (const problem of cloths.problems) io.err(`${tell(problem, units)}\n`);
  const barred = report.children.filter(mustNotBeCut).map(({ name }) => name);
  if (barred.length > 0) io.err(`${say('cli.check.stop', { names: barred.join(', ') }, units)}\n`);
  io.out(`${say('cli.pack.done', { count: documents.length, folder }, units)}\n`);
}
