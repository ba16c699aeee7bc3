import {
  add,
  direction,
  distance,
  outward,
  type Path,
  type Point,
  pathAt,
  pathEnd,
  pathStart,
  scale,
  subtract,
} from '../../engine/geometry/index.ts';
import { edgeOf, type Piece } from '../../engine/piece/index.ts';
import { lineData } from '../parts/path-data.ts';

/** Sizes of the signs on the table, mm of the piece. The paper has signs and sizes of its own, made to be printed. */
const ARROW = 7;
const BRACKET_IN = 14;
const NOTCH = 7;
const NOTCHES_APART = 4;

/** A double arrow along the grain. */
export function grainText({ grain: { from, to } }: Piece): string {
  return lineData(from, to) + headText(from, to) + headText(to, from);
}

/** A bracket whose two arrows point at the edge that lies on the folded cloth. */
export function bracketText(fold: Path): string {
  const [from, a, b, to] = bracketPoints(fold);
  return lineData(a, from) + lineData(a, b) + lineData(b, to) + headText(b, to) + headText(a, from);
}

/** The bracket from arrow to arrow. */
export function bracketPoints(fold: Path): readonly [Point, Point, Point, Point] {
  const [start, end] = [pathStart(fold), pathEnd(fold)];
  const length = distance(start, end);
  const along = direction(start, end);
  const inward = scale(outward(along), -Math.min(BRACKET_IN, length / 6));
  const [from, to] = [add(start, scale(along, length * 0.2)), add(start, scale(along, length * 0.8))];
  return [from, add(from, inward), add(to, inward), to];
}

/** Two short strokes back from the point `to`, for an arrow that comes from `from`. */
function headText(from: Point, to: Point): string {
  const back = scale(direction(to, from), Math.min(ARROW, distance(from, to) / 2));
  const across = scale(outward(back), 0.45);
  return lineData(to, add(to, add(back, across))) + lineData(to, add(to, subtract(back, across)));
}

/** Notches as strokes into the cloth from the stitching line, for when no cutting line is shown. */
export function stitchedNotches(piece: Piece): readonly { readonly from: Point; readonly to: Point }[] {
  return piece.notches.flatMap(({ edge, at, style }) => {
    const { path } = edgeOf(piece, edge);
    const places = style === 'single' ? [at] : [at - NOTCHES_APART / 2, at + NOTCHES_APART / 2];
    return places.map((along) => {
      const { point, tangent } = pathAt(path, Math.max(0, along));
      return { from: point, to: add(point, scale(outward(tangent), -NOTCH)) };
    });
  });
}
