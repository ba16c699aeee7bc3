import {
  type Bounds,
  distance,
  outlineContains,
  type Point,
  pathBounds,
  pathNearest,
} from '../../engine/geometry/index.ts';
import { edgeStart, outlineOf } from '../../engine/piece/index.ts';
import type { LaidPiece } from './lay-pieces.ts';
import { applyTo, inverse } from './motion.ts';
import type { TablePlace } from './table-types.ts';

/** A corner is taken before an edge, an edge before a piece, the piece that lies on top before those below. */
export function touched(laid: readonly LaidPiece[], at: Point, reach: number): TablePlace | null {
  for (const { cut, frame } of laid.toReversed()) {
    const { piece } = cut;
    const here = applyTo(inverse(frame), at);
    if (!near(pathBounds(cut.cuttingLine), here, reach)) continue;
    const corner = piece.edges.find(({ name }) => distance(edgeStart(piece, name), here) <= reach * 0.7);
    if (corner !== undefined) return { kind: 'corner', piece: piece.id, edge: corner.name };
    const edge = piece.edges
      .map(({ name, path }) => ({ name, far: pathNearest(path, here).distance }))
      .toSorted((a, b) => a.far - b.far)[0];
    if (edge !== undefined && edge.far <= reach) return { kind: 'edge', piece: piece.id, edge: edge.name };
    if (outlineContains(outlineOf(piece), here)) return { kind: 'piece', piece: piece.id };
  }
  return null;
}

const near = (box: Bounds, { x, y }: Point, reach: number): boolean =>
  x >= box.minX - reach && x <= box.maxX + reach && y >= box.minY - reach && y <= box.maxY + reach;
