import { mkdir } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import { moneyText } from '../engine/bill/index.ts';
import { tell } from '../engine/design/index.ts';
import {
  buyText,
  type CalendarNames,
  calendarOf,
  daysSaying,
  goodsName,
  hoursOf,
  issuedDocument,
  issuePaper,
  laidOrder,
  type Order,
  PAPER_KINDS,
  type PackDocument,
  type PaperKind,
  type PayList,
  type PayWork,
  payListDocument,
  payOfOrder,
  readWorkroomFile,
  type WorkroomFile,
} from '../engine/order/index.ts';
import { say } from '../engine/words/index.ts';
import { createTextMeasure, writePdf } from '../pdf/index.ts';
import { loadFonts } from '../pdf/load-fonts.ts';
import { EXIT, type ExitCode, type Io } from './io.ts';
import { writeNewFile } from './new-file.ts';
import { openOrder, openText } from './order-file.ts';
import { fileRefusal, orderRefusal, type Refusal, refusal, sayRefusal, type ToldProblem } from './refusal.ts';
import { EXAMPLE_WORKROOM } from './workroom-example.ts';

export interface BillWish {
  readonly workroom?: string;
  readonly papers?: string;
  readonly into?: string;
  readonly number?: string;
  readonly names?: string;
  readonly json: boolean;
}

const LISTS = ['shopping', 'timetable'] as const satisfies readonly PayList[];
const CALENDAR = 'calendar';
const KNOWN: readonly string[] = [...LISTS, ...PAPER_KINDS, CALENDAR];
const CALENDAR_NAMES = ['title', 'letters', 'children'] as const satisfies readonly CalendarNames[];

/** Says what an order takes and costs, and writes the papers that are asked for. */
export async function billCommand(io: Io, file: string, wish: BillWish): Promise<ExitCode> {
  const opened = await openOrder(io, file);
  if (!opened.ok) return sayRefusal(io, opened, wish.json);
  const { order } = opened;
  const room = await openWorkroom(io, order, wish.workroom);
  if (!room.ok) return sayRefusal(io, room, wish.json);
  const wanted = (wish.papers ?? '').split(',').flatMap((paper) => paper.trim() || []);
  const wrong = wishProblem(wanted, wish);
  if (wrong !== null) return sayRefusal(io, wrong, wish.json);

  const laid = laidOrder(order, io.today());
  if (!laid.ok) return sayRefusal(io, orderRefusal(laid.problems, order.units), wish.json);
  const work = payOfOrder(order, laid.laid, room.workroom, io.today());
  const written = await writePapers(io, order, work, room.workroom, wanted, wish);
  if ('ok' in written) return sayRefusal(io, written, wish.json);
  sayWork(io, order, work, written, wish.json);
  return work.bill === null || !work.days.ok || work.problems.length > 0 ? EXIT.stop : EXIT.fine;
}

/** Writes the example of a workroom, or prints it. */
export async function workroomCommand(io: Io, file: string | null, json: boolean): Promise<ExitCode> {
  const text = `${JSON.stringify(EXAMPLE_WORKROOM, null, 2)}\n`;
  if (file === null) {
    io.out(text);
    return EXIT.fine;
  }
  const refused = await writeNewFile(io, file, text);
  if (refused !== null) return sayRefusal(io, refused, json);
  io.out(`${say('cli.pay.wrote', { file }, 'cm')}\n`);
  return EXIT.fine;
}

async function openWorkroom(
  io: Io,
  { units }: Order,
  file: string | undefined,
): Promise<{ readonly ok: true; readonly workroom: WorkroomFile } | Refusal> {
  if (file === undefined) return refusal(EXIT.unusable, 'cli.pay.no-workroom', {});
  const text = await openText(resolve(io.folder, file), file);
  if (typeof text !== 'string') return text;
  const read = readWorkroomFile(text);
  if (read.ok) return read;
  const problems = read.problems.map(({ path, say: what }): ToldProblem => {
    const sentence = path === '' ? tell(what, units) : `${path}: ${tell(what, units)}`;
    return { code: what.key, child: null, path, values: what.values, sentence };
  });
  return { ok: false, exit: EXIT.unusable, problems };
}

function wishProblem(wanted: readonly string[], { number, names }: BillWish): Refusal | null {
  const unknown = wanted.find((paper) => !KNOWN.includes(paper));
  if (unknown !== undefined)
    return refusal(EXIT.unusable, 'cli.pay.unknown-paper', { found: unknown, known: KNOWN.join(', ') });
  if (names !== undefined && !CALENDAR_NAMES.some((known) => known === names))
    return refusal(EXIT.unusable, 'cli.pay.unknown-paper', {
      found: names,
      known: CALENDAR_NAMES.join(', '),
    });
  const numbered = wanted.some((paper) => paper === 'invoice' || paper === 'receipt');
  return numbered && (number ?? '').trim() === '' ? refusal(EXIT.unusable, 'cli.pay.number', {}) : null;
}

/** Writes new files only. */
async function writePapers(
  io: Io,
  order: Order,
  work: PayWork,
  workroom: WorkroomFile,
  wanted: readonly string[],
  wish: BillWish,
): Promise<readonly string[] | Refusal> {
  if (wanted.length === 0) return [];
  const fonts = await loadFonts();
  const today = io.today();
  const tools = { today, measure: createTextMeasure(fonts) };
  const into = wish.into ?? '.';
  try {
    await mkdir(resolve(io.folder, into), { recursive: true });
  } catch (error) {
    return fileRefusal(error, 'write', into);
  }
  const written: string[] = [];
  const write = async (name: string, contents: string | Uint8Array): Promise<Refusal | null> => {
    const path = join(into, name);
    const refused = await writeNewFile(io, path, contents);
    if (refused === null) written.push(path);
    return refused;
  };
  for (const paper of wanted) {
    if (paper === CALENDAR) {
      const names = CALENDAR_NAMES.find((known) => known === wish.names) ?? 'title';
      const text = calendarOf(order, work, names, keyOf(order), today);
      if (text === null) continue;
      const refused = await write('days.ics', text);
      if (refused !== null) return refused;
      continue;
    }
    const list = LISTS.find((known) => known === paper);
    const document =
      list === undefined
        ? issued(paper as PaperKind, order, work, workroom, wish.number ?? '', tools)
        : payListDocument(list, order, work, workroom, tools);
    if ('ok' in document) return document;
    const creationDate = new Date(`${order.madeOn ?? today}T00:00:00Z`);
    const bytes = await writePdf(document.pages, { title: document.title, creationDate, fonts });
    const refused = await write(document.path, bytes);
    if (refused !== null) return refused;
  }
  return written;
}

type Pages = Extract<PackDocument, { kind: 'pages' }>;

function issued(
  kind: PaperKind,
  order: Order,
  work: PayWork,
  workroom: WorkroomFile,
  number: string,
  tools: Parameters<typeof issuedDocument>[3],
): Pages | Refusal {
  const result = issuePaper({ order, work, kind, number, day: tools.today });
  if (result.ok) return issuedDocument(result.paper, order, workroom, tools);
  const { key, values } = result.why;
  const told = { code: key, child: null, path: '', values, sentence: tell(result.why, order.units) };
  return { ok: false, exit: EXIT.unusable, problems: [told] };
}

/** The same for the same order: an entry of a calendar takes the place of its older self. */
function keyOf({ title, dueDay }: Order): string {
  let hash = 0x811c9dc5;
  for (const byte of new TextEncoder().encode(`${title} ${dueDay}`))
    hash = Math.imul(hash ^ byte, 0x01000193);
  return `${dueDay}-${(hash >>> 0).toString(16)}`;
}

function sayWork(io: Io, order: Order, work: PayWork, written: readonly string[], json: boolean): void {
  const { units } = order;
  const problems = [
    ...work.problems.map(({ path, say: what }) => `${path}: ${tell(what, units)}`),
    ...(work.bill === null ? [say('pay.no-rate', {}, units)] : []),
    ...(work.unpriced.length === 0
      ? []
      : [
          say(
            'pay.unpriced',
            { goods: work.unpriced.map(({ what }) => goodsName(what, units)).join('; ') },
            units,
          ),
        ]),
    ...(work.days.ok ? [] : [tell(daysSaying(work.days.problem), units)]),
  ];
  if (json) {
    const shopping = work.shopping.map((row) => ({
      what: goodsName(row.what, units),
      key: row.key,
      buy: buyText(row),
      cost: row.cost === null ? null : moneyText(row.cost),
    }));
    const days = work.days.ok
      ? work.days.days.map(({ kind, from, to, minutes }) => ({ kind, from, to, minutes }))
      : null;
    const { currency, bill } = work;
    io.out(
      `${JSON.stringify({ ok: problems.length === 0, currency, shopping, bill, days, problems, files: written }, null, 2)}\n`,
    );
    return;
  }
  for (const row of work.shopping) {
    const cost = row.cost === null ? '' : say('cli.pay.cost', { amount: moneyText(row.cost) }, units);
    io.out(`${say('cli.pay.buy', { what: goodsName(row.what, units), buy: buyText(row), cost }, units)}\n`);
  }
  if (work.bill !== null) {
    for (const { name, price, minutes } of work.bill.children)
      io.out(
        `${say('cli.pay.child', { child: name, amount: moneyText(price), hours: hoursOf(minutes) }, units)}\n`,
      );
    const { net, total, due } = work.bill.totals;
    const values = {
      net: moneyText(net),
      total: moneyText(total),
      due: moneyText(due),
      deposit: moneyText(work.bill.deposit),
    };
    io.out(`${say('cli.pay.total', values, units)}\n`);
  }
  if (work.earned !== null)
    io.out(
      `${say('cli.pay.earned', { amount: moneyText(work.earned), hours: hoursOf(work.spent) }, units)}\n`,
    );
  for (const file of written) io.out(`${say('cli.pay.wrote', { file }, units)}\n`);
  for (const sentence of problems) io.err(`${sentence}\n`);
}
