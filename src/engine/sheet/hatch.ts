import { type Bounds, linePath, type Path } from '../geometry/index.ts';
import { HATCHES, type HatchName } from './styles.ts';

/**
 * The lines of a hatch over a box. They are counted from the origin and not from the box, so that the same piece
 * drawn on two pages carries the same lines. The writer clips them to the outline.
 */
export function hatchLines(hatch: HatchName, scale: number, box: Bounds): readonly Path[] {
  const middle = { x: (box.minX + box.maxX) / 2, y: (box.minY + box.maxY) / 2 };
  const reach = Math.hypot(box.maxX - box.minX, box.maxY - box.minY) / 2;
  return HATCHES[hatch].flatMap(({ angle, spacing }) => {
    const radians = (angle * Math.PI) / 180;
    const along = { x: Math.cos(radians), y: Math.sin(radians) };
    const across = { x: -along.y, y: along.x };
    const step = spacing * scale;
    const centre = middle.x * across.x + middle.y * across.y;
    const start = middle.x * along.x + middle.y * along.y;
    const lines: Path[] = [];
    for (let n = Math.ceil((centre - reach) / step); n * step <= centre + reach; n++) {
      const at = (distance: number) => ({
        x: across.x * n * step + along.x * distance,
        y: across.y * n * step + along.y * distance,
      });
      lines.push(linePath(at(start - reach), at(start + reach)));
    }
    return lines;
  });
}
