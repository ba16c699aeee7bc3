import type { Bounds, Point } from '../geometry/index.ts';
import { boxAround } from './runs.ts';
import type { TextMark, TextMeasure } from './scene.ts';
import { ASCENT } from './text.ts';

/** From the baseline down to the foot of the letters, as a multiple of the size. */
const DESCENT = 0.3;

/** The box round lines of text, turned as they are. */
export function wordsBox(lines: readonly TextMark[], measure: TextMeasure): Bounds {
  return boxAround(lines.flatMap((line) => lineCorners(line, measure)));
}

function lineCorners(
  { text, at, size, weight, align, turn }: TextMark,
  measure: TextMeasure,
): readonly Point[] {
  const width = measure.width(text, size, weight);
  const left = -width * { left: 0, centre: 0.5, right: 1 }[align];
  const [cos, sin] = [Math.cos((turn * Math.PI) / 180), Math.sin((turn * Math.PI) / 180)];
  const corner = (u: number, v: number): Point => ({
    x: at.x + u * cos - v * sin,
    y: at.y + u * sin + v * cos,
  });
  const [top, foot] = [-size * ASCENT, size * DESCENT];
  return [corner(left, top), corner(left + width, top), corner(left + width, foot), corner(left, foot)];
}

export function boxHolds(box: Bounds, inner: Bounds): boolean {
  return inner.minX >= box.minX && inner.maxX <= box.maxX && inner.minY >= box.minY && inner.maxY <= box.maxY;
}
