import { linePath, type Point } from '../geometry/index.ts';
import type { Marking } from '../piece/index.ts';

/** A button or a stud: a cross whose arms end at the rim, so that a buttonhole beside it stays readable. */
export function buttonMark({ x, y }: Point, diameter: number): Marking {
  const arm = (diameter / 2) * Math.SQRT1_2;
  const at = (right: number, down: number): Point => ({ x: x + right * arm, y: y + down * arm });
  // In one stroke, out and back over the middle.
  return { kind: 'button', path: linePath(at(-1, -1), at(1, 1), { x, y }, at(1, -1), at(-1, 1)) };
}
