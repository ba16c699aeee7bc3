import { describe, expect, it } from 'vitest';
import { dressOf, pieceNamed, refusalOf, tryDress, type Wish } from '../../../tests/dress-of.ts';
import { checksOf, faultsOf } from '../../../tests/faults-of.ts';
import { pathAt, pathBounds, pathLength } from '../geometry/index.ts';
import { edgeEnd, edgeLength, edgeOf, edgeStart } from '../piece/index.ts';

type Steps = NonNullable<Wish['steps']>;
const AGES = [6, 12, 24, 48, 84, 120, 144];

const headPasses = (wish: Wish) => checksOf(wish).find((check) => check.code === 'head-passes');

describe('a keyhole back', () => {
  it('lets the head through at every age by its rule alone, and without it the head does not pass', () => {
    for (const ageMonths of AGES) {
      expect(headPasses({ ageMonths, steps: ['keyhole-back'] })?.level, `${ageMonths} months`).toBe('ok');
      expect(headPasses({ ageMonths })?.level).toBe('stop');
    }
    const short = headPasses({ steps: [['keyhole-back', { keyholeLength: '60 mm' }]] });
    expect(short?.level).toBe('stop');
  });

  it('is as long as half of what the head is more than the neckline, and 15 mm', () => {
    const dress = dressOf({ measured: { headGirth: 510 }, steps: ['keyhole-back'] });
    const neck = ['front', 'back'].reduce(
      (sum, id) => sum + 2 * edgeLength(pieceNamed(dress, id), 'neckline'),
      0,
    );
    expect(dress.closing?.openingLength).toBeCloseTo((510 - neck) / 2 + 15, 6);
    const { path } = edgeOf(pieceNamed(dress, 'back'), 'keyhole');
    const { minY, maxY } = pathBounds(path);
    expect(maxY - minY).toBeCloseTo((510 - neck) / 2 + 15, 3);
  });

  it('is a drop: at the centre at both ends, half its width at its widest, cut from a back on the fold', () => {
    const dress = dressOf({ steps: [['keyhole-back', { keyholeWidth: '30 mm' }]] });
    const back = pieceNamed(dress, 'back');
    const { path } = edgeOf(back, 'keyhole');
    expect([edgeStart(back, 'keyhole').x, edgeEnd(back, 'keyhole').x]).toEqual([0, 0]);
    expect(pathBounds(path).maxX).toBeCloseTo(15, 6);
    expect(pathBounds(path).minX).toBeGreaterThan(-1e-6);
    expect(pathAt(path, pathLength(path) * 0.95).point.x).toBeLessThan(4);
    expect(back.cutting).toEqual({ as: 'fold', copies: 1 });
    expect(edgeOf(back, 'centre').kind).toBe('fold');
  });

  it('goes together with linings, facings, bindings, collars, frills and skirts', () => {
    const others: Steps[] = [
      ['lining', 'gathered-skirt'],
      ['neck-facing', 'circle-skirt'],
      ['neck-binding', 'pleated-skirt'],
      [['flat-collar', { shape: 'whole' }], 'lining'],
      ['neck-frill'],
    ];
    for (const ageMonths of AGES) {
      for (const other of others) {
        const steps: Steps = ['keyhole-back', ...other];
        expect(faultsOf({ ageMonths, steps }), `${other} at ${ageMonths} months`).toEqual([]);
      }
    }
  });

  it('leaves the skirt closed behind, and the waist must pass without an opening', () => {
    const steps: Steps = ['keyhole-back', 'gathered-skirt'];
    const back = pieceNamed(dressOf({ steps }), 'skirt-back');
    expect(back.edges.map((edge) => edge.kind)).not.toContain('closing');
    const found = checksOf({ steps }).filter((check) => check.code === 'closing-long-enough');
    expect(found.map((check) => check.say.key)).toEqual(['check.closing-long-enough.none.stop']);
  });

  it('parts a collar and a binding at the centre back', () => {
    const dress = dressOf({ steps: ['keyhole-back', 'neck-binding', 'flat-collar'] });
    expect(dress.seams.map((seam) => seam.id)).not.toContain('neck-binding-join');
    expect(edgeOf(pieceNamed(dress, 'collar'), 'back').kind).toBe('free');
  });

  it('tells of its button at the nape, which is a small part for a baby', () => {
    const wish: Wish = { ageMonths: 12, steps: ['keyhole-back'] };
    expect(dressOf(wish).trims).toEqual([{ kind: 'buttons', place: 'nape', diameter: 12, pieces: ['back'] }]);
    expect(checksOf(wish).some((check) => check.code === 'small-parts')).toBe(true);
    expect(checksOf({ ageMonths: 84, steps: ['keyhole-back'] }).some((c) => c.code === 'small-parts')).toBe(
      false,
    );
  });

  it('needs room in the back, or in its yoke', () => {
    expect(refusalOf({ steps: [['keyhole-back', { keyholeLength: '40 cm' }]] })).toBe(
      'keyhole-back.keyholeLength out-of-range',
    );
    const yoke: Steps[number] = ['yoke', { halves: 'both' }];
    const tried = tryDress({ ageMonths: 6, steps: [yoke, 'keyhole-back'] });
    if (tried.ok) expect(faultsOf({ ageMonths: 6, steps: [yoke, 'keyhole-back'] })).toEqual([]);
    else expect(refusalOf({ ageMonths: 6, steps: [yoke, 'keyhole-back'] })).toBe('keyhole-back.no-room');
  });
});
