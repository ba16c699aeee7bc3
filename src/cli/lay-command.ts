import { extname } from 'node:path';
import { setImmediate } from 'node:timers/promises';
import { formatSellingLength, type Lay, layOffcuts, packWithHelp } from '../engine/lay/index.ts';
import {
  type LaidCloths,
  type LayStep,
  layPack,
  layRefusalSentence,
  lengthSoFar,
  type Order,
} from '../engine/order/index.ts';
import { type Page, pageSvg } from '../engine/sheet/index.ts';
import type { UnitSystem } from '../engine/units/index.ts';
import { say, speak } from '../engine/words/index.ts';
import { createTextMeasure, type PaperFonts, writePdf } from '../pdf/index.ts';
import { loadFonts } from '../pdf/load-fonts.ts';
import { EXIT, type ExitCode, type Io } from './io.ts';
import { writeNewFile } from './new-file.ts';
import { openOrder } from './order-file.ts';
import { createProgress } from './progress.ts';
import { orderRefusal, type Refusal, refusal, sayRefusal } from './refusal.ts';

export interface LayWish {
  readonly seconds?: string;
  readonly tries?: string;
  readonly seed?: string;
  readonly child?: string;
  readonly sheet?: string;
  readonly json: boolean;
}

const SECONDS = 60;
/** How often the program looks whether it was broken off, ms. */
const LOOK_UP = 50;
/** A search that a clock ends has no other end. */
const ENDLESS = 1e12;

/** Lays the cloths of an order for as long as the maker likes. Ctrl-C ends the search and keeps what was found. */
export async function layCommand(io: Io, file: string, wish: LayWish): Promise<ExitCode> {
  const opened = await openOrder(io, file);
  if (!opened.ok) return sayRefusal(io, opened, wish.json);
  const { order } = opened;
  const wrong = wishProblem(order, wish);
  if (wrong !== null) return sayRefusal(io, wrong, wish.json);

  const fonts = await loadFonts();
  const child = wish.child === undefined ? null : order.children.findIndex(({ name }) => name === wish.child);
  const progress = createProgress(io, false);
  const tools = { today: io.today(), measure: createTextMeasure(fonts) };
  const helper = isWorthHelp(wish, io.threads) ? io.startHelper() : null;
  const helped = helper === null ? null : packWithHelp(helper.link);
  const run = layPack(order, tools, child, searchOf(order, wish, io.brokenOff), helped?.pack);
  let looked = Date.now();
  try {
    for (;;) {
      const { value, done } = run.next();
      if (done === true) {
        progress.end();
        if (!value.ok) return sayRefusal(io, orderRefusal(value.problems, order.units), wish.json);
        return await tellLaid(io, order, value.laid.cloths, value.laid.pages, wish, fonts);
      }
      if (helped?.waiting() === true) await helper?.arrived();
      if (Date.now() - looked < LOOK_UP) continue;
      progress.at(order.cloths.indexOf(value.cloth) + 1, order.cloths.length, stepText(value, order));
      await setImmediate();
      looked = Date.now();
    }
  } finally {
    await helper?.end();
  }
}

/** A shorter search is over before a second thread is of use, seconds and tries. */
const LONG_SEARCH = { seconds: 5, tries: 500_000 };

/** Counted by tries it is the same search on every machine, so threads do not matter then. */
function isWorthHelp({ seconds, tries }: LayWish, threads: number): boolean {
  if (tries !== undefined) return Number(tries) >= LONG_SEARCH.tries;
  return threads > 1 && Number(seconds ?? SECONDS) > LONG_SEARCH.seconds;
}

function wishProblem(order: Order, { seconds, tries, seed, child, sheet }: LayWish): Refusal | null {
  for (const [option, found] of [
    ['--seconds', seconds],
    ['--tries', tries],
    ['--seed', seed],
  ] as const) {
    if (found !== undefined && !(Number(found) > 0 && Number.isFinite(Number(found))))
      return refusal(EXIT.unusable, 'cli.lay.bad-number', { option, found });
  }
  const known = order.children.map(({ name }) => name);
  if (child !== undefined && !known.includes(child))
    return refusal(EXIT.unusable, 'cli.lay.no-child', { name: child, known: known.join(', ') });
  if (sheet !== undefined && !['.pdf', '.svg'].includes(extname(sheet).toLowerCase()))
    return refusal(EXIT.unusable, 'cli.lay.bad-sheet', { found: sheet });
  return null;
}

/** By tries the search is the same each time; by the clock each cloth has its share of it. */
function searchOf(order: Order, { seconds, tries, seed }: LayWish, brokenOff: AbortSignal) {
  const share = (1000 * Number(seconds ?? SECONDS)) / order.cloths.length;
  const common = { seed: Math.round(Number(seed ?? 1)) };
  return () => {
    const began = Date.now();
    const gone = (): number =>
      brokenOff.aborted ? 1 : tries === undefined ? (Date.now() - began) / share : 0;
    return { ...common, evaluations: tries === undefined ? ENDLESS : Math.ceil(Number(tries)), gone };
  };
}

function stepText(step: LayStep, { units }: Order): string {
  const { cloth, evaluations } = step;
  const length = lengthSoFar(step);
  return length === null
    ? say('cli.lay.first', { cloth: cloth.name }, units)
    : say('cli.lay.searching', { cloth: cloth.name, length: { mm: length }, tries: evaluations }, units);
}

async function tellLaid(
  io: Io,
  order: Order,
  { lists, problems }: LaidCloths,
  pages: readonly Page[],
  wish: LayWish,
  fonts: PaperFonts,
): Promise<ExitCode> {
  const files = wish.sheet === undefined ? [] : await drawn(io, order, pages, wish.sheet, fonts);
  if ('ok' in files) return sayRefusal(io, files, wish.json);
  const { units } = order;
  if (wish.json) {
    const cloths = lists.map(({ cloth, lengths, toBuy, saved, byTable }) => ({
      cloth: cloth.name,
      buy: formatSellingLength(toBuy, cloth.unit),
      mm: Math.round(toBuy),
      lengths: lengths.map(({ at, lay }) => ({ at, mm: lay.length, density: lay.density })),
      saved: saved === null ? null : Math.round(saved.saved),
      byTable: byTable === undefined ? null : Math.round(byTable),
      offcuts: lengths.flatMap(({ at, lay }) =>
        layOffcuts(lay).map(({ along, across, layers, uses }) => ({
          ...{ at, along, across, layers },
          uses: uses.map((use) => speak(use, units)),
        })),
      ),
    }));
    const refused = problems.map((problem) => layRefusalSentence(problem, units));
    const all = { ok: refused.length === 0, stopped: io.brokenOff.aborted, cloths, problems: refused, files };
    io.out(`${JSON.stringify(all, null, 2)}\n`);
  } else {
    if (io.brokenOff.aborted) io.err(`${say('cli.lay.stopped', {}, units)}\n`);
    for (const list of lists) io.out(`${listLines(list, order).join('\n')}\n`);
    for (const problem of problems) io.err(`${layRefusalSentence(problem, units)}\n`);
    for (const name of files) io.out(`${say('cli.lay.drawn', { file: name }, units)}\n`);
  }
  return problems.length > 0 ? EXIT.stop : EXIT.fine;
}

function listLines(
  { cloth, lengths, toBuy, saved, byTable }: LaidCloths['lists'][number],
  { units }: Order,
): readonly string[] {
  const sold = (length: number): string => formatSellingLength(length, cloth.unit);
  const used = lengths.reduce((sum, { lay }) => sum + lay.length, 0);
  const share = (density: number): number => Math.round(1000 * density) / 10;
  const dense = lengths.reduce((sum, { lay }) => sum + lay.density * lay.length, 0) / used;
  const values = { cloth: cloth.name, length: sold(toBuy), used: { mm: used }, percent: share(dense) };
  return [
    say('cli.lay.cloth', values, units),
    ...(saved === null || saved.saved <= 0
      ? []
      : [say('cli.lay.saved', { alone: sold(saved.alone), saved: sold(saved.saved) }, units)]),
    ...(byTable === undefined || byTable <= toBuy
      ? []
      : [say('cli.lay.by-table', { table: sold(byTable), saved: sold(byTable - toBuy) }, units)]),
    ...lengths.flatMap(({ at, lay }) => {
      const facts = { used: { mm: lay.length }, percent: share(lay.density) };
      return at === null ? [] : [say('cli.lay.at-hand', { number: at + 1, ...facts }, units)];
    }),
    ...lengths.flatMap(({ lay }) => leftLines(lay, units)),
  ];
}

/** The largest offcuts that are enough for something. */
const MOST_LEFT = 3;

function leftLines(lay: Lay, units: UnitSystem): readonly string[] {
  return layOffcuts(lay)
    .filter(({ uses }) => uses.length > 0)
    .slice(0, MOST_LEFT)
    .map(({ along, across, uses }) => {
      const words = uses.map((use) => speak(use, units)).join('; ');
      const sizes = { along: { mm: along }, across: { mm: across } };
      return say('cli.lay.left', { ...sizes, uses: words }, units);
    });
}

/** Writes new files only. */
async function drawn(
  io: Io,
  order: Order,
  pages: readonly Page[],
  sheet: string,
  fonts: PaperFonts,
): Promise<readonly string[] | Refusal> {
  const kind = extname(sheet);
  const creationDate = new Date(`${order.madeOn ?? io.today()}T00:00:00Z`);
  const files =
    kind.toLowerCase() === '.pdf'
      ? [{ name: sheet, bytes: await writePdf(pages, { title: order.title, creationDate, fonts }) }]
      : pages.map((page, i) => ({
          name: pages.length === 1 ? sheet : `${sheet.slice(0, -kind.length)}-${i + 1}${kind}`,
          bytes: pageSvg(page),
        }));
  for (const { name, bytes } of files) {
    const refused = await writeNewFile(io, name, bytes);
    if (refused !== null) return refused;
  }
  return files.map(({ name }) => name);
}
