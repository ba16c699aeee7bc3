import { describe, expect, it } from 'vitest';
import { dressOf, pieceNamed, refusalOf, tryDress, type Wish } from '../../../tests/dress-of.ts';
import { faultsOf } from '../../../tests/faults-of.ts';
import { distance, pathAt, pathEnd, pathLength, pathNearest, pathStart } from '../geometry/index.ts';
import { edgeEnd, edgeLength, edgeOf, edgeStart, type Piece } from '../piece/index.ts';

type Steps = NonNullable<Wish['steps']>;
const AGES = [6, 48, 144];
const collarOf = (steps: Steps, ageMonths = 60): Piece => pieceNamed(dressOf({ ageMonths, steps }), 'collar');

function neckOf(steps: Steps): number {
  const dress = dressOf({ steps });
  return ['front', 'back'].reduce((sum, id) => sum + edgeLength(pieceNamed(dress, id), 'neckline'), 0);
}

/** Straight from the centre back to the centre front: the shorter, the rounder the neck edge of the collar. */
const openness = (collar: Piece): number => {
  const { path } = edgeOf(collar, 'neck');
  return distance(pathStart(path), pathEnd(path));
};

describe('a flat collar', () => {
  it('fits every neck at every age, in every shape, open or closed behind', () => {
    let drawn = 0;
    for (const ageMonths of AGES) {
      for (const shape of ['round', 'scoop', 'v', 'square', 'sweetheart', 'boat']) {
        for (const collar of ['rounded', 'pointed', 'whole']) {
          for (const closing of [[], ['back-zip'], ['back-buttons']]) {
            const steps: Steps = [['neckline', { shape }], ...closing, ['flat-collar', { shape: collar }]];
            const what = `${shape} ${collar} ${closing} at ${ageMonths} months`;
            if (tryDress({ ageMonths, steps }).ok) {
              drawn++;
              expect(faultsOf({ ageMonths, steps }), what).toEqual([]);
            } else expect(refusalOf({ ageMonths, steps }), what).toBe('flat-collar.no-room');
          }
        }
      }
    }
    expect(drawn).toBe(3 * 6 * 3 * 3);
  });

  it('is as long at its neck edge as half the neck less half the ease, whatever the overlap', () => {
    for (const standAway of ['0 mm', '15 mm', '25 mm']) {
      const collar = collarOf([['flat-collar', { standAway, neckEase: '6 mm' }]]);
      expect(edgeLength(collar, 'neck')).toBeCloseTo(neckOf([]) - 3, 4);
    }
    expect(edgeLength(collarOf([['flat-collar', { neckEase: '0 mm' }]]), 'neck')).toBeCloseTo(neckOf([]), 4);
  });

  it('is drawn straighter, and its outer edge shorter, the more the shoulders overlap', () => {
    const flat = collarOf([['flat-collar', { standAway: '0 mm' }]]);
    const standing = collarOf([['flat-collar', { standAway: '25 mm' }]]);
    expect(openness(standing)).toBeGreaterThan(openness(flat) + 5);
    expect(edgeLength(standing, 'outer')).toBeLessThan(edgeLength(flat, 'outer') - 10);
  });

  it('is as wide all round as it is asked to be', () => {
    const collar = collarOf([['flat-collar', { collarWidth: '45 mm', shape: 'whole' }]]);
    const { path } = edgeOf(collar, 'outer');
    for (const share of [0, 0.2, 0.4, 0.6, 0.8, 1]) {
      const at = pathAt(path, pathLength(path) * share).point;
      expect(pathNearest(edgeOf(collar, 'neck').path, at).distance).toBeCloseTo(45, 1);
    }
    expect(distance(edgeStart(collar, 'back'), edgeEnd(collar, 'back'))).toBeCloseTo(45, 4);
  });

  it('has two layers, and parts where the back opens', () => {
    const plain = collarOf(['flat-collar']);
    expect(plain.cutting).toEqual({ as: 'fold', copies: 2 });
    expect(edgeOf(plain, 'back').kind).toBe('fold');
    const open = collarOf(['back-zip', 'flat-collar']);
    expect(open.cutting).toEqual({ as: 'pair', copies: 4 });
    expect(edgeOf(open, 'back').kind).toBe('free');
    const whole = collarOf(['back-zip', ['flat-collar', { shape: 'whole' }]]);
    expect(whole.cutting).toEqual({ as: 'fold', copies: 2 });
    expect([edgeOf(whole, 'front').kind, edgeOf(whole, 'back').kind]).toEqual(['fold', 'free']);
  });

  it('ends at the centre line where a stand for buttons runs past it', () => {
    const [zip, buttons] = [collarOf(['back-zip', 'flat-collar']), collarOf(['back-buttons', 'flat-collar'])];
    expect(edgeLength(buttons, 'neck')).toBeCloseTo(edgeLength(zip, 'neck'), 4);
  });

  it('is refused on shoulders that open', () => {
    expect(refusalOf({ steps: ['shoulder-studs', 'flat-collar'] })).toBe('flat-collar.open-shoulders');
  });
});
