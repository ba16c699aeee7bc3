import { at } from './outline.ts';
import type { Shape } from './shape.ts';

/**
 * For two shapes, all the offsets (place of the second less place of the first) at which they overlap: a union of
 * convex outlines, one for every two of their convex parts (the Minkowski sum of the one and the other turned round).
 * Each is kept as half planes `nx * dx + ny * dy < c`, so the depth of an overlap, and the way out of it, are a few
 * products; touching is no overlap. Made when two shapes first meet: most never do.
 */
export interface PairTable {
  /** Where the record of the pair of shapes starts in `numbers()`: offsets of the second from the first. */
  readonly recordOf: (first: number, second: number) => number;
  /**
   * A record: count of outlines; then each as minX, minY, maxX, maxY, count of half planes and nx, ny, c of each. Ask again after `recordOf`: it may have grown into another array.
   */
  readonly numbers: () => Float64Array;
}

export const RECORD_HEAD = 6;

export function pairTable(shapes: readonly Shape[]): PairTable {
  let numbers = new Float64Array(1 << 14);
  let used = 0;
  const starts = new Int32Array(shapes.length * shapes.length).fill(-1);

  const make = (first: Shape, second: Shape): number => {
    const start = used;
    const outlines = first.parts.flatMap((p) => second.parts.map((q) => halfPlanes(p, q)));
    const need = 1 + outlines.reduce((sum, { sides }) => sum + RECORD_HEAD + sides.length, 0);
    if (used + need > numbers.length) {
      const larger = new Float64Array(Math.max(2 * numbers.length, used + need));
      larger.set(numbers);
      numbers = larger;
    }
    numbers[used++] = outlines.length;
    let planes = used + RECORD_HEAD * outlines.length;
    for (const { box, sides } of outlines) {
      numbers.set([...box, planes, planes + sides.length], used);
      numbers.set(sides, planes);
      used += RECORD_HEAD;
      planes += sides.length;
    }
    used = planes;
    return start;
  };

  return {
    numbers: () => numbers,
    recordOf: (first, second) => {
      const key = first * shapes.length + second;
      const known = starts[key] as number;
      if (known >= 0) return known;
      const start = make(shapes[first] as Shape, shapes[second] as Shape);
      starts[key] = start;
      return start;
    },
  };
}

interface HalfPlanes {
  readonly box: readonly [number, number, number, number];
  readonly sides: readonly number[];
}

/** All offsets of `q` at which it overlaps `p`: the sum of `p` and `-q`, its sides merged in order of direction. */
function halfPlanes(p: Float64Array, q: Float64Array): HalfPlanes {
  const turned = q.map((v) => -v);
  const sides: { nx: number; ny: number; c: number; length: number }[] = [];
  for (const [own, other] of [
    [p, turned],
    [turned, p],
  ] as const) {
    for (let i = 0, n = own.length; i < n; i += 2) {
      const ax = at(own, i);
      const ay = at(own, i + 1);
      const ex = at(own, (i + 2) % n) - ax;
      const ey = at(own, (i + 3) % n) - ay;
      const length = Math.sqrt(ex * ex + ey * ey);
      if (length === 0) continue;
      const nx = ey / length;
      const ny = -ex / length;
      const same = sides.find((side) => side.nx * nx + side.ny * ny > 1 - 1e-14);
      if (same !== undefined) {
        same.length += length;
        continue;
      }
      sides.push({ nx, ny, c: nx * ax + ny * ay + reach(other, nx, ny), length });
    }
  }
  // The long sides first: they are the likeliest to show that the pieces are apart.
  sides.sort((a, b) => b.length - a.length);
  const pb = boxOf(p);
  const tb = boxOf(turned);
  const box = [pb[0] + tb[0], pb[1] + tb[1], pb[2] + tb[2], pb[3] + tb[3]] as const;
  return { box, sides: sides.flatMap(({ nx, ny, c }) => [nx, ny, c]) };
}

function reach(points: Float64Array, nx: number, ny: number): number {
  let most = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < points.length; i += 2) {
    most = Math.max(most, nx * at(points, i) + ny * at(points, i + 1));
  }
  return most;
}

function boxOf(points: Float64Array): readonly [number, number, number, number] {
  return [-reach(points, -1, 0), -reach(points, 0, -1), reach(points, 1, 0), reach(points, 0, 1)];
}
