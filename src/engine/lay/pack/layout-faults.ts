import { at, outlineBox, signedArea, turn } from './outline.ts';
import type { PackPlace, PackProblem, PackVariant } from './types.ts';

/** Something that makes a layout invalid. */
export type PackFault =
  | { readonly code: 'overlap'; readonly items: readonly [number, number]; readonly depth: number }
  | { readonly code: 'outside'; readonly item: number }
  | { readonly code: 'not-allowed-there'; readonly item: number }
  | { readonly code: 'missing'; readonly item: number };

/** Deeper than this part of the strip's width is an overlap; less is rounding, below what any shears can follow. */
const ROUNDING = 1e-7;

/**
 * Looks a finished layout through, on the outlines as they were given and by other means than the search: sides that
 * cross, corners that lie inside, and whether every item lies where it may. Empty when the layout is sound.
 */
export function layoutFaults(problem: PackProblem, places: readonly PackPlace[]): readonly PackFault[] {
  const least = ROUNDING * problem.width;
  const laid = problem.items.map((item, i) => {
    const place = item.fixed ?? places[i];
    const variant = place === undefined ? undefined : item.variants[place.variant];
    return place === undefined || variant === undefined ? null : laidOutline(variant, place);
  });
  const faults: PackFault[] = [];
  problem.items.forEach((item, i) => {
    const place = places[i];
    const variant = place === undefined ? undefined : item.variants[place.variant];
    if (place === undefined || variant === undefined || laid[i] === null) {
      faults.push({ code: 'missing', item: i });
    } else if (item.fixed === undefined) {
      faults.push(...placeFaults(problem, variant, place, i, least));
    } else if (place.x !== item.fixed.x || place.y !== item.fixed.y || place.variant !== item.fixed.variant) {
      faults.push({ code: 'not-allowed-there', item: i });
    }
  });
  for (let i = 0; i < laid.length; i++) {
    for (let j = i + 1; j < laid.length; j++) {
      const a = laid[i];
      const b = laid[j];
      const both = problem.items[i]?.fixed !== undefined && problem.items[j]?.fixed !== undefined;
      if (a == null || b == null || both) continue;
      const depth = overlapDepth(a, b, least);
      if (depth > least) faults.push({ code: 'overlap', items: [i, j], depth });
    }
  }
  return faults;
}

function placeFaults(
  problem: PackProblem,
  variant: PackVariant,
  { x, y }: PackPlace,
  item: number,
  least: number,
): readonly PackFault[] {
  const box = outlineBox(variant.outline);
  const right = x + box.maxX - box.minX;
  const bottom = y + box.maxY - box.minY;
  const longest = problem.longest ?? Number.POSITIVE_INFINITY;
  if (x < -least || y < -least || bottom > problem.width + least || right > longest + least) {
    return [{ code: 'outside', item }];
  }
  const kept = ([value, range]: readonly [number, PackVariant['x']]): boolean => {
    if (range === undefined) return true;
    if (value < range.from - least || value > range.to + least) return false;
    if (range.step === undefined || range.step === 0) return true;
    const steps = (value - range.from) / range.step;
    return Math.abs(steps - Math.round(steps)) * range.step <= least;
  };
  const sound = (
    [
      [x, variant.x],
      [y, variant.y],
    ] as const
  ).every(kept);
  return sound ? [] : [{ code: 'not-allowed-there', item }];
}

function laidOutline({ outline }: PackVariant, { x, y }: PackPlace): Float64Array {
  const { minX, minY } = outlineBox(outline);
  const laid = outline.map((value, k) => (k % 2 === 0 ? value - minX + x : value - minY + y));
  return signedArea(laid) > 0 ? laid : reversed(laid);
}

function reversed(outline: Float64Array): Float64Array {
  const count = outline.length / 2;
  return outline.map((_, k) => at(outline, 2 * (count - 1 - (k >> 1)) + (k & 1)));
}

/**
 * How deep two outlines lie in each other, 0 when they are apart or touch: of all corners, crossings and middles between
 * the crossings along each side, the one that lies deepest within the other outline.
 */
export function overlapDepth(a: Float64Array, b: Float64Array, least: number): number {
  const boxA = outlineBox(a);
  const boxB = outlineBox(b);
  const apart =
    boxA.minX >= boxB.maxX - least ||
    boxB.minX >= boxA.maxX - least ||
    boxA.minY >= boxB.maxY - least ||
    boxB.minY >= boxA.maxY - least;
  if (apart) return 0;
  return Math.max(deepestOn(a, b), deepestOn(b, a), insideEqual(a, b));
}

/** The deepest point of the sides of `a` in `b`: a side is cut where it meets sides of `b`, each stretch tried half-way. */
function deepestOn(a: Float64Array, b: Float64Array): number {
  let deepest = 0;
  for (let i = 0; i < a.length; i += 2) {
    const px = at(a, i);
    const py = at(a, i + 1);
    const ex = at(a, (i + 2) % a.length) - px;
    const ey = at(a, (i + 3) % a.length) - py;
    const cuts = [0, 1];
    for (let j = 0; j < b.length; j += 2) {
      const qx = at(b, j) - px;
      const qy = at(b, j + 1) - py;
      const fx = at(b, (j + 2) % b.length) - px - qx;
      const fy = at(b, (j + 3) % b.length) - py - qy;
      const cross = ex * fy - ey * fx;
      if (cross === 0) continue;
      const t = (qx * fy - qy * fx) / cross;
      const u = (qx * ey - qy * ex) / cross;
      if (t > 0 && t < 1 && u >= 0 && u <= 1) cuts.push(t);
    }
    cuts.sort((s, t) => s - t);
    for (let k = 0; k + 1 < cuts.length; k++) {
      const t = ((cuts[k] as number) + (cuts[k + 1] as number)) / 2;
      deepest = Math.max(deepest, depthIn(b, px + ex * t, py + ey * t));
      deepest = Math.max(deepest, depthIn(b, px + ex * (cuts[k] as number), py + ey * (cuts[k] as number)));
    }
  }
  return deepest;
}

/** Distance of a point inside an outline to its nearest side; 0 outside. */
function depthIn(outline: Float64Array, x: number, y: number): number {
  let inside = false;
  let nearest = Number.POSITIVE_INFINITY;
  for (let i = 0, j = outline.length - 2; i < outline.length; j = i, i += 2) {
    const ax = at(outline, j);
    const ay = at(outline, j + 1);
    const bx = at(outline, i);
    const by = at(outline, i + 1);
    if (ay > y !== by > y && x < ax + ((y - ay) / (by - ay)) * (bx - ax)) inside = !inside;
    const ex = bx - ax;
    const ey = by - ay;
    const t = Math.max(0, Math.min(1, ((x - ax) * ex + (y - ay) * ey) / (ex * ex + ey * ey || 1)));
    const dx = ax + ex * t - x;
    const dy = ay + ey * t - y;
    nearest = Math.min(nearest, dx * dx + dy * dy);
  }
  return inside ? Math.sqrt(nearest) : 0;
}

/** Equal outlines in one place have no point of one side inside the other: a point within the one is tried. */
function insideEqual(a: Float64Array, b: Float64Array): number {
  const inner = innerPoint(a);
  return inner === null ? 0 : Math.min(depthIn(a, inner[0], inner[1]), depthIn(b, inner[0], inner[1]));
}

function innerPoint(outline: Float64Array): readonly [number, number] | null {
  const count = outline.length / 2;
  for (let k = 0; k < count; k++) {
    const [i, m] = [(k + count - 1) % count, (k + 1) % count];
    if (turn(outline, i, k, m) <= 0) continue;
    const x = (at(outline, 2 * i) + 2 * at(outline, 2 * k) + at(outline, 2 * m)) / 4;
    const y = (at(outline, 2 * i + 1) + 2 * at(outline, 2 * k + 1) + at(outline, 2 * m + 1)) / 4;
    if (depthIn(outline, x, y) > 0) return [x, y];
  }
  return null;
}
