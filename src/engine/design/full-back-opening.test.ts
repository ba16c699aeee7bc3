import { describe, expect, it } from 'vitest';
import { dressOf, pieceNamed, refusalOf, tryDress, type Wish } from '../../../tests/dress-of.ts';
import { completeBody } from '../body/index.ts';
import { type CheckCode, checkGarment } from '../check/index.ts';
import { edgeLength, type Garment } from '../piece/index.ts';

type Steps = NonNullable<Wish['steps']>;

const open = (...steps: Steps): Garment => dressOf({ steps: [...steps, 'full-back-opening'] });

const checksOf = (garment: Garment, code: CheckCode) => {
  const completed = completeBody({ ageMonths: 60, measured: {} });
  if (!completed.ok) throw new Error('The middle girl of five is plausible.');
  const bounds = { chestEase: [20, 160], waistEase: [20, 110] } as const;
  return checkGarment({ garment, body: completed.body, bounds }).filter((check) => check.code === code);
};

const marksOf = (garment: Garment) => garment.pieces.flatMap((piece) => piece.markings.map((m) => m.kind));

describe('back open to the hem', () => {
  it('adds the whole centre back of the skirt to the opening, and the zip goes with it', () => {
    const dress = open('back-zip', ['gathered-skirt', { length: '400 mm' }], 'lining');
    const back = edgeLength(pieceNamed(dress, 'back'), 'centre');
    expect(dress.closing?.openingLength).toBeCloseTo(back + 400, 6);
    if (dress.closing?.kind !== 'concealed-zip') throw new Error('A concealed zip was asked for.');
    // A concealed zip loses 1 1/2 in, and zips are sold in steps of 5 cm.
    expect(dress.closing.zipLength).toBe(Math.ceil((back + 400 + 38.1) / 50) * 50);
  });

  it('opens every layer and every tier, and leaves no mark where an opening would end', () => {
    const layers: Record<string, Steps> = {
      tiers: ['back-zip', 'tiered-skirt', 'petticoat', 'lining'],
      net: ['back-zip', 'gathered-skirt', 'net-overskirt', 'lining'],
      pleats: ['back-zip', 'pleated-skirt', 'lining'],
      circle: ['back-lacing', 'circle-skirt'],
      gores: ['back-ties', 'gored-skirt'],
    };
    for (const [name, steps] of Object.entries(layers)) {
      expect(marksOf(dressOf({ steps })), name).toContain('closing-end');
      const dress = open(...steps);
      expect(marksOf(dress), name).not.toContain('closing-end');
      const shut = dress.seams.filter((seam) => seam.id.endsWith('centre-back') && seam.name !== 'closing');
      expect(shut, name).toEqual([]);
      const kinds = dress.pieces.flatMap((piece) => piece.edges.map((edge) => edge.kind));
      expect(kinds, name).not.toContain('centre');
    }
  });

  it('measures tiers together, and a dipped hem at the back', () => {
    const length = (...steps: Steps): number => {
      const dress = open('back-zip', ...steps);
      return (dress.closing?.openingLength ?? 0) - edgeLength(pieceNamed(dress, 'back'), 'centre');
    };
    expect(length(['tiered-skirt', { length: '450 mm' }])).toBeCloseTo(450, 6);
    const dipped: Steps = [
      ['circle-skirt', { length: '400 mm' }],
      ['high-low-hem', { frontUp: '60 mm', backDown: '120 mm' }],
    ];
    expect(length(...dipped)).toBeCloseTo(520, 3);
  });

  it('is not changed by tucks that take up what they add', () => {
    const length = (...steps: Steps) => open('back-zip', 'gathered-skirt', ...steps).closing?.openingLength;
    expect(length('growth-tuck')).toBe(length());
  });

  it('binds both edges of the skirt in the place of a slit', () => {
    const strip = pieceNamed(open('back-buttons', ['gathered-skirt', { length: '400 mm' }]), 'placket');
    expect(edgeLength(strip, 'lower')).toBeCloseTo(400, 6);
    expect(strip.cutting.copies).toBe(2);
    const bare = open(['back-buttons', { placket: false }], 'gathered-skirt');
    expect(bare.pieces.map(({ id }) => id)).not.toContain('placket');
  });

  it('is seen by the checks: the waist parts, and the head has the whole opening', () => {
    const steps: Steps = [
      ['back-zip', { belowWaist: '10 mm' }],
      ['gathered-skirt', { length: '400 mm' }],
    ];
    const before = dressOf({ steps });
    expect(checksOf(before, 'closing-long-enough').map(({ level }) => level)).not.toEqual(['ok', 'ok']);
    const after = open(...steps);
    const seen = checksOf(after, 'closing-long-enough');
    expect(seen.map(({ level }) => level)).toEqual(['ok', 'ok']);
    expect(seen[0]?.say.key).toBe('check.closing-long-enough.parts');
    const ring = (garment: Garment) => {
      const measured = checksOf(garment, 'head-passes')[0]?.measured;
      return measured !== undefined && typeof measured === 'object' && measured !== null && 'mm' in measured
        ? measured.mm
        : Number.NaN;
    };
    expect(ring(after) - ring(before)).toBeCloseTo(2 * (400 - 10), 6);
  });

  it('wants a closing down the back', () => {
    expect(refusalOf({ steps: ['gathered-skirt', 'full-back-opening'] })).toBe(
      'full-back-opening.no-closing',
    );
    for (const closing of ['shoulder-studs', 'keyhole-back']) {
      expect(refusalOf({ steps: [closing, 'full-back-opening'] }), closing).toBe(
        'full-back-opening.no-closing',
      );
    }
    expect(tryDress({ steps: ['seated', 'back-zip', 'full-back-opening'] }).ok).toBe(true);
  });
});
