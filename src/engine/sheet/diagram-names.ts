import { type Bounds, type Path, type Point, pathFlatten } from '../geometry/index.ts';
import { runMeetsBox } from './runs.ts';
import type { Align, Mark, TextMeasure } from './scene.ts';
import { textMark } from './text.ts';

interface NamedPoint {
  readonly name: string;
  readonly at: Point;
}

/** Where a name may stand beside its point, the best first: step from the point in sizes, and how it is aligned. */
const SEATS: readonly { readonly dx: number; readonly dy: number; readonly align: Align }[] = [
  { dx: 0.6, dy: 0.3, align: 'left' },
  { dx: -0.6, dy: 0.3, align: 'right' },
  { dx: 0, dy: -0.6, align: 'centre' },
  { dx: 0, dy: 1.2, align: 'centre' },
  { dx: 0.5, dy: -0.5, align: 'left' },
  { dx: -0.5, dy: -0.5, align: 'right' },
  { dx: 0.5, dy: 1.1, align: 'left' },
  { dx: -0.5, dy: 1.1, align: 'right' },
];

/** What spoils a seat, by how much: leaving the frame is worst, then another name, then a heavy line. */
const OUTSIDE = 100;
const ON_NAME = 20;
const ON_LINE = 3;

/** Writes each name where it spoils least. */
export function placeNames(
  points: readonly NamedPoint[],
  lines: readonly Path[],
  frame: Bounds,
  size: number,
  measure: TextMeasure,
): readonly Mark[] {
  const runs = lines.map((path) => pathFlatten(path, 0.2));
  const taken: Bounds[] = points.map(({ at }) => around(at, 0.8));
  return points.map(({ name, at }) => {
    const width = measure.width(name, size, 'regular');
    const seats = SEATS.map((seat, rank) => {
      const foot = { x: at.x + seat.dx * size, y: at.y + seat.dy * size };
      const left = foot.x - width * { left: 0, centre: 0.5, right: 1 }[seat.align];
      const box = { minX: left, minY: foot.y - size * 0.8, maxX: left + width, maxY: foot.y + size * 0.25 };
      const cost =
        OUTSIDE * overhang(box, frame) +
        ON_NAME * taken.filter((other) => overlap(box, other)).length +
        ON_LINE * runs.filter((run) => runMeetsBox(run, box)).length +
        rank * 0.1;
      return { foot, box, cost, align: seat.align };
    });
    const best = seats.reduce((a, b) => (b.cost < a.cost ? b : a));
    taken.push(best.box);
    return textMark(name, best.foot, { size, align: best.align });
  });
}

const around = ({ x, y }: Point, r: number): Bounds => ({
  minX: x - r,
  minY: y - r,
  maxX: x + r,
  maxY: y + r,
});

function overlap(a: Bounds, b: Bounds): boolean {
  return a.minX < b.maxX && b.minX < a.maxX && a.minY < b.maxY && b.minY < a.maxY;
}

function overhang(box: Bounds, frame: Bounds): number {
  const out = (by: number): number => Math.max(0, by);
  return (
    out(frame.minX - box.minX) +
    out(box.maxX - frame.maxX) +
    out(frame.minY - box.minY) +
    out(box.maxY - frame.maxY)
  );
}
