import type { OrderFile } from '../schema.ts';
import { PAPER_KINDS, type PaperKind } from './pay-form.ts';

/**
 * The number of a paper: its kind, the series of the device that gave it, and a count. Two devices, or one whose data
 * were lost, never give the same, as their series differ; in a series the count only goes up. (A sequential number in
 * one or more series is what the European Union asks of an invoice: Directive 2006/112/EC, article 226 (2); from memory.)
 */
export interface PaperNumber {
  readonly kind: PaperKind;
  readonly series: string;
  readonly count: number;
}

const LETTERS = { quote: 'Q', invoice: 'I', receipt: 'R' } as const satisfies Record<PaperKind, string>;

/** `I-KDPR-0007`. */
export const paperNumberText = ({ kind, series, count }: PaperNumber): string =>
  `${LETTERS[kind]}-${series}-${String(count).padStart(4, '0')}`;

/** The number that a text is; null for one of another form, as of a bill that she wrote by hand. */
export function readPaperNumber(text: string): PaperNumber | null {
  const found = /^([QIR])-([A-Z]{4})-(\d{4,12})$/.exec(text);
  const kind = PAPER_KINDS.find((known) => LETTERS[known] === found?.[1]);
  return found === null || kind === undefined
    ? null
    : { kind, series: found[2] ?? '', count: Number(found[3]) };
}

/** The numbers of our form that an order's papers bear. */
export const paperNumbersIn = ({ pay }: OrderFile): readonly PaperNumber[] =>
  (pay?.papers ?? []).flatMap(({ number }) => readPaperNumber(number) ?? []);

/** An order to begin a like one with: what was paid, given out and worked stays with the first. */
export function orderToCopy(file: OrderFile): OrderFile {
  const { pay, ...order } = file;
  if (pay === undefined) return file;
  const { papers: _papers, received: _received, spent: _spent, kept: _kept, ...agreed } = pay;
  return { ...order, pay: agreed };
}
