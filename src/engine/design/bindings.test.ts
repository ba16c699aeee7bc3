import { describe, expect, it } from 'vitest';
import { dressOf, pieceNamed, refusalOf, type Wish } from '../../../tests/dress-of.ts';
import { faultsOf } from '../../../tests/faults-of.ts';
import { edgeLength } from '../piece/index.ts';

const AGES = [6, 12, 24, 48, 84, 120, 144];
describe('a neck binding', () => {
  it('is as long as the neck, at every age and for every shape', () => {
    for (const ageMonths of AGES) {
      for (const shape of ['round', 'v', 'square', 'sweetheart', 'boat']) {
        for (const closing of ['back-zip', 'back-buttons']) {
          const steps: Wish['steps'] = [['neckline', { shape }], 'yoke', closing, 'neck-binding'];
          expect(faultsOf({ ageMonths, steps }), `${shape} ${closing} at ${ageMonths} months`).toEqual([]);
        }
      }
    }
    const dress = dressOf({ steps: ['neck-binding'] });
    const neck = ['front', 'back'].reduce(
      (sum, id) => sum + 2 * edgeLength(pieceNamed(dress, id), 'neckline'),
      0,
    );
    expect(edgeLength(pieceNamed(dress, 'neck-binding'), 'upper')).toBeCloseTo(neck, 9);
  });

  it('is cut on the bias', () => {
    const { from, to } = pieceNamed(dressOf({ steps: ['neck-binding'] }), 'neck-binding').grain;
    expect(Math.abs((to.y - from.y) / (to.x - from.x))).toBeCloseTo(1, 9);
  });

  it('is joined into a ring only where the back is closed', () => {
    const joins = (steps: NonNullable<Wish['steps']>) =>
      dressOf({ steps }).seams.filter((seam) => seam.id === 'neck-binding-join').length;
    expect(joins(['neck-binding'])).toBe(1);
    expect(joins(['back-zip', 'neck-binding'])).toBe(0);
  });

  it('is not possible on shoulders that open, and excludes a facing', () => {
    expect(refusalOf({ steps: ['shoulder-studs', 'neck-binding'] })).toBe('neck-binding.open-shoulders');
    expect(refusalOf({ steps: ['neck-facing', 'neck-binding'] })).toBe('two-of-a-kind');
  });
});

describe('an armhole binding', () => {
  it('is as long as the armhole of every neck, yoke and cap', () => {
    for (const ageMonths of AGES) {
      for (const other of [['yoke'], ['neckline', 'back-zip'], ['drop-shoulder']]) {
        expect(faultsOf({ ageMonths, steps: [...other, 'armhole-binding'] }), `${other}`).toEqual([]);
      }
    }
    const dress = dressOf({ steps: ['armhole-binding'] });
    const armhole = ['front', 'back'].reduce(
      (sum, id) => sum + edgeLength(pieceNamed(dress, id), 'armhole'),
      0,
    );
    expect(edgeLength(pieceNamed(dress, 'armhole-binding'), 'upper')).toBeCloseTo(armhole, 9);
    expect(pieceNamed(dress, 'armhole-binding').cutting.copies).toBe(2);
  });

  it('is refused where a sleeve is sewn in', () => {
    expect(refusalOf({ steps: ['set-in-sleeve', 'armhole-binding'] })).toBe('armhole-binding.sleeved');
  });
});
