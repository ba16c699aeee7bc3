import {
  add,
  curveBetween,
  direction,
  distance,
  linePath,
  outward,
  type Point,
  pathAt,
  pathBounds,
  pathEnd,
  pathJoin,
  pathLength,
  pathStart,
  rotate,
  scale,
  type Vector,
} from '../geometry/index.ts';
import { type Edge, type EdgeName, findEdge, type Garment, outlineOf, type Piece } from '../piece/index.ts';
import type { SketchLine, SketchSide } from './sketch.ts';
import { bodiceOf, bothHalves } from './sketch-bodice.ts';

/** A sleeve hangs this far down from the level, radians: an arm held a little away from the body. */
const HANGS = (40 * Math.PI) / 180;
/** Down the arm, unit. */
export const DOWN: Vector = rotate({ x: 1, y: 0 }, HANGS);

/** A sleeve without underarm seam: from the shoulder tip over the arm and back to the armhole where it ends. */
export function sketchWing(garment: Garment, side: SketchSide, wing: Piece): readonly SketchLine[] {
  const armholes = roundArm(garment, side, 'armhole');
  const [top, low] = [armholes[0], armholes.at(-1)];
  if (top === undefined || low === undefined) return [];
  const bare = garment.seams.find((seam) => seam.name === 'sleeve-cap')?.bareEnd ?? 0;
  const tip = pathStart(top.path);
  const end = pathAt(low.path, Math.max(pathLength(low.path) - bare, 0)).point;
  const outer = add(tip, scale(DOWN, pathBounds(outlineOf(wing)).maxY));
  const over = curveBetween(tip, { x: 1, y: 0 }, outer, rotate(DOWN, HANGS / 2));
  const back = curveBetween(outer, rotate(DOWN, Math.PI / 2), end, { x: -1, y: 0 });
  return bothHalves('outline', pathJoin(over, back));
}

/** A strip or a piece of sleeve that is sewn to the edge round the arm stands out from it, as deep as it is. */
export function sketchArmEdge(garment: Garment, side: SketchSide): readonly SketchLine[] {
  const strip = garment.pieces.find((piece) => piece.id === 'sleeve-strip');
  const sleeve = garment.pieces.find((piece) => piece.id === 'sleeve' && findEdge(piece, 'cap'));
  const end = sleeve === undefined ? undefined : findEdge(sleeve, 'sleeve-edge');
  const edge = armEdge(garment, side);
  if (edge === null) return [];
  if (strip !== undefined) {
    const { maxY } = pathBounds(outlineOf(strip));
    const depth = findEdge(strip, 'foot')?.kind === 'attach' ? maxY / 2 : maxY;
    const join = garment.seams.find((seam) => seam.name === 'frill' && seam.id.startsWith(strip.id))?.join;
    return join?.kind === 'gathered'
      ? [...standingOff(edge, depth, distance(...edge) + depth * 0.5), ...gathers(edge, depth)]
      : standingOff(edge, depth, distance(...edge));
  }
  if (sleeve === undefined || end === undefined) return [];
  return standingOff(edge, pathBounds(outlineOf(sleeve)).maxY, pathLength(end.path) / 2);
}

type ArmEdge = readonly [top: Point, underarm: Point];

/** The edges of this name round the arm, from the shoulder down, however a line has cut the bodice. */
const roundArm = (garment: Garment, side: SketchSide, name: EdgeName): readonly Edge[] =>
  bodiceOf(garment, side)
    .flatMap((piece) => findEdge(piece, name) ?? [])
    .toSorted((a, b) => pathStart(a.path).y - pathStart(b.path).y);

/** The edge round a bare arm, from over the shoulder to the underarm. */
export function armEdge(garment: Garment, side: SketchSide): ArmEdge | null {
  for (const name of ['sleeve-edge', 'armhole']) {
    const edges = roundArm(garment, side, name);
    const [top, low] = [edges[0], edges.at(-1)];
    if (top !== undefined && low !== undefined) return [pathStart(top.path), pathEnd(low.path)];
  }
  return null;
}

/** Square out from the edge to an outer line of this width, set in the middle of it. */
function standingOff([top, underarm]: ArmEdge, depth: number, width: number): readonly SketchLine[] {
  const along = direction(top, underarm);
  const out: Vector = scale(outward(along), depth);
  const more = (width - distance(top, underarm)) / 2;
  const outer = add(add(top, out), scale(along, -more));
  const inner = add(add(underarm, out), scale(along, more));
  return bothHalves('outline', linePath(top, outer, inner, underarm));
}

/** Short strokes from the edge into the frill. */
function gathers([top, underarm]: ArmEdge, depth: number): readonly SketchLine[] {
  const along = direction(top, underarm);
  return [0.15, 0.35, 0.55, 0.75].flatMap((share, i) => {
    const at = add(top, scale(along, share * distance(top, underarm)));
    return bothHalves(
      'gather',
      linePath(at, add(at, scale(outward(along), depth * (i % 2 === 0 ? 0.5 : 0.35)))),
    );
  });
}
