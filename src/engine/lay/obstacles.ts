import type { Bounds, Point } from '../geometry/index.ts';
import type { LayCloth } from './cloth-rules.ts';
import type { LayStretch } from './lay-items.ts';
import {
  largest,
  type Polygon,
  polygonBounds,
  polygonsShared,
  polygonsUnion,
  polygonsWithout,
  rectangle,
} from './polygons.ts';

/** What no piece may touch on a stretch of cloth that begins `from` mm after the cut end: rings on the stretch as it lies. */
export function obstaclesOn(stretch: LayStretch, cloth: LayCloth, from: number): readonly Polygon[] {
  const flaws = (cloth.flaws ?? []).flatMap(({ outline }) => asFolded(outline, stretch, cloth));
  const placed = flaws
    .map((ring) => ring.map(({ x, y }) => ({ x: x - from, y })))
    .filter((ring) => ring.some(({ x }) => x > 0));
  return cloth.remnant === undefined ? placed : [...placed, ...missingFrom(cloth.remnant)];
}

/** A ring on the open cloth, brought to where it lies once the cloth is folded lengthwise. */
function asFolded(outline: Polygon, { folding, depth }: LayStretch, cloth: LayCloth): readonly Polygon[] {
  const rings = polygonsUnion([outline]);
  if (folding !== 'lengthwise') return rings;
  const far = 1e6;
  const between = (fromY: number, toY: number, move: (y: number) => number): readonly Polygon[] =>
    polygonsShared(rings, [rectangle(-far, fromY, far, toY)]).map((ring) =>
      ring.map(({ x, y }) => ({ x, y: move(y) })),
    );
  if (cloth.selvedgesToMiddle !== true) {
    return [...between(depth, far, (y) => y - depth), ...between(-far, depth, (y) => depth - y)];
  }
  // The folds lie at a quarter and at three quarters of the width; the second fold is the far edge of the strip.
  const [low, high] = [depth / 2, 1.5 * depth];
  return [
    ...between(-far, low, (y) => low - y),
    ...between(low, depth, (y) => y - low),
    ...between(depth, high, (y) => depth - (high - y)),
    ...between(high, far, (y) => depth - (y - high)),
  ];
}

/** How far round a leftover the cloth is marked as missing, mm; more than any gap reaches out of the strip. */
const AROUND = 60;

/**
 * What a leftover lacks of its box, in two halves above and below a line through it: as the leftover is one piece
 * without holes, neither half encloses a hole.
 */
function missingFrom(remnant: readonly Point[]): readonly Polygon[] {
  const whole = largest(polygonsUnion([remnant]));
  if (whole === null) return [];
  const { minX, minY, maxX, maxY } = polygonBounds(whole);
  const middle = (minY + maxY) / 2;
  const halves = [
    rectangle(minX - AROUND, minY - AROUND, maxX + AROUND, middle),
    rectangle(minX - AROUND, middle, maxX + AROUND, maxY + AROUND),
  ];
  return halves.flatMap((half) => polygonsWithout([half], [whole])).filter((ring) => ring.length > 2);
}

/** A leftover moved so that its box begins at 0, 0; null where it encloses nothing. */
export function remnantAtOrigin(
  remnant: readonly Point[],
): { readonly outline: Polygon; readonly box: Bounds } | null {
  const whole = largest(polygonsUnion([remnant]));
  if (whole === null) return null;
  const { minX, minY, maxX, maxY } = polygonBounds(whole);
  if (maxX - minX < 1 || maxY - minY < 1) return null;
  return {
    outline: whole.map(({ x, y }) => ({ x: x - minX, y: y - minY })),
    box: { minX: 0, minY: 0, maxX: maxX - minX, maxY: maxY - minY },
  };
}
