import type { CutPiece } from '../cut/index.ts';
import { pathBounds, pathMap } from '../geometry/index.ts';
import { type Cloth, formatSellingLength, type LaidPiece, type RowLay } from '../lay/index.ts';
import { say } from '../words/index.ts';
import { type Paper, printableSize } from './paper-format.ts';
import type { Ink, Mark, Page } from './scene.ts';
import { boxAt, rectanglePath, stroke } from './shapes.ts';
import { capitalised, textMark } from './text.ts';
import { type FlowBlock, flowPages } from './text-pages.ts';

/** All the pieces that are cut from one cloth, of one child or of several, and how they were laid. */
export interface ClothCutList {
  readonly cloth: Cloth;
  readonly pieces: readonly CutPiece[];
  readonly lay: RowLay;
}

export interface CutListJob {
  /** Whose list it is: the child, or the party. */
  readonly title: string;
  readonly date: string;
  readonly cloths: readonly ClothCutList[];
  readonly paper: Paper;
  readonly ink: Ink;
}

/** The cut list: for each cloth what to buy, the pieces to tick off, and a small picture of the rows. */
export function cutListPages(job: CutListJob): readonly Page[] {
  const { title, date, ink, paper } = job;
  const name = say('paper.cut-list.name', {}, ink.units);
  const blocks: FlowBlock[] = [
    { kind: 'title', text: `${name}: ${title}` },
    { kind: 'paragraph', text: say('paper.cut-list.about', { date }, ink.units) },
    { kind: 'paragraph', text: say('paper.cut-list.picture', {}, ink.units) },
    ...job.cloths.flatMap((cloth) => clothBlocks(cloth, paper, ink)),
  ];
  return flowPages(blocks, { paper, ink, name, footer: `${name} - ${title} - ${date}` });
}

function clothBlocks({ cloth, pieces, lay }: ClothCutList, paper: Paper, ink: Ink): readonly FlowBlock[] {
  const { units } = ink;
  const toBuy = formatSellingLength(lay.lengthToBuy, cloth.unit);
  const heading = say('paper.cut-list.buy', { cloth: capitalised(cloth.name), length: toBuy }, units);
  const facts = { width: { mm: cloth.usableWidth }, length: { mm: lay.length } };
  const shrinks = cloth.shrinkage > 0;
  const percent = Math.round(cloth.shrinkage * 1000) / 10;
  const children = new Set(pieces.map((piece) => piece.label.child));
  const column = (key: 'number' | 'piece' | 'child' | 'cutting', share: number) =>
    ({ heading: say(`paper.cut-list.${key}`, {}, units), share, align: 'left' }) as const;
  const columns = [column('number', 1), column('piece', 6), column('cutting', 6)];
  const rows = pieces.map(({ label }, i) => [`${i + 1}`, label.title, label.cutting]);
  if (children.size > 1) {
    columns.push(column('child', 3));
    for (const [i, row] of rows.entries()) row.push(pieces[i]?.label.child ?? '');
  }
  return [
    { kind: 'heading', text: heading },
    layFigure(lay, cloth, printableSize(paper).width),
    { kind: 'paragraph', text: say('paper.cut-list.width', facts, units) },
    ...(shrinks
      ? [{ kind: 'paragraph', text: say('paper.cut-list.shrinkage', { percent }, units) } as const]
      : []),
    { kind: 'table', columns, rows, ticked: true },
  ];
}

/** Most of the page that a picture of the rows takes, mm. */
const TALLEST_PICTURE = 65;
const NUMBER = 3.4;

/** The cloth from the side: its length to the right, so that the heads of the pieces lie on the left. */
function layFigure(lay: RowLay, cloth: Cloth, width: number): FlowBlock {
  const k = Math.min(width / Math.max(1, lay.length), TALLEST_PICTURE / cloth.usableWidth);
  const height = cloth.usableWidth * k;
  const draw = (): readonly Mark[] => [
    { kind: 'fill', outline: rectanglePath(boxAt(0, 0, lay.length * k, height)), fill: 'tint' },
    ...lay.laid.flatMap((piece) => laidMarks(piece, k)),
    stroke(rectanglePath(boxAt(0, 0, lay.length * k, height)), 'box'),
  ];
  return { kind: 'figure', height: height + 3, draw };
}

function laidMarks({ index, shape, at }: LaidPiece, k: number): readonly Mark[] {
  // Along the cloth is x on the page, across it is y.
  const frame = { a: 0, b: k, c: k, d: 0, e: at.y * k, f: at.x * k };
  const outlines = shape.outlines.map((path) => pathMap(path, frame));
  // On one half of a piece that is opened out, so that the fold does not run through the number.
  const box = pathBounds(outlines[0] ?? rectanglePath(boxAt(0, 0, 1, 1)));
  const middle = { x: (box.minX + box.maxX) / 2, y: (box.minY + box.maxY) / 2 + NUMBER * 0.35 };
  return [
    ...outlines.map((outline): Mark => ({ kind: 'fill', outline, fill: 'paper' })),
    ...outlines.map((path) => stroke(path, 'measure')),
    textMark(`${index + 1}`, middle, { size: NUMBER, align: 'centre' }),
  ];
}
