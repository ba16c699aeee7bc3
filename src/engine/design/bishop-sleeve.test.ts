import { describe, expect, it } from 'vitest';
import { dressOf, pieceNamed, refusalOf } from '../../../tests/dress-of.ts';
import { sleeveFaults } from '../../../tests/sleeve-faults.ts';
import { edgeLength } from '../piece/index.ts';

describe('bishop sleeve', () => {
  for (const end of ['cuff', 'elastic']) {
    it(`${end}: everything agrees and hand and arm pass at every age`, () => {
      for (const ageMonths of [6, 12, 24, 48, 84, 120, 144]) {
        for (const others of [[], ['yoke', 'back-zip', 'lining']]) {
          const steps = [...others, ['bishop-sleeve', { end }] as [string, Record<string, string>]];
          expect(sleeveFaults({ ageMonths, steps }), `${ageMonths} months`).toEqual([]);
        }
      }
    });
  }

  it('is gathered into its cuff by the fullness, and the cuff stands over for its button', () => {
    const measured = { wristGirth: 130 };
    const dress = dressOf({ measured, steps: [['bishop-sleeve', { fullness: 2, cuffEase: '25 mm' }]] });
    const cuff = pieceNamed(dress, 'sleeve-cuff');
    expect(edgeLength(cuff, 'attach')).toBe(155);
    expect(edgeLength(cuff, 'foot')).toBe(175);
    expect(dress.trims).toMatchObject([{ kind: 'buttons', place: 'sleeve', diameter: 11 }]);
    const sleeve = pieceNamed(dress, 'sleeve');
    const hem = edgeLength(sleeve, 'sleeve-edge') + edgeLength(sleeve, 'sleeve-edge-back');
    expect(hem / 310).toBeCloseTo(1, 2);
    expect(edgeLength(sleeve, 'sleeve-edge-back')).toBeCloseTo(hem / 4, 6);
  });

  it('refuses a slit longer than the sleeve is below its cap', () => {
    const steps: [string, Record<string, string>][] = [
      ['bishop-sleeve', { slit: '100 mm', length: '150 mm' }],
    ];
    expect(refusalOf({ ageMonths: 6, steps })).toBe('bishop-sleeve.no-slit');
  });
});
