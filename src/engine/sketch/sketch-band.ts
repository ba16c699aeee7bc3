import { linePath, type Point, pathCrossings, pathMirrorX, pathReverse } from '../geometry/index.ts';
import { findEdge, type Garment, type HangingTrim } from '../piece/index.ts';
import type { SketchLine, SketchSide } from './sketch.ts';
import { bodiceOf, bothHalves } from './sketch-bodice.ts';
import { type LaidOn, NOTHING_ON } from './sketch-cover.ts';
import { closedShape, through } from './sketch-path.ts';
import { waistOf } from './sketch-skirt-shape.ts';
import { depthOf } from './sketch-strip.ts';

/** A belt laps over by so much on each side of the centre line in the sketch, mm. */
const LAP = 12;
const PLACES = 8;

/** A belt round the waist, its lower edge on the waist line; its end lies over the centre where the dress opens. */
export function sketchBelt(garment: Garment, side: SketchSide): LaidOn {
  const belt = garment.pieces.find((piece) => piece.id === 'belt');
  if (belt === undefined) return NOTHING_ON;
  const band = bandAbove(garment, side, depthOf(belt));
  if (band === null || side === 'front') return band ?? NOTHING_ON;
  const waist = waistOf(garment, side)?.(0) ?? { x: 0, y: 0 };
  const end = linePath({ x: -LAP, y: waist.y - depthOf(belt) }, { x: -LAP, y: waist.y });
  return { ...band, lines: [...band.lines, { stroke: 'outline', path: end }] };
}

/** A sash that is sewn into the side seams crosses the side only on which it is tied. */
export function sketchSashBand(garment: Garment, side: SketchSide, trim: HangingTrim): LaidOn {
  const strip = garment.pieces.find((piece) => piece.id === trim.pieces[0]);
  if (strip === undefined) return NOTHING_ON;
  const inSides = garment.pieces.some((piece) => piece.notches.some((notch) => notch.match === 'sash'));
  const tied: SketchSide = trim.place === 'waist-front' ? 'front' : 'back';
  return inSides && tied !== side ? NOTHING_ON : (bandAbove(garment, side, depthOf(strip)) ?? NOTHING_ON);
}

/** A band of this depth that lies on the bodice, down to the waist. */
function bandAbove(garment: Garment, side: SketchSide, depth: number): LaidOn | null {
  const waist = waistOf(garment, side);
  if (waist === null) return null;
  const foot = waist(1);
  const wide = sideAt(garment, side, foot.y - depth) ?? foot.x;
  const places = Array.from({ length: PLACES + 1 }, (_, i) => i / PLACES);
  const upper = through(places.map((share): Point => ({ x: wide * share, y: waist(share).y - depth })));
  const lower = through(places.map(waist));
  if (upper === null || lower === null) return null;
  const end = linePath({ x: wide, y: foot.y - depth }, foot);
  const right = [upper, end, pathReverse(lower)] as const;
  const left = right.map((path) => pathReverse(pathMirrorX(path))).toReversed();
  const lines: readonly SketchLine[] = [upper, end, lower].flatMap((path) => bothHalves('outline', path));
  return { lines, covers: [closedShape(...right, ...left)] };
}

/** How far from the centre the side seam lies at a level. */
function sideAt(garment: Garment, side: SketchSide, y: number): number | null {
  const level = linePath({ x: -2000, y }, { x: 2000, y });
  const hits = bodiceOf(garment, side)
    .flatMap((piece) => findEdge(piece, 'side') ?? [])
    .flatMap((edge) => pathCrossings(level, edge.path));
  return hits.length === 0 ? null : Math.max(...hits.map(({ point }) => point.x));
}
