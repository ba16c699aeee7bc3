import { describe, expect, it } from 'vitest';
import { faultsOf } from '../../../tests/dress-faults.ts';
import { dressOf, pieceNamed, refusalOf, type Wish } from '../../../tests/dress-of.ts';
import { edgeLength, edgeOf, type Garment, skirtDepth } from '../piece/index.ts';

const AGES = [6, 36, 84, 144];
const fitsAtEveryAge = (steps: NonNullable<Wish['steps']>): void => {
  for (const ageMonths of AGES) expect(faultsOf(dressOf({ ageMonths, steps }), ageMonths)).toEqual([]);
};

describe('tiered skirt', () => {
  const tiers = (given: Record<string, string | number>) =>
    dressOf({ steps: ['back-zip', ['tiered-skirt', given], 'lining'] });

  it('fits together at every age, with any number of tiers', () => {
    for (const count of [2, 3, 4]) fitsAtEveryAge(['back-zip', ['tiered-skirt', { tiers: count }], 'lining']);
  });

  it('is as long as asked, however the tiers grow', () => {
    for (const growth of [1, 1.3]) {
      const dress = tiers({ tiers: 4, growth, length: '45 cm' });
      const depths = [1, 2, 3, 4].map((i) => edgeLength(pieceNamed(dress, `skirt-tier-${i}-front`), 'right'));
      expect(depths.reduce((sum, depth) => sum + depth, 0)).toBeCloseTo(450, 6);
      expect((depths[3] ?? 0) / (depths[2] ?? 1)).toBeCloseTo(growth, 6);
      // The lining hangs under all of them, 2.5 cm shorter.
      expect(edgeLength(pieceNamed(dress, 'lining-skirt-front'), 'right')).toBeCloseTo(425, 6);
    }
  });

  it('joins widths where the cloth is too narrow for a tier', () => {
    const dress = dressOf({ clothWidth: 700, steps: ['tiered-skirt'] });
    expect(pieceNamed(dress, 'skirt-tier-3-front').cutting.copies).toBeGreaterThan(1);
    expect(faultsOf(dress)).toEqual([]);
  });

  it('opens the tiers that the closing runs through, and no other', () => {
    const dress = tiers({ tiers: 4, length: '40 cm' });
    const kinds = [1, 2, 3, 4].map((i) => edgeOf(pieceNamed(dress, `skirt-tier-${i}-back`), 'left').kind);
    expect(kinds[0]).toBe('closing');
    expect(kinds[3]).toBe('centre');
    expect(kinds.lastIndexOf('closing')).toBe(kinds.indexOf('centre') - 1);
  });

  it('refuses tiers that are too low or too wide, and more than eight', () => {
    const refused = (given: Record<string, string | number>) =>
      refusalOf({ steps: [['tiered-skirt', given]] });
    expect(refused({ tiers: 8, length: '20 cm' })).toBe('tiered-skirt.too-low');
    expect(refused({ tiers: 8, tierRatio: 2, length: '60 cm' })).toBe('tiered-skirt.too-wide');
    expect(refused({ tiers: 9 })).toBe('tiered-skirt.tiers out-of-range');
    expect(refused({ tiers: 2.5 })).toBe('tiered-skirt.tiers unreadable');
  });
});

/** Times round: every edge of this name on every copy. */
const roundOf = (dress: Garment, edge: string): number =>
  dress.pieces
    .filter((piece) => piece.id.startsWith('skirt-'))
    .reduce((sum, piece) => {
      const copies = piece.cutting.as === 'fold' ? 2 * piece.cutting.copies : piece.cutting.copies;
      return sum + copies * edgeLength(piece, edge);
    }, 0);

const waistOf = (dress: Garment): number =>
  2 * (edgeLength(pieceNamed(dress, 'front'), 'waist') + edgeLength(pieceNamed(dress, 'back'), 'waist'));

describe('gathered skirt', () => {
  it('of three and more widths leaves no notch without a mate', () => {
    const dress = dressOf({
      clothWidth: 500,
      steps: ['back-zip', ['gathered-skirt', { ratio: 4 }], ['lining', { skirtRatio: 3 }]],
    });
    expect(pieceNamed(dress, 'skirt-front').cutting.copies).toBeGreaterThan(2);
    expect(faultsOf(dress)).toEqual([]);
  });
});

describe('A-line skirt', () => {
  it('fits together at every age, with its corners smooth', () => {
    fitsAtEveryAge(['back-zip', 'a-line-skirt', 'lining']);
  });

  it('has the waist of the bodice and the hem that is asked for', () => {
    const dress = dressOf({ steps: [['a-line-skirt', { hem: '110 cm', length: '40 cm' }]] });
    expect(roundOf(dress, 'waist')).toBeCloseTo(waistOf(dress), 3);
    expect(roundOf(dress, 'hem')).toBeCloseTo(1100, 3);
    for (const edge of ['centre', 'side'])
      expect(edgeLength(pieceNamed(dress, 'skirt-front'), edge)).toBeCloseTo(400, 6);
  });

  it('refuses a hem without flare and one that is a circle', () => {
    const refused = (hem: string) =>
      refusalOf({ measured: { waistGirth: 600 }, steps: [['a-line-skirt', { hem, length: '30 cm' }]] });
    expect(refused('65 cm')).toBe('a-line-skirt.too-narrow');
    expect(refused('200 cm')).toBe('a-line-skirt.too-wide');
  });
});

describe('gored skirt', () => {
  it('fits together at every age with any number of gores', () => {
    for (const gores of [3, 4, 5, 6, 12]) fitsAtEveryAge(['back-zip', ['gored-skirt', { gores }], 'lining']);
  });

  it('has equal gores, flared at every seam', () => {
    const dress = dressOf({ steps: [['gored-skirt', { gores: 8, flare: '4 cm' }]] });
    expect(roundOf(dress, 'waist')).toBeCloseTo(waistOf(dress), 3);
    expect(roundOf(dress, 'hem') - roundOf(dress, 'waist')).toBeCloseTo(8 * 2 * 40, 3);
    const [one, other] = ['skirt-gore', 'skirt-back-gore'].map((id) => pieceNamed(dress, id));
    expect(one?.cutting.copies).toBe(6);
    expect(other?.cutting.copies).toBe(2);
  });

  it('refuses more flare than its length carries', () => {
    expect(refusalOf({ steps: [['gored-skirt', { flare: '20 cm', length: '20 cm' }]] })).toBe(
      'gored-skirt.too-wide',
    );
  });
});

describe('high-low hem', () => {
  const swept = (skirt: string) =>
    dressOf({ steps: [skirt, ['high-low-hem', { frontUp: '9 cm', backDown: '6 cm' }]] });

  it('fits together on every skirt that it can shape, at every age', () => {
    for (const skirt of ['gathered-skirt', 'circle-skirt', 'a-line-skirt', 'tiered-skirt'])
      fitsAtEveryAge(['back-zip', skirt, 'high-low-hem', 'lining']);
    fitsAtEveryAge([['circle-skirt', { part: 'full' }], 'high-low-hem']);
  });

  it('is shorter in front and longer behind by what was asked, and its sides agree', () => {
    for (const [skirt, centre, side] of [
      ['gathered-skirt', 'left', 'right'],
      ['circle-skirt', 'centre', 'side'],
    ] as const) {
      const [plain, dress] = [dressOf({ steps: [skirt] }), swept(skirt)];
      const grown = (id: string, edge: string) =>
        edgeLength(pieceNamed(dress, id), edge) - edgeLength(pieceNamed(plain, id), edge);
      expect(grown('skirt-front', centre)).toBeCloseTo(-90, 6);
      expect(grown('skirt-back', centre)).toBeCloseTo(60, 6);
      expect(grown('skirt-front', side)).toBeCloseTo(grown('skirt-back', side), 6);
    }
  });

  it('lets a lining hang no longer than the front', () => {
    const dress = dressOf({ steps: ['circle-skirt', ['high-low-hem', { frontUp: '9 cm' }], 'lining'] });
    const front = edgeLength(pieceNamed(dress, 'skirt-front'), 'centre');
    expect(edgeLength(pieceNamed(dress, 'lining-skirt-front'), 'right')).toBeCloseTo(front - 25, 6);
  });

  it('refuses pleats, gores, joined widths and a bodice without a skirt', () => {
    for (const steps of [['pleated-skirt'], ['gored-skirt'], []])
      expect(refusalOf({ steps: [...steps, 'high-low-hem'] })).toBe('high-low-hem.no-skirt');
    expect(refusalOf({ clothWidth: 500, steps: ['gathered-skirt', 'high-low-hem'] })).toBe(
      'high-low-hem.no-skirt',
    );
    expect(refusalOf({ steps: ['circle-skirt', ['high-low-hem', { frontUp: '50 cm' }]] })).toBe(
      'high-low-hem.frontUp out-of-range',
    );
  });
});

describe('overskirt of net', () => {
  it('fits together over every skirt, with any number of layers', () => {
    for (const skirt of ['gathered-skirt', 'pleated-skirt', 'tiered-skirt', 'circle-skirt', 'gored-skirt'])
      fitsAtEveryAge(['back-zip', skirt, 'net-overskirt', 'lining']);
    fitsAtEveryAge(['gathered-skirt', ['net-overskirt', { layers: 3, differ: '2 cm', way: 'longer' }]]);
  });

  it('cuts layers of one length from one pattern, and others each from its own', () => {
    const nets = (given: Record<string, string | number>) =>
      dressOf({ steps: ['gathered-skirt', ['net-overskirt', given]] }).pieces.filter(
        (p) => p.cloth === 'net',
      );
    expect(nets({ layers: 3 }).map((p) => p.cutting.copies)).toEqual([3, 6]);
    const lengths = nets({ layers: 3, length: '40 cm', differ: '3 cm' }).map((p) => edgeLength(p, 'right'));
    expect(lengths.map((mm) => Math.round(mm))).toEqual([400, 400, 370, 370, 340, 340]);
  });

  it('has opening edges on the stitching line of the closing, not in its allowance', () => {
    const dress = dressOf({ steps: ['back-zip', 'gathered-skirt', 'net-overskirt'] });
    expect(edgeOf(pieceNamed(dress, 'overskirt-1-back'), 'left').allowance).toBe(0);
  });

  it('does not notch the waist twice at one place', () => {
    const notches = (...steps: string[]) => pieceNamed(dressOf({ steps }), 'front').notches.length;
    expect(notches('gathered-skirt', 'net-overskirt', 'petticoat')).toBe(notches('gathered-skirt'));
    expect(notches('gored-skirt', 'net-overskirt')).toBe(notches('gathered-skirt'));
  });

  it('refuses layers that leave nothing of the last', () => {
    const given = { layers: 8, differ: '8 cm', length: '40 cm' };
    expect(refusalOf({ steps: ['gathered-skirt', ['net-overskirt', given]] })).toBe(
      'net-overskirt.too-short',
    );
  });
});

describe('petticoat', () => {
  it('fits together under every skirt, from the waist and from a yoke', () => {
    for (const from of ['waist', 'yoke'])
      for (const skirt of ['gathered-skirt', 'circle-skirt', 'pleated-skirt'])
        fitsAtEveryAge(['back-zip', skirt, ['petticoat', { from }], 'lining']);
  });

  it('is shorter than the skirt by what was asked, yoke and net together', () => {
    const dress = dressOf({
      steps: [
        ['gathered-skirt', { length: '45 cm' }],
        ['petticoat', { yokeDepth: '15 cm', shorter: '4 cm' }],
      ],
    });
    expect(edgeLength(pieceNamed(dress, 'petticoat-yoke-front'), 'side')).toBeCloseTo(150, 6);
    expect(edgeLength(pieceNamed(dress, 'petticoat-front'), 'right')).toBeCloseTo(260, 6);
  });

  it('has a yoke that the hips pass with room to sit', () => {
    const dress = dressOf({ measured: { hipGirth: 700 }, steps: ['petticoat'] });
    const foot = ['front', 'back'].map((half) =>
      edgeLength(pieceNamed(dress, `petticoat-yoke-${half}`), 'hem'),
    );
    expect(2 * foot.reduce((a, b) => a + b, 0)).toBeCloseTo(1.15 * 700, 3);
  });

  it('refuses a yoke that leaves no net', () => {
    const steps: NonNullable<Wish['steps']> = [
      ['gathered-skirt', { length: '15 cm' }],
      ['petticoat', { yokeDepth: '10 cm' }],
    ];
    expect(refusalOf({ steps })).toBe('petticoat.too-short');
  });
});

describe('growth hem', () => {
  it('is carried by the hem edges alone, of the last tier where there are tiers', () => {
    const dress = dressOf({ ageMonths: 84, steps: ['tiered-skirt', ['growth-hem', { hemDepth: '9 cm' }]] });
    const own = dress.pieces.flatMap((piece) =>
      piece.edges.flatMap((edge) => (edge.allowance === 90 ? [`${piece.id} ${edge.name}`] : [])),
    );
    expect(own).toEqual(['skirt-tier-3-front hem', 'skirt-tier-3-back hem']);
  });

  it('refuses a curved hem and a hem deeper than 5 in', () => {
    expect(refusalOf({ steps: ['circle-skirt', 'growth-hem'] })).toBe('growth-hem.no-straight-hem');
    expect(refusalOf({ steps: ['gathered-skirt', ['growth-hem', { hemDepth: '6 in' }]] })).toBe(
      'growth-hem.hemDepth out-of-range',
    );
  });
});

describe('growth tucks', () => {
  it('leave the finished skirt as long as it was, and every seam agreeing', () => {
    fitsAtEveryAge(['back-zip', 'gathered-skirt', 'lining', 'growth-hem', 'growth-tuck']);
    const [plain, dress] = [['gathered-skirt'], ['gathered-skirt', 'growth-tuck']].map((steps) =>
      dressOf({ steps }),
    );
    if (plain === undefined || dress === undefined) throw new Error('Two dresses.');
    expect(skirtDepth(dress)).toBeCloseTo(skirtDepth(plain) ?? 0, 9);
  });

  it('are refused on pleats and circles, and where they do not fit', () => {
    for (const skirt of ['pleated-skirt', 'circle-skirt'])
      expect(refusalOf({ steps: [skirt, 'growth-tuck'] })).toBe('growth-tuck.no-straight-hem');
    const steps: NonNullable<Wish['steps']> = [
      ['gathered-skirt', { length: '16 cm' }],
      ['growth-tuck', { tucks: 3, tuckDepth: '2 cm' }],
    ];
    expect(refusalOf({ steps })).toBe('growth-tuck.no-room');
  });
});
