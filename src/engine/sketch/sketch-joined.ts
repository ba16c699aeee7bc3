import {
  type Affine,
  direction,
  linePath,
  midpoint,
  outward,
  type Path,
  type Point,
  pathEnd,
  pathMap,
  pathReverse,
  pathStart,
} from '../geometry/index.ts';
import type { Edge, Piece } from '../piece/index.ts';

/** The edge along which a joined piece is taken apart for the sketch. */
const JOIN = 'join-line';

/**
 * A front and a back that the maker has cut in one still hang in front and behind. For the sketch the part of the
 * other half, whose edges bear its name, is turned back to its own centre line. Any other piece stays as it is.
 */
export function takenApart(piece: Piece): readonly Piece[] {
  const other = piece.id.startsWith('front') ? 'back' : piece.id.startsWith('back') ? 'front' : null;
  if (other === null || piece.edges.every((edge) => !isOf(edge, other))) return [piece];
  // Walked from the first edge of the other half, so that each part is one run.
  const first = piece.edges.findIndex((edge, i) => isOf(edge, other) && !isOf(piece.edges.at(i - 1), other));
  const walked = [...piece.edges.slice(first), ...piece.edges.slice(0, first)];
  const [theirs, own] = [
    walked.filter((edge) => isOf(edge, other)),
    walked.filter((edge) => !isOf(edge, other)),
  ];
  const [from, to] = [theirs[0], theirs.at(-1)];
  if (from === undefined || to === undefined || own.length === 0) return [piece];
  const [start, end] = [pathStart(from.path), pathEnd(to.path)];
  const kept = { ...piece, edges: [...own, joinLine(start, end)] };
  const turned = turnBack(theirs, start, end, commonName(theirs));
  return turned === null ? [kept] : [kept, { ...piece, ...turned, notches: [], markings: [] }];
}

const isOf = (edge: Edge | undefined, half: string): boolean => edge?.name.startsWith(`${half}-`) === true;

/** At the side the dress turns round the body there, so the line is an edge of what is seen. */
const joinLine = (from: Point, to: Point): Edge => ({ name: JOIN, kind: 'side', path: linePath(from, to) });

/** What the names of all these edges begin with: the piece that they were. */
function commonName(edges: readonly Edge[]): string {
  const [first = '', ...rest] = edges.map((edge) => edge.name);
  const words = first.split('-').slice(0, -1);
  while (words.length > 1 && !rest.every((name) => name.startsWith(`${words.join('-')}-`))) words.pop();
  return words.join('-');
}

/** Mirrored so that the centre stands on x = 0 with the cloth away from it; the level of the join stays. */
function turnBack(
  edges: readonly Edge[],
  start: Point,
  end: Point,
  id: string,
): Pick<Piece, 'id' | 'edges' | 'cutting'> | null {
  const centre = edges.find((edge) => edge.name === `${id}-centre`);
  if (centre === undefined) return null;
  const foot = pathEnd(centre.path);
  const down = direction(pathStart(centre.path), foot);
  // The cloth lies on the right hand of the way, which becomes the way out.
  const out = { x: -outward(down).x, y: -outward(down).y };
  const turn = { a: out.x, b: down.x, c: out.y, d: down.y };
  const at = (p: Point, y: number): Point => ({
    x: turn.a * (p.x - foot.x) + turn.c * (p.y - foot.y),
    y: turn.b * (p.x - foot.x) + turn.d * (p.y - foot.y) + y,
  });
  const join = midpoint(start, end);
  const level = join.y - at(join, 0).y;
  const zero = at({ x: 0, y: 0 }, level);
  const map: Affine = { ...turn, e: zero.x, f: zero.y };
  const put = (path: Path): Path => pathReverse(pathMap(path, map));
  const turned = edges
    .map((edge) => ({ ...edge, name: edge.name.slice(id.length + 1), path: put(edge.path) }))
    .toReversed();
  const [last, next] = [turned.at(-1), turned[0]];
  if (last === undefined || next === undefined) return null;
  return {
    id,
    edges: [...turned, joinLine(pathEnd(last.path), pathStart(next.path))],
    cutting: { as: 'pair', copies: 2 },
  };
}
