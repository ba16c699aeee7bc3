import { type Bench, type Place, place } from '../construct/index.ts';
import {
  curveBetween,
  curveThrough,
  direction,
  distance,
  dot,
  linePath,
  outward,
  type Path,
  type Point,
  pathAt,
  pathEnd,
  pathEndTangent,
  pathJoin,
  pathLength,
  pathNearest,
  pathOf,
  pathSlice,
  pathStartTangent,
  scale,
  subtract,
  type Vector,
} from '../geometry/index.ts';
import { edgeEnd, edgeOf, edgeStart, type Piece } from '../piece/index.ts';
import type { DropShoulderValues } from './drop-shoulder-params.ts';

/** The outer edge of a drop shoulder, ready to be drawn once the overarm's direction is known. */
export interface OuterEdge {
  /** How far down the side seam the new underarm lies, mm. */
  readonly lowered: number;
  /** Direction in which the edge leaves its top, or null where it follows the overarm. */
  readonly leaving: Vector | null;
  /** Where a cap turns back to the underarm; null for the other finishes. */
  readonly corner: Point | null;
  /** False where front and back meet in a point at the underarm. */
  readonly runsThrough: boolean;
  readonly drawFrom: (overarmArrives: Vector) => Path;
}

const DOWN: Vector = { x: 0, y: 1 };
const INWARD: Vector = { x: -1, y: 0 };

export function drawOuterEdge(bench: Bench, piece: Piece, top: Place, values: DropShoulderValues): OuterEdge {
  switch (values.finish) {
    case 'cap-pointed':
    case 'cap-rounded':
      return capEdge(bench, piece, top, values);
    case 'short':
      return shortSleeveEdge(bench, piece, top, values);
    case 'straight':
      return straightEdge(bench, piece, top, values);
  }
}

/** The new underarm, a distance down the side seam. */
function lowerUnderarm(bench: Bench, piece: Piece, by: number): Place {
  const underarm = place('place.underarm', edgeStart(piece, 'side'));
  const side = edgeOf(piece, 'side').path;
  const straight = pathEnd(pathOf(side.segments[0]));
  // A side seam that runs on below the waist bends there; the underarm follows it.
  if (distance(underarm.at, straight) < by)
    return bench.start('drop-shoulder.place.sleeve-underarm', pathAt(side, bench.rounded(by)).point);
  return bench
    .from(underarm)
    .toward(place('place.waist-side', straight), by, 'drop-shoulder.place.sleeve-underarm');
}

/** Square off the side seam where the new underarm lies. */
const offSide = (piece: Piece, lowered: number): Vector =>
  outward(pathAt(edgeOf(piece, 'side').path, lowered).tangent);

/**
 * Least gap between the underside of a cap and the underarm or the side seam, mm, that can be cut into and sewn
 * (common practice, no source).
 */
export const LEAST_GAP = 12;

/** How far outside the side seam a point lies, mm; negative where it lies on the cloth of the bodice. */
export function clearOfSide(side: Path, point: Point): number {
  const near = pathNearest(side, point);
  const off = subtract(point, near.point);
  return near.distance * Math.sign(dot(off, outward(pathAt(side, near.at).tangent)));
}

/**
 * Down from the top as far as the fall, then back to the armhole; the lower corner pointed or rounded off. Where
 * the underarm lies low enough, the edge turns under the cap and meets the side seam square, so that front and
 * back run through; else it runs straight to the underarm and makes a point there.
 */
function capEdge(bench: Bench, piece: Piece, top: Place, values: DropShoulderValues): OuterEdge {
  const corner = bench.from(top).down(values.fall, 'drop-shoulder.place.sleeve-corner');
  const underarm = lowerUnderarm(bench, piece, values.lowerUnderarm);
  const gap = underarm.at.y - corner.at.y;
  const draw = (overarmArrives: Vector): Path => {
    const down = curveBetween(top.at, scale(outward(overarmArrives), -1), corner.at, DOWN);
    const back =
      gap >= LEAST_GAP
        ? turnUnder(corner.at, underarm.at, offSide(piece, values.lowerUnderarm))
        : linePath(corner.at, underarm.at);
    return values.finish === 'cap-rounded' ? roundCorner(down, back) : pathJoin(down, back);
  };
  return {
    lowered: bench.rounded(values.lowerUnderarm),
    leaving: null,
    corner: corner.at,
    runsThrough: gap >= LEAST_GAP,
    drawFrom: draw,
  };
}

/** Level back under the cap, round a turn just inside the side line, and out to the underarm. */
function turnUnder(corner: Point, underarm: Point, arriving: Vector): Path {
  const gap = underarm.y - corner.y;
  const turn = { x: underarm.x - Math.min(gap * 0.6, 14), y: underarm.y - Math.min(gap * 0.5, 22) };
  return pathJoin(curveBetween(corner, INWARD, turn, DOWN), curveBetween(turn, DOWN, underarm, arriving));
}

/** How much of the shorter leg a rounded corner uses up. */
const ROUNDED_SHARE = 0.7;

function roundCorner(down: Path, back: Path): Path {
  const used = Math.min(pathLength(down), pathLength(back)) * ROUNDED_SHARE;
  const upTo = pathSlice(down, 0, pathLength(down) - used);
  const onFrom = pathSlice(back, used, pathLength(back));
  const end = pathAt(upTo, pathLength(upTo));
  const start = pathAt(onFrom, 0);
  return pathJoin(
    upTo,
    curveBetween(end.point, pathEndTangent(upTo), start.point, pathStartTangent(onFrom)),
    onFrom,
  );
}

/** Where an armhole turns out to the side: this far inside the side line and above it, as shares of its depth. */
const TURN = { inside: 0.1, above: 0.22 } as const;

/**
 * The outer edge is shaped in and down, then the block's straight armhole depth is laid off again from there;
 * the opening is hollowed at its middle and turns out to the side seam at the new level.
 */
function shortSleeveEdge(bench: Bench, piece: Piece, top: Place, values: DropShoulderValues): OuterEdge {
  const depth = edgeStart(piece, 'side').y - edgeStart(piece, 'armhole').y;
  const inFrom = bench.from(top).inward(values.shapeIn, 'drop-shoulder.place.sleeve-in');
  const turn = bench.from(inFrom).down(values.shapeDown, 'drop-shoulder.place.sleeve-turn');
  const foot = bench.from(turn).down(depth, 'drop-shoulder.place.sleeve-foot');
  const side = edgeOf(piece, 'side').path;
  const [sideTop, sideFoot] = [edgeStart(piece, 'side'), edgeEnd(piece, 'side')];
  const share = (foot.at.y - sideTop.y) / (sideFoot.y - sideTop.y);
  const lowered = bench.rounded(share * pathLength(side));
  const underarm = lowerUnderarm(bench, piece, lowered);
  const half = bench.partWay(turn, foot, 0.5, 'drop-shoulder.place.sleeve-half');
  const hollow = bench.from(half).inward(values.hollow, 'drop-shoulder.place.sleeve-hollow');
  const leaving = direction(top.at, turn.at);
  const draw = (): Path => {
    const out = { x: underarm.at.x - depth * TURN.inside, y: underarm.at.y - depth * TURN.above };
    const through =
      hollow.at.x > out.x ? [turn.at, hollow.at, out, underarm.at] : [turn.at, hollow.at, underarm.at];
    return pathJoin(
      linePath(top.at, turn.at),
      curveThrough(through, { start: leaving, end: offSide(piece, lowered) }),
    );
  };
  return { lowered, leaving, corner: null, runsThrough: true, drawFrom: draw };
}

/** A straight line from the top to the underarm, so that a straight strip can be sewn on. */
function straightEdge(bench: Bench, piece: Piece, top: Place, values: DropShoulderValues): OuterEdge {
  const underarm = lowerUnderarm(bench, piece, values.lowerUnderarm);
  return {
    lowered: bench.rounded(values.lowerUnderarm),
    leaving: direction(top.at, underarm.at),
    corner: null,
    runsThrough: false,
    drawFrom: () => linePath(top.at, underarm.at),
  };
}
