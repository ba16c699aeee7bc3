import type { Bench } from '../construct/index.ts';
import {
  add,
  between,
  cubic,
  direction,
  distance,
  linePath,
  outlineContains,
  outward,
  type Path,
  pathAt,
  pathCrossings,
  pathLength,
  pathOf,
  pathSlice,
  scale,
} from '../geometry/index.ts';
import { type Garment, type Marking, outlineOf, type Piece, type PieceId } from '../piece/index.ts';
import { type Found, found, type OwnPlace, ownPlace, refused } from './own-place.ts';

/** A line across a piece from one place of its outline to another. */
export interface OwnLine {
  readonly piece: Piece;
  readonly from: OwnPlace;
  readonly to: OwnPlace;
  readonly path: Path;
}

/** Both ends of the line as she gives them: an edge and a share of it. */
interface LineEnds {
  readonly piece: PieceId;
  readonly from: string;
  readonly fromShare: number;
  readonly to: string;
  readonly toShare: number;
}

/** Shortest line across a piece, mm: it carries an allowance on both sides. */
const SHORTEST_LINE = 20;
/** A crossing this near to an end of the line is the end itself, mm. */
const CLEAR_OF_ENDS = 0.5;

/**
 * The line across a piece between two places of different edges; `bow` is how far its middle is pushed out of the
 * straight, mm, to the left hand of who walks it. Refuses one that does not lie on the piece all the way.
 */
export function ownLine(garment: Garment, bench: Bench, ends: LineEnds, bow = 0): Found<OwnLine> {
  const from = ownPlace(garment, bench, [ends.piece, ends.from], ends.fromShare);
  if (!from.ok) return from;
  const to = ownPlace(garment, bench, [ends.piece, ends.to], ends.toShare);
  if (!to.ok) return to;
  const { piece } = from.found;
  const [a, b] = [from.found.point, to.found.point];
  if (ends.from === ends.to || distance(a, b) < SHORTEST_LINE)
    return refused('own.line-too-short', { piece: piece.title });
  // The middle of a cubic lies three quarters of the way out to handles that are level with each other.
  const push = scale(outward(direction(a, b)), (bow * 4) / 3);
  const path =
    bow === 0
      ? linePath(a, b)
      : pathOf(cubic(a, add(between(a, b, 1 / 3), push), add(between(a, b, 2 / 3), push), b));
  return liesOn(piece, path)
    ? found({ piece, from: from.found, to: to.found, path })
    : refused('own.line-leaves', { piece: piece.title });
}

/** True where the line touches the outline at its own two ends only, and is inside in between. */
function liesOn(piece: Piece, path: Path): boolean {
  const length = pathLength(path);
  const crosses = piece.edges.some((edge) =>
    pathCrossings(path, edge.path).some(({ atA }) => atA > CLEAR_OF_ENDS && atA < length - CLEAR_OF_ENDS),
  );
  return !crosses && outlineContains(outlineOf(piece), pathAt(path, length / 2).point);
}

/** The parts of a piece's markings on either side of a line: those inside the outline first, then the others. */
export function markingsApart(
  markings: readonly Marking[],
  line: Path,
  inside: Path,
): readonly [readonly Marking[], readonly Marking[]] {
  const parts = markings.flatMap((marking) => {
    const length = pathLength(marking.path);
    const cuts = pathCrossings(marking.path, line).map(({ atA }) => atA);
    const stops = [0, ...cuts.toSorted((a, b) => a - b), length];
    return stops.slice(1).flatMap((stop, i) => {
      const start = stops[i] ?? 0;
      if (stop - start < CLEAR_OF_ENDS) return length < CLEAR_OF_ENDS && i === 0 ? [marking] : [];
      return [cuts.length === 0 ? marking : { ...marking, path: pathSlice(marking.path, start, stop) }];
    });
  });
  const isInside = ({ path }: Marking): boolean =>
    outlineContains(inside, pathAt(path, pathLength(path) / 2).point);
  return [parts.filter(isInside), parts.filter((part) => !isInside(part))];
}
