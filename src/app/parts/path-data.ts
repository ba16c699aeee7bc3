import { type Path, type Point, walkPath } from '../../engine/geometry/index.ts';

const short = (n: number): string => String(Math.round(n * 100) / 100);
const at = (x: number, y: number): string => `${short(x)} ${short(y)}`;

/** The `d` of an SVG path, to a hundredth of a mm. */
export function pathData(path: Path): string {
  let text = '';
  walkPath(path, {
    moveTo: (x, y) => {
      text += `M${at(x, y)}`;
    },
    lineTo: (x, y) => {
      text += `L${at(x, y)}`;
    },
    curveTo: (ax, ay, bx, by, x, y) => {
      text += `C${at(ax, ay)} ${at(bx, by)} ${at(x, y)}`;
    },
    close: () => {
      text += 'Z';
    },
  });
  return text;
}

/** The same of one straight line. */
export const lineData = (from: Point, to: Point): string => `M${at(from.x, from.y)}L${at(to.x, to.y)}`;
