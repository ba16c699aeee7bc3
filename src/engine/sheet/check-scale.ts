import { MM_PER_INCH, type UnitSystem } from '../units/index.ts';
import { say } from '../words/index.ts';
import { TEST_SQUARE } from './printer.ts';
import type { Ink, Mark } from './scene.ts';
import { boxAt, measureLine, rectanglePath, stroke, strokeLine } from './shapes.ts';
import { textMark } from './text.ts';

/** The outer test square: 4 in, 1.6 mm larger than the grey one. */
const INCH_SQUARE = 4 * MM_PER_INCH;

/** Side of the room that the test squares take, mm. */
export const SQUARES_SIDE = INCH_SQUARE;

/**
 * The test squares, both from the same top left corner: 100 mm as a grey field without a line, so that its edge has
 * no thickness, and 4 in as a thin line round it. Side by side they would not fit a Letter page.
 */
export function testSquares(x: number, y: number, { units }: Ink): readonly Mark[] {
  const caption = (
    key: 'paper.front.square-mm' | 'paper.front.square-inch',
    side: number,
    down: number,
  ): Mark[] => [
    textMark(
      say(key, {}, units),
      { x: x + TEST_SQUARE / 2, y: y + down },
      { size: 4.5, weight: 'bold', align: 'centre' },
    ),
    ...measureLine({ x, y: y + down + 3 }, { x: x + side, y: y + down + 3 }),
  ];
  return [
    { kind: 'fill', outline: rectanglePath(boxAt(x, y, TEST_SQUARE, TEST_SQUARE)), fill: 'tint' },
    stroke(rectanglePath(boxAt(x, y, INCH_SQUARE, INCH_SQUARE)), 'measure'),
    ...caption('paper.front.square-mm', TEST_SQUARE, 78),
    ...caption('paper.front.square-inch', INCH_SQUARE, 92),
  ];
}

export interface CheckLine {
  readonly length: number;
  readonly words: string;
  /** From tick to tick, mm. */
  readonly tick: number;
}

/** The longest check line in whole inches or centimetres that fits into `room` mm, and how it is named. */
export function checkLineIn(room: number, units: UnitSystem): CheckLine {
  const tick = units === 'in' ? MM_PER_INCH : 10;
  const count = Math.floor(room / tick + 1e-9);
  const length = count * tick;
  const words =
    units === 'in'
      ? say(
          'paper.front.check-line-inches',
          { inches: count, millimetres: Math.round(length * 10) / 10 },
          units,
        )
      : say('paper.front.check-line-centimetres', { centimetres: count }, units);
  return { length, words, tick };
}

const END_TICK = 4;
const SMALL_TICK = 1.5;

/** A check line to the right from (x, y), or down if `down`, its length written beside it. */
export function checkLine(
  x: number,
  y: number,
  line: CheckLine,
  down: boolean,
  { units }: Ink,
): readonly Mark[] {
  const at = (along: number, aside: number) =>
    down ? { x: x + aside, y: y + along } : { x: x + along, y: y + aside };
  const ticks: Mark[] = [];
  const count = Math.round(line.length / line.tick);
  for (let i = 0; i <= count; i++) {
    const reach = i === 0 || i === count ? END_TICK : SMALL_TICK;
    const along = (line.length * i) / count;
    ticks.push(strokeLine(at(along, -reach), at(along, i === 0 || i === count ? reach : 0), 'measure'));
  }
  const words = say('paper.front.check-line', { length: line.words }, units);
  return [
    strokeLine(at(0, 0), at(line.length, 0), 'measure'),
    ...ticks,
    textMark(words, at(line.length / 2, down ? -2.5 : 5), { size: 4, align: 'centre', turn: down ? -90 : 0 }),
  ];
}
