import { describe, expect, it } from 'vitest';
import { dressOf, pieceNamed, refusalOf } from '../../../tests/dress-of.ts';
import { sleeveFaults } from '../../../tests/sleeve-faults.ts';
import { pathLength, pathSlice } from '../geometry/index.ts';
import { edgeLength, edgeOf, edgeStart, type Garment } from '../piece/index.ts';

const AGES = [6, 12, 24, 48, 84, 120, 144];

const capNotch = (dress: Garment, half: 'front' | 'back'): number =>
  pieceNamed(dress, 'sleeve').notches.find((notch) => notch.match === `sleeve-${half}`)?.at ?? Number.NaN;

describe('puff sleeve', () => {
  for (const places of ['top', 'hem', 'both']) {
    for (const end of ['band', 'elastic']) {
      it(`gathered ${places}, ${end}: everything agrees at every age, in the yoke too`, () => {
        for (const ageMonths of AGES) {
          for (const others of [[], ['yoke', 'back-zip', 'lining']]) {
            const steps = [...others, ['puff-sleeve', { places, end }] as [string, Record<string, string>]];
            expect(sleeveFaults({ ageMonths, steps }), `${ageMonths} months`).toEqual([]);
          }
        }
      });
    }
  }

  it('is spread 75 % between the notches and gathered there only', () => {
    const straight = dressOf({ steps: [['set-in-sleeve', { capEase: 0, length: '140 mm' }]] });
    const puff = dressOf({ steps: [['puff-sleeve', { places: 'both', fullness: 1.75, length: '145 mm' }]] });
    const cut = (dress: Garment, half: 'front' | 'back') => {
      const cap = edgeOf(pieceNamed(dress, 'sleeve'), `cap-${half}`).path;
      const at = capNotch(dress, half);
      return half === 'front' ? pathSlice(cap, at, pathLength(cap)) : pathSlice(cap, 0, at);
    };
    for (const half of ['front', 'back'] as const) {
      expect(pathLength(cut(puff, half))).toBeCloseTo(pathLength(cut(straight, half)), 6);
      const seam = puff.seams.find((s) => s.id === `sleeve-cap-${half}`);
      expect(seam?.join.kind).toBe('gathered');
      if (seam?.join.kind !== 'gathered') continue;
      expect(seam.join.plainEnd).toBeCloseTo(pathLength(cut(puff, half)), 6);
      // The cap is raised as well, so its line grows by more than its width.
      expect(seam.join.ratio).toBeGreaterThan(1.4);
      expect(seam.join.ratio).toBeLessThan(2.3);
    }
    const width = (dress: Garment) =>
      edgeStart(pieceNamed(dress, 'sleeve'), 'underarm-front').x -
      edgeStart(pieceNamed(dress, 'sleeve'), 'cap-back').x;
    const between = (dress: Garment) => {
      const at = (half: 'front' | 'back') => cut(dress, half).segments;
      return (at('front')[0].from.x ?? 0) - (at('back').at(-1)?.to.x ?? 0);
    };
    expect(width(puff) - width(straight)).toBeCloseTo(between(straight) * 0.75, 3);
    expect(between(puff)).toBeCloseTo(between(straight) * 1.75, 3);
  });

  it('gathered at the end only keeps the cap as long as the armhole and its ease', () => {
    const dress = dressOf({ steps: [['puff-sleeve', { places: 'hem', capEase: '8 mm' }]] });
    const sleeve = pieceNamed(dress, 'sleeve');
    const cap = edgeLength(sleeve, 'cap-front') + edgeLength(sleeve, 'cap-back');
    const armhole =
      edgeLength(pieceNamed(dress, 'front'), 'armhole') + edgeLength(pieceNamed(dress, 'back'), 'armhole');
    expect(cap - armhole).toBeCloseTo(8, 3);
  });

  it('gathered at the cap only keeps the length of the end', () => {
    const measured = { upperArmGirth: 180 };
    const dress = dressOf({ measured, steps: [['puff-sleeve', { places: 'top', armEase: '40 mm' }]] });
    const hem = edgeLength(pieceNamed(dress, 'sleeve'), 'sleeve-edge');
    expect(Math.abs(hem - 220)).toBeLessThan(2);
  });

  it('elastic is the arm and 0 to 1 cm, a band the arm and 2.5 to 4 cm (common practice)', () => {
    const measured = { upperArmGirth: 170 };
    const elastic = pieceNamed(
      dressOf({ measured, steps: [['puff-sleeve', { end: 'elastic' }]] }),
      'sleeve',
    ).markings.find((marking) => marking.kind === 'gather');
    expect(elastic?.drawnTo).toBe(175);
    const band = pieceNamed(dressOf({ measured, steps: ['puff-sleeve'] }), 'sleeve-band');
    expect(edgeLength(band, 'attach')).toBe(200);
    expect(refusalOf({ steps: [['puff-sleeve', { bandEase: '10 mm' }]] })).toBe(
      'puff-sleeve.bandEase out-of-range',
    );
  });

  it('says when a short sleeve would fan out too far', () => {
    const steps: [string, Record<string, string | number>][] = [
      ['puff-sleeve', { places: 'top', fullness: 2, length: '85 mm', armEase: '25 mm' }],
    ];
    expect(refusalOf({ ageMonths: 84, steps })).toMatch(/^puff-sleeve\.too-(fanned|short)$/);
  });
});
