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

/** The side of the printed square, mm. */
const TRUE_SIDE = 100;

export type Side = 'across' | 'down';

/** A bare number up to this was meant in centimetres: no printed square is so small. */
const LARGEST_IN_CM = 20;

/** What a side measured, in mm; null where that is not known, or it is just as it should be. */
export function sideOf(square: PaperFile['printerMeasured'], side: Side): number | null {
  if (square === undefined) return null;
  const read = parseLength(square[side], 'cm');
  return read.ok && read.mm !== TRUE_SIDE ? read.mm : null;
}

/**
 * What the square measured, with one side written anew, always with its unit: it is 100 mm whatever the order is in.
 * Undefined when neither side differs from the true square.
 */
export function squareWith(
  square: PaperFile['printerMeasured'],
  side: Side,
  typed: number | undefined,
): PaperFile['printerMeasured'] {
  const mm = typed === undefined ? TRUE_SIDE : typed <= LARGEST_IN_CM ? rounded(typed * 10) : typed;
  const other = sideOf(square, side === 'across' ? 'down' : 'across') ?? TRUE_SIDE;
  if (mm === TRUE_SIDE && other === TRUE_SIDE) return undefined;
  const [own, kept] = [`${mm} mm`, `${other} mm`];
  return side === 'across' ? { across: own, down: kept } : { across: kept, down: own };
}

/** What the next print is drawn by, in hundredths, for a side that measured so. */
export const correction = (mm: number | null): number => rounded((100 * TRUE_SIDE) / (mm ?? TRUE_SIDE));

/** How far a side is off, mm. */
export const sideOff = (mm: number | null): number => (mm === null ? 0 : rounded(Math.abs(mm - TRUE_SIDE)));

/** To a tenth, as fine as a ruler is read. */
const rounded = (n: number): number => Math.round(n * 10) / 10;

/** As many as an order takes. */
const MOST_SIZES = 12;

/** Heights as she writes them, one after another; each is read later, in the units of the order. */
export const heightsIn = (text: string): string[] =>
  text
    .split(/[,;]/)
    .map((height) => height.trim())
    .filter((height) => height !== '')
    .slice(0, MOST_SIZES);
