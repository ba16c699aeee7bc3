import type { Board } from './board.ts';
import { RECORD_HEAD } from './pair-table.ts';

/** Where all items lie now, and how much they overlap. The arrays are live: the field changes them. */
export interface Field {
  readonly variant: Int32Array;
  readonly x: Float64Array;
  readonly y: Float64Array;
  /** Loss of each pair, item by item: the root of the bulk of its overlap times what the shapes count for. */
  readonly loss: Float64Array;
  /** What the pair's loss is multiplied by in the search: grows as long as the pair keeps overlapping. */
  readonly weight: Float64Array;
  /** Sum of the losses of one item. */
  readonly lossOf: Float64Array;
  readonly put: (item: number, variant: number, x: number, y: number) => void;
  /** Puts an item and brings its losses up to date. */
  readonly move: (item: number, variant: number, x: number, y: number) => void;
  readonly refresh: () => void;
  readonly total: () => number;
  /** Weighted loss of an item at a place; stops counting above `bound`. */
  readonly cost: (item: number, variant: number, x: number, y: number, bound: number) => number;
  /** The same without bound, and fills `pull`. A loop of its own: `cost` is the hottest of all and needs no slope. */
  readonly costAndPull: (item: number, variant: number, x: number, y: number) => number;
  /** The way downhill of the last `costAndPull`: x, y of the whole; x, y of the step that frees the worst pair. */
  readonly pull: Float64Array;
  readonly evaluations: () => number;
}

export function fieldOf(board: Board): Field {
  const { count: n, table, shapeOf, w, h, touch, penalty, free } = board;
  const shapeCount = board.shapes.length;
  const variant = new Int32Array(n);
  const shape = new Int32Array(n);
  const x = new Float64Array(n);
  const y = new Float64Array(n);
  const right = new Float64Array(n);
  const bottom = new Float64Array(n);
  const loss = new Float64Array(n * n);
  const weight = new Float64Array(n * n).fill(1);
  const lossOf = new Float64Array(n);
  const pull = new Float64Array(4);
  let deepest = 0;
  let wayX = 0;
  let wayY = 0;
  let evaluations = 0;
  let numbers = table.numbers();
  const starts = new Int32Array(shapeCount * shapeCount).fill(-1);

  const recordOf = (key: number, a: number, b: number): number => {
    const start = table.recordOf(a, b);
    starts[key] = start;
    numbers = table.numbers();
    return start;
  };

  /**
   * Bulk of the overlap of shape b, whose place is dx, dy off shape a: depth times extent, added up over their convex parts.
   * `deepest` is the greatest depth, `wayX, wayY` how b gets out of that one.
   */
  const bulk = (a: number, b: number, dx: number, dy: number): number => {
    if (a > b) {
      const back = bulk(b, a, -dx, -dy);
      wayX = -wayX;
      wayY = -wayY;
      return back;
    }
    const key = a * shapeCount + b;
    let p = starts[key] as number;
    if (p < 0) p = recordOf(key, a, b);
    const table = numbers;
    let sum = 0;
    deepest = touch;
    // Whole numbers that come out of an array of fractions: told so, the loop below runs a fifth faster.
    const heads = (p + 1 + RECORD_HEAD * (table[p] as number)) | 0;
    for (p++; p < heads; p += RECORD_HEAD) {
      const minX = table[p] as number;
      const minY = table[p + 1] as number;
      const maxX = table[p + 2] as number;
      const maxY = table[p + 3] as number;
      if (dx > minX && dy > minY && dx < maxX && dy < maxY) {
        let least = Number.POSITIVE_INFINITY;
        let at = 0;
        const end = (table[p + 5] as number) | 0;
        for (let q = (table[p + 4] as number) | 0; q < end; q += 3) {
          const d = (table[q + 2] as number) - (table[q] as number) * dx - (table[q + 1] as number) * dy;
          if (d < least) {
            least = d;
            if (d <= touch) break;
            at = q;
          }
        }
        if (least > touch) {
          const nx = table[at] as number;
          const ny = table[at + 1] as number;
          const ex = Math.min(dx - minX, maxX - dx);
          const ey = Math.min(dy - minY, maxY - dy);
          sum += least * ((ny < 0 ? -ny : ny) * ex + (nx < 0 ? -nx : nx) * ey);
          if (least > deepest) {
            deepest = least;
            wayX = nx;
            wayY = ny;
          }
        }
      }
    }
    return sum;
  };

  const put = (item: number, g: number, px: number, py: number): void => {
    variant[item] = g;
    shape[item] = shapeOf[g] as number;
    x[item] = px;
    y[item] = py;
    right[item] = px + (w[g] as number);
    bottom[item] = py + (h[g] as number);
  };

  const cost = (item: number, g: number, px: number, py: number, bound: number): number => {
    evaluations++;
    const own = shapeOf[g] as number;
    const px1 = px + (w[g] as number);
    const py1 = py + (h[g] as number);
    const row = item * n;
    let sum = 0;
    for (let j = 0; j < n; j++) {
      if (
        (x[j] as number) < px1 &&
        (right[j] as number) > px &&
        (y[j] as number) < py1 &&
        (bottom[j] as number) > py &&
        j !== item
      ) {
        const other = shape[j] as number;
        const size = bulk(other, own, px - (x[j] as number), py - (y[j] as number));
        if (size > 0) {
          sum +=
            Math.sqrt(size) * (weight[row + j] as number) * (penalty[own * shapeCount + other] as number);
          if (sum >= bound) return sum;
        }
      }
    }
    return sum;
  };

  const costAndPull = (item: number, g: number, px: number, py: number): number => {
    evaluations++;
    const own = shapeOf[g] as number;
    const px1 = px + (w[g] as number);
    const py1 = py + (h[g] as number);
    const row = item * n;
    let sum = 0;
    let gx = 0;
    let gy = 0;
    let worst = 0;
    for (let j = 0; j < n; j++) {
      if (
        (x[j] as number) < px1 &&
        (right[j] as number) > px &&
        (y[j] as number) < py1 &&
        (bottom[j] as number) > py &&
        j !== item
      ) {
        const other = shape[j] as number;
        const size = bulk(other, own, px - (x[j] as number), py - (y[j] as number));
        if (size > 0) {
          const rate = (weight[row + j] as number) * (penalty[own * shapeCount + other] as number);
          const m = Math.sqrt(size) * rate;
          sum += m;
          gx += (m / deepest) * wayX;
          gy += (m / deepest) * wayY;
          if (m > worst) {
            worst = m;
            pull[2] = wayX * deepest;
            pull[3] = wayY * deepest;
          }
        }
      }
    }
    pull[0] = gx;
    pull[1] = gy;
    return sum;
  };

  const updateRow = (item: number): void => {
    const own = shape[item] as number;
    let sum = 0;
    for (let j = 0; j < n; j++) {
      let value = 0;
      if (
        j !== item &&
        (free[j] === 1 || free[item] === 1) &&
        (x[j] as number) < (right[item] as number) &&
        (right[j] as number) > (x[item] as number) &&
        (y[j] as number) < (bottom[item] as number) &&
        (bottom[j] as number) > (y[item] as number)
      ) {
        const other = shape[j] as number;
        const dx = (x[item] as number) - (x[j] as number);
        const dy = (y[item] as number) - (y[j] as number);
        const size = bulk(other, own, dx, dy);
        value = size === 0 ? 0 : Math.sqrt(size) * (penalty[own * shapeCount + other] as number);
      }
      const old = loss[item * n + j] as number;
      if (old !== value) {
        loss[item * n + j] = value;
        loss[j * n + item] = value;
        lossOf[j] = rowSum(j);
      }
      sum += value;
    }
    lossOf[item] = sum;
  };

  /** Added up anew each time: sums that are kept by adding and taking away drift. */
  const rowSum = (item: number): number => {
    let sum = 0;
    for (let j = item * n, end = j + n; j < end; j++) sum += loss[j] as number;
    return sum;
  };

  return {
    variant,
    x,
    y,
    loss,
    weight,
    lossOf,
    put,
    move: (item, g, px, py) => {
      put(item, g, px, py);
      updateRow(item);
    },
    refresh: () => {
      loss.fill(0);
      for (let i = 0; i < n; i++) updateRow(i);
    },
    total: () => {
      let sum = 0;
      for (let i = 0; i < n; i++) sum += lossOf[i] as number;
      return sum / 2;
    },
    cost,
    costAndPull,
    pull,
    evaluations: () => evaluations,
  };
}
