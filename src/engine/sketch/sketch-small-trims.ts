import { add, between, linePath, type Path, pathBounds, pathMirrorX, pathStart } from '../geometry/index.ts';
import { findEdge, type Garment, outlineOf } from '../piece/index.ts';
import type { SketchLine, SketchSide } from './sketch.ts';
import { bodiceOf, bothHalves } from './sketch-bodice.ts';
import { type LaidOn, NOTHING_ON } from './sketch-cover.ts';
import { circleAt, closedShape } from './sketch-path.ts';
import { waistOf } from './sketch-skirt-shape.ts';
import { depthOf } from './sketch-strip.ts';

/** Straps lie over the middle of the shoulder, half their length in front and half behind. */
export function sketchStraps(garment: Garment, side: SketchSide): LaidOn {
  const strap = garment.pieces.find((piece) => piece.id === 'strap');
  const [shoulder] = bodiceOf(garment, side).flatMap((piece) => findEdge(piece, 'shoulder') ?? []);
  if (strap === undefined || shoulder === undefined) return NOTHING_ON;
  const { from, to } = shoulder.path.segments[0];
  const half = depthOf(strap) / 2;
  // How much of the shoulder half the strap covers; one that the maker has made upright has no width to cover.
  const share = to.x > from.x ? half / (to.x - from.x) : 0.5;
  const [inner, outer] = [between(from, to, 0.5 - share), between(from, to, 0.5 + share)];
  // As long as it lies in the pattern: opened out by the maker, a strap has no upper edge any more.
  const { minX, maxX } = pathBounds(outlineOf(strap));
  const foot = (inner.y + outer.y) / 2 + (maxX - minX) / 2;
  const line = linePath(inner, { x: inner.x, y: foot }, { x: outer.x, y: foot }, outer);
  const shape = closedShape(line);
  return { lines: bothHalves('outline', line), covers: [shape, pathMirrorX(shape)] };
}

/** Buttons for show in a row down the centre front: the first below the neck, then two and a half buttons apart. */
export function sketchButtonsForShow(garment: Garment, side: SketchSide): LaidOn {
  const [neckline] = bodiceOf(garment, side).flatMap((piece) => findEdge(piece, 'neckline') ?? []);
  if (side === 'back' || neckline === undefined) return NOTHING_ON;
  const top = pathStart(neckline.path).y;
  const circles = garment.trims.flatMap((trim) => {
    if (trim.kind !== 'buttons' || trim.place !== 'chest') return [];
    const count = garment.pieces.find((piece) => piece.id === trim.pieces[0])?.cutting.copies ?? 0;
    const { diameter } = trim;
    const room = (waistOf(garment, side)?.(0).y ?? Number.POSITIVE_INFINITY) - top - 2 * diameter;
    const gap = Math.min(2.5 * diameter, room / Math.max(1, count - 1));
    return Array.from({ length: count }, (_, i) =>
      circleAt({ x: 0, y: top + 1.5 * diameter + i * gap }, diameter / 2),
    );
  });
  return { lines: circles.map((path): SketchLine => ({ stroke: 'outline', path })), covers: circles };
}

/** Turns of a rosette that are drawn, as shares of its width. */
const TURNS = [1, 0.68, 0.36] as const;

/** Rosettes have no place of their own in the pattern; they are drawn along the waist, left of the wearer. */
export function sketchRosettes(garment: Garment, side: SketchSide): LaidOn {
  const waist = waistOf(garment, side);
  if (side === 'back' || waist === null) return NOTHING_ON;
  const rings = garment.pieces
    .filter((piece) => /^rosette(-\d+)?$/.test(piece.id))
    .map((strip, i): readonly Path[] => {
      // The doubled strip is half as wide as the flower.
      const radius = depthOf(strip);
      const at = add(waist(0.55), { x: -i * 2.2 * radius, y: -radius });
      return TURNS.map((share) => circleAt(at, radius * share));
    });
  return {
    lines: rings.flat().map((path): SketchLine => ({ stroke: 'outline', path })),
    covers: rings.flatMap(([rim]) => (rim === undefined ? [] : [rim])),
  };
}
