import { type Bounds, type Point, pathMap } from '../../geometry/index.ts';
import type { Mark } from '../scene.ts';
import { boxAt, dot, stroke } from '../shapes.ts';
import type { FillName, LineName } from '../styles.ts';
import { textMark } from '../text.ts';
import type { MeasurePicture, PictureLook } from './measure-picture.ts';

const FILLS: Readonly<Partial<Record<PictureLook, FillName>>> = {
  skin: 'paper',
  cloth: 'tint',
  hair: 'shade',
};

const LINES: Readonly<Record<PictureLook, LineName>> = {
  skin: 'body',
  cloth: 'body',
  hair: 'body',
  line: 'body',
  light: 'frame',
  beside: 'box',
  behind: 'tape-behind',
  tape: 'tape',
};

const LETTER = 2.8;
const DOT = 0.75;

/** A picture on paper, as large as fits into the box and in the middle of it. */
export function pictureMarks({ window, parts, letters }: MeasurePicture, box: Bounds): Mark {
  const [width, height] = [window.maxX - window.minX, window.maxY - window.minY];
  const scale = Math.min((box.maxX - box.minX) / width, (box.maxY - box.minY) / height);
  const left = (box.minX + box.maxX - width * scale) / 2;
  const top = (box.minY + box.maxY - height * scale) / 2;
  const e = left - window.minX * scale;
  const f = top - window.minY * scale;
  const frame = { a: scale, b: 0, c: 0, d: scale, e, f };
  const at = ({ x, y }: Point): Point => ({ x: e + x * scale, y: f + y * scale });
  const marks = parts.flatMap(({ look, path }): Mark[] => {
    const placed = pathMap(path, frame);
    const fill = FILLS[look];
    return [
      ...(fill === undefined ? [] : [{ kind: 'fill', outline: placed, fill } as const]),
      stroke(placed, LINES[look]),
    ];
  });
  const lettered = letters.flatMap((one): Mark[] => {
    const place = at(one.at);
    const [x, y] = [place.x + one.aside.x * LETTER, place.y + one.aside.y * LETTER];
    return [
      dot(place, DOT),
      textMark(one.letter, { x, y: y + LETTER * 0.36 }, { size: LETTER, weight: 'bold', align: 'centre' }),
    ];
  });
  return {
    kind: 'group',
    frame: { a: 1, b: 0, c: 0, d: 1, e: 0, f: 0 },
    clip: boxAt(left, top, width * scale, height * scale),
    marks: [...marks, ...lettered],
  };
}
