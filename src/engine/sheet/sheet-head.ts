import type { ArrangeSettings } from './arrange.ts';
import { checkLine, checkLineIn } from './check-scale.ts';
import { shifted } from './drawn.ts';
import { type FrontFacts, frontHead, pieceList } from './front-block.ts';
import type { Ink, Mark } from './scene.ts';

/** What stands in the corner of a large sheet, and the blocks that pieces keep off. */
export interface SheetHead {
  readonly marks: readonly Mark[];
  readonly height: number;
  readonly blocks: ArrangeSettings['reserved'];
}

/** The head on a large sheet, mm: as wide as an A4 page, under a check line over the whole width. */
const HEAD_WIDTH = 190;
const HEAD_ROOM = 6;
const LINE_ROOM = 14;

export function sheetHead(facts: FrontFacts, width: number, ink: Ink): SheetHead {
  const head = frontHead(HEAD_WIDTH, 0, false, facts, ink);
  const list = pieceList(facts.groups, HEAD_WIDTH, Number.POSITIVE_INFINITY, ink);
  const height = LINE_ROOM + head.height + list.height;
  return {
    marks: [
      ...checkLine(1, 5, checkLineIn(width - 2, ink.units), false, ink),
      shifted(head.marks, 1, LINE_ROOM),
      shifted(list.marks, 1, LINE_ROOM + head.height),
    ],
    height,
    blocks: [
      { width, height: LINE_ROOM },
      { width: HEAD_WIDTH + HEAD_ROOM, height: height + HEAD_ROOM },
    ],
  };
}
