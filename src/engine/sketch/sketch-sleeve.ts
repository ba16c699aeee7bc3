import {
  add,
  cubic,
  linePath,
  outward,
  type Path,
  type Point,
  pathBounds,
  pathJoin,
  pathLength,
  pathOf,
  scale,
  subtract,
  type Vector,
  vectorLength,
} from '../geometry/index.ts';
import { findEdge, type Garment, outlineOf, type Piece, type SeamEdge } from '../piece/index.ts';
import type { SketchLine, SketchSide } from './sketch.ts';
import { armEdge, DOWN, sketchArmEdge, sketchWing } from './sketch-arm-edge.ts';
import { bothHalves } from './sketch-bodice.ts';
import { type LaidOn, NOTHING_ON } from './sketch-cover.ts';
import { depthOf, ruffleOn } from './sketch-strip.ts';

/** How far a gathered sleeve stands off its straight outline, as a share of its length and its extra cloth. */
const PUFF = 0.16;

/** A set-in sleeve, laid flat beside the bodice: from the shoulder tip down the arm, across its end, to the underarm. */
export function sketchSleeve(garment: Garment, side: SketchSide): readonly SketchLine[] {
  const sleeve = sleeveOf(garment);
  if (sleeve !== undefined && findEdge(sleeve, 'underarm-front') === undefined) {
    return sketchWing(garment, side, sleeve);
  }
  if (sleeve === undefined || findEdge(sleeve, 'cap') !== undefined) return sketchArmEdge(garment, side);
  const [tip, underarm] = armEdge(garment, side) ?? [];
  const end = endOf(garment, sleeve);
  if (end === null || tip === undefined || underarm === undefined) return [];
  const { outer, inner } = footLine(end, tip, underarm);
  const puff = end.length * PUFF * Math.min(2, end.fullness);
  const outline = pathJoin(
    bulge(tip, outer, puff),
    linePath(outer, inner),
    bulge(inner, underarm, Math.min(puff, vectorLength(subtract(inner, underarm)) * 0.2)),
  );
  return [
    ...bothHalves('outline', outline),
    ...(end.gathered && end.fullness > 0.1 ? gathers(outer, inner, scale(DOWN, -end.length * 0.22)) : []),
    ...band(outer, inner, scale(DOWN, end.band)),
  ];
}

const sleeveOf = (garment: Garment): Piece | undefined =>
  garment.pieces.find((piece) => piece.id === 'sleeve' && piece.layer === 'shell');

/** Ruffles along the end of a set-in sleeve. */
export function sketchSleeveRuffles(garment: Garment, side: SketchSide): LaidOn {
  const sleeve = sleeveOf(garment);
  const [tip, underarm] = armEdge(garment, side) ?? [];
  const end = sleeve === undefined ? null : endOf(garment, sleeve);
  if (sleeve === undefined || end === null || tip === undefined || underarm === undefined) return NOTHING_ON;
  if (findEdge(sleeve, 'underarm-front') === undefined) return NOTHING_ON;
  const { outer, inner } = footLine(end, tip, underarm);
  return ruffleOn(garment, sleeve, 'sleeve-edge', linePath(outer, inner), 'left');
}

function footLine(
  end: SleeveEnd,
  tip: Point,
  underarm: Point,
): { readonly outer: Point; readonly inner: Point } {
  const outer = add(tip, scale(DOWN, end.length));
  return { outer, inner: endInner(outer, end.width / 2, underarm) };
}

/** Where a sleeve ends on the upper side of the arm, or the dress round a bare arm over the shoulder. */
export function armEnd(garment: Garment, side: SketchSide): Point | null {
  const [bare] = armEdge(garment, side) ?? [];
  const sleeve = sleeveOf(garment);
  if (bare === undefined || sleeve === undefined || findEdge(sleeve, 'cap') !== undefined)
    return bare ?? null;
  const isWing = findEdge(sleeve, 'underarm-front') === undefined;
  const length = isWing ? pathBounds(outlineOf(sleeve)).maxY : endOf(garment, sleeve)?.length;
  return length === undefined ? bare : add(bare, scale(DOWN, length));
}

/** A band or cuff goes on from the end of the sleeve, as wide as that. */
function band(outer: Point, inner: Point, down: Vector): readonly SketchLine[] {
  if (vectorLength(down) === 0) return [];
  return bothHalves('outline', linePath(outer, add(outer, down), add(inner, down), inner));
}

interface SleeveEnd {
  /** From the shoulder tip to the end, without its band or cuff. */
  readonly length: number;
  /** Finished depth of a band or cuff below the end, 0 where there is none. */
  readonly band: number;
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
  const cloth = pathLength(hem.path);
  // What a puffed cap is raised by goes into its gathers; the tip of the shoulder stays at y = 0.
  const length = Math.max(pathBounds(hem.path).maxY, 1);
  const elastic = sleeve.markings.find((marking) => marking.drawnTo !== undefined)?.drawnTo;
  const band = bandDepth(garment, sleeve);
  if (elastic !== undefined)
    return { length, band, width: elastic, fullness: cloth / elastic - 1, gathered: true };
  const seam = garment.seams.find(
    ({ a, b, join }) =>
      join.kind === 'gathered' && [...a, ...b].some((e) => e.piece === sleeve.id && e.edge === hem.name),
  );
  if (seam?.join.kind !== 'gathered')
    return { length, band, width: cloth, fullness: capFullness(garment), gathered: false };
  const width = seam.a.reduce((sum, e) => sum + lengthAt(garment, e), 0);
  return { length, band, width, fullness: seam.join.ratio - 1, gathered: true };
}

function lengthAt(garment: Garment, at: SeamEdge): number {
  const piece = garment.pieces.find(({ id }) => id === at.piece);
  const edge = piece === undefined ? undefined : findEdge(piece, at.edge);
  return edge === undefined ? 0 : pathLength(edge.path);
}

/** A band or cuff is cut twice as deep as it is worn. */
function bandDepth(garment: Garment, sleeve: Piece): number {
  const seam = garment.seams.find(
    ({ name, b }) => (name === 'band' || name === 'cuff') && b.some((at) => at.piece === sleeve.id),
  );
  const strip = garment.pieces.find((piece) => piece.id === seam?.a[0]?.piece);
  return strip === undefined ? 0 : depthOf(strip) / 2;
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
function endInner(outer: Point, width: number, underarm: Point): Point {
  const across = scale(outward(DOWN), -1);
  const room = (underarm.x + CLEAR - outer.x) / across.x;
  return add(outer, scale(across, Math.min(width, Math.max(room, CLEAR))));
}
