import type { CutPiece } from '../cut/index.ts';
import { type Bounds, boundsUnion, linePath, outlineArea, pathBounds } from '../geometry/index.ts';
import type { PieceId } from '../piece/index.ts';
import { say } from '../words/index.ts';
import { shifted } from './drawn.ts';
import { type Paper, printableSize } from './paper-format.ts';
import { type Ink, type Mark, type Page, turnedFrame } from './scene.ts';
import { boxAt, doubleArrow, measureLine, rectanglePath, stroke } from './shapes.ts';
import { SIZE_LINES } from './styles.ts';
import { textMark } from './text.ts';

/** All pieces of one size of a run. */
export interface SizeSet {
  readonly name: string;
  readonly pieces: readonly CutPiece[];
}

export interface NestedSizesJob {
  readonly title: string;
  readonly date: string;
  /** From the smallest to the largest; at most as many as there are kinds of line. */
  readonly sizes: readonly SizeSet[];
  /** A large sheet or a roll. */
  readonly paper: Paper;
  readonly ink: Ink;
}

/** Between two nests, mm. */
const GAP = 12;
const HEAD = 130;
const TITLE = 12;
const TEXT = 5;

/** The same piece in every size, one inside the other on its own centre line and neck level. */
interface Nest {
  readonly id: PieceId;
  readonly title: string;
  readonly cutting: string;
  readonly box: Bounds;
  readonly lines: readonly { readonly size: number; readonly piece: CutPiece }[];
}

/**
 * Sheets with one dress in a run of sizes, nested piece by piece. Sizes are told apart by the kind of their line, not
 * by colour, so that a copy shop keeps them apart. A sheet is full when its paper is; a roll is cut after the last.
 */
export function nestedSizePages(job: NestedSizesJob): readonly Page[] {
  const { paper, ink } = job;
  const room = printableSize(paper);
  const pages: Page[] = [];
  let marks: Mark[] = [...head(job)];
  let [x, y, rowHeight] = [0, HEAD, 0];
  const close = (): void => {
    const height = paper.format.roll ? y + rowHeight + 2 * paper.margin : paper.format.height;
    const name = say('paper.sizes.name', {}, ink.units);
    const inset = {
      kind: 'group',
      clip: null,
      marks,
      frame: { a: 1, b: 0, c: 0, d: 1, e: paper.margin, f: paper.margin },
    } as const;
    pages.push({ name, width: paper.format.width, height, marks: [inset] });
  };
  const [rectangles, shaped] = partition(nestsOf(job.sizes), isRectangular);
  const drawings = [
    ...shaped.map((nest) => nestDrawing(nest, room.width)),
    ...rectangles.map((nest) => sizesTable(nest, job)),
  ];
  for (const { marks: drawn, width, height } of drawings) {
    if (x > 0 && x + width > room.width) [x, y, rowHeight] = [0, y + rowHeight + GAP, 0];
    if (y + height > room.height && y > 0) {
      close();
      [marks, x, y, rowHeight] = [[], 0, 0, 0];
    }
    marks.push(shifted(drawn, x, y));
    x += width + GAP;
    rowHeight = Math.max(rowHeight, height);
  }
  close();
  return pages;
}

function nestsOf(sizes: readonly SizeSet[]): readonly Nest[] {
  const ids = [...new Set(sizes.flatMap((set) => set.pieces.map((cut) => cut.piece.id)))];
  return ids.flatMap((id): readonly Nest[] => {
    const lines = sizes.flatMap(({ pieces }, size) => {
      const piece = pieces.find((cut) => cut.piece.id === id);
      return piece === undefined ? [] : [{ size, piece }];
    });
    const largest = lines.at(-1)?.piece;
    if (largest === undefined) return [];
    const box = lines.map(({ piece }) => pathBounds(piece.cuttingLine)).reduce(boundsUnion);
    return [{ id, title: largest.label.title, cutting: largest.label.cutting, box, lines }];
  });
}

/** A drawing with the room that it takes, from its top left corner. */
interface Drawing {
  readonly marks: readonly Mark[];
  readonly width: number;
  readonly height: number;
}

/** A straight width of skirt is ruled on the cloth by its numbers; a nest of such would only fill the sheet. */
const isRectangular = ({ lines }: Nest): boolean =>
  lines.every(({ piece }) => {
    const { minX, minY, maxX, maxY } = pathBounds(piece.cuttingLine);
    const full = (maxX - minX) * (maxY - minY);
    return full - outlineArea(piece.cuttingLine) < full * 1e-6;
  });

function partition<T>(list: readonly T[], test: (item: T) => boolean): readonly [readonly T[], readonly T[]] {
  return [list.filter(test), list.filter((item) => !test(item))];
}

/** The nest upright, or turned a quarter where only so it fits across the paper. */
function nestDrawing(nest: Nest, across: number): Drawing {
  const { minX, minY, maxX, maxY } = nest.box;
  const [width, height] = [maxX - minX, maxY - minY];
  const marks = drawNest(nest);
  if (width <= across || height > width) {
    return { marks: [shifted(marks, -minX, -minY)], width, height };
  }
  const frame = turnedFrame(1, { x: maxY, y: -minX });
  return { marks: [{ kind: 'group', clip: null, marks, frame }], width: height, height: width };
}

const ROW = 8;
const TABLE_WIDTH = 190;

/** The cut width and length of a straight piece in every size. */
function sizesTable(nest: Nest, { sizes, ink }: NestedSizesJob): Drawing {
  const rows = nest.lines.map(({ size, piece }, i): Mark => {
    const { minX, minY, maxX, maxY } = pathBounds(piece.cuttingLine);
    const values = { size: sizes[size]?.name ?? '', width: { mm: maxX - minX }, length: { mm: maxY - minY } };
    return textMark(say('paper.sizes.row', values, ink.units), { x: 0, y: (i + 3) * ROW }, { size: TEXT });
  });
  const title = textMark(nest.title, { x: 0, y: ROW }, { size: TEXT * 1.3, weight: 'bold' });
  const cutting = textMark(nest.cutting, { x: 0, y: 2 * ROW }, { size: TEXT * 0.8 });
  return { marks: [title, cutting, ...rows], width: TABLE_WIDTH, height: (rows.length + 3) * ROW };
}

function drawNest(nest: Nest): readonly Mark[] {
  const [innermost] = nest.lines;
  const smallest = innermost?.piece;
  const at = smallest?.labelAt ?? { x: 0, y: 0 };
  const grain = smallest?.piece.grain;
  return [
    ...nest.lines.flatMap(({ size, piece }): readonly Mark[] => [
      stroke(piece.cuttingLine, SIZE_LINES[size % SIZE_LINES.length] ?? 'cutting'),
      ...piece.notches.map((notch) => stroke(linePath(notch.from, notch.to), 'measure')),
    ]),
    ...(grain === undefined ? [] : doubleArrow(grain.from, grain.to, 'grain', 4)),
    textMark(nest.title, { x: at.x, y: at.y - TEXT }, { size: TEXT * 1.3, weight: 'bold', align: 'centre' }),
    textMark(nest.cutting, { x: at.x, y: at.y + TEXT }, { size: TEXT * 0.8, align: 'centre' }),
  ];
}

/** Title, test square, and which line is which size. */
function head({ title, date, sizes, ink }: NestedSizesJob): readonly Mark[] {
  const square = boxAt(0, HEAD - 115, 100, 100);
  const told = say('paper.sizes.about', { date }, ink.units);
  return [
    textMark(title, { x: 0, y: TITLE }, { size: TITLE, weight: 'bold' }),
    stroke(rectanglePath(square), 'box'),
    ...measureLine({ x: 0, y: HEAD - 65 }, { x: 100, y: HEAD - 65 }),
    textMark(
      say('paper.sizes.square', {}, ink.units),
      { x: 50, y: HEAD - 68 },
      { size: TEXT * 0.8, align: 'centre' },
    ),
    textMark(told, { x: 110, y: HEAD - 110 }, { size: TEXT }),
    ...sizes.flatMap(({ name }, i): readonly Mark[] => {
      const column = Math.floor(i / 6);
      const [x, y] = [110 + column * 170, HEAD - 98 + (i % 6) * 14];
      return [
        stroke(linePath({ x, y }, { x: x + 60, y }), SIZE_LINES[i % SIZE_LINES.length] ?? 'cutting'),
        textMark(name, { x: x + 66, y: y + TEXT / 3 }, { size: TEXT }),
      ];
    }),
  ];
}
