import { formatSellingLength } from '../lay/index.ts';
import type { Closing } from '../piece/index.ts';
import { say, type WordKey, type WordValues } from '../words/index.ts';
import { type ChildReport, countOf, mustNotBeCut } from './check-order.ts';
import { clothsToBuy, type LaidCloths } from './lay-cloths.ts';
import type { Order } from './order.ts';

/** What the index of a pack tells of. */
export interface ReadmeFacts {
  readonly order: Order;
  readonly date: string;
  readonly children: readonly ReadmeChild[];
  readonly files: readonly ReadmeFile[];
  readonly cloths: LaidCloths;
}

export interface ReadmeChild {
  readonly report: ChildReport;
  readonly folder: string;
  readonly files: readonly ReadmeFile[];
}

export interface ReadmeFile {
  readonly path: string;
  readonly about: string;
}

/** Lines of the index are no longer than this, so that any window and any printer shows them. */
const LINE = 78;

/** The index page of a pack as plain text: what is what, what to open first, what to buy. */
export function readmeText({ order, date, children, files, cloths }: ReadmeFacts): string {
  const { units } = order;
  const told = (key: WordKey, values: WordValues = {}): string => say(key, values, units);
  const barred = children.filter(({ report }) => mustNotBeCut(report)).map(({ report }) => report.name);
  const counts = (report: ChildReport): string =>
    told('order.readme.counts', {
      stops: countOf(report.findings, 'stop'),
      warnings: countOf(report.findings, 'warn'),
      notes: countOf(report.findings, 'note'),
    });
  const closingLines = ({ dress: { garment } }: ChildReport): readonly string[] => {
    return garment.closing === null ? [] : closingToBuy(garment.closing, told);
  };
  const lines = [
    order.title,
    '='.repeat(Math.min(LINE, [...order.title].length)),
    told('order.readme.days', { due: order.dueDay, made: date }),
    '',
    ...(barred.length === 0
      ? []
      : [...wrapped(told('order.readme.barred', { names: barred.join(', ') }), ''), '']),
    told('order.readme.begin'),
    ...BEGIN.flatMap((key, i) => wrapped(told(key), '   ', `${i + 1}. `)),
    '',
    told('order.readme.party'),
    ...fileLines(files),
    '',
    told('order.readme.buy'),
    ...clothsToBuy(cloths).map(
      ({ cloth, length }) => `  ${cloth.name}: ${formatSellingLength(length, cloth.unit)}`,
    ),
    ...cloths.problems.flatMap(({ key, values }) => wrapped(told(key, values), '  ', '  ')),
    '',
    ...children.flatMap(({ report, folder, files: own }) => [
      report.name,
      '-'.repeat(Math.min(LINE, [...report.name].length)),
      ...wrapped(counts(report), ''),
      ...closingLines(report),
      told('order.readme.folder', { folder }),
      ...fileLines(own),
      '',
    ]),
  ];
  return `${lines.join('\n')}\n`;
}

const BEGIN = [
  'order.readme.begin.checks',
  'order.readme.begin.square',
  'order.readme.begin.print',
  'order.readme.begin.cloth',
] as const satisfies readonly WordKey[];

function fileLines(files: readonly ReadmeFile[]): readonly string[] {
  const wide = Math.max(...files.map(({ path }) => [...path].length));
  return files.flatMap(({ path, about }) => wrapped(about, ' '.repeat(wide + 4), `  ${path.padEnd(wide)}  `));
}

function wrapped(text: string, indent: string, first = indent): readonly string[] {
  const lines: string[] = [];
  let line = first;
  let empty = true;
  for (const word of text.split(' ')) {
    if (!empty && line.length + 1 + word.length > LINE) {
      lines.push(line);
      line = indent;
      empty = true;
    }
    line += empty ? word : ` ${word}`;
    empty = false;
  }
  return [...lines, line];
}

type Told = (key: WordKey, values?: WordValues) => string;

/** What to buy for the opening of one dress. */
function closingToBuy(closing: Closing, told: Told): readonly string[] {
  switch (closing.kind) {
    case 'centred-zip':
    case 'concealed-zip':
    case 'lapped-zip': {
      const { kind, zipLength } = closing;
      const key = closing.toHem === true ? 'order.readme.zip-apart' : 'order.readme.zip';
      return [told(key, { kind: { word: `order.zip.${kind}` }, length: { mm: zipLength } })];
    }
    case 'buttons':
      return [told('order.readme.buttons', { count: closing.count, diameter: { mm: closing.diameter } })];
    case 'keyhole':
      return [told('order.readme.buttons', { count: 1, diameter: { mm: closing.diameter } })];
    case 'lacing':
      return [told('order.readme.lacing', { length: { mm: closing.cordLength } })];
    case 'shoulder-studs':
      return [told('order.readme.studs', { count: 2 * closing.count })];
    case 'ties':
      return [];
  }
}
