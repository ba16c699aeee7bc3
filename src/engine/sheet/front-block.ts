import { say, type WordKey } from '../words/index.ts';
import { checkLine, checkLineIn, SQUARES_SIDE, testSquares } from './check-scale.ts';
import { type Drawn, shifted } from './drawn.ts';
import type { PrinterError } from './printer.ts';
import type { Ink, Mark } from './scene.ts';
import { tickBox } from './shapes.ts';
import { LINE_SPACING, sizeToFit, textLines, textMark, wrapText } from './text.ts';

/** What the head of a set of sheets says. */
export interface FrontFacts {
  readonly child: string;
  readonly size: string;
  readonly date: string;
  readonly printer: PrinterError | null;
  readonly groups: readonly PieceGroup[];
}

/** Pieces that are listed under one heading. */
export interface PieceGroup {
  readonly heading: string;
  readonly pieces: readonly ListedPiece[];
}

export interface ListedPiece {
  /** As on the map of the pages. */
  readonly number: number;
  readonly title: string;
  readonly cutting: string;
}

const NAME = 9;
const ABOUT = 4;
const CALL = 6;
const STEP = 4;
const GUTTER = 7;
/** From that line to the edge: half its end ticks and a little, mm. */
const LINE_EDGE = 4.5;
/** Room at the right edge for the check line that runs down. */
const SIDE_LINE = 12;

/**
 * The head of a set of sheets: who it is for, the test squares, the check lines both ways, what to do. `alone` says
 * that it is a page of its own, to be printed before the others; `height` is the room for the check line downwards.
 */
export function frontHead(width: number, height: number, alone: boolean, facts: FrontFacts, ink: Ink): Drawn {
  const { measure, units } = ink;
  const marks: Mark[] = [];
  const wide = width - SIDE_LINE;
  let y = NAME;
  const name = sizeToFit(measure, facts.child, 'bold', wide, NAME, 4);
  marks.push(textMark(facts.child, { x: 0, y }, { size: name, weight: 'bold' }));
  y += ABOUT * 1.7;
  const about = [say('paper.front.about', { size: facts.size, date: facts.date }, units)];
  if (facts.printer !== null) {
    about.push(say('paper.front.printer', { across: facts.printer.across, down: facts.printer.down }, units));
  }
  const aboutLines = about.flatMap((text) => wrapText(measure, text, ABOUT, 'regular', wide));
  marks.push(...textLines(aboutLines, { x: 0, y }, { size: ABOUT }));
  y += (aboutLines.length - 1) * ABOUT * LINE_SPACING + CALL * 1.7;
  const call = say(alone ? 'paper.front.first' : 'paper.front.first-sheet', {}, units);
  marks.push(textMark(call, { x: 0, y }, { size: CALL, weight: 'bold' }));
  y += 4;

  const top = y;
  marks.push(...testSquares(0, y, ink));
  const advice = numbered(
    adviceKeys(alone).map((key) => say(key, {}, units)),
    wide - SQUARES_SIDE - GUTTER,
    ink,
  );
  marks.push(shifted(advice.marks, SQUARES_SIDE + GUTTER, y));
  y += Math.max(SQUARES_SIDE, advice.height) + 7;

  if (alone) {
    marks.push(...checkLine(0, y, checkLineIn(wide, units), false, ink));
    marks.push(...checkLine(width - LINE_EDGE, top, checkLineIn(height - top, units), true, ink));
    y += 10;
  }
  return { marks, height: y };
}

function adviceKeys(alone: boolean): readonly WordKey[] {
  if (!alone) return ['paper.front.settings', 'paper.front.measure-sheet', 'paper.front.wrong-sheet'];
  return [
    'paper.front.settings',
    'paper.front.measure',
    'paper.front.right',
    'paper.front.wrong',
    'paper.front.join',
  ];
}

function numbered(sentences: readonly string[], width: number, { measure }: Ink): Drawn {
  const indent = STEP * 1.5;
  const marks: Mark[] = [];
  let y = STEP * 0.8;
  for (const [i, sentence] of sentences.entries()) {
    const lines = wrapText(measure, sentence, STEP, 'regular', width - indent);
    marks.push(textMark(`${i + 1}`, { x: 0, y }, { size: STEP, weight: 'bold' }));
    marks.push(...textLines(lines, { x: indent, y }, { size: STEP }));
    y += lines.length * STEP * LINE_SPACING + STEP * 0.4;
  }
  return { marks, height: y - STEP };
}

const ROW = 10;
const LEAST_ROW = 8.2;
const ROW_TITLE = 4.5;
const ROW_CUTTING = 3.5;
const BOX = 4.5;

/** How many pieces a list of this height can hold at its tightest. */
export function piecesThatFit(height: number, groups: number): number {
  return Math.max(0, Math.floor((height - ROW * groups) / LEAST_ROW));
}

/** The first `count` pieces of the groups, or those after them; groups without pieces are left out. */
export function groupsParted(
  groups: readonly PieceGroup[],
  count: number,
): readonly [first: readonly PieceGroup[], rest: readonly PieceGroup[]] {
  let before = 0;
  const parts = groups.map((group) => {
    const cut = Math.max(0, count - before);
    before += group.pieces.length;
    return [
      { ...group, pieces: group.pieces.slice(0, cut) },
      { ...group, pieces: group.pieces.slice(cut) },
    ] as const;
  });
  const filled = ({ pieces }: PieceGroup): boolean => pieces.length > 0;
  return [parts.map(([first]) => first).filter(filled), parts.map(([, rest]) => rest).filter(filled)];
}

/** The list of pieces to tick off. */
export function pieceList(
  groups: readonly PieceGroup[],
  width: number,
  height: number,
  { measure }: Ink,
): Drawn {
  const count = groups.reduce((sum, { pieces }) => sum + pieces.length, 0);
  const row = Math.max(LEAST_ROW, Math.min(ROW, (height - ROW * groups.length) / Math.max(1, count)));
  const indent = BOX + 2;
  const look = (text: string, room: number, wished: number) =>
    sizeToFit(measure, text, 'bold', room, wished, 2.8);
  const marks: Mark[] = [];
  let y = 0;
  for (const { heading, pieces } of groups) {
    marks.push(
      textMark(
        heading,
        { x: 0, y: y + ROW_TITLE },
        { size: look(heading, width, ROW_TITLE), weight: 'bold' },
      ),
    );
    y += ROW_TITLE + 3;
    for (const piece of pieces) {
      const title = `${piece.number}  ${piece.title}`;
      const room = width - indent;
      const cuttingSize = look(piece.cutting, room, ROW_CUTTING);
      marks.push(
        tickBox({ x: 0.2, y: y + BOX }, BOX),
        textMark(title, { x: indent, y: y + 3.4 }, { size: look(title, room, ROW_TITLE), weight: 'bold' }),
        textMark(piece.cutting, { x: indent, y: y + 7 }, { size: cuttingSize }),
      );
      y += row;
    }
    y += ROW - ROW_TITLE - 3;
  }
  return { marks, height: y };
}
