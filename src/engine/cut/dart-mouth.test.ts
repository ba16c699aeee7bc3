import { describe, expect, it } from 'vitest';
import { dressOf, pieceNamed } from '../../../tests/dress-of.ts';
import { outlineContains, pathCrossings, pathMirrorLine } from '../geometry/index.ts';
import { edgeEnd, edgeOf, edgeStart } from '../piece/index.ts';
import { makeCutPiece } from './index.ts';

describe('cutting a dart', () => {
  const front = pieceNamed(
    dressOf({ ageMonths: 120, steps: [['waist-darts', { count: 'one', width: '20 mm', tip: '20 mm' }]] }),
    'front',
  );
  const { cuttingLine } = makeCutPiece(front, {
    label: () => ({ title: '', cutting: '', child: '', size: '', date: '' }),
    own: { table: { waist: 15 } },
  });
  const [outer, tip, inner] = [
    edgeStart(front, 'dart-1-outer'),
    edgeEnd(front, 'dart-1-outer'),
    edgeEnd(front, 'dart-1-inner'),
  ];

  it('runs across the mouth and never into the dart', () => {
    for (const leg of ['dart-1-outer', 'dart-1-inner'])
      expect(pathCrossings(cuttingLine, edgeOf(front, leg).path)).toEqual([]);
    const mouth = { x: tip.x, y: Math.max(outer.y, inner.y) + 14 };
    expect(outlineContains(cuttingLine, mouth)).toBe(true);
    expect(outlineContains(cuttingLine, { x: tip.x, y: mouth.y + 10 })).toBe(false);
  });

  it('gives the folded dart the same allowance as the waist beside it', () => {
    // Folded on the inner leg, what lies inside the dart must end where the allowance of the waist ends.
    const folded = pathMirrorLine(cuttingLine, tip, inner);
    for (const share of [0.2, 0.5, 0.8]) {
      const x = inner.x - share * 8;
      const down = { kind: 'line', from: { x, y: inner.y }, to: { x, y: inner.y + 60 } } as const;
      const plumb = { segments: [down] } as const;
      const [own, under] = [cuttingLine, folded].map((line) =>
        Math.min(...pathCrossings(plumb, line).map((hit) => hit.point.y)),
      );
      expect(Math.abs((own ?? 0) - (under ?? 99))).toBeLessThan(0.5);
    }
  });
});

describe('what a design step asks to be added', () => {
  const label = () => ({ title: '', cutting: '', child: '', size: '', date: '' });
  const front = pieceNamed(dressOf({ steps: [['let-out-seams', { allowance: '40 mm' }]] }), 'front');

  it('goes before the table, and after the number for one edge', () => {
    expect(makeCutPiece(front, { label, own: { table: { side: 20 } } }).allowances.side).toBe(40);
    const own = { edges: [{ piece: 'front', edge: 'side', allowance: 12 }] };
    expect(makeCutPiece(front, { label, own }).allowances.side).toBe(12);
  });
});
