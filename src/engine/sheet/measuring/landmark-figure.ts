import { say } from '../../words/index.ts';
import { shifted } from '../drawn.ts';
import type { Ink, Mark } from '../scene.ts';
import { boxAt } from '../shapes.ts';
import { ASCENT, capitalised, LINE_SPACING, textLines, textMark, wrapText } from '../text.ts';
import type { FlowBlock } from '../text-pages.ts';
import { LANDMARKS, type LandmarkId } from './landmarks.ts';
import { landmarkPicture } from './measure-picture.ts';
import { pictureMarks } from './picture-marks.ts';

const HEIGHT = 96;
/** Breadths of the three drawings, and the room before the words, mm. */
const VIEWS = [
  ['front', 46],
  ['back', 46],
  ['side', 27],
] as const;
const GAP = 4;
const NAME = 3.2;
const SMALL = 2.75;
const LETTER_ROOM = 6;

/** The child from three sides with the letters of its landmarks, and what each letter means. */
export function landmarkFigure(ink: Ink): FlowBlock {
  return {
    kind: 'figure',
    height: HEIGHT,
    draw: (width) => {
      let x = 0;
      const pictures = VIEWS.map(([view, breadth]) => {
        const drawn = pictureMarks(landmarkPicture(view), boxAt(x, 0, breadth, HEIGHT));
        x += breadth + 1;
        return drawn;
      });
      const left = x + GAP;
      return [...pictures, shifted(legend(width - left, ink), left, 2)];
    },
  };
}

function legend(width: number, ink: Ink): readonly Mark[] {
  const { measure, units } = ink;
  const marks: Mark[] = [];
  let y = 0;
  for (const [id, letter] of Object.entries(LANDMARKS) as [LandmarkId, string][]) {
    const name = capitalised(say(`landmark.${id}`, {}, units));
    const room = width - LETTER_ROOM;
    const names = wrapText(measure, name, NAME, 'bold', room);
    const hows = wrapText(measure, say(`landmark.${id}.how`, {}, units), SMALL, 'regular', room);
    marks.push(
      textMark(letter, { x: 0, y: y + NAME * ASCENT }, { size: NAME, weight: 'bold' }),
      ...textLines(names, { x: LETTER_ROOM, y: y + NAME * ASCENT }, { size: NAME, weight: 'bold' }),
    );
    y += names.length * NAME * LINE_SPACING;
    marks.push(...textLines(hows, { x: LETTER_ROOM, y: y + SMALL * ASCENT }, { size: SMALL }));
    y += hows.length * SMALL * LINE_SPACING + 0.8;
  }
  return marks;
}
