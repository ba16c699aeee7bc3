import { describe, expect, it } from 'vitest';
import { dressOf, pieceNamed, refusalOf } from '../../../tests/dress-of.ts';
import { dot, pathEndTangent, pathStartTangent } from '../geometry/index.ts';
import { edgeEnd, edgeLength, edgeOf, edgeStart, type Garment } from '../piece/index.ts';

const given = { count: 'one', width: '20 mm', tip: '20 mm', back: true, backWidth: '12 mm' };
const ageMonths = 120;
const darted = (more = {}) => dressOf({ ageMonths, steps: [['waist-darts', { ...given, ...more }]] });

const waistOf = (garment: Garment): number =>
  garment.pieces.reduce(
    (sum, piece) =>
      sum +
      piece.edges
        .filter((edge) => edge.kind === 'waist')
        .reduce((all, edge) => all + 2 * edgeLength(piece, edge.name), 0),
    0,
  );

describe('waist darts', () => {
  it('have two equal legs that meet at the tip, and a mouth as wide as asked', () => {
    const front = pieceNamed(darted(), 'front');
    expect(edgeLength(front, 'dart-1-outer')).toBeCloseTo(edgeLength(front, 'dart-1-inner'), 9);
    expect(edgeStart(front, 'dart-1-outer').x - edgeEnd(front, 'dart-1-inner').x).toBeCloseTo(20, 9);
    expect(edgeEnd(front, 'dart-1-outer').y - edgeStart(front, 'side').y).toBeCloseTo(20, 9);
  });

  it('leave the waist as wide as it was where the side seams are let out, and narrower where not', () => {
    const plain = waistOf(dressOf({ ageMonths }));
    expect(Math.abs(waistOf(darted()) - plain)).toBeLessThan(2);
    expect(plain - waistOf(darted({ keepWaist: false }))).toBeCloseTo(2 * (20 + 12), 0);
  });

  it('keep both sides of the side seam equal', () => {
    const dress = darted({ back: false });
    const [front, back] = ['front', 'back'].map((id) => edgeLength(pieceNamed(dress, id), 'side'));
    expect(front).toBeCloseTo(back ?? 0, 6);
  });

  it('let the waist run through when they are folded', () => {
    const front = pieceNamed(darted(), 'front');
    const [before, outer] = [edgeOf(front, 'waist').path, edgeOf(front, 'dart-1-outer').path];
    const [inner, after] = [edgeOf(front, 'dart-1-inner').path, edgeOf(front, 'waist-2').path];
    expect(dot(pathEndTangent(before), pathStartTangent(outer))).toBeCloseTo(0, 9);
    expect(dot(pathEndTangent(inner), pathStartTangent(after))).toBeCloseTo(0, 9);
  });

  it('two darts part the waist into three', () => {
    const front = pieceNamed(darted({ count: 'two', width: '15 mm' }), 'front');
    expect(front.edges.map((edge) => edge.name)).toEqual([
      'neckline',
      'shoulder',
      'armhole',
      'side',
      'waist',
      'dart-1-outer',
      'dart-1-inner',
      'waist-2',
      'dart-2-outer',
      'dart-2-inner',
      'waist-3',
      'centre',
    ]);
  });

  it('are sewn in the lining too, whose waist agrees with the shell', () => {
    const dress = dressOf({ ageMonths, steps: [['waist-darts', given], 'yoke', 'gathered-skirt', 'lining'] });
    expect(dress.seams.filter((seam) => seam.name === 'dart').map((seam) => seam.id)).toEqual([
      'dart-front-1',
      'dart-back-1',
      'dart-front-lining-1',
      'dart-back-lining-1',
    ]);
    expect(edgeLength(pieceNamed(dress, 'front-lining'), 'waist-2')).toBeCloseTo(
      edgeLength(pieceNamed(dress, 'front'), 'waist-2'),
      6,
    );
  });

  it('refuse to take the whole waist away', () => {
    const steps: [string, Record<string, string>][] = [['waist-darts', { count: 'two', width: '40 mm' }]];
    expect(refusalOf({ ageMonths: 24, steps })).toBe('waist-darts.too-wide');
  });

  it('refuse a dropped waist', () => {
    expect(refusalOf({ ageMonths, steps: ['dropped-waist', ['waist-darts', given]] })).toBe(
      'waist-darts.dropped',
    );
  });
});
