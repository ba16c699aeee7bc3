import { MM_PER_INCH } from '../units/index.ts';

/** Sheets that come out of a printer. Sizes in mm, upright. */
export interface PaperFormat {
  readonly name: PaperName;
  readonly width: number;
  /** The length of one sheet; on a roll the longest that is printed in one piece. */
  readonly height: number;
  readonly roll: boolean;
  /**
   * Small sheets are joined into a large one, with a page of their own for the test square and the map. On large
   * ones that stands on the sheet itself, and no piece is cut by the edge of a sheet if it fits on one.
   */
  readonly joined: boolean;
}

export type PaperName = 'a4' | 'letter' | 'a3' | 'a0' | 'roll-36';

/**
 * ISO 216 for the A sizes, ANSI/ASME Y14.1 for Letter (8 1/2 x 11 in). A roll is cut at 5 m: a PDF page may be
 * 14,400 units long, 5.08 m at 72 to the inch (ISO 32000-1, annex C), and many printers ignore larger units.
 */
export const PAPER_FORMATS = {
  a4: { name: 'a4', width: 210, height: 297, roll: false, joined: true },
  letter: { name: 'letter', width: 8.5 * MM_PER_INCH, height: 11 * MM_PER_INCH, roll: false, joined: true },
  a3: { name: 'a3', width: 297, height: 420, roll: false, joined: true },
  a0: { name: 'a0', width: 841, height: 1189, roll: false, joined: false },
  'roll-36': { name: 'roll-36', width: 36 * MM_PER_INCH, height: 5000, roll: true, joined: false },
} as const satisfies Record<PaperName, PaperFormat>;

/** The paper as a printer can use it. Lengths in mm. */
export interface Paper {
  readonly format: PaperFormat;
  /** Left free at every edge; nothing that matters may lie in it. */
  readonly margin: number;
  /** What two neighbouring sheets show both. */
  readonly overlap: number;
}

/** Most home printers leave 3 to 6 mm blank; 10 mm is safe on all (common practice, no source). */
export const DEFAULT_MARGIN = 10;
export const DEFAULT_OVERLAP = 10;

export function paperOf(name: PaperName): Paper {
  return { format: PAPER_FORMATS[name], margin: DEFAULT_MARGIN, overlap: DEFAULT_OVERLAP };
}

/** The part of a sheet that can be printed on, as width and height. */
export function printableSize({ format, margin }: Paper): {
  readonly width: number;
  readonly height: number;
} {
  return { width: format.width - 2 * margin, height: format.height - 2 * margin };
}
