import { describe, expect, it } from 'vitest';
import { dressOf, pieceNamed, refusalOf } from '../../../tests/dress-of.ts';
import { sleeveFaults } from '../../../tests/sleeve-faults.ts';
import { edgeLength } from '../piece/index.ts';

describe('cap sleeve', () => {
  for (const reach of ['above-underarm', 'round']) {
    it(`${reach}: everything agrees at every age`, () => {
      for (const ageMonths of [6, 12, 24, 48, 84, 120, 144]) {
        const step: [string, Record<string, string>] = ['cap-sleeve', { reach }];
        expect(sleeveFaults({ ageMonths, steps: [step] }), `${ageMonths} months`).toEqual([]);
        expect(sleeveFaults({ ageMonths, steps: ['yoke', 'lining', step] })).toEqual([]);
      }
    });
  }

  it('ends above the underarm as asked, is as long as the armhole there and its ease, and lined with itself', () => {
    const dress = dressOf({ steps: [['cap-sleeve', { clear: '30 mm', capEase: '8 mm' }]] });
    const cap = pieceNamed(dress, 'sleeve');
    for (const half of ['front', 'back']) {
      const covered = edgeLength(pieceNamed(dress, half), 'armhole') - 30;
      expect(edgeLength(cap, `cap-${half}`) - covered).toBeCloseTo(4, 6);
    }
    expect(cap.cutting.copies).toBe(4);
  });

  it('never ends less than 1 cm above the underarm (common practice)', () => {
    expect(refusalOf({ steps: [['cap-sleeve', { clear: '9 mm' }]] })).toBe('cap-sleeve.clear out-of-range');
  });

  it('right round has an underarm seam as long as asked', () => {
    const cap = pieceNamed(dressOf({ steps: [['cap-sleeve', { reach: 'round', over: '20 mm' }]] }), 'sleeve');
    expect(edgeLength(cap, 'underarm-front')).toBeCloseTo(20, 6);
    expect(edgeLength(cap, 'underarm-back')).toBeCloseTo(20, 6);
    expect(cap.cutting.copies).toBe(2);
  });
});
