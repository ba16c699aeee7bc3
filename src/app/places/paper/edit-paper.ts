import type { OrderFile } from '../../../engine/order/index.ts';
import { parseLength } from '../../../engine/units/index.ts';

export type FormatName = NonNullable<OrderFile['paper']>['formats'][number];

/** From the smallest. */
export const FORMATS: readonly FormatName[] = ['A4', 'Letter', 'A3', 'A0', '36 in roll'];

type PaperFile = NonNullable<OrderFile['paper']>;

/** What the order prints on where it says nothing. */
export const formatsOf = (paper: OrderFile['paper']): readonly FormatName[] => paper?.formats ?? ['A4'];

/** The paper of an order that is being changed; written out where it was left to the rule. */
export function paperOfDraft(file: Pick<OrderFile, 'paper'>): PaperFile {
  file.paper ??= { formats: ['A4'] };
  return file.paper;
}

/** Formats with another one to print on: it takes the place of the first, the further ones stay. */
export const withMain = (formats: readonly FormatName[], main: FormatName): FormatName[] => [
  main,
  ...formats.slice(1).filter((format) => format !== main),
];

/** Formats with a further one taken in or out; the first stays. */
export const withFurther = (
  formats: readonly FormatName[],
  format: FormatName,
  on: boolean,
): FormatName[] => {
  const others = formats.filter((one) => one !== format);
  return on ? [...others, format] : others;
};

/** The side of the printed square, as the order holds it where she has not measured that side. */
const TRUE_SIDE = '100 mm';

type Side = 'across' | 'down';

/**
 * What the square measured, with one side written anew. The sides are asked for in centimetres whatever the order is
 * in, since the square is 10 cm; a bare number that would be longer than half a metre was meant in millimetres.
 * Undefined when nothing is left that differs from the true square.
 */
export function squareWith(
  square: PaperFile['printerMeasured'],
  side: Side,
  text: string | undefined,
): PaperFile['printerMeasured'] {
  const other: Side = side === 'across' ? 'down' : 'across';
  const kept = square?.[other] ?? TRUE_SIDE;
  if (text === undefined && kept === TRUE_SIDE) return undefined;
  const written = text === undefined ? TRUE_SIDE : withUnit(text);
  return side === 'across' ? { across: written, down: kept } : { across: kept, down: written };
}

const LONGEST_IN_CM = 50;

function withUnit(text: string): string {
  const plain = text.trim();
  const number = Number(plain.replace(',', '.'));
  if (!Number.isFinite(number) || plain === '') return text;
  return number > LONGEST_IN_CM ? `${plain} mm` : `${plain} cm`;
}

/** How far a side is from 100 mm; null where it can't be read or was not measured. */
export function sideOff(value: string | number | undefined): number | null {
  if (value === undefined || value === TRUE_SIDE) return null;
  const read = parseLength(value, 'cm');
  return read.ok ? Math.abs(read.mm - 100) : null;
}

/** What a side's field shows: nothing while she has not measured it. */
export const shownSide = (value: string | number | undefined): string | number | undefined =>
  value === TRUE_SIDE ? undefined : value;
