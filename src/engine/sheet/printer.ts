import type { Mark, Page } from './scene.ts';

/** What the 100 mm test square measured when it came out of the maker's printer, mm, both ways. */
export interface PrinterError {
  readonly across: number;
  readonly down: number;
}

export interface PrinterProblem {
  readonly code: 'printer.too-far-off';
  readonly values: { readonly least: number; readonly most: number };
}

/** The side of the test square, mm. */
export const TEST_SQUARE = 100;

/**
 * A printer's own error is well under 3 mm on the square; more means that a setting scales the page (a 2 in bar that
 * comes out 1 7/8 in is the usual "fit to page"), and drawing against that would spoil the next print.
 */
const MOST_OFF = 3;

/** What is wrong with a measured square, or null if the sheets can be drawn for that printer. */
export function printerProblem({ across, down }: PrinterError): PrinterProblem | null {
  const isNear = (side: number): boolean => Math.abs(side - TEST_SQUARE) <= MOST_OFF;
  if (isNear(across) && isNear(down)) return null;
  return {
    code: 'printer.too-far-off',
    values: { least: TEST_SQUARE - MOST_OFF, most: TEST_SQUARE + MOST_OFF },
  };
}

/**
 * The page drawn larger or smaller about its middle, so that the printer's error brings it back to true size.
 * What the printer shrinks comes back to where it stood, so nothing leaves the printable area on paper.
 */
export function drawnForPrinter(page: Page, error: PrinterError | null): Page {
  if (error === null) return page;
  const a = TEST_SQUARE / error.across;
  const d = TEST_SQUARE / error.down;
  const frame = { a, b: 0, c: 0, d, e: (page.width / 2) * (1 - a), f: (page.height / 2) * (1 - d) };
  const drawn: Mark = { kind: 'group', frame, clip: null, marks: page.marks };
  return { ...page, marks: [drawn] };
}
