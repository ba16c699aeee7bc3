import { describe, expect, it } from 'vitest';
import { edgeLength, type Garment } from '../../src/engine/piece/index.ts';
import { inches } from '../../src/engine/units/index.ts';
import { dressOf, pieceNamed, type Wish } from '../dress-of.ts';

const neckline = (dress: Garment): number =>
  ['front', 'back'].reduce((sum, id) => sum + 2 * edgeLength(pieceNamed(dress, id), 'neckline'), 0);

/** The value between two others at which a growing length of a dress is as wished, mm. */
function solve(lengthAt: (value: number) => number, from: number, to: number, wished: number): number {
  let [low, high] = [from, to];
  for (let i = 0; i < 40; i++) {
    const middle = (low + high) / 2;
    if (lengthAt(middle) < wished) low = middle;
    else high = middle;
  }
  return high;
}

describe('published figures of necks', () => {
  it('head 51 cm, neckline 28 cm: the least slit is 11.5 cm, and 13 to 15 cm are used (exam solution page on plackets)', () => {
    const wish = (neckBaseGirth: number): Wish => ({
      measured: { headGirth: 510, neckBaseGirth },
      steps: ['keyhole-back'],
    });
    const dress = dressOf(wish(solve((mm) => neckline(dressOf(wish(mm))), 240, 300, 280)));
    expect(neckline(dress)).toBeCloseTo(280, 1);
    const slit = dress.closing?.openingLength ?? 0;
    expect(slit).toBeGreaterThan(115);
    expect(slit).toBeGreaterThanOrEqual(129.9);
    expect(slit).toBeLessThanOrEqual(150);
  });

  it('an edge of 15 in gathered 2.5 to 1 takes 37 1/2 in of cloth (teaching page on gathers)', () => {
    const steps = (widen: number): NonNullable<Wish['steps']> => [
      ['neckline', { widen: `${widen} mm` }],
      ['neck-frill', { ratio: 2.5 }],
    ];
    const widen = solve((mm) => neckline(dressOf({ steps: steps(mm) })), 0, 45, inches(15));
    const dress = dressOf({ steps: steps(widen) });
    expect(neckline(dress)).toBeCloseTo(inches(15), 1);
    expect(2 * edgeLength(pieceNamed(dress, 'neck-frill'), 'upper')).toBeCloseTo(inches(37.5), 0);
  });
});
