import { describe, expect, test } from 'vitest';
import { goodGarment, goodInput } from '../../../tests/fixtures/good-garment.ts';
import { linePath, offsetOutline, type Point, pathLength } from '../geometry/index.ts';
import type { EdgeKind, Garment, Piece, SeamEdge } from '../piece/index.ts';
import { lookAt } from './look.ts';
import { growthWhenTrimmed } from './trimmed-edge.ts';

/** What the formula says against what a parallel line of the geometry room measures. */

/** The parallel is true within 0.02 mm, so a whole millimetre is trimmed; the formula is exact for bends of this size. */
const STEP = 1;

/** Growth of the named edges for each mm, measured on a parallel. */
function measuredGrowth(piece: Piece, names: readonly string[]): number {
  const paths = piece.edges.map((edge) => edge.path);
  const moved = offsetOutline(
    paths,
    piece.edges.map((edge) => (names.includes(edge.name) ? -STEP : 0)),
  );
  return piece.edges.reduce((sum, edge, i) => {
    const after = moved[i];
    if (!names.includes(edge.name) || after === undefined) return sum;
    return sum + (pathLength(after) - pathLength(edge.path)) / STEP;
  }, 0);
}

function growth(garment: Garment, piece: string, names: readonly string[]) {
  const side: SeamEdge[] = names.map((edge) => ({ piece, edge, times: 1 }));
  return growthWhenTrimmed(lookAt({ ...goodInput(), garment }), side);
}

function polygon(...corners: readonly Point[]): Piece {
  const names = ['one', 'two', 'three', 'four', 'five'];
  return {
    ...(goodGarment().pieces[0] as Piece),
    id: 'shape',
    edges: corners.map((from, i) => ({
      name: names[i] ?? '',
      kind: 'armhole' satisfies EdgeKind,
      path: linePath(from, corners[(i + 1) % corners.length] ?? from),
    })),
  };
}

describe('growthWhenTrimmed', () => {
  const dress = goodGarment();

  test.each([
    ['front', 'neckline'],
    ['front', 'armhole'],
    ['back', 'neckline'],
    ['back', 'armhole'],
  ])('agrees with a parallel of the %s %s', (id, edge) => {
    const piece = dress.pieces.find((p) => p.id === id) as Piece;
    const [least, most] = growth(dress, id, [edge]);
    expect(least).toBe(most);
    expect(least).toBeGreaterThan(0.5);
    expect(measuredGrowth(piece, [edge])).toBeCloseTo(least, 1);
  });

  test.each([
    ['a hollow corner', { x: 60, y: 40 }],
    ['a bulging corner', { x: 60, y: -40 }],
  ])('counts %s between two trimmed edges', (_, middle) => {
    const piece = polygon({ x: 0, y: 0 }, middle, { x: 120, y: 10 }, { x: 130, y: 150 }, { x: -20, y: 150 });
    const garment = { ...dress, pieces: [piece] };
    const [least, most] = growth(garment, 'shape', ['one', 'two']);
    expect(least).toBe(most);
    expect(measuredGrowth(piece, ['one', 'two'])).toBeCloseTo(least, 1);
    // Told as a corner inside one edge it comes to the same.
    const joined: Piece = {
      ...piece,
      edges: [
        { name: 'one', kind: 'armhole', path: linePath({ x: 0, y: 0 }, middle, { x: 120, y: 10 }) },
        ...piece.edges.slice(2),
      ],
    };
    expect(growth({ ...dress, pieces: [joined] }, 'shape', ['one'])[0]).toBeCloseTo(least, 9);
  });

  test('allows a step where the edge runs on almost straight into a neighbour that stays', () => {
    const at = (bend: number): Piece =>
      polygon({ x: 0, y: 0 }, { x: 100, y: 0 }, { x: 200, y: bend }, { x: 200, y: 200 }, { x: 0, y: 200 });
    // 10 in 100 is 5.7 degrees: the parallel would slide ten times the trim before it meets the neighbour.
    expect(growth({ ...dress, pieces: [at(10)] }, 'shape', ['one'])[1]).toBeCloseTo(3.5, 9);
    const [shortest, longest] = growth({ ...dress, pieces: [at(-10)] }, 'shape', ['one']);
    expect(shortest).toBeCloseTo(-3.5, 9);
    expect(longest).toBeCloseTo(1, 9);
    const [least, most] = growth({ ...dress, pieces: [at(100)] }, 'shape', ['one']);
    expect(least).toBeCloseTo(1, 9);
    expect(most).toBeCloseTo(1, 9);
  });
});
