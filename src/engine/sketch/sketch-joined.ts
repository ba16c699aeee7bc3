import {
  type Affine,
  direction,
  dot,
  linePath,
  midpoint,
  outward,
  type Path,
  type Point,
  pathEnd,
  pathMap,
  pathMirrorLine,
  pathReverse,
  pathStart,
  subtract,
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
  return [kept, { ...piece, ...turnBack(theirs, start, end), notches: [], markings: [] }];
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

/** The other half by itself, turned back; its edges are walked the other way then. */
function turnBack(edges: readonly Edge[], start: Point, end: Point): Pick<Piece, 'id' | 'edges' | 'cutting'> {
  const id = commonName(edges);
  const centre = edges.find((edge) => edge.name === `${id}-centre`);
  // A half without a centre line, as a wrapped front, is folded over at the join.
  const put = (path: Path): Path =>
    pathReverse(
      centre === undefined
        ? pathMirrorLine(path, start, end)
        : pathMap(path, ontoCentre(centre.path, midpoint(start, end))),
    );
  const turned = edges
    .map((edge) => ({ ...edge, name: edge.name.slice(id.length + 1), path: put(edge.path) }))
    .toReversed();
  const join = pathReverse(put(linePath(start, end)));
  return {
    id,
    edges: [...turned, joinLine(pathEnd(join), pathStart(join))],
    cutting: { as: 'pair', copies: 2 },
  };
}

/** Mirrors so that the centre stands on x = 0 with the cloth away from it; the level of the join stays. */
function ontoCentre(centre: Path, join: Point): Affine {
  const foot = pathEnd(centre);
  const down = direction(pathStart(centre), foot);
  // The cloth lies on the right hand of the way, which becomes the way out.
  const out = { x: -outward(down).x, y: -outward(down).y };
  const y = dot(subtract(join, foot), down);
  return {
    a: out.x,
    b: down.x,
    c: out.y,
    d: down.y,
    e: -dot(foot, out),
    f: -dot(foot, down) + join.y - y,
  };
}
