import { at, turn } from './outline.ts';

/**
 * An outline as convex parts that together cover just it: cut into triangles, then triangles joined again as long as
 * the result stays convex (Hertel, Mehlhorn 1983: never more than four times the fewest parts). Several ways of cutting
 * are tried and the one with the fewest parts is kept: whatever compares two pieces compares their parts pair by pair.
 * The outline is tidy: positive area, no plain points, not crossing itself; null where it touches itself so that it can
 * not be cut into triangles.
 */
export function convexParts(outline: Float64Array): readonly Float64Array[] | null {
  const count = outline.length / 2;
  let best: number[][] | null = null;
  for (const first of firstCorners(count)) {
    for (const wish of ['fat', 'any'] as const) {
      const triangles = trianglesOf(outline, first, wish);
      if (triangles === null) continue;
      const parts = joined(outline, triangles);
      if (best === null || parts.length < best.length) best = parts;
    }
  }
  return best === null
    ? null
    : best.map((part) => new Float64Array(part.flatMap((k) => [at(outline, 2 * k), at(outline, 2 * k + 1)])));
}

const TRIES = 8;
/** Cutting takes longer with the square of the corners and more: outlines with many get fewer tries. */
const CORNERS_TRIED = 320;

function firstCorners(count: number): readonly number[] {
  const tries = Math.max(1, Math.min(TRIES, count, Math.floor(CORNERS_TRIED / count)));
  return Array.from({ length: tries }, (_, k) => Math.floor((k * count) / tries));
}

/** Ears cut off one after the other; null where rounding leaves none to cut. */
function trianglesOf(o: Float64Array, first: number, wish: 'fat' | 'any'): number[][] | null {
  const count = o.length / 2;
  const ring = Array.from({ length: count }, (_, k) => (k + first) % count);
  const triangles: number[][] = [];
  while (ring.length > 3) {
    let ear = -1;
    let earSlim = Number.POSITIVE_INFINITY;
    for (let k = 0; k < ring.length; k++) {
      if (!isEar(o, ring, k)) continue;
      const slim = wish === 'fat' ? slimness(o, ring, k) : 0;
      if (slim < earSlim) {
        ear = k;
        earSlim = slim;
        if (wish === 'any') break;
      }
    }
    if (ear < 0) return null;
    triangles.push([around(ring, ear - 1), around(ring, ear), around(ring, ear + 1)]);
    ring.splice(ear, 1);
  }
  triangles.push(ring);
  return triangles;
}

const around = (ring: readonly number[], k: number): number =>
  ring[(k + ring.length) % ring.length] as number;

function isEar(o: Float64Array, ring: readonly number[], k: number): boolean {
  const a = around(ring, k - 1);
  const b = around(ring, k);
  const c = around(ring, k + 1);
  if (turn(o, a, b, c) <= 0) return false;
  return !ring.some((p) => p !== a && p !== b && p !== c && within(o, a, b, c, p));
}

function within(o: Float64Array, a: number, b: number, c: number, p: number): boolean {
  return turn(o, a, b, p) >= 0 && turn(o, b, c, p) >= 0 && turn(o, c, a, p) >= 0 && !same(o, p, a, c);
}

/** A point that coincides with an end of the cut lies on it, not in the ear. */
function same(o: Float64Array, p: number, a: number, c: number): boolean {
  const equal = (q: number): boolean =>
    at(o, 2 * p) === at(o, 2 * q) && at(o, 2 * p + 1) === at(o, 2 * q + 1);
  return equal(a) || equal(c);
}

/** Square of the cut over the area: small for an ear like a half square, large for a sliver. */
function slimness(o: Float64Array, ring: readonly number[], k: number): number {
  const a = around(ring, k - 1);
  const b = around(ring, k);
  const c = around(ring, k + 1);
  const dx = at(o, 2 * a) - at(o, 2 * c);
  const dy = at(o, 2 * a + 1) - at(o, 2 * c + 1);
  return (dx * dx + dy * dy) / turn(o, a, b, c);
}

/**
 * Joins parts over the cuts between them while the result is convex, the longest cut first. A cut that can not go stays
 * for good: joining elsewhere only opens the corners at its ends.
 */
function joined(o: Float64Array, triangles: readonly (readonly number[])[]): number[][] {
  const count = o.length / 2;
  const owner = new Map<number, number[]>();
  const own = (part: number[]): void => {
    for (let k = 0; k < part.length; k++) owner.set(around(part, k) * count + around(part, k + 1), part);
  };
  const parts = new Set(triangles.map((triangle) => [...triangle]));
  for (const part of parts) own(part);
  const cuts = [...owner.keys()].filter((side) => {
    const [a, b] = [Math.floor(side / count), side % count];
    return a < b && owner.has(b * count + a);
  });
  const length = (side: number): number => {
    const [a, b] = [Math.floor(side / count), side % count];
    const dx = at(o, 2 * a) - at(o, 2 * b);
    const dy = at(o, 2 * a + 1) - at(o, 2 * b + 1);
    return dx * dx + dy * dy;
  };
  cuts.sort((one, other) => length(other) - length(one) || one - other);
  for (const side of cuts) {
    const [a, b] = [Math.floor(side / count), side % count];
    const one = owner.get(side);
    const other = owner.get(b * count + a);
    if (one === undefined || other === undefined || one === other) continue;
    const ring = joinedOver(o, one, other, a, b);
    if (ring === null) continue;
    parts.delete(one);
    parts.delete(other);
    parts.add(ring);
    own(ring);
  }
  return [...parts];
}

/** The two parts as one ring, without the side a, b between them; null where it would have a hollow. */
function joinedOver(
  o: Float64Array,
  one: readonly number[],
  other: readonly number[],
  a: number,
  b: number,
): number[] | null {
  const k = one.indexOf(a);
  const m = other.indexOf(b);
  const ring: number[] = [];
  for (let q = 1; q <= one.length; q++) ring.push(around(one, k + q));
  for (let q = 2; q < other.length; q++) ring.push(around(other, m + q));
  // The ring runs b ... a of the one, then on over the other back to b: only the corners at a and b are new.
  const convex = [0, one.length - 1].every(
    (q) => turn(o, around(ring, q - 1), around(ring, q), around(ring, q + 1)) >= 0,
  );
  return convex ? ring : null;
}
