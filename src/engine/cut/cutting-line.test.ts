import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { aFront, edge, frontEdges, label, panel, pieceOf } from '../../../tests/outside/cut-shapes.ts';
import { number } from '../../../tests/outside/geometry-shapes.ts';
import {
  cubic,
  distance,
  linePath,
  outlineArea,
  outlineContains,
  outlineIsClosed,
  outlineSelfCrossings,
  type Path,
  type Point,
  pathAt,
  pathBounds,
  pathEnd,
  pathFlatten,
  pathLength,
  pathMirrorLine,
  pathNearest,
  pathOf,
  pathStart,
  point,
} from '../geometry/index.ts';
import { type Edge, outlineOf, type Piece } from '../piece/index.ts';
import { makeCutPiece, type OwnAllowances } from './index.ts';

const SEED = { seed: 31_415, numRuns: 120 };

/** The rules that hold for every cutting line. */
function expectSound(piece: Piece, cuttingLine: Path): void {
  expect(outlineIsClosed(cuttingLine)).toBe(true);
  expect(outlineSelfCrossings(cuttingLine)).toEqual([]);
  const stitching = outlineOf(piece);
  expect(outlineArea(cuttingLine)).toBeGreaterThanOrEqual(outlineArea(stitching) - 1e-6);
  const total = pathLength(stitching);
  for (let i = 0; i < 80; i++) {
    const p = pathAt(stitching, (total * i) / 80).point;
    if (!outlineContains(cuttingLine, p)) expect(pathNearest(cuttingLine, p).distance).toBeLessThan(1e-3);
  }
}

/** Points every 2 mm or so. */
const alongPath = (path: Path): Point[] => {
  const steps = Math.ceil(pathLength(path) / 2);
  return Array.from({ length: steps }, (_, i) => pathAt(path, (pathLength(path) * i) / steps).point);
};

const middle = (e: Edge): Point => pathAt(e.path, pathLength(e.path) / 2).point;

describe('the cutting line', () => {
  it('of a rectangle with 15 mm sides and a 60 mm hem has the size that arithmetic gives', () => {
    const own: OwnAllowances = { table: { join: 15, waist: 15, hem: 60 } };
    const { cuttingLine, allowances } = makeCutPiece(pieceOf(panel(400, 300)), { label, own });
    expect(pathBounds(cuttingLine)).toEqual({ minX: -15, minY: -15, maxX: 415, maxY: 360 });
    expect(outlineArea(cuttingLine)).toBeCloseTo(430 * 375, 6);
    expect(allowances).toEqual({ waist: 15, right: 15, hem: 60, left: 15 });
    expect(pathLength(cuttingLine)).toBeCloseTo(2 * (430 + 375), 6);
  });

  it('of a front is closed, simple, and lies its allowance away from the middle of every edge', () => {
    fc.assert(
      fc.property(aFront, (f) => {
        const piece = pieceOf(frontEdges(f), { cutting: { as: 'fold', copies: 1 } });
        const { cuttingLine, allowances } = makeCutPiece(piece, { label });
        expectSound(piece, cuttingLine);
        for (const e of piece.edges) {
          expect(
            Math.abs(pathNearest(cuttingLine, middle(e)).distance - (allowances[e.name] ?? -1)),
          ).toBeLessThan(0.05);
        }
      }),
      SEED,
    );
  });

  it('keeps to the fold, and its neighbours run out to the line of the fold', () => {
    const piece = pieceOf(
      frontEdges({
        neckWidth: 55,
        neckDepth: 60,
        shoulder: 70,
        slope: 20,
        depth: 70,
        chest: 30,
        length: 90,
        waist: -5,
      }),
    );
    const { cuttingLine, allowances } = makeCutPiece(piece, { label });
    expect(allowances.centre).toBe(0);
    const box = pathBounds(cuttingLine);
    expect(box.minX).toBeCloseTo(0, 9);
    const onFold = pathFlatten(cuttingLine, 1).filter((p) => Math.abs(p.x) < 1e-9);
    expect(Math.min(...onFold.map((p) => p.y))).toBeCloseTo(60 - 6, 6);
    expect(Math.max(...onFold.map((p) => p.y))).toBeCloseTo(box.maxY, 6);
  });

  it('stays simple whatever the maker adds', () => {
    fc.assert(
      fc.property(
        aFront,
        fc.record({
          neck: number(0, 40),
          shoulder: number(0, 60),
          armhole: number(0, 60),
          side: number(0, 60),
          waist: number(0, 60),
        }),
        (f, table) => {
          const piece = pieceOf(frontEdges(f));
          const { cuttingLine } = makeCutPiece(piece, { label, own: { table } });
          expectSound(piece, cuttingLine);
        },
      ),
      SEED,
    );
  });

  it('cuts off the loop that an allowance makes in a hollow tighter than itself', () => {
    const slot: Edge[] = [
      edge('left', 'side', linePath(point(0, 0), point(100, 0))),
      edge('hollow', 'neck', pathOf(cubic(point(100, 0), point(100, 60), point(116, 60), point(116, 0)))),
      edge(
        'right',
        'side',
        linePath(point(116, 0), point(220, 0), point(220, 150), point(0, 150), point(0, 0)),
      ),
    ];
    const piece = pieceOf(slot);
    for (const neck of [4, 8, 12, 20]) {
      const { cuttingLine } = makeCutPiece(piece, { label, own: { table: { neck, side: 10 } } });
      expectSound(piece, cuttingLine);
    }
  });
});

describe('a corner at a hem', () => {
  /** A skirt panel whose sides lean or bow, so that only a mirrored corner lies flat when turned up. */
  const aPanel = fc
    .record({
      lean: number(-60, 90),
      bow: number(-12, 12),
      hem: number(20, 110),
      side: number(6, 25),
      dip: number(-8, 8),
    })
    .map(({ lean, bow, hem, side, dip }) => {
      const [a, b, c, d] = [point(0, 0), point(300, 0), point(300 + lean, 260), point(-lean, 260)];
      const bowed = (from: Point, to: Point, by: number) =>
        pathOf(
          cubic(
            from,
            point(from.x + (to.x - from.x) / 3 + by, from.y + (to.y - from.y) / 3),
            point(from.x + (2 * (to.x - from.x)) / 3 + by, from.y + (2 * (to.y - from.y)) / 3),
            to,
          ),
        );
      const hemLine = pathOf(
        cubic(c, point(c.x + (d.x - c.x) / 3, 260 + dip), point(c.x + (2 * (d.x - c.x)) / 3, 260 + dip), d),
      );
      const piece = pieceOf([
        edge('waist', 'waist', linePath(a, b)),
        edge('right', 'side', bowed(b, c, bow)),
        edge('hem', 'hem', hemLine),
        edge('left', 'side', bowed(d, a, -bow)),
      ]);
      return { piece, own: { table: { hem, side } }, straight: dip === 0 };
    });

  it('turns up onto the piece and its allowance, nothing stands out and nothing is missing', () => {
    fc.assert(
      fc.property(aPanel, ({ piece, own }) => {
        const { cuttingLine } = makeCutPiece(piece, { label, own });
        expectSound(piece, cuttingLine);
        const hem = piece.edges[2];
        if (hem === undefined) throw new Error('The hem is missing.');
        for (const [corner, tangentTo] of [
          [pathStart(hem.path), pathAt(hem.path, 1e-3).point],
          [pathEnd(hem.path), pathAt(hem.path, pathLength(hem.path) - 1e-3).point],
        ] as const) {
          const along = point((tangentTo.x - corner.x) * 1e3, (tangentTo.y - corner.y) * 1e3);
          const up = point(-along.y, along.x);
          const above = (p: Point) => (p.x - corner.x) * up.x + (p.y - corner.y) * up.y;
          const sign = Math.sign(above(point(150, 0)));
          const folded = pathMirrorLine(cuttingLine, corner, point(corner.x + along.x, corner.y + along.y));
          // What lies below the hem line near this corner, folded up, must lie inside the cutting line ...
          for (const p of alongPath(folded)) {
            if (distance(p, corner) > 1.3 * own.table.hem || above(p) * sign < 0.01) continue;
            if (!outlineContains(cuttingLine, p))
              expect(pathNearest(cuttingLine, p).distance).toBeLessThan(0.03);
          }
          // ... and along the side edge on edge; near the far end of the turning the curve of the hem decides.
          const reach = Math.min(own.table.hem * 0.6, 60);
          const sideways = alongPath(cuttingLine).filter(
            (p) =>
              above(p) * sign > 0 &&
              above(p) * sign < reach &&
              distance(p, corner) < own.table.side + reach + 20,
          );
          expect(sideways.length).toBeGreaterThan(0);
          for (const p of sideways) expect(pathNearest(folded, p).distance).toBeLessThan(0.05);
        }
      }),
      SEED,
    );
  });

  it('leaning out by 45 degrees leans in below the hem, by hand', () => {
    const [a, b, c, d] = [point(0, 0), point(200, 0), point(300, 100), point(-100, 100)];
    const piece = pieceOf([
      edge('waist', 'waist', linePath(a, b)),
      edge('right', 'side', linePath(b, c)),
      edge('hem', 'hem', linePath(c, d)),
      edge('left', 'side', linePath(d, a)),
    ]);
    const { cuttingLine } = makeCutPiece(piece, { label, own: { table: { hem: 40, side: 10, waist: 10 } } });
    // The side line lies 10 root 2 out from the corner on the hem line; 40 below it, it is 40 further in.
    const out = 300 + 10 * Math.SQRT2;
    for (const p of [point(out, 100), point(out - 40, 140), point(200 - out, 100), point(240 - out, 140)]) {
      expect(pathNearest(cuttingLine, p).distance).toBeLessThan(1e-9);
    }
    expect(pathBounds(cuttingLine).maxX).toBeCloseTo(out, 9);
  });

  it('on the fold goes straight on along the fold', () => {
    const piece = pieceOf(panel(200, 300).map((e) => (e.name === 'left' ? { ...e, kind: 'fold' } : e)));
    const { cuttingLine } = makeCutPiece(piece, { label, own: { table: { hem: 80, join: 10, waist: 10 } } });
    expect(pathBounds(cuttingLine)).toEqual({ minX: 0, minY: -10, maxX: 210, maxY: 380 });
  });
});
