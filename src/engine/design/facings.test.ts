import { describe, expect, it } from 'vitest';
import { dressOf, pieceNamed, refusalOf, tryDress, type Wish } from '../../../tests/dress-of.ts';
import { faultsOf } from '../../../tests/faults-of.ts';
import { pathAt, pathLength, pathNearest } from '../geometry/index.ts';
import { edgeEnd, edgeLength, edgeOf, edgeStart } from '../piece/index.ts';

const AGES = [6, 12, 24, 48, 84, 120, 144];
const SHAPES = ['round', 'scoop', 'v', 'square', 'sweetheart', 'boat'];

describe('a neck facing', () => {
  it('fits every shape of neck at every age', () => {
    for (const ageMonths of AGES) {
      for (const shape of SHAPES) {
        const steps: Wish['steps'] = [['neckline', { shape }], 'back-zip', 'neck-facing'];
        expect(faultsOf({ ageMonths, steps }), `${shape} at ${ageMonths} months`).toEqual([]);
      }
    }
  });

  it('is 6 cm deep at the centre front and 4 cm at shoulder and centre back, on a child of ten', () => {
    const dress = dressOf({ ageMonths: 120, steps: ['neck-facing'] });
    const [front, back] = [pieceNamed(dress, 'facing-front'), pieceNamed(dress, 'facing-back')];
    expect(edgeLength(front, 'centre')).toBeCloseTo(60, 6);
    expect(edgeLength(back, 'centre')).toBeCloseTo(40, 6);
    for (const facing of [front, back]) expect(edgeLength(facing, 'shoulder')).toBeCloseTo(40, 6);
  });

  it('lies on its piece, along the same neck', () => {
    const dress = dressOf({ steps: [['neckline', { shape: 'sweetheart' }], 'neck-facing'] });
    for (const half of ['front', 'back']) {
      const [piece, facing] = [pieceNamed(dress, half), pieceNamed(dress, `facing-${half}`)];
      expect(edgeOf(facing, 'neckline').path).toEqual(edgeOf(piece, 'neckline').path);
      expect(pathNearest(edgeOf(piece, 'shoulder').path, edgeStart(facing, 'outer')).distance).toBeLessThan(
        1e-6,
      );
    }
  });

  it('keeps three quarters of its width round a square and a V neck', () => {
    for (const shape of ['square', 'v', 'sweetheart']) {
      const steps: Wish['steps'] = [['neckline', { shape, frontDrop: '40 mm' }], 'neck-facing'];
      const facing = pieceNamed(dressOf({ steps }), 'facing-front');
      const [neck, outer] = ['neckline', 'outer'].map((name) => edgeOf(facing, name).path);
      if (neck === undefined || outer === undefined) throw new Error('A facing has both edges.');
      for (const share of [0.1, 0.3, 0.5, 0.7, 0.9]) {
        const at = pathAt(neck, pathLength(neck) * share).point;
        expect(pathNearest(outer, at).distance, `${shape} ${share}`).toBeGreaterThan(29);
      }
    }
  });

  it('is cut on the fold in front, and in two behind where the back opens', () => {
    const cutting = (steps: NonNullable<Wish['steps']>, id: string) =>
      pieceNamed(dressOf({ steps }), id).cutting;
    expect(cutting(['neck-facing'], 'facing-back')).toEqual({ as: 'fold', copies: 1 });
    expect(cutting(['back-zip', 'neck-facing'], 'facing-back')).toEqual({ as: 'pair', copies: 2 });
    expect(cutting(['back-zip', 'neck-facing'], 'facing-front')).toEqual({ as: 'fold', copies: 1 });
  });

  it('is drawn whole under a yoke', () => {
    const steps: Wish['steps'] = ['yoke', 'back-zip', 'neck-facing'];
    expect(faultsOf({ steps })).toEqual([]);
    expect(edgeLength(pieceNamed(dressOf({ steps }), 'facing-front'), 'centre')).toBeCloseTo(60, 6);
  });

  it('stays clear of the armhole, and is refused on a shoulder that leaves no room', () => {
    const plain = edgeLength(pieceNamed(dressOf({}), 'front'), 'shoulder');
    const steps = (left: number): NonNullable<Wish['steps']> => [
      ['neckline', { widen: `${plain - left} mm` }],
      'neck-facing',
    ];
    expect(edgeLength(pieceNamed(dressOf({ steps: steps(30) }), 'facing-front'), 'shoulder')).toBeCloseTo(
      20,
      4,
    );
    expect(refusalOf({ steps: steps(21) })).toBe('neck-facing.narrow-shoulder');
  });
});

describe('an armhole facing', () => {
  it('fits the armhole at every age, of every neck, yoke and cap', () => {
    for (const ageMonths of AGES) {
      for (const other of [['yoke'], ['neckline', 'side-shaping'], ['drop-shoulder']]) {
        const wish: Wish = { ageMonths, steps: [...other, 'armhole-facing'] };
        if (!tryDress(wish).ok) expect(refusalOf(wish)).toBe('armhole-facing.no-room');
        else expect(faultsOf(wish), `${other} at ${ageMonths} months`).toEqual([]);
      }
    }
  });

  it('runs 4 cm inside the armhole all along', () => {
    for (const half of ['front', 'back']) {
      const facing = pieceNamed(dressOf({ steps: ['armhole-facing'] }), `armhole-facing-${half}`);
      const { path } = edgeOf(facing, 'outer');
      for (const share of [0, 0.25, 0.5, 0.75, 1]) {
        const at = pathAt(path, pathLength(path) * share).point;
        expect(pathNearest(edgeOf(facing, 'armhole').path, at).distance).toBeCloseTo(40, 1);
      }
      expect(edgeEnd(facing, 'armhole')).toEqual(edgeStart(facing, 'side'));
    }
  });

  it('is refused where a sleeve is sewn in', () => {
    expect(refusalOf({ steps: ['set-in-sleeve', 'armhole-facing'] })).toBe('armhole-facing.sleeved');
  });
});

describe('an armhole facing under two different slopes', () => {
  it('ends alike on front and back where they are sewn together', () => {
    const dress = dressOf({
      ageMonths: 6,
      measured: { height: 654, chestGirth: 417 },
      block: { kind: 'drafted', given: { method: 'eighth-of-chest', frontShoulderFall: '15 mm' } },
      steps: [
        'nappy-room',
        'dropped-waist',
        [
          'drop-shoulder',
          { finish: 'short', drop: '0 mm', capHeight: '63 mm', shapeIn: '7 mm', shapeDown: '8 mm' },
        ],
        'armhole-facing',
      ],
    });
    const [front, back] = ['front', 'back'].map((half) =>
      edgeLength(pieceNamed(dress, `armhole-facing-${half}`), 'overarm'),
    );
    expect(front).toBeCloseTo(back ?? 0, 6);
  });
});
