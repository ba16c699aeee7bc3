import { at } from './outline.ts';

/** Half planes of one outline while they are gathered: nx, ny, c, length of the side. */
const FIELDS = 4;

/** Writes outlines into arrays of numbers; keeps its scratch room between calls, so that nothing is made anew. */
export interface OutlineWriter {
  /**
   * Of all offsets of `q` at which it overlaps `p`, where `turned` is `q` turned round (the sum of the two outlines): the
   * box from `box` on (four numbers), the half planes nx, ny, c from `planes` on, in the order of the length of their
   * sides; at most three numbers for each corner of both. Returns where they end.
   */
  readonly write: (
    p: Float64Array,
    turned: Float64Array,
    into: Float64Array,
    box: number,
    planes: number,
  ) => number;
}

export function outlineWriter(): OutlineWriter {
  let sides = new Float64Array(64 * FIELDS);
  let order = new Int32Array(64);
  let count = 0;

  const gather = (own: Float64Array, other: Float64Array): void => {
    for (let i = 0, n = own.length; i < n; i += 2) {
      const ax = at(own, i);
      const ay = at(own, i + 1);
      const next = i + 2 === n ? 0 : i + 2;
      const ex = at(own, next) - ax;
      const ey = at(own, next + 1) - ay;
      const length = Math.sqrt(ex * ex + ey * ey);
      if (length === 0) continue;
      const nx = ey / length;
      const ny = -ex / length;
      const same = sameWay(nx, ny);
      if (same >= 0) {
        sides[same + 3] = at(sides, same + 3) + length;
        continue;
      }
      const to = count * FIELDS;
      sides[to] = nx;
      sides[to + 1] = ny;
      sides[to + 2] = nx * ax + ny * ay + reach(other, nx, ny);
      sides[to + 3] = length;
      count++;
    }
  };

  const sameWay = (nx: number, ny: number): number => {
    for (let k = 0, end = count * FIELDS; k < end; k += FIELDS) {
      if (at(sides, k) * nx + at(sides, k + 1) * ny > 1 - 1e-14) return k;
    }
    return -1;
  };

  /** The long sides first: they are the likeliest to show that the pieces are apart. */
  const sort = (): void => {
    for (let i = 0; i < count; i++) {
      const length = at(sides, i * FIELDS + 3);
      let k = i - 1;
      for (; k >= 0 && at(sides, (order[k] as number) * FIELDS + 3) < length; k--)
        order[k + 1] = order[k] as number;
      order[k + 1] = i;
    }
  };

  return {
    write: (p, turned, into, box, planes) => {
      count = 0;
      const most = (p.length + turned.length) / 2;
      if (most > order.length) {
        order = new Int32Array(2 * most);
        sides = new Float64Array(2 * most * FIELDS);
      }
      gather(p, turned);
      gather(turned, p);
      sort();
      into[box] = -reach(p, -1, 0) - reach(turned, -1, 0);
      into[box + 1] = -reach(p, 0, -1) - reach(turned, 0, -1);
      into[box + 2] = reach(p, 1, 0) + reach(turned, 1, 0);
      into[box + 3] = reach(p, 0, 1) + reach(turned, 0, 1);
      let to = planes;
      for (let i = 0; i < count; i++) {
        const k = (order[i] as number) * FIELDS;
        into[to++] = at(sides, k);
        into[to++] = at(sides, k + 1);
        into[to++] = at(sides, k + 2);
      }
      return to;
    },
  };
}

function reach(points: Float64Array, nx: number, ny: number): number {
  let most = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < points.length; i += 2) {
    const far = nx * at(points, i) + ny * at(points, i + 1);
    if (far > most) most = far;
  }
  return most;
}
