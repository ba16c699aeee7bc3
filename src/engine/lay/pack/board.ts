import { type PairTable, pairTable } from './pair-table.ts';
import type { Shape } from './shape.ts';
import type { PackProblem, PackRange } from './types.ts';

/**
 * A problem made ready for the search: shapes and variants numbered through, the rest in typed arrays. A variant knows
 * its shape and the places it may take; an item knows its variants, which stand side by side.
 */
export interface Board {
  readonly width: number;
  /** Infinity where the strip has no end. */
  readonly longest: number;
  readonly count: number;
  readonly shapes: readonly Shape[];
  readonly table: PairTable;
  /** Of each item: its first variant and how many. */
  readonly firstVariant: Int32Array;
  readonly variantCount: Int32Array;
  /** 1 for an item that may move. */
  readonly free: Uint8Array;
  /** 1 for an item that the length must reach: all but obstacles. */
  readonly laid: Uint8Array;
  /** Of each variant. */
  readonly shapeOf: Int32Array;
  readonly w: Float64Array;
  readonly h: Float64Array;
  readonly fromX: Float64Array;
  readonly toX: Float64Array;
  readonly stepX: Float64Array;
  readonly fromY: Float64Array;
  readonly toY: Float64Array;
  readonly stepY: Float64Array;
  /** Smallest depth of an overlap that counts: below it two pieces touch. */
  readonly touch: number;
  /** How much an overlap of two shapes counts, by the size of their hulls; shape by shape. */
  readonly penalty: Float64Array;
  readonly area: number;
}

/** Depths below this part of the strip's width are rounding. */
const TOUCH = 1e-9;

/** The problem has been looked through: `prepared` has a shape for every outline, in the order of their first use. */
export function boardOf(problem: PackProblem, prepared: ReadonlyMap<Float64Array, Shape>): Board {
  const shapes = [...prepared.values()];
  const numberOf = new Map([...prepared.keys()].map((outline, number) => [outline, number]));
  const variants = problem.items.flatMap((item) => item.variants);
  const shapeNumbers = Int32Array.from(variants, ({ outline }) => numberOf.get(outline) as number);
  const shape = (g: number): Shape => shapes[shapeNumbers[g] as number] as Shape;
  const w = Float64Array.from(variants, (_, g) => shape(g).width);
  const h = Float64Array.from(variants, (_, g) => shape(g).height);
  const longest = problem.longest ?? Number.POSITIVE_INFINITY;
  const range = (given: PackRange | undefined, most: number): Required<PackRange> => ({
    from: Math.max(0, given?.from ?? 0),
    to: Math.max(Math.min(given?.to ?? most, most), Math.max(0, given?.from ?? 0)),
    step: given?.step ?? 0,
  });
  const xs = variants.map(({ x }, g) => range(x, longest - (w[g] as number)));
  const ys = variants.map(({ y }, g) => range(y, problem.width - (h[g] as number)));
  const firstVariant = new Int32Array(problem.items.length);
  problem.items.reduce((first, item, i) => {
    firstVariant[i] = first;
    return first + item.variants.length;
  }, 0);
  return {
    width: problem.width,
    longest,
    count: problem.items.length,
    shapes,
    table: pairTable(shapes),
    firstVariant,
    variantCount: Int32Array.from(problem.items, (item) => item.variants.length),
    free: Uint8Array.from(problem.items, (item) => (item.fixed === undefined ? 1 : 0)),
    laid: Uint8Array.from(problem.items, (item) => (item.obstacle === true ? 0 : 1)),
    shapeOf: shapeNumbers,
    w,
    h,
    fromX: Float64Array.from(xs, ({ from }) => from),
    toX: Float64Array.from(xs, ({ to }) => to),
    stepX: Float64Array.from(xs, ({ step }) => step),
    fromY: Float64Array.from(ys, ({ from }) => from),
    toY: Float64Array.from(ys, ({ to }) => to),
    stepY: Float64Array.from(ys, ({ step }) => step),
    touch: TOUCH * problem.width,
    penalty: penalties(shapes),
    area: problem.items.reduce((sum, item, i) => {
      const moves = item.fixed === undefined ? 1 : 0;
      return sum + moves * shape(firstVariant[i] as number).area;
    }, 0),
  };
}

function penalties(shapes: readonly Shape[]): Float64Array {
  const table = new Float64Array(shapes.length * shapes.length);
  const roots = shapes.map((shape) => Math.sqrt(Math.sqrt(shape.hullArea)));
  const mean = roots.reduce((sum, root) => sum + root, 0) / Math.max(1, roots.length);
  roots.forEach((a, i) => {
    roots.forEach((b, j) => {
      table[i * shapes.length + j] = (a * b) / (mean * mean);
    });
  });
  return table;
}
