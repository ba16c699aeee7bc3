import { describe, expect, it } from 'vitest';
import { makeCutPieces } from '../../src/engine/cut/index.ts';
import { pathBounds } from '../../src/engine/geometry/index.ts';
import { edgeLength, type Garment } from '../../src/engine/piece/index.ts';
import { inches } from '../../src/engine/units/index.ts';
import { dressOf, pieceNamed } from '../dress-of.ts';

const LABEL = { title: '', cutting: '', child: '', size: '', date: '' };

const round = (dress: Garment, tier: number): number =>
  2 *
  (edgeLength(pieceNamed(dress, `skirt-tier-${tier}-front`), 'waist') +
    edgeLength(pieceNamed(dress, `skirt-tier-${tier}-back`), 'waist'));

const waistOf = (dress: Garment): number =>
  2 * (edgeLength(pieceNamed(dress, 'front'), 'waist') + edgeLength(pieceNamed(dress, 'back'), 'waist'));

/** Cut depths of the tiers, allowances in. */
function cutDepths(dress: Garment, allowances: Record<string, number>): readonly number[] {
  return makeCutPieces(dress, { label: () => LABEL, own: { table: allowances } })
    .filter((cut) => /^skirt-tier-\d-front$/.test(cut.piece.id))
    .map((cut) => {
      const { minY, maxY } = pathBounds(cut.cuttingLine);
      return (maxY - minY) / 25.4;
    });
}

describe('tiers against published sums', () => {
  it('waist 23 in gathered 1.5 times takes 34 1/2 in; a tier of 36 in the next of 54 in ("Tiered skirt math")', () => {
    const dress = dressOf({ steps: ['tiered-skirt'] });
    expect((round(dress, 1) / waistOf(dress)) * 23).toBeCloseTo(34.5, 6);
    expect((round(dress, 2) / round(dress, 1)) * 36).toBeCloseTo(54, 6);
  });

  it('17 in in 3 tiers: 5 2/3 in each, cut 7 2/3 in with 2 in of seams ("Tiered skirt math")', () => {
    const dress = dressOf({ ageMonths: 84, steps: [['tiered-skirt', { length: '17 in' }]] });
    const depths = [1, 2, 3].map((tier) => edgeLength(pieceNamed(dress, `skirt-tier-${tier}-back`), 'left'));
    for (const depth of depths) expect(depth / 25.4).toBeCloseTo(17 / 3, 9);
    const cut = cutDepths(dress, { waist: inches(1), join: inches(1), hem: inches(1) });
    for (const depth of cut) expect(depth).toBeCloseTo(23 / 3, 9);
  });

  // The top of that skirt is a casing: twice the elastic of 1 in and 1/2 in; the hem takes one seam.
  it('30 in long in 3 tiers with seams of 1/2 in: cut 13, 11 and 11 in (teaching page on tiered skirts)', () => {
    const dress = dressOf({ ageMonths: 144, steps: [['tiered-skirt', { length: '30 in' }]] });
    const cut = cutDepths(dress, { waist: inches(2.5), join: inches(0.5), hem: inches(0.5) });
    expect(cut.map((depth) => Math.round(depth * 1e9) / 1e9)).toEqual([13, 11, 11]);
  });
});
