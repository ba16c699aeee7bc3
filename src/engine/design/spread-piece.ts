import {
  cross,
  curveBetween,
  curveOfLength,
  direction,
  distance,
  dot,
  type Outline,
  outward,
  type Path,
  pathEnd,
  pathEndTangent,
  pathJoin,
  pathLength,
  pathReverse,
  pathRotate,
  pathSlice,
  pathSplit,
  pathStart,
  pathStartTangent,
  pathTranslate,
  scale,
  subtract,
  type Vector,
} from '../geometry/index.ts';
import type { Edge, Marking, Piece } from '../piece/index.ts';
import { markingsApart, type OwnLine } from './own-line.ts';
import type { OwnPlace } from './own-place.ts';
import { pullEnd } from './pull-end.ts';

/** An edge that a slash opens: what lies before the opening and what lies beyond it, as the outline is walked. */
export interface OpenedEdge {
  readonly edge: Edge;
  /** Where it was opened, mm from its start. */
  readonly at: number;
  readonly before: Path;
  readonly beyond: Path;
}

/** A piece slashed along a line and spread, its edges in order; those that the slash opened are still open. */
export interface SpreadPiece {
  readonly edges: readonly (Edge | OpenedEdge)[];
  readonly markings: readonly Marking[];
  readonly move: (path: Path) => Path;
  /** Whether the parts lie apart along a fold instead of square to the line. */
  readonly alongFold: boolean;
}

export const isOpened = (edge: Edge | OpenedEdge): edge is OpenedEdge => 'before' in edge;

/**
 * Slashes a piece along a line and spreads the two parts by so many mm: side by side, or hinged where the line ends.
 * The part on the fold stays; without one, the part that comes first on the outline.
 * Side by side they lie apart square to the line, or along the fold where the line meets one, which so stays straight.
 * The line must begin inside an edge; hinged, it may end in a corner, which then stays closed.
 */
export function spreadPiece(
  piece: Piece,
  line: OwnLine,
  way: 'hinged' | 'parallel',
  by: number,
): SpreadPiece {
  const names = piece.edges.map((edge) => edge.name);
  const [first, last] = [line.from, line.to].map(({ edge }) => names.indexOf(edge.name)) as [number, number];
  const between = (i: number): boolean => (first < last ? i > first && i < last : i > first || i < last);
  const hasFold = (lies: (i: number) => boolean): boolean =>
    piece.edges.some((edge, i) => edge.kind === 'fold' && i !== first && i !== last && lies(i));
  // The run from the first place to the second lies on one side of the line, the rest of the outline on the other.
  const runMoves = !hasFold(between) || hasFold((i) => !between(i));
  const move = opening(line, way, runMoves ? by : -by);
  const inRun = (path: Path): Path => (runMoves ? move(path) : path);
  const inRest = (path: Path): Path => (runMoves ? path : move(path));
  const opened = ({ edge, at, length }: OwnPlace, i: number): Edge | OpenedEdge => {
    const [start, end] = i === first ? [inRest, inRun] : [inRun, inRest];
    if (at <= 0) return { ...edge, path: end(edge.path) };
    if (at >= length) return { ...edge, path: start(edge.path) };
    const [before, beyond] = pathSplit(edge.path, at);
    if (before === null || beyond === null) throw new Error('A place inside an edge parts it in two.');
    return { edge, at, before: start(before), beyond: end(beyond) };
  };
  const edges = piece.edges.map((edge, i) => {
    if (i === first) return opened(line.from, i);
    if (i === last) return opened(line.to, i);
    return { ...edge, path: between(i) ? inRun(edge.path) : inRest(edge.path) };
  });
  const [inside, outside] = markingsApart(piece.markings, line.path, runOutline(piece, line, first, last));
  const moved = (marking: Marking): Marking => ({ ...marking, path: move(marking.path) });
  return {
    edges,
    markings: runMoves ? [...inside.map(moved), ...outside] : [...inside, ...outside.map(moved)],
    move,
    alongFold: way === 'parallel' && foldAt(line) !== null,
  };
}

/** The direction of the fold that a line ends on; null where it ends on none. */
function foldAt({ from, to }: OwnLine): Vector | null {
  const fold = [from, to].find(({ edge }) => edge.kind === 'fold')?.edge.path;
  return fold === undefined ? null : pathStartTangent(fold);
}

/** How the moving part moves; `by` is less than nothing for the part that the run does not belong to. */
function opening(line: OwnLine, way: 'hinged' | 'parallel', by: number): (path: Path) => Path {
  const [from, hinge] = [pathStart(line.path), pathEnd(line.path)];
  if (way === 'parallel') {
    const square = outward(direction(from, hinge));
    const fold = foldAt(line);
    const along = fold === null ? square : scale(fold, Math.sign(dot(fold, square)));
    const shift = scale(along, by);
    return (moved) => pathTranslate(moved, shift);
  }
  // Seen from the hinge, what lies ahead of the line on its left hand is turned to the left.
  const turn = 2 * Math.asin(Math.max(-1, Math.min(1, by / 2 / distance(from, hinge))));
  return (moved) => pathRotate(moved, turn, hinge);
}

/** The outline of the part that runs from the first place to the second. */
function runOutline(piece: Piece, { from, to, path }: OwnLine, first: number, last: number): Outline {
  const count = piece.edges.length;
  const steps = (last - first + count) % count;
  const run = Array.from({ length: steps + 1 }, (_, i) => {
    const edge = piece.edges[(first + i) % count];
    if (edge === undefined) throw new Error('A run stays within the outline.');
    const [start, end] = [i === 0 ? from.at : 0, i === steps ? to.at : pathLength(edge.path)];
    return end - start > 1e-6 ? [pathSlice(edge.path, start, end)] : [];
  }).flat();
  return pathJoin(...(run as [Path, ...Path[]]), pathReverse(path));
}

/** How far beside an opening an edge is drawn again, mm. */
const BLEND = 25;
/** Parts that run on into each other closer than this are not turned, radians. */
const NOT_TURNED = 1e-6;

/**
 * The edge drawn across its opening, so that it runs on smoothly. Where its parts only lie apart, the whole edge is
 * drawn out; where one is turned, the edge is drawn again beside the opening; at a hinge it keeps its length.
 */
export function bridged({ edge, before, beyond }: OpenedEdge): Path {
  const [arriving, leaving] = [pathEndTangent(before), pathStartTangent(beyond)];
  if (Math.abs(cross(arriving, leaving)) < NOT_TURNED) {
    const drawn = pullEnd(edge.path, 'start', subtract(pathStart(before), pathStart(edge.path)));
    return pullEnd(drawn, 'end', subtract(pathEnd(beyond), pathEnd(edge.path)));
  }
  const gap = distance(pathEnd(before), pathStart(beyond));
  const [lengthA, lengthB] = [pathLength(before), pathLength(beyond)];
  const reach = Math.min(Math.max(BLEND, gap), lengthA * 0.6, lengthB * 0.6);
  const head = pathSlice(before, 0, lengthA - reach);
  const tail = pathSlice(beyond, reach, lengthB);
  const across = curveBetween(pathEnd(head), pathEndTangent(head), pathStart(tail), pathStartTangent(tail));
  const middle = gap < 1e-6 ? (curveOfLength(across, 2 * reach) ?? across) : across;
  return pathJoin(head, middle, tail);
}
