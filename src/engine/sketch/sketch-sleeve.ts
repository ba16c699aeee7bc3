import {
  add,
  cubic,
  linePath,
  outward,
  type Path,
  type Point,
  pathBounds,
  pathJoin,
  pathOf,
  rotate,
  scale,
  subtract,
  type Vector,
  vectorLength,
} from '../geometry/index.ts';
import {
  edgeEnd,
  edgeLength,
  edgeStart,
  findEdge,
  type Garment,
  type Piece,
  pieceOf,
} from '../piece/index.ts';
import type { SketchLine, SketchSide } from './sketch.ts';
import { sketchArmEdge, sketchWing } from './sketch-arm-edge.ts';
import { bodiceOf, bothHalves } from './sketch-bodice.ts';

/** A set-in sleeve hangs this far down from the level, radians: an arm held a little away from the body. */
const HANGS = (40 * Math.PI) / 180;
/** How far a gathered sleeve stands off its straight outline, as a share of its length and its extra cloth. */
const PUFF = 0.16;

/** A set-in sleeve, laid flat beside the bodice: from the shoulder tip down the arm, across its end, to the underarm. */
export function sketchSleeve(garment: Garment, side: SketchSide): readonly SketchLine[] {
  const sleeve = garment.pieces.find((piece) => piece.id === 'sleeve' && piece.layer === 'shell');
  const top = bodiceOf(garment, side).find(
    (piece) => findEdge(piece, 'armhole') && findEdge(piece, 'shoulder'),
  );
  const low = bodiceOf(garment, side).findLast((piece) => findEdge(piece, 'armhole'));
  if (sleeve !== undefined && findEdge(sleeve, 'underarm-front') === undefined) {
    return sketchWing(garment, side, sleeve);
  }
  if (sleeve === undefined || findEdge(sleeve, 'cap') !== undefined) return sketchArmEdge(garment, side);
  if (top === undefined || low === undefined) return [];
  const end = endOf(garment, sleeve);
  if (end === null) return [];
  const [tip, underarm] = [edgeStart(top, 'armhole'), edgeEnd(low, 'armhole')];
  const down = rotate({ x: 1, y: 0 }, HANGS);
  const outer = add(tip, scale(down, end.length));
  const inner = endInner(outer, down, end.width / 2, underarm);
  const puff = end.length * PUFF * Math.min(2, end.fullness);
  const outline = pathJoin(
    bulge(tip, outer, puff),
    linePath(outer, inner),
    bulge(inner, underarm, Math.min(puff, vectorLength(subtract(inner, underarm)) * 0.2)),
  );
  return [
    ...bothHalves('outline', outline),
    ...(end.gathered && end.fullness > 0.1 ? gathers(outer, inner, scale(down, -end.length * 0.22)) : []),
  ];
}

interface SleeveEnd {
  /** From the shoulder tip to the end, with its band or cuff. */
  readonly length: number;
  /** Round the end as it is worn. */
  readonly width: number;
  /** Cloth beyond the finished width, times that width. */
  readonly fullness: number;
  /** Whether it is the end that is gathered, and not the cap alone. */
  readonly gathered: boolean;
}

/** A gathered sleeve ends in its band or cuff; a straight one in its own hem. */
function endOf(garment: Garment, sleeve: Piece): SleeveEnd | null {
  const hem = findEdge(sleeve, 'sleeve-edge') ?? sleeve.edges.find((edge) => edge.kind === 'attach');
  if (hem === undefined) return null;
  const cloth = edgeLength(sleeve, hem.name);
  // What a puffed cap is raised by goes into its gathers; the tip of the shoulder stays at y = 0.
  const length = Math.max(pathBounds(hem.path).maxY, 1);
  const elastic = sleeve.markings.find((marking) => marking.drawnTo !== undefined)?.drawnTo;
  if (elastic !== undefined) return { length, width: elastic, fullness: cloth / elastic - 1, gathered: true };
  const seam = garment.seams.find(
    ({ a, b, join }) =>
      join.kind === 'gathered' && [...a, ...b].some((e) => e.piece === sleeve.id && e.edge === hem.name),
  );
  if (seam?.join.kind !== 'gathered')
    return { length, width: cloth, fullness: capFullness(garment), gathered: false };
  const band = seam.a.reduce((sum, e) => sum + edgeLength(pieceOf(garment, e.piece), e.edge), 0);
  return { length, width: band, fullness: seam.join.ratio - 1, gathered: true };
}

function capFullness(garment: Garment): number {
  const cap = garment.seams.find(({ name, join }) => name === 'sleeve-cap' && join.kind === 'gathered');
  return cap?.join.kind === 'gathered' ? cap.join.ratio - 1 : 0;
}

/** From one point to another, bowed out to the left hand of the way, which is away from the sleeve. */
function bulge(from: Point, to: Point, by: number): Path {
  const way = subtract(to, from);
  const out = scale(outward(way), by / Math.max(vectorLength(way), 1));
  return pathOf(cubic(from, add(add(from, scale(way, 0.3)), out), add(add(from, scale(way, 0.75)), out), to));
}

/** Short strokes that run up the sleeve from its gathered end. */
function gathers(outer: Point, inner: Point, up: Vector): readonly SketchLine[] {
  return [0.2, 0.4, 0.6, 0.8].flatMap((share, i) => {
    const at = add(outer, scale(subtract(inner, outer), share));
    return bothHalves('gather', linePath(at, add(at, scale(up, i % 2 === 0 ? 1 : 0.6))));
  });
}

/** Clear space between the sleeve and the bodice, mm, where the sleeve is wider than there is room for. */
const CLEAR = 6;

/** The inner end of the sleeve's end, square to the arm; it ends short of the bodice where it would run into it. */
function endInner(outer: Point, down: Vector, width: number, underarm: Point): Point {
  const across = scale(outward(down), -1);
  const room = (underarm.x + CLEAR - outer.x) / across.x;
  return add(outer, scale(across, Math.min(width, Math.max(room, CLEAR))));
}
