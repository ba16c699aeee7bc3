/** Cutting lines of random pieces against the round offset of clipper2-ts. */
import { EndType, inflatePathsD, JoinType } from 'clipper2-ts';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { makeCutPiece } from '../../src/engine/cut/index.ts';
import {
  outlineContains,
  outlineIsClosed,
  outlineSelfCrossings,
  type Path,
  pathAt,
  pathFlatten,
  pathLength,
  pathNearest,
  point,
} from '../../src/engine/geometry/index.ts';
import { outlineOf, type Piece } from '../../src/engine/piece/index.ts';
import { number, starEdges } from './geometry-shapes.ts';

const SEED = { seed: 2_718, numRuns: 120 };
const label = () => ({ title: '', cutting: '', child: '', size: '', date: '' });

function starPiece(edges: readonly Path[]): Piece {
  return {
    id: 'star',
    title: { key: 'any', values: {} },
    edges: edges.map((path, i) => ({ name: `edge-${i}`, kind: 'style-line', path })),
    cloth: 'main',
    layer: 'shell',
    cutting: { as: 'single', copies: 1 },
    grain: { from: point(0, 50), to: point(0, -50) },
    notches: [],
    markings: [],
  };
}

describe('cutting lines of star-shaped pieces', () => {
  it('with one allowance all round agree with the round offset, but for their corners', () => {
    fc.assert(
      fc.property(starEdges, number(4, 25), (edges, d) => {
        const piece = starPiece(edges);
        const { cuttingLine } = makeCutPiece(piece, { label, own: { table: { 'style-line': d } } });
        expect(outlineIsClosed(cuttingLine)).toBe(true);
        expect(outlineSelfCrossings(cuttingLine)).toEqual([]);
        const stitching = pathFlatten(outlineOf(piece), 0.002);
        const [round] = inflatePathsD([stitching], d, JoinType.Round, EndType.Polygon, 2, 5, 0.002);
        for (const p of round ?? []) {
          // Inside, where corners reach out farther than an arc; on the line otherwise.
          if (!outlineContains(cuttingLine, p))
            expect(pathNearest(cuttingLine, p).distance).toBeLessThan(0.02);
        }
        // And nothing is added that is not a corner: every point lies the allowance away, or near a corner.
        for (const p of pathFlatten(cuttingLine, 0.05)) {
          const away = pathNearest(outlineOf(piece), p).distance;
          expect(away).toBeGreaterThan(d - 0.02);
          expect(away).toBeLessThan(4 * d + 0.02);
        }
      }),
      SEED,
    );
  });

  it('with an allowance for each edge lie that far from the middle of each', () => {
    fc.assert(
      fc.property(starEdges, fc.array(number(8, 12), { minLength: 9, maxLength: 9 }), (edges, distances) => {
        const piece = starPiece(edges);
        const own = {
          edges: edges.map((_, i) => ({ piece: 'star', edge: `edge-${i}`, allowance: distances[i] ?? 8 })),
        };
        const { cuttingLine, allowances } = makeCutPiece(piece, { label, own });
        expect(outlineIsClosed(cuttingLine)).toBe(true);
        expect(outlineSelfCrossings(cuttingLine)).toEqual([]);
        for (const { name, path } of piece.edges) {
          const total = pathLength(path);
          for (let i = 0; i <= 10; i++) {
            expect(outlineContains(cuttingLine, pathAt(path, (total * i) / 10).point)).toBe(true);
          }
          const middle = pathAt(path, total / 2).point;
          const away = pathNearest(cuttingLine, middle).distance;
          expect(Math.abs(away - (allowances[name] ?? 0))).toBeLessThan(0.05);
        }
      }),
      SEED,
    );
  });
});
