import { type Path, type Point, pathBounds, pathLength, pathReverse, pathSplit } from '../geometry/index.ts';
import type { Saying } from '../words/index.ts';
import { outlineOf } from './edges.ts';
import type { ClothRole, Edge, EdgeName, Grain, Notch, Piece, PieceId } from './piece.ts';

/** A point on the outline: this far (mm) along that edge. */
export interface OutlinePlace {
  readonly edge: EdgeName;
  readonly at: number;
}

/** What the part that is cut off is called and cut from. */
export interface CutOff {
  readonly id: PieceId;
  readonly title: Saying;
  readonly cloth: ClothRole;
}

export interface Split {
  /** Keeps the id of the piece that was split. */
  readonly rest: Piece;
  readonly cutOff: Piece;
  /** For each edge of the piece before: the parts that carry it now, in walking order. */
  readonly carriers: Readonly<Record<EdgeName, readonly PieceId[]>>;
}

/** Shorter leftovers of an edge are dropped, mm: nobody can sew them. */
const SHORTEST_EDGE = 0.01;

/**
 * Cuts a piece in two along `line`, which runs from `from` to `to` across the cloth. The part whose outline runs
 * from `to` round to `from` is cut off; both parts keep their edge names and get the edge `lineName`.
 */
export function splitPiece(
  piece: Piece,
  from: OutlinePlace,
  to: OutlinePlace,
  line: Path,
  lineName: EdgeName,
  off: CutOff,
): Split {
  const restRun = runBetween(piece, from, to);
  const offRun = runBetween(piece, to, from);
  const lineEdge = (path: Path): Edge => ({ name: lineName, kind: 'style-line', path });
  const restEdges = [...restRun.edges, lineEdge(pathReverse(line))];
  const offEdges = [...offRun.edges, lineEdge(line)];
  const carriers: Record<EdgeName, PieceId[]> = {};
  for (const edge of piece.edges)
    carriers[edge.name] = carriersOf(edge.name, restRun, offRun, piece.id, off.id);
  return {
    rest: { ...piece, edges: restEdges, notches: restRun.notches, grain: grainWithin(piece, restEdges) },
    cutOff: {
      ...piece,
      id: off.id,
      title: off.title,
      cloth: off.cloth,
      edges: offEdges,
      notches: offRun.notches,
      markings: [],
      grain: grainWithin(piece, offEdges),
    },
    carriers,
  };
}

interface Run {
  readonly edges: readonly Edge[];
  readonly notches: readonly Notch[];
  /** Where on the whole edge this run's part of it begins. */
  readonly begins: Readonly<Record<EdgeName, number>>;
}

/** The outline from one place to another, walking forward, wrapping at the end of the edge list. */
function runBetween(piece: Piece, from: OutlinePlace, to: OutlinePlace): Run {
  const first = piece.edges.findIndex((edge) => edge.name === from.edge);
  const count = piece.edges.length;
  const edges: Edge[] = [];
  const begins: Record<EdgeName, number> = {};
  const take = (edge: Edge, begin: number, end: number): void => {
    if (end - begin < SHORTEST_EDGE) return;
    begins[edge.name] = begin;
    edges.push({ ...edge, path: partOf(edge.path, begin, end) });
  };
  for (let step = 0; step <= count; step++) {
    const edge = piece.edges[(first + step) % count] as Edge;
    const length = pathLength(edge.path);
    const begin = step === 0 ? from.at : 0;
    const endsHere = edge.name === to.edge && (step > 0 || to.at >= from.at);
    take(edge, begin, endsHere ? to.at : length);
    if (endsHere) break;
  }
  const notches = piece.notches.flatMap((notch) => {
    const begin = begins[notch.edge];
    const part = edges.find((edge) => edge.name === notch.edge);
    if (begin === undefined || part === undefined) return [];
    const at = notch.at - begin;
    return at >= 0 && at <= pathLength(part.path) ? [{ ...notch, at }] : [];
  });
  return { edges, notches, begins };
}

function partOf(path: Path, begin: number, end: number): Path {
  const length = pathLength(path);
  const upToEnd = end >= length - SHORTEST_EDGE ? path : pathSplit(path, end)[0];
  const part = begin <= SHORTEST_EDGE || upToEnd === null ? upToEnd : pathSplit(upToEnd, begin)[1];
  if (part === null) throw new Error('A part of an edge was asked for that has no length.');
  return part;
}

function carriersOf(name: EdgeName, rest: Run, off: Run, restId: PieceId, offId: PieceId): PieceId[] {
  const inRest = rest.begins[name];
  const inOff = off.begins[name];
  if (inRest === undefined) return inOff === undefined ? [] : [offId];
  if (inOff === undefined) return [restId];
  return inRest < inOff ? [restId, offId] : [offId, restId];
}

/** Keeps the direction of the grain and moves it into the middle of what is left. */
function grainWithin(piece: Piece, edges: readonly Edge[]): Grain {
  const bounds = pathBounds(outlineOf({ ...piece, edges }));
  return grainThrough(
    { x: (bounds.minX + bounds.maxX) / 2, y: (bounds.minY + bounds.maxY) / 2 },
    (bounds.maxY - bounds.minY) * 0.6,
  );
}

/** A lengthwise grain line of the given length, running up the body through a point. */
export function grainThrough(middle: Point, length: number): Grain {
  return {
    from: { x: middle.x, y: middle.y + length / 2 },
    to: { x: middle.x, y: middle.y - length / 2 },
  };
}
