import { formatSellingLength, type LaidStretch, type Lay } from '../lay/index.ts';
import { say } from '../words/index.ts';
import { stretchRows } from './lay-drawing.ts';
import { type ClothCutList, type LayPagesJob, shrinkFor } from './lay-pages.ts';
import { type Paper, printableSize } from './paper-format.ts';
import type { Ink, Page } from './scene.ts';
import { capitalised } from './text.ts';
import { type FlowBlock, flowPages } from './text-pages.ts';

/** The cut list: for each cloth what to buy, the pieces to tick off, and a small picture of the lay. */
export function cutListPages(job: LayPagesJob): readonly Page[] {
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

function clothBlocks(list: ClothCutList, paper: Paper, ink: Ink): readonly FlowBlock[] {
  const { cloth, pieces, lengths } = list;
  const { units } = ink;
  const toBuy = formatSellingLength(list.toBuy, cloth.unit);
  const heading = say('paper.cut-list.buy', { cloth: capitalised(cloth.name), length: toBuy }, units);
  const length = lengths.reduce((sum, { lay }) => sum + lay.length, 0);
  const facts = { width: { mm: cloth.usableWidth }, length: { mm: length } };
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
    ...lengths.flatMap(({ lay }) => lay.stretches.flatMap((stretch) => picture(lay, stretch, paper, ink))),
    { kind: 'paragraph', text: say('paper.cut-list.width', facts, units) },
    ...(shrinks
      ? [{ kind: 'paragraph', text: say('paper.cut-list.shrinkage', { percent }, units) } as const]
      : []),
    { kind: 'table', columns, rows, ticked: true },
  ];
}

/** Most of the page that a small picture takes, mm. */
const SMALL = { one: 65, several: 50 };

function picture(lay: Lay, stretch: LaidStretch, paper: Paper, ink: Ink): readonly FlowBlock[] {
  const { width } = printableSize(paper);
  const shrink = shrinkFor(stretch, width, SMALL);
  return stretchRows({ lay, stretch, offcuts: [], shrink }, width, ink).map(
    ({ marks, height }): FlowBlock => ({ kind: 'figure', height: height + 2, draw: () => marks }),
  );
}
