import { describe, expect, it } from 'vitest';
import { distance } from '../../src/engine/geometry/index.ts';
import {
  edgeEnd,
  edgeLength,
  edgeStart,
  type Garment,
  layPleats,
  type PleatedJoin,
} from '../../src/engine/piece/index.ts';
import { inches } from '../../src/engine/units/index.ts';
import { dressOf, pieceNamed } from '../dress-of.ts';

/** The waist of a dress that is `waist` round: the block's own ease makes up the rest. */
const withWaist = (waist: number) => ({
  measured: { waistGirth: waist - 40, chestGirth: waist + 30 },
  block: { kind: 'drafted' as const, given: { waistEase: '40 mm', tummy: 0 } },
});

const waistOf = (dress: Garment): number =>
  2 * (edgeLength(pieceNamed(dress, 'front'), 'waist') + edgeLength(pieceNamed(dress, 'back'), 'waist'));

/** Radius of the waist arc of a circle skirt: from the point where the centre and the side would meet. */
function radiusOf(dress: Garment): number {
  const front = pieceNamed(dress, 'skirt-front');
  const arc = edgeLength(front, 'waist');
  const chord = distance(edgeStart(front, 'waist'), edgeEnd(front, 'waist'));
  // chord = 2 r sin(arc / 2r), solved by halving.
  let [low, high] = [arc / Math.PI, arc * 1000];
  for (let i = 0; i < 200; i++) {
    const r = (low + high) / 2;
    if (2 * r * Math.sin(arc / (2 * r)) < chord) low = r;
    else high = r;
  }
  return low;
}

/** Blog of 7 March 2014: waist 26 in gives 4.13, 8.2 and 16.56 in as printed; exact 4.138, 8.276, 16.552. */
describe('circle skirts against published radii', () => {
  const cases = [
    ['full', 4.138],
    ['half', 8.276],
    ['quarter', 16.552],
  ] as const;
  for (const [part, radius] of cases) {
    it(`${part} circle: radius ${radius} in for a waist of 26 in`, () => {
      const dress = dressOf({
        ...withWaist(inches(26)),
        ageMonths: 120,
        steps: [['circle-skirt', { part }]],
      });
      const scaled = radiusOf(dress) * (inches(26) / waistOf(dress));
      expect(scaled / 25.4).toBeCloseTo(radius, 2);
    });
  }

  it('hem = waist + 2 pi f L (geometry)', () => {
    for (const [part, f] of [
      ['full', 1],
      ['half', 0.5],
      ['quarter', 0.25],
    ] as const) {
      const dress = dressOf({ steps: [['circle-skirt', { part, length: '45 cm' }]] });
      const hem =
        2 *
        (edgeLength(pieceNamed(dress, 'skirt-front'), 'hem') +
          edgeLength(pieceNamed(dress, 'skirt-back'), 'hem'));
      expect(hem - waistOf(dress)).toBeCloseTo(2 * Math.PI * f * 450, 1);
    }
  });

  it('the waist arcs are as long as the bodice waist', () => {
    const dress = dressOf({ steps: ['circle-skirt'] });
    const arcs =
      2 *
      (edgeLength(pieceNamed(dress, 'skirt-front'), 'waist') +
        edgeLength(pieceNamed(dress, 'skirt-back'), 'waist'));
    expect(arcs).toBeCloseTo(waistOf(dress), 2);
  });
});

describe('pleats against published sums', () => {
  it('waist 30 in, spacing 1 1/2, take-up 1 1/4: 20 pleats, cloth 55 in (pleat drafting lesson, 23 June 2012)', () => {
    const join: PleatedJoin = { kind: 'pleated', style: 'knife', pleats: 20, spacing: 1.5, takeUp: 1.25 };
    expect(layPleats(join).width).toBe(55);
    expect(join.pleats * join.spacing).toBe(30);
    expect(join.pleats * join.takeUp).toBe(25);
  });

  it('full pleats of any size take 3 times the waist (pleat tutorial, 17 Sept 2014)', () => {
    for (const style of ['knife', 'box', 'inverted'] as const) {
      for (const spacing of ['25 mm', '40 mm', '60 mm']) {
        const dress = dressOf({ steps: [['pleated-skirt', { style, spacing }]] });
        const cloth = dress.pieces
          .filter((p) => p.id.startsWith('skirt-'))
          .reduce((sum, p) => sum + edgeLength(p, 'waist'), 0);
        expect(cloth / waistOf(dress)).toBeCloseTo(3, 6);
      }
    }
  });

  it('needs 186 cm in a ring of cloth 110 cm wide: 2 widths (computed with seams of 1.5 cm)', () => {
    const waist = 620;
    const dress = dressOf({ ...withWaist(waist), ageMonths: 96, clothWidth: 1100, steps: ['pleated-skirt'] });
    expect(waistOf(dress) * 3).toBeGreaterThan(1800);
    expect(dress.pieces.filter((p) => p.id.startsWith('skirt-')).length).toBe(2);
  });

  it('every outer fold is brought exactly to a meeting line, or to the edge of the ring', () => {
    for (const style of ['knife', 'box', 'inverted'] as const) {
      const { folds, width } = layPleats({ kind: 'pleated', style, pleats: 7, spacing: 40, takeUp: 70 });
      const meets = [...folds.filter((f) => f.kind === 'meet').map((f) => f.at), width, width + 35];
      const outer = folds.filter((f) => f.kind === 'fold');
      expect(outer.length).toBe(style === 'knife' ? 7 : 14);
      for (const { at, brought } of outer) {
        expect(Math.min(...meets.map((meet) => Math.abs(meet - at - brought)))).toBeLessThan(1e-9);
      }
    }
  });

  it('every join of widths lies on an inner fold', () => {
    for (const style of ['knife', 'box', 'inverted'] as const) {
      const dress = dressOf({ clothWidth: 700, steps: [['pleated-skirt', { style }]] });
      const seam = dress.seams.find((s) => s.id === 'skirt-waist');
      if (seam?.join.kind !== 'pleated') throw new Error('The waist seam must be pleated.');
      const inner = layPleats(seam.join)
        .folds.filter((fold) => fold.kind === 'inner')
        .map((fold) => fold.at);
      const panels = dress.pieces.filter((p) => p.id.startsWith('skirt-'));
      let at = 0;
      for (const panel of panels.slice(0, -1)) {
        at += edgeLength(panel, 'waist');
        expect(Math.min(...inner.map((fold) => Math.abs(fold - at)))).toBeLessThan(1e-6);
      }
      expect(panels.length).toBeGreaterThan(1);
    }
  });
});

describe('gathers against published sums', () => {
  it('15 in at 2.5 : 1 is 37 1/2 in flat (ruffle tutorial)', () => {
    const dress = dressOf({ steps: [['gathered-skirt', { ratio: 2.5 }]] });
    const cloth =
      2 *
      (edgeLength(pieceNamed(dress, 'skirt-front'), 'waist') +
        edgeLength(pieceNamed(dress, 'skirt-back'), 'waist'));
    expect((cloth / waistOf(dress)) * 15).toBeCloseTo(37.5, 6);
  });
});
