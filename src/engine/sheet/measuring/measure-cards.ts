import { say } from '../../words/index.ts';
import type { Drawn } from '../drawn.ts';
import { shifted } from '../drawn.ts';
import type { Ink, Mark } from '../scene.ts';
import { boxAt, rectanglePath, stroke, strokeLine } from '../shapes.ts';
import { ASCENT, capitalised, LINE_SPACING, textLines, textMark, wrapText } from '../text.ts';
import type { FlowBlock } from '../text-pages.ts';
import { measurePicture } from './measure-picture.ts';
import { pictureMarks } from './picture-marks.ts';
import type { TakenId } from './tape-places.ts';

/** What stands on the sheet of one measure. */
export interface MeasureCard {
  readonly id: TakenId;
  readonly name: string;
  readonly how: string;
  /** What is known of it, or what is likely; null where nothing is. */
  readonly known: string | null;
  /** The units in which it may be written down. */
  readonly units: readonly string[];
}

/** Two cards stand side by side, five rows on a page of A4, mm. */
const CARD = { height: 46.5, gap: 4, picture: 35 } as const;
const NAME = 4.2;
const SMALL = 2.75;
const BLANK = { line: 7.4, label: 8, unit: 5 } as const;
const EDGE = 1.5;

/** Cards in two columns, each row kept in one piece. */
export function measureCards(cards: readonly MeasureCard[], ink: Ink): readonly FlowBlock[] {
  const rows = Math.ceil(cards.length / 2);
  return Array.from({ length: rows }, (_, i): FlowBlock => {
    const pair = cards.slice(2 * i, 2 * i + 2);
    return {
      kind: 'figure',
      height: CARD.height + CARD.gap / 2,
      draw: (width) => {
        const each = (width - CARD.gap) / 2;
        return pair.map((card, j) => shifted(cardMarks(card, each, ink), j * (each + CARD.gap), 0));
      },
    };
  });
}

function cardMarks(card: MeasureCard, width: number, ink: Ink): readonly Mark[] {
  const picture = boxAt(EDGE, EDGE, CARD.picture, CARD.height - 2 * EDGE);
  const left = CARD.picture + 3 * EDGE;
  const room = width - left - EDGE;
  const words = cardWords(card, room, ink);
  return [
    stroke(rectanglePath(boxAt(0, 0, width, CARD.height)), 'frame'),
    pictureMarks(measurePicture(card.id), picture),
    shifted(words.marks, left, EDGE),
    shifted(blanks(card.units, room, ink), left, CARD.height - 2 * BLANK.line),
  ];
}

function cardWords({ name, how, known }: MeasureCard, width: number, { measure }: Ink): Drawn {
  const nameLines = wrapText(measure, capitalised(name), NAME, 'bold', width);
  const howLines = wrapText(measure, how, SMALL, 'regular', width);
  const knownLines = known === null ? [] : wrapText(measure, known, SMALL, 'regular', width);
  const step = SMALL * LINE_SPACING;
  const howTop = nameLines.length * NAME * LINE_SPACING;
  const knownTop = howTop + howLines.length * step + 1;
  return {
    marks: [
      ...textLines(nameLines, { x: 0, y: NAME * ASCENT }, { size: NAME, weight: 'bold' }),
      ...textLines(howLines, { x: 0, y: howTop + SMALL * ASCENT }, { size: SMALL }),
      ...textLines(knownLines, { x: 0, y: knownTop + SMALL * ASCENT }, { size: SMALL }),
    ],
    height: knownTop + knownLines.length * step,
  };
}

/** Two lines to write on, each in either unit: everything is measured twice. */
function blanks(units: readonly string[], width: number, ink: Ink): readonly Mark[] {
  const each = (width - BLANK.label) / units.length;
  const numbers = [say('measuring.first', {}, ink.units), say('measuring.second', {}, ink.units)];
  return numbers.flatMap((number, row): Mark[] => {
    const y = (row + 1) * BLANK.line - 2.5;
    return [
      textMark(number, { x: 0, y }, { size: SMALL }),
      ...units.flatMap((unit, i): Mark[] => {
        const x = BLANK.label + i * each;
        const end = x + each - BLANK.unit - 1;
        return [
          strokeLine({ x, y: y + 0.8 }, { x: end, y: y + 0.8 }, 'rule'),
          textMark(unit, { x: end + 1, y }, { size: SMALL }),
        ];
      }),
    ];
  });
}
