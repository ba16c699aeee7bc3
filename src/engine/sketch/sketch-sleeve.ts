import { add, linePath, outward, type Point, pathJoin, rotate, scale } from '../geometry/index.ts';
import { edgeEnd, edgeLength, edgeStart, findEdge, type Garment } from '../piece/index.ts';
import type { SketchLine, SketchSide } from './sketch.ts';
import { bodiceOf, bothHalves } from './sketch-bodice.ts';

/** A set-in sleeve hangs this far down from the level, radians: an arm held a little away from the body. */
const HANGS = (40 * Math.PI) / 180;

/** A set-in sleeve, laid flat beside the bodice: from the shoulder tip down the arm, across its hem, to the underarm. */
export function sketchSleeve(garment: Garment, side: SketchSide): readonly SketchLine[] {
  const sleeve = garment.pieces.find((piece) => piece.id === 'sleeve' && piece.layer === 'shell');
  const top = bodiceOf(garment, side).find(
    (piece) => findEdge(piece, 'armhole') && findEdge(piece, 'shoulder'),
  );
  const low = bodiceOf(garment, side).findLast((piece) => findEdge(piece, 'armhole'));
  if (sleeve === undefined || top === undefined || low === undefined) return [];
  const hem = findEdge(sleeve, 'sleeve-edge');
  if (hem === undefined) return [];
  const [tip, underarm] = [edgeEnd(top, 'shoulder'), edgeEnd(low, 'armhole')];
  const down = rotate({ x: 1, y: 0 }, HANGS);
  const length = Math.max(edgeStart(sleeve, 'sleeve-edge').y, 1);
  const outer = add(tip, scale(down, length));
  const inner = hemInner(outer, down, edgeLength(sleeve, 'sleeve-edge') / 2, underarm);
  return bothHalves(
    'outline',
    pathJoin(linePath(tip, outer), linePath(outer, inner), linePath(inner, underarm)),
  );
}

/** Clear space between the sleeve and the bodice, mm, where the sleeve is wider than there is room for. */
const CLEAR = 6;

/** The inner end of the hem, square to the arm; it ends short of the bodice where it would run into it. */
function hemInner(outer: Point, down: Point, width: number, underarm: Point): Point {
  const across = scale(outward(down), -1);
  const room = (underarm.x + CLEAR - outer.x) / across.x;
  return add(outer, scale(across, Math.min(width, Math.max(room, CLEAR))));
}
