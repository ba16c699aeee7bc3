import { MM_PER_INCH } from '../units/index.ts';

/**
 * Which length of one cloth width stands for which of another, in yards: the table on the backs of home patterns and in
 * extension leaflets, usually credited to the New Jersey (Rutgers) Cooperative Extension Service. A rule of thumb for
 * buying: against the first column its areas run from 0.89 to 1.10.
 */
export const WIDTH_TABLE = {
  /** Widths in inches that a column stands for. */
  widths: [
    [35, 36],
    [39, 39],
    [41, 42],
    [44, 45],
    [50, 50],
    [52, 54],
    [58, 60],
    [66, 66],
  ],
  yards: [
    [1.75, 1.5, 1.5, 1.375, 1.25, 1.125, 1, 0.875],
    [2, 1.75, 1.75, 1.625, 1.5, 1.375, 1.25, 1.125],
    [2.25, 2, 2, 1.75, 1.625, 1.5, 1.375, 1.25],
    [2.5, 2.25, 2.25, 2.125, 1.75, 1.75, 1.625, 1.5],
    [2.875, 2.5, 2.5, 2.25, 2, 1.875, 1.75, 1.625],
    [3.125, 2.75, 2.75, 2.5, 2.25, 2, 1.875, 1.75],
    [3.375, 3, 2.875, 2.75, 2.375, 2.25, 2, 1.875],
    [3.75, 3.25, 3.125, 2.875, 2.625, 2.375, 2.25, 2.125],
    [4.25, 3.5, 3.375, 3.125, 2.75, 2.625, 2.375, 2.25],
    [4.5, 3.75, 3.625, 3.375, 3, 2.75, 2.625, 2.5],
    [4.75, 4, 3.875, 3.625, 3.25, 2.875, 2.75, 2.625],
    [5, 4.25, 4.125, 3.875, 3.375, 3.125, 2.875, 2.75],
  ],
} as const;

/** A width is read as that of a column no further off than this, inches: labels and shops differ by so much. */
const WIDTH_SLACK = 1;
const MM_PER_YARD = 36 * MM_PER_INCH;

/**
 * What the table says to buy of cloth `toWidth` wide where `length` of cloth `fromWidth` wide is needed; widths with
 * selvedges, all mm. Null for widths and lengths that the table does not have; what is shorter than the first row by
 * more than one step of it is no length of the table either.
 */
export function lengthByTable(length: number, fromWidth: number, toWidth: number): number | null {
  const [from, to] = [columnOf(fromWidth), columnOf(toWidth)];
  if (from < 0 || to < 0) return null;
  const [first, second] = WIDTH_TABLE.yards;
  const least = first[from] === undefined ? 0 : 2 * first[from] - (second[from] ?? 0);
  if (length < least * MM_PER_YARD - 1e-6) return null;
  const row = WIDTH_TABLE.yards.find((yards) => (yards[from] ?? 0) * MM_PER_YARD >= length - 1e-6);
  const yards = row?.[to];
  return yards === undefined ? null : yards * MM_PER_YARD;
}

function columnOf(width: number): number {
  const inches = width / MM_PER_INCH;
  return WIDTH_TABLE.widths.findIndex(
    ([least, most]) => inches >= least - WIDTH_SLACK && inches <= most + WIDTH_SLACK,
  );
}
