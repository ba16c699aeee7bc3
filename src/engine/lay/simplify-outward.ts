import type { Point } from '../geometry/index.ts';
import { largest, type Polygon, polygonArea, polygonsUnion } from './polygons.ts';

/** A corner that is left, and the stretch of the given ring that the side from it to the next one stands for. */
interface Corner {
  at: Point;
  from: number;
  to: number;
  bridge: Change | null;
  point: Change | null;
}

/** What replaces a corner, or the side that begins there; `adds`: the cloth that it adds, mm2. */
interface Change {
  readonly tip: Point | null;
  readonly adds: number;
}

/**
 * A polygon with fewer corners that contains the given one and nowhere lies further than `tolerance` outside it.
 * A hollow corner is bridged, a short side between two bulging corners is replaced by the point where its
 * neighbours meet: both only ever add cloth. The cheapest change comes first. `keepsSide` protects sides, as a fold.
 */
export function simplifyOutward(
  polygon: Polygon,
  tolerance: number,
  keepsSide: (from: Point, to: Point) => boolean = () => false,
): Polygon {
  const ring = polygonArea(polygon) < 0 ? [...polygon].reverse() : polygon;
  const corners = ring.map((at, i): Corner => ({ at, from: i, to: i + 1, bridge: null, point: null }));
  const at = (i: number): Corner => {
    const corner = corners[((i % corners.length) + corners.length) % corners.length];
    if (corner === undefined) throw new Error('A ring has corners.');
    return corner;
  };
  const look = (i: number): void => {
    at(i).bridge = bridged(ring, at(i - 1), at(i), at(i + 1), tolerance);
    at(i).point = keepsSide(at(i).at, at(i + 1).at)
      ? null
      : pointed(ring, [at(i - 1), at(i), at(i + 1), at(i + 2)], tolerance);
  };
  for (const i of corners.keys()) look(i);
  while (corners.length > 3) {
    let cheapest = Number.POSITIVE_INFINITY;
    let which = -1;
    for (const [i, { bridge, point }] of corners.entries()) {
      const adds = Math.min(bridge?.adds ?? cheapest, point?.adds ?? cheapest);
      if (adds < cheapest) [cheapest, which] = [adds, i];
    }
    if (which < 0) break;
    const corner = at(which);
    if (corner.bridge !== null && corner.bridge.adds === cheapest) at(which - 1).to = corner.to;
    else if (corner.point?.tip) {
      at(which - 1).to = corner.to;
      at(which + 1).at = corner.point.tip;
      at(which + 1).from = corner.from;
    }
    corners.splice(which, 1);
    for (let i = which - 3; i <= which + 2; i++) look(i);
  }
  return solid(corners.map((corner) => corner.at));
}

/** Without corner `b`, if it is hollow and all that its sides stand for lies near the new side. */
function bridged(ring: Polygon, a: Corner, b: Corner, c: Corner, tolerance: number): Change | null {
  const area = bend(a.at, b.at, c.at);
  if (area > 0) return null;
  for (const p of stretch(ring, a.from, b.to)) if (fromSide(p, a.at, c.at) > tolerance) return null;
  return { tip: null, adds: -area / 2 };
}

/** Without the side from `b` to `c`, if its neighbours meet near what it stands for. */
function pointed(
  ring: Polygon,
  [a, b, c, d]: readonly [Corner, Corner, Corner, Corner],
  tolerance: number,
): Change | null {
  if (bend(a.at, b.at, c.at) <= 0 || bend(b.at, c.at, d.at) <= 0) return null;
  const [ux, uy, vx, vy] = [b.at.x - a.at.x, b.at.y - a.at.y, c.at.x - d.at.x, c.at.y - d.at.y];
  const turn = ux * vy - uy * vx;
  // Together the neighbours must turn by less than half a circle, or they do not meet on this side.
  if (!(turn < 0)) return null;
  const t = ((c.at.x - b.at.x) * vy - (c.at.y - b.at.y) * vx) / turn;
  const tip = { x: b.at.x + ux * t, y: b.at.y + uy * t };
  const chain = stretch(ring, a.from, c.to);
  let nearest = Number.POSITIVE_INFINITY;
  for (const [i, p] of chain.entries()) {
    const q = chain[i + 1];
    if (q !== undefined) nearest = Math.min(nearest, fromSide(tip, p, q));
  }
  return nearest > tolerance ? null : { tip, adds: Math.abs(bend(b.at, tip, c.at)) / 2 };
}

function stretch(ring: Polygon, from: number, to: number): Polygon {
  const end = to < from ? to + ring.length : to;
  return from < ring.length && end < ring.length
    ? ring.slice(from, end + 1)
    : Array.from({ length: end - from + 1 }, (_, i) => ring[(from + i) % ring.length] ?? { x: 0, y: 0 });
}

/** Twice the area of the triangle, positive where the way bends round the cloth. */
function bend(a: Point, b: Point, c: Point): number {
  return (b.x - a.x) * (c.y - b.y) - (b.y - a.y) * (c.x - b.x);
}

function fromSide(p: Point, a: Point, b: Point): number {
  const [dx, dy, px, py] = [b.x - a.x, b.y - a.y, p.x - a.x, p.y - a.y];
  const square = dx * dx + dy * dy;
  const t = square === 0 ? 0 : Math.min(1, Math.max(0, (px * dx + py * dy) / square));
  const [ex, ey] = [px - t * dx, py - t * dy];
  return Math.sqrt(ex * ex + ey * ey);
}

/** The outermost ring: a bridge may have closed a narrow inlet, and what is enclosed counts as cloth. */
function solid(polygon: Polygon): Polygon {
  return largest(polygonsUnion([polygon])) ?? polygon;
}
