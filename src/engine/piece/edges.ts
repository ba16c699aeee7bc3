import { type Path, type Point, pathEnd, pathJoin, pathLength, pathStart } from '../geometry/index.ts';
import type { Edge, EdgeName, Piece } from './piece.ts';

export const findEdge = (piece: Piece, name: EdgeName): Edge | undefined =>
  piece.edges.find((edge) => edge.name === name);

/** The named edge. Throws when the piece has none: ask `findEdge` where that can happen. */
export function edgeOf(piece: Piece, name: EdgeName): Edge {
  const edge = findEdge(piece, name);
  if (edge === undefined) throw new Error(`Piece "${piece.id}" has no edge "${name}".`);
  return edge;
}

export const edgeStart = (piece: Piece, name: EdgeName): Point => pathStart(edgeOf(piece, name).path);
export const edgeEnd = (piece: Piece, name: EdgeName): Point => pathEnd(edgeOf(piece, name).path);
export const edgeLength = (piece: Piece, name: EdgeName): number => pathLength(edgeOf(piece, name).path);

/** The closed stitching line of a piece. */
export function outlineOf(piece: Piece): Path {
  const [first, ...rest] = piece.edges.map((edge) => edge.path);
  if (first === undefined) throw new Error(`Piece "${piece.id}" has no edges.`);
  return pathJoin(first, ...rest);
}

/**
 * Puts other edges in the place of one. The new run must start and end where the old one did, or where the
 * neighbours are changed to in the same breath. Notches on the replaced edge stay on an edge of the same name,
 * at the same distance from its start, and go when there is none.
 */
export function replaceEdge(piece: Piece, name: EdgeName, edges: readonly Edge[]): Piece {
  edgeOf(piece, name);
  const kept = new Set([...piece.edges.filter((e) => e.name !== name), ...edges].map((e) => e.name));
  return {
    ...piece,
    edges: piece.edges.flatMap((edge) => (edge.name === name ? edges : [edge])),
    notches: piece.notches.filter((notch) => kept.has(notch.edge)),
  };
}

/** Gives named edges new paths and leaves the rest of the piece alone. */
export function reshape(piece: Piece, paths: Readonly<Record<EdgeName, Path>>): Piece {
  for (const name of Object.keys(paths)) edgeOf(piece, name);
  return {
    ...piece,
    edges: piece.edges.map((edge) => ({ ...edge, path: paths[edge.name] ?? edge.path })),
  };
}
