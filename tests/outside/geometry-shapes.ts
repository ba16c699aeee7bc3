/** Random shapes for the tests of paths and outlines, in mm and of the size of a child's pattern pieces. */
import fc from 'fast-check';
import {
  type Cubic,
  cubic,
  type Outline,
  type Path,
  type Point,
  pathOf,
  point,
} from '../../src/engine/geometry/index.ts';

export const aPoint: fc.Arbitrary<Point> = fc
  .tuple(number(-400, 400), number(-400, 400))
  .map(([x, y]) => point(x, y));

/** In steps of a ten-thousandth: evenly spread, and none of the tiny numbers that no pattern holds. */
export function number(min: number, max: number): fc.Arbitrary<number> {
  return fc.integer({ min: Math.ceil(min * 1e4), max: Math.floor(max * 1e4) }).map((n) => n / 1e4);
}

/** Any cubic at all: loops, cusps and near-cusps happen, and now and then a handle lies on its end. */
export const wildCubic: fc.Arbitrary<Cubic> = fc
  .tuple(aPoint, aPoint, aPoint, aPoint, fc.nat(9))
  .map(([a, b, c, d, odd]) => cubic(a, odd === 0 ? a : b, odd === 1 ? d : c, d))
  .filter((c) => Math.hypot(c.to.x - c.from.x, c.to.y - c.from.y) > 1);

/** Curves as they come on garments: turning one way by up to 120 degrees, handles of ordinary length. */
export const tameCubic: fc.Arbitrary<Cubic> = fc
  .tuple(
    aPoint,
    number(20, 400),
    number(0, 2 * Math.PI),
    number(-60, 60),
    number(-60, 60),
    number(0.25, 0.45),
    number(0.25, 0.45),
  )
  .map(([from, chord, way, before, after, first, second]) => {
    const degree = Math.PI / 180;
    const at = (p: Point, angle: number, reach: number) =>
      point(p.x + reach * Math.cos(angle), p.y + reach * Math.sin(angle));
    const to = at(from, way, chord);
    return cubic(
      from,
      at(from, way - before * degree, first * chord),
      at(to, way + Math.PI + after * degree, second * chord),
      to,
    );
  });

/** Several cubics, corners between them. */
export const wildPath: fc.Arbitrary<Path> = fc
  .array(wildCubic, { minLength: 1, maxLength: 4 })
  .map(([first, ...rest]) => {
    const segments: Cubic[] = [];
    let end = first?.to ?? point(0, 0);
    for (const c of rest) {
      segments.push(cubic(end, c.c1, c.c2, c.to));
      end = c.to;
    }
    return pathOf(first ?? cubic(end, end, end, point(1, 1)), ...segments);
  });

/**
 * The four edges and more of a star-shaped outline around the origin, clockwise on paper, edges gently
 * curved.
 */
export const starEdges: fc.Arbitrary<readonly Path[]> = fc
  .array(fc.record({ gap: number(0.6, 1.4), radius: number(120, 300), bow: number(-0.12, 0.12) }), {
    minLength: 3,
    maxLength: 9,
  })
  .map((spokes) => {
    const total = spokes.reduce((sum, s) => sum + s.gap, 0);
    let angle = 0;
    const corners = spokes.map(({ gap, radius }) => {
      angle += (gap / total) * 2 * Math.PI;
      return point(radius * Math.cos(angle), radius * Math.sin(angle));
    });
    return corners.map((from, i) => {
      const to = corners[(i + 1) % corners.length] ?? from;
      const bow = spokes[i]?.bow ?? 0;
      const side = point((to.y - from.y) * bow, (from.x - to.x) * bow);
      return pathOf(cubic(from, third(from, to, side, 1), third(from, to, side, 2), to));
    });
  });

function third(from: Point, to: Point, side: Point, n: number): Point {
  return point(from.x + ((to.x - from.x) * n) / 3 + side.x, from.y + ((to.y - from.y) * n) / 3 + side.y);
}

export function outlineOf(edges: readonly Path[]): Outline {
  const [first, ...rest] = edges.flatMap((e) => e.segments);
  if (first === undefined) throw new Error('An outline needs an edge.');
  return pathOf(first, ...rest);
}

/** The plain Bernstein formula, written out apart from the engine. */
export function onCubic(c: Cubic, t: number): Point {
  const u = 1 - t;
  const mix = (k: 'x' | 'y') =>
    u ** 3 * c.from[k] + 3 * u * u * t * c.c1[k] + 3 * u * t * t * c.c2[k] + t ** 3 * c.to[k];
  return point(mix('x'), mix('y'));
}

/** First derivative, written out apart from the engine. */
export function cubicSpeed(c: Cubic, t: number): Point {
  const u = 1 - t;
  const mix = (k: 'x' | 'y') =>
    3 * u * u * (c.c1[k] - c.from[k]) + 6 * u * t * (c.c2[k] - c.c1[k]) + 3 * t * t * (c.to[k] - c.c2[k]);
  return point(mix('x'), mix('y'));
}
