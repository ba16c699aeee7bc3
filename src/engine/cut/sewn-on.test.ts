import { describe, expect, test } from 'vitest';
import { dressOf } from '../../../tests/dress-of.ts';
import { pathBounds } from '../geometry/index.ts';
import type { Garment } from '../piece/index.ts';
import { makeCutPieces, type OwnAllowances } from './index.ts';

const label = () => ({ title: 'Piece', cutting: 'Cut 1', child: 'Child', size: '', date: '' });

function cutOf(garment: Garment, id: string, own: OwnAllowances = {}) {
  const cut = makeCutPieces(garment, { label, own }).find(({ piece }) => piece.id === id);
  if (cut === undefined) throw new Error(`No piece ${id}`);
  return cut;
}

describe('an edge that is sewn onto another', () => {
  const dress = dressOf({ steps: ['flat-collar', 'neck-binding'] });

  test('takes the allowance of its mate, also when the maker changes that', () => {
    for (const own of [{}, { table: { neck: 9 } }]) {
      const neck = cutOf(dress, 'front', own).allowances.neckline;
      expect(cutOf(dress, 'collar', own).allowances.neck).toBe(neck);
      expect(cutOf(dress, 'neck-binding', own).allowances.upper).toBe(neck);
    }
    expect(cutOf(dress, 'collar', { table: { neck: 9 } }).allowances.neck).toBe(9);
  });

  test('keeps what the maker asks for it', () => {
    expect(cutOf(dress, 'collar', { table: { attach: 12 } }).allowances.neck).toBe(12);
    const edges = [{ piece: 'collar', edge: 'neck', allowance: 4 }];
    expect(cutOf(dress, 'collar', { edges }).allowances.neck).toBe(4);
    expect(cutOf(dress, 'neck-binding', { edges }).allowances.upper).toBe(6);
  });
});

test.each([
  ['8 mm', 30],
  ['10 mm', 34],
] as const)('a bias strip finished %s is cut %d mm wide, between 3 and 3.5 cm', (finishedWidth, width) => {
  const { cuttingLine } = cutOf(dressOf({ steps: [['neck-binding', { finishedWidth }]] }), 'neck-binding');
  const { minY, maxY } = pathBounds(cuttingLine);
  expect(maxY - minY).toBeCloseTo(width, 6);
});
