import { outlineWriter } from './half-planes.ts';
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
  const writer = outlineWriter();
  const turned = shapes.map((): readonly Float64Array[] | null => null);
  const turnedParts = (shape: number): readonly Float64Array[] => {
    const known = turned[shape] ?? (shapes[shape] as Shape).parts.map((part) => part.map((v) => -v));
    turned[shape] = known;
    return known;
  };

  const make = (first: number, second: number): number => {
    const start = used;
    const { parts } = shapes[first] as Shape;
    const others = turnedParts(second);
    let need = 1;
    for (const p of parts) for (const q of others) need += RECORD_HEAD + 1.5 * (p.length + q.length);
    if (used + need > numbers.length) {
      const larger = new Float64Array(Math.max(2 * numbers.length, used + need));
      larger.set(numbers);
      numbers = larger;
    }
    const outlines = parts.length * others.length;
    numbers[used++] = outlines;
    let planes = used + RECORD_HEAD * outlines;
    for (const p of parts) {
      for (const q of others) {
        const end = writer.write(p, q, numbers, used, planes);
        numbers[used + 4] = planes;
        numbers[used + 5] = end;
        used += RECORD_HEAD;
        planes = end;
      }
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
      const start = make(first, second);
      starts[key] = start;
      return start;
    },
  };
}
