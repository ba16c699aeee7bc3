import { describe, expect, it } from 'vitest';
import { dressOf, pieceNamed, refusalOf } from '../../../tests/dress-of.ts';
import { sleeveFaults } from '../../../tests/sleeve-faults.ts';
import { edgeEnd, edgeLength, edgeStart, type Garment } from '../piece/index.ts';

const AGES = [6, 12, 24, 48, 84, 120, 144];
type Step = [string, Record<string, string>];
const STRAIGHT: Step = ['drop-shoulder', { finish: 'straight' }];

/** Faults that the last step brings: a drop shoulder by its own rules sits close round the arm of a small baby. */
const broughtBy = (ageMonths: number, before: readonly (string | Step)[], step: string | Step) => {
  const known = sleeveFaults({ ageMonths, steps: before });
  return sleeveFaults({ ageMonths, steps: [...before, step] }).filter((fault) => !known.includes(fault));
};

const edgeRound = (dress: Garment, edge: string): number =>
  edgeLength(pieceNamed(dress, 'front'), edge) + edgeLength(pieceNamed(dress, 'back'), edge);

describe('strip on the armhole edge', () => {
  for (const finish of ['hemmed', 'doubled']) {
    it(`${finish}: everything agrees at every age, on armholes and straight edges`, () => {
      for (const ageMonths of AGES) {
        const step: Step = ['edge-strip', { finish }];
        expect(sleeveFaults({ ageMonths, steps: [step] }), `${ageMonths} months`).toEqual([]);
        expect(broughtBy(ageMonths, [STRAIGHT, 'yoke', 'lining'], step)).toEqual([]);
      }
    });
  }

  it('as long as the edge it is a band, longer a gathered frill', () => {
    const edge = edgeRound(dressOf({ steps: [STRAIGHT] }), 'sleeve-edge');
    const sewn = (stripLength: number) => {
      const dress = dressOf({ steps: [STRAIGHT, ['edge-strip', { stripLength: `${stripLength} mm` }]] });
      return { dress, seam: dress.seams.find((seam) => seam.id === 'sleeve-strip-sewn-on') };
    };
    const band = sewn(edge);
    expect(band.seam?.name).toBe('band');
    expect(band.seam?.join).toEqual({ kind: 'flat' });
    expect(edgeLength(pieceNamed(band.dress, 'sleeve-strip'), 'attach')).toBeCloseTo(edge, 9);
    const frill = sewn(edge * 2);
    expect(frill.seam?.name).toBe('frill');
    expect(frill.seam?.join.kind === 'gathered' ? frill.seam.join.ratio : 0).toBeCloseTo(2, 3);
    expect(refusalOf({ steps: [STRAIGHT, ['edge-strip', { stripLength: `${edge - 5} mm` }]] })).toBe(
      'edge-strip.stripLength out-of-range',
    );
  });

  it('refuses an edge that already ends in a sleeve', () => {
    expect(refusalOf({ steps: ['set-in-sleeve', 'edge-strip'] })).toMatch(/^edge-strip/);
    expect(refusalOf({ steps: ['edge-strip', 'set-in-sleeve'] })).toBe('set-in-sleeve.no-armhole');
    expect(refusalOf({ steps: [['drop-shoulder', { finish: 'short' }], 'edge-strip'] })).toMatch(
      /^edge-strip/,
    );
  });
});

describe('sleeve extension', () => {
  it('everything agrees at every age', () => {
    for (const ageMonths of AGES) {
      expect(broughtBy(ageMonths, [STRAIGHT], 'sleeve-extension'), `${ageMonths}`).toEqual([]);
      expect(broughtBy(ageMonths, [STRAIGHT, 'yoke', 'lining'], 'sleeve-extension')).toEqual([]);
    }
  });

  it('is as wide as the straight edge is long and as wide at the hem as the arm and its ease', () => {
    const dress = dressOf({
      measured: { upperArmGirth: 180 },
      steps: [STRAIGHT, ['sleeve-extension', { hemEase: '50 mm', extension: '120 mm' }]],
    });
    const sleeve = pieceNamed(dress, 'sleeve');
    expect(edgeLength(sleeve, 'cap')).toBeCloseTo(edgeRound(dress, 'sleeve-edge'), 9);
    expect(edgeStart(sleeve, 'sleeve-edge').x - edgeEnd(sleeve, 'sleeve-edge').x).toBeCloseTo(230, 9);
  });

  it('needs a straight edge', () => {
    expect(refusalOf({ steps: ['sleeve-extension'] })).toBe('sleeve-extension.no-edge');
    expect(refusalOf({ steps: [['drop-shoulder', { finish: 'short' }], 'sleeve-extension'] })).toMatch(
      /^sleeve-extension/,
    );
  });
});

describe('sleeve band', () => {
  it('agrees at every age under every sleeve with a plain hem', () => {
    for (const ageMonths of AGES) {
      for (const sleeve of [
        ['set-in-sleeve', {}],
        ['puff-sleeve', { places: 'top' }],
        ['cap-sleeve', { reach: 'round' }],
      ] as Step[]) {
        expect(sleeveFaults({ ageMonths, steps: [sleeve, 'sleeve-band'] }), sleeve[0]).toEqual([]);
      }
    }
  });

  it('is the arm and its ease, never wider than the sleeve', () => {
    const band = (armEase: string, bandEase: string) =>
      edgeLength(
        pieceNamed(
          dressOf({
            measured: { upperArmGirth: 180 },
            steps: [
              ['set-in-sleeve', { armEase }],
              ['sleeve-band', { bandEase }],
            ],
          }),
          'sleeve-band',
        ),
        'attach',
      );
    expect(band('40 mm', '30 mm')).toBe(210);
    expect(band('30 mm', '40 mm')).toBeCloseTo(210, 6);
  });

  it('needs a sleeve whose end is free', () => {
    expect(refusalOf({ steps: ['sleeve-band'] })).toBe('sleeve-band.no-sleeve');
    expect(refusalOf({ steps: ['puff-sleeve', 'sleeve-band'] })).toBe('sleeve-band.no-sleeve');
    expect(refusalOf({ steps: ['flutter-sleeve', 'sleeve-band'] })).toBe('sleeve-band.no-sleeve');
  });
});

describe('sleeve bow', () => {
  it('tube of twice the span and its overlap, band of twice the thickness and 2 cm, one for each arm, no tails', () => {
    const dress = dressOf({
      steps: [['sleeve-bow', { bowSpan: '80 mm', bandRound: '15 mm', bowWidth: '40 mm' }]],
    });
    expect(edgeLength(pieceNamed(dress, 'sleeve-bow'), 'upper')).toBe(2 * 80 + 25);
    expect(edgeLength(pieceNamed(dress, 'sleeve-bow-band'), 'upper')).toBe(2 * 15 + 20);
    expect(pieceNamed(dress, 'sleeve-bow').cutting.copies).toBe(2);
    expect(dress.trims).toMatchObject([{ kind: 'sewn-bow', place: 'sleeve', tail: 0 }]);
  });
});
