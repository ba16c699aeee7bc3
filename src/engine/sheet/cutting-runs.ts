import type { CutPiece } from '../cut/index.ts';
import {
  cross,
  direction,
  type Path,
  type Point,
  pathEnd,
  pathOf,
  pathStart,
  type Segment,
  subtract,
} from '../geometry/index.ts';

/** The cutting line of a piece, parted into what the scissors follow and what lies on the folded cloth. */
export interface CuttingRuns {
  readonly cut: readonly Path[];
  readonly fold: readonly Path[];
}

/** A run this near to the line of the fold lies on it, mm. */
const ON_FOLD = 0.01;

/**
 * Parts the cutting line at its folds: a fold must not look like a line to cut along. The fold is longer than its
 * stitched edge, as the allowances at both ends run out to it, so it is known by its line and not by its ends.
 */
export function cuttingRuns(cut: CutPiece): CuttingRuns {
  const folds = cut.piece.edges.filter((edge) => edge.kind === 'fold').map((edge) => edge.path);
  const liesOnFold = (segment: Segment): boolean =>
    segment.kind === 'line' &&
    folds.some((fold) => nearLine(segment.from, fold) && nearLine(segment.to, fold));
  const runs = { cut: [] as Path[], fold: [] as Path[] };
  let last: 'cut' | 'fold' | null = null;
  for (const segment of cut.cuttingLine.segments) {
    const kind = liesOnFold(segment) ? 'fold' : 'cut';
    const before = last === kind ? runs[kind].pop() : undefined;
    runs[kind].push(before === undefined ? pathOf(segment) : continued(before, segment));
    last = kind;
  }
  return runs;
}

function continued(path: Path, segment: Segment): Path {
  const [first, ...rest] = path.segments;
  return pathOf(first, ...rest, segment);
}

function nearLine(p: Point, fold: Path): boolean {
  const start = pathStart(fold);
  return Math.abs(cross(direction(start, pathEnd(fold)), subtract(p, start))) <= ON_FOLD;
}
