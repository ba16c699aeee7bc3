import { describe, expect, it } from 'vitest';
import { pathLength, pathOffset } from '../../src/engine/geometry/index.ts';
import { edgeLength, edgeOf, type Garment } from '../../src/engine/piece/index.ts';
import { inches } from '../../src/engine/units/index.ts';
import { dressOf, pieceNamed } from '../dress-of.ts';

/** Cloth round a pleated skirt as a multiple of its waist, and what the seam says is taken up. */
function pleated(cloth: number, waist: number): { readonly cloth: number; readonly takenUp: number } {
  const dress = dressOf({ steps: [['pleated-skirt', { fullness: cloth / waist }]] });
  const seam = dress.seams.find((s) => s.id === 'skirt-waist');
  if (seam?.join.kind !== 'pleated') throw new Error('The waist seam must be pleated.');
  const { pleats, spacing, takeUp } = seam.join;
  const scale = waist / (pleats * spacing);
  const widths = dress.pieces
    .filter((piece) => piece.id.startsWith('skirt-'))
    .reduce((sum, piece) => sum + edgeLength(piece, 'waist'), 0);
  return { cloth: widths * scale, takenUp: pleats * takeUp * scale };
}

/** I. DeN. Conover, A Complete Course in Dressmaking, lesson V, pp. 63-64, all on the half. */
describe('what is taken up in pleats, against published sums', () => {
  for (const [place, cloth, finished, takenUp] of [
    ['waist', 44, 14, 30],
    ['hip', 44, 20, 24],
    ['hem', 44, 27.5, 16.5],
  ] as const) {
    it(`cloth ${cloth} in, ${place} ${finished}: ${takenUp} to pleat`, () => {
      expect(pleated(cloth, finished).takenUp).toBeCloseTo(takenUp, 9);
      expect(pleated(cloth, finished).cloth).toBeCloseTo(cloth, 9);
    });
  }

  it('160 in goes into 26 in, 6.15 to 1 (a page on the algebra of pleats, Nov 2018)', () => {
    const dress = pleated(160, 26);
    expect(dress.cloth / 26).toBeCloseTo(6.15, 2);
  });
});

describe('hems of circles (geometry)', () => {
  const hemRound = (dress: Garment, out: number): number =>
    2 *
    ['skirt-front', 'skirt-back'].reduce(
      (sum, id) => sum + pathLength(pathOffset(edgeOf(pieceNamed(dress, id), 'hem').path, out)),
      0,
    );

  // T. Johnson, It's Fun to Sew, asks for 1/4 in on a circle: that is why.
  for (const [part, up, excess] of [
    ['full', 1, 6.28],
    ['full', 0.25, 1.57],
    ['half', 1, 3.14],
    ['half', 0.25, 0.785],
  ] as const) {
    it(`a ${part} circle turned up ${up} in has ${excess} in too much`, () => {
      const dress = dressOf({ steps: [['circle-skirt', { part }]] });
      const over = hemRound(dress, inches(up)) - hemRound(dress, 0);
      expect(Math.abs(over / 25.4 - excess)).toBeLessThan(0.01);
    });
  }

  it('a full circle 45 long has 282.74 more at the hem than at the waist', () => {
    const dress = dressOf({ steps: [['circle-skirt', { part: 'full', length: '45 cm' }]] });
    const waist =
      2 *
      ['skirt-front', 'skirt-back'].reduce((sum, id) => sum + edgeLength(pieceNamed(dress, id), 'waist'), 0);
    expect(Math.abs((hemRound(dress, 0) - waist) / 10 - 282.74)).toBeLessThan(0.01);
  });
});
