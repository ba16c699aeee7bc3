import {
  add,
  cubic,
  linePath,
  outward,
  type Point,
  pathAt,
  pathBounds,
  pathEnd,
  pathLength,
  pathOf,
  scale,
} from '../geometry/index.ts';
import { findEdge, type Garment, type Marking } from '../piece/index.ts';
import type { SketchLine, SketchSide } from './sketch.ts';
import { bodiceOf, bothHalves } from './sketch-bodice.ts';
import { circleAt } from './sketch-path.ts';
import { depthOf } from './sketch-strip.ts';

/** Beside the edge of a keyhole, its button lies so far clear of it, mm. */
const CLEAR = 1;

/** What is seen of a closing beside its edges: buttons, cord, loop, press studs. */
export function sketchClosing(garment: Garment, side: SketchSide): readonly SketchLine[] {
  const { closing } = garment;
  if (closing?.kind === 'shoulder-studs') return side === 'front' ? studs(garment) : [];
  if (closing === null || side === 'front') return [];
  switch (closing.kind) {
    case 'buttons':
      return markedAt(garment, 'button').map((at) => opening(circleAt(at, closing.diameter / 2)));
    case 'lacing':
      return cord(markedAt(garment, 'loop'), markReach(garment));
    case 'keyhole':
      return loopAndButton(garment, closing.diameter / 2);
    default:
      return [];
  }
}

const opening = (path: SketchLine['path']): SketchLine => ({ stroke: 'opening', path });

const marksOf = (garment: Garment, kind: Marking['kind']): readonly Marking[] =>
  bodiceOf(garment, 'back').flatMap((piece) => piece.markings.filter((mark) => mark.kind === kind));

/** Where the marks of this kind stand on the back, from the neck down. */
const markedAt = (garment: Garment, kind: Marking['kind']): readonly Point[] =>
  marksOf(garment, kind)
    .map((mark) => {
      const box = pathBounds(mark.path);
      return { x: (box.minX + box.maxX) / 2, y: (box.minY + box.maxY) / 2 };
    })
    .toSorted((p, q) => p.y - q.y);

const markReach = (garment: Garment): number =>
  Math.max(0, ...marksOf(garment, 'loop').map((mark) => pathBounds(mark.path).maxX));

/** Laced crosswise: straight over at the first pair of loops, then over from each pair to the next. */
function cord(loops: readonly Point[], reach: number): readonly SketchLine[] {
  const [first] = loops;
  // Edges that a change of the maker's has brought over each other leave no way to lace.
  if (first === undefined || reach === 0) return [];
  const over = { x: reach, y: first.y };
  return [
    opening(linePath({ x: -over.x, y: over.y }, over)),
    ...loops.slice(1).flatMap((to, i) => {
      const from = loops[i] ?? to;
      return bothHalves('opening', linePath({ x: -reach, y: from.y }, { x: reach, y: to.y }));
    }),
  ];
}

/** The button lies left of the opening, right under the neck; the loop reaches round it from the other edge. */
function loopAndButton(garment: Garment, radius: number): readonly SketchLine[] {
  const [keyhole] = bodiceOf(garment, 'back').flatMap((piece) => findEdge(piece, 'keyhole') ?? []);
  if (keyhole === undefined) return [];
  const neck = pathEnd(keyhole.path);
  const at = { x: neck.x - radius - CLEAR, y: neck.y + radius + CLEAR };
  const far = { x: at.x - radius * 1.5, y: at.y };
  const foot = (y: number): Point => ({ x: neck.x + CLEAR, y });
  const [top, low] = [foot(at.y - radius * 0.8), foot(at.y + radius * 0.8)];
  const up = { x: far.x, y: at.y - radius * 1.6 };
  const down = { x: far.x, y: at.y + radius * 1.6 };
  return [
    opening(circleAt(at, radius)),
    opening(pathOf(cubic(top, { x: at.x, y: up.y }, up, far), cubic(far, down, { x: at.x, y: down.y }, low))),
  ];
}

/** Press studs on the lap of the front shoulder, as they are marked on its facing. */
function studs(garment: Garment): readonly SketchLine[] {
  const facing = garment.pieces.find((piece) => piece.id === 'shoulder-facing');
  const trim = garment.trims.find(({ kind }) => kind === 'studs');
  const shoulder = bodiceOf(garment, 'front').flatMap((piece) => findEdge(piece, 'shoulder') ?? [])[0];
  if (facing === undefined || trim === undefined || shoulder === undefined || !('diameter' in trim))
    return [];
  const down = depthOf(facing) / 2;
  const length = pathLength(shoulder.path);
  return facing.markings
    .filter((mark) => mark.kind === 'button')
    .flatMap((mark) => {
      const box = pathBounds(mark.path);
      const { point, tangent } = pathAt(shoulder.path, Math.min(length, (box.minX + box.maxX) / 2));
      const at = add(point, scale(outward(tangent), -down));
      return bothHalves('opening', circleAt(at, trim.diameter / 2));
    });
}
