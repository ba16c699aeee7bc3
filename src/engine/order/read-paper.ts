import { type Paper, type PaperName, type PrinterError, paperOf, printerProblem } from '../sheet/index.ts';
import { centimetres } from '../units/index.ts';
import { fieldProblem, type OrderPlace, type OrderProblem } from './problem.ts';
import type { LengthReader } from './read-lengths.ts';
import type { OrderFile } from './schema.ts';

const FORMATS = {
  A4: 'a4',
  Letter: 'letter',
  A3: 'a3',
  A0: 'a0',
  '36 in roll': 'roll-36',
} as const satisfies Record<NonNullable<OrderFile['paper']>['formats'][number], PaperName>;

/** What the maker calls a format. */
export function formatName({ format }: Paper): string {
  return Object.entries(FORMATS).find(([, name]) => name === format.name)?.[0] ?? format.name;
}

/** Less can't be taped; more only costs paper, mm. */
const OVERLAPS: readonly [number, number] = [5, 40];

/** What the reader takes as a measured test square at all; the sheet room says what can be made up for, mm. */
const SQUARE: readonly [number, number] = [centimetres(1), centimetres(20)];

export interface ReadPaper {
  readonly papers: readonly Paper[];
  readonly printer: PrinterError | null;
  readonly problems: readonly OrderProblem[];
}

/** The paper to print on, A4 where nothing is said, and what the maker's printer makes of the test square. */
export function readPaper(file: OrderFile['paper'], reader: LengthReader): ReadPaper {
  const at = (...path: readonly (string | number)[]): OrderPlace => ({
    child: null,
    path: ['paper', ...path],
  });
  const names = [...new Set(file?.formats ?? (['A4'] as const))];
  const overlap = file?.overlap;
  const papers = names.map((name) => {
    const paper = paperOf(FORMATS[name]);
    return overlap === undefined
      ? paper
      : { ...paper, overlap: reader.length(at('overlap'), overlap, OVERLAPS) };
  });
  const square = file?.printerMeasured;
  if (square === undefined) return { papers, printer: null, problems: [] };
  const printer = {
    across: reader.length(at('printerMeasured', 'across'), square.across, SQUARE),
    down: reader.length(at('printerMeasured', 'down'), square.down, SQUARE),
  };
  if (printer.across === 0 || printer.down === 0) return { papers, printer: null, problems: [] };
  const problem = printerProblem(printer);
  if (problem === null) return { papers, printer, problems: [] };
  const { least, most } = problem.values;
  return {
    papers,
    printer: null,
    problems: [fieldProblem(at('printerMeasured'), 'order.printer-too-far-off', { least, most })],
  };
}
