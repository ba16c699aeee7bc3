import { describe, expect, it } from 'vitest';
import { dressOf, pieceNamed, refusalOf, type Wish } from '../../../tests/dress-of.ts';
import { checksOf, faultsOf } from '../../../tests/faults-of.ts';
import { distance, pathAt, pathLength } from '../geometry/index.ts';
import { edgeLength, edgeOf } from '../piece/index.ts';

type Steps = NonNullable<Wish['steps']>;
const AGES = [6, 48, 144];

const halfNeck = (steps: Steps): number => {
  const dress = dressOf({ steps });
  return ['front', 'back'].reduce((sum, id) => sum + edgeLength(pieceNamed(dress, id), 'neckline'), 0);
};

describe('a neck frill', () => {
  it('fits every neck, gathered or from a circle, open or closed behind', () => {
    for (const ageMonths of AGES) {
      for (const shape of ['round', 'v', 'square', 'sweetheart', 'boat']) {
        for (const way of ['gathered', 'circular']) {
          for (const closing of [[], ['back-zip'], ['back-buttons']]) {
            const steps: Steps = [['neckline', { shape }], 'yoke', ...closing, ['neck-frill', { way }]];
            expect(faultsOf({ ageMonths, steps }), `${shape} ${way} ${closing} ${ageMonths}`).toEqual([]);
          }
        }
      }
    }
  });

  it('is the wished number of times as long as the neck when it is gathered', () => {
    const dress = dressOf({ steps: [['neck-frill', { ratio: 2.5 }]] });
    expect(edgeLength(pieceNamed(dress, 'neck-frill'), 'upper')).toBeCloseTo(2.5 * halfNeck([]), 6);
    const told = checksOf({ steps: [['neck-frill', { ratio: 2.5 }]] });
    expect(told.find((check) => check.code === 'gather-ratio')?.level).toBe('ok');
  });

  it('from a circle has an inner edge as long as the neck and stands its width away from it', () => {
    const dress = dressOf({ steps: [['neck-frill', { way: 'circular', frillWidth: '40 mm' }]] });
    const frill = pieceNamed(dress, 'neck-frill');
    expect(edgeLength(frill, 'upper')).toBeCloseTo(halfNeck([]), 3);
    expect(edgeLength(frill, 'lower') - edgeLength(frill, 'upper')).toBeCloseTo(Math.PI * 40, 3);
    const { path } = edgeOf(frill, 'lower');
    const middle = pathAt(path, pathLength(path) / 2).point;
    expect(distance(middle, { x: 0, y: 0 })).toBeCloseTo(halfNeck([]) / Math.PI + 40, 3);
  });

  it('keeps to 1.5 to 3 times, to cloth that is wide enough, and to shoulders that are sewn', () => {
    expect(refusalOf({ steps: [['neck-frill', { ratio: 3.2 }]] })).toBe('neck-frill.ratio out-of-range');
    expect(refusalOf({ clothWidth: 500, steps: ['neck-frill'] })).toBe('neck-frill.too-wide');
    expect(refusalOf({ steps: ['shoulder-studs', 'neck-frill'] })).toBe('neck-frill.open-shoulders');
    expect(refusalOf({ steps: ['flat-collar', 'neck-frill'] })).toBe('two-of-a-kind');
  });
});
