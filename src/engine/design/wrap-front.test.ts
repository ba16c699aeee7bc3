import { describe, expect, it } from 'vitest';
import { dressOf, pieceNamed, refusalOf } from '../../../tests/dress-of.ts';
import { edgeEnd, edgeLength, edgeOf, edgeStart } from '../piece/index.ts';

const ageMonths = 96;

describe('wrapped front', () => {
  it('is a pair that reaches as far beyond the centre as asked, and keeps its own waist', () => {
    const plain = pieceNamed(dressOf({ ageMonths }), 'front');
    const front = pieceNamed(dressOf({ ageMonths, steps: [['wrap-front', { reach: '80 mm' }]] }), 'front');
    expect(front.cutting).toEqual({ as: 'pair', copies: 2 });
    expect(front.edges.some((edge) => edge.kind === 'fold')).toBe(false);
    expect(edgeEnd(front, 'waist-overlap').x).toBeCloseTo(-80, 4);
    expect(edgeLength(front, 'waist') + edgeLength(front, 'waist-inner')).toBeCloseTo(
      edgeLength(plain, 'waist'),
      4,
    );
    expect(edgeLength(front, 'waist-overlap')).toBeCloseTo(edgeLength(front, 'waist-inner'), 9);
  });

  it('by its rule reaches to the other side seam, so that the overlap is the mirror of the whole waist', () => {
    const front = pieceNamed(dressOf({ ageMonths, steps: ['wrap-front'] }), 'front');
    expect(edgeLength(front, 'waist-overlap')).toBeCloseTo(edgeLength(front, 'waist'), 9);
    expect(edgeEnd(front, 'waist-overlap').x).toBeCloseTo(-edgeEnd(front, 'side').x, 6);
  });

  it('has a neck from the overlap to the neck point', () => {
    const front = pieceNamed(dressOf({ ageMonths, steps: ['wrap-front'] }), 'front');
    expect(edgeStart(front, 'neckline')).toEqual(edgeEnd(front, 'overlap-end'));
    expect(edgeEnd(front, 'neckline')).toEqual(edgeStart(front, 'shoulder'));
    expect(edgeOf(front, 'neckline').kind).toBe('neck');
  });

  it('ends at a dart, and its skirt goes once round the waist', () => {
    const dart = { count: 'one', width: '15 mm', tip: '20 mm', back: false };
    const dress = dressOf({
      ageMonths,
      steps: [['waist-darts', dart], 'wrap-front', 'circle-skirt', 'lining'],
    });
    const front = pieceNamed(dress, 'front');
    expect(edgeEnd(front, 'waist-overlap').x).toBeCloseTo(-edgeStart(front, 'waist-2').x, 6);
    const ring = dress.seams.find((seam) => seam.id === 'skirt-waist');
    expect(ring?.a.filter((edge) => edge.piece === 'front').map((edge) => edge.edge)).toEqual([
      'waist',
      'waist-2',
      'waist-2',
      'waist',
    ]);
    expect(dress.seams.filter((seam) => seam.id.startsWith('wrap-')).map((seam) => seam.id)).toEqual([
      'wrap-front',
      'wrap-front-lining',
    ]);
  });

  it('refuses a yoke that has taken the neck away', () => {
    expect(refusalOf({ ageMonths, steps: ['yoke', 'wrap-front'] })).toBe('wrap-front.parted');
  });
});
