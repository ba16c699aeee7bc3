import { describe, expect, it } from 'vitest';
import { dressOf, pieceNamed, refusalOf } from '../../../tests/dress-of.ts';
import { dot, pathEndTangent, pathStartTangent } from '../geometry/index.ts';
import { edgeEnd, edgeLength, edgeOf, edgeStart, type Garment } from '../piece/index.ts';

const plain = dressOf({});
const changed = (step: string, given = {}): Garment => dressOf({ steps: [[step, given]] });
const length = (dress: Garment, id: string, edge: string) => edgeLength(pieceNamed(dress, id), edge);

/** Both halves agree at the side, and armhole and waist meet the side seam square. */
function fitsAtTheSide(dress: Garment): void {
  expect(length(dress, 'front', 'side')).toBeCloseTo(length(dress, 'back', 'side'), 6);
  expect(length(dress, 'front', 'shoulder')).toBeCloseTo(length(dress, 'back', 'shoulder'), 6);
  for (const id of ['front', 'back']) {
    const piece = pieceNamed(dress, id);
    const [armhole, side, waist] = ['armhole', 'side', 'waist'].map((name) => edgeOf(piece, name).path);
    if (armhole === undefined || side === undefined || waist === undefined) throw new Error('No such edge.');
    expect(dot(pathEndTangent(armhole), pathStartTangent(side)), id).toBeCloseTo(0, 6);
    expect(dot(pathEndTangent(side), pathStartTangent(waist)), id).toBeCloseTo(0, 6);
    expect(pathEndTangent(waist).y, id).toBeCloseTo(0, 6);
  }
}

describe('longer body', () => {
  it('lowers the waist alike at the side and the centre, and leaves armhole depth and shoulder alone', () => {
    const long = changed('long-body', { by: '30 mm' });
    fitsAtTheSide(long);
    for (const id of ['front', 'back']) {
      const [before, after] = [pieceNamed(plain, id), pieceNamed(long, id)];
      expect(edgeEnd(after, 'side').y - edgeEnd(before, 'side').y).toBeCloseTo(30, 9);
      expect(length(long, id, 'centre') - length(plain, id, 'centre')).toBeCloseTo(30, 9);
      expect(edgeStart(after, 'side')).toEqual(edgeStart(before, 'side'));
    }
  });

  it('refuses to leave no side seam', () => {
    expect(refusalOf({ ageMonths: 6, steps: [['long-body', { way: 'shorter', by: '40 mm' }]] })).toBe(
      'long-body.too-short',
    );
  });
});

describe('round tummy', () => {
  it('is longer in front only, and wider all round', () => {
    const round = changed('round-tummy', { longer: '12 mm', wider: '40 mm' });
    fitsAtTheSide(round);
    expect(length(round, 'front', 'centre') - length(plain, 'front', 'centre')).toBeCloseTo(12, 9);
    expect(length(round, 'back', 'centre')).toBeCloseTo(length(plain, 'back', 'centre'), 9);
    const wider =
      2 * (length(round, 'front', 'waist') + length(round, 'back', 'waist')) -
      2 * (length(plain, 'front', 'waist') + length(plain, 'back', 'waist'));
    expect(Math.abs(wider - 40)).toBeLessThan(3);
  });
});

describe('slope of the shoulders', () => {
  for (const down of [-8, 8]) {
    it(`${down} mm: moves tip and armhole together and keeps shoulder and armhole as long`, () => {
      const sloped = changed('shoulder-slope', {
        shoulders: down < 0 ? 'square' : 'sloping',
        by: `${Math.abs(down)} mm`,
      });
      fitsAtTheSide(sloped);
      for (const id of ['front', 'back']) {
        const [before, after] = [pieceNamed(plain, id), pieceNamed(sloped, id)];
        expect(edgeEnd(after, 'shoulder').y - edgeEnd(before, 'shoulder').y).toBeCloseTo(down, 9);
        expect(length(sloped, id, 'shoulder')).toBeCloseTo(length(plain, id, 'shoulder'), 9);
        expect(length(plain, id, 'side') - length(sloped, id, 'side')).toBeCloseTo(down, 9);
        expect(Math.abs(length(sloped, id, 'armhole') - length(plain, id, 'armhole'))).toBeLessThan(4);
      }
    });
  }

  it('refuses to raise the tip above the neck', () => {
    const block = { kind: 'drafted', given: { backShoulderFall: '5 mm' } } as const;
    expect(refusalOf({ block, steps: [['shoulder-slope', { shoulders: 'square', by: '15 mm' }]] })).toBe(
      'shoulder-slope.above-neck',
    );
  });
});

describe('for sitting', () => {
  it('lengthens the back and shortens the front at the centre, and leaves the sides alone', () => {
    const sitting = changed('seated', { backLonger: '25 mm', frontShorter: '10 mm' });
    fitsAtTheSide(sitting);
    expect(length(sitting, 'back', 'centre') - length(plain, 'back', 'centre')).toBeCloseTo(25, 9);
    expect(length(plain, 'front', 'centre') - length(sitting, 'front', 'centre')).toBeCloseTo(10, 9);
    expect(length(sitting, 'front', 'side')).toBeCloseTo(length(plain, 'front', 'side'), 9);
  });
});

describe('room for nappies', () => {
  it('widens the waist, and a dropped waist over the seat', () => {
    fitsAtTheSide(changed('nappy-room'));
    const foot = (steps: readonly string[]) =>
      edgeEnd(pieceNamed(dressOf({ ageMonths: 12, steps }), 'front'), 'side').x;
    expect(foot(['nappy-room', 'dropped-waist']) - foot(['dropped-waist'])).toBeCloseTo(50 / 4, 6);
  });
});

describe('dropped waist', () => {
  it('lies as far below the natural waist as asked, with ease over the body there', () => {
    const drop = 70;
    const dress = dressOf({
      ageMonths: 96,
      measured: { hipGirth: 720, waistGirth: 580, waistHeight: 800, kneeHeight: 350 },
      steps: [['dropped-waist', { drop: `${drop} mm`, hipEase: '40 mm' }]],
    });
    fitsAtTheSide(dress);
    // 150 mm from waist to hip, a third of the way to the knee: at 70 mm the body has 580 + 140 x 70/150.
    const body = 580 + (140 * drop) / 150;
    const girth =
      2 * (edgeEnd(pieceNamed(dress, 'front'), 'side').x + edgeEnd(pieceNamed(dress, 'back'), 'side').x);
    expect(girth).toBeCloseTo(body + 40, 6);
  });

  it('and a raised waist exclude each other', () => {
    expect(refusalOf({ steps: ['waist-level', 'dropped-waist'] })).toBe('two-of-a-kind');
  });

  it('leaves the skirt shorter by default', () => {
    const skirt = (steps: readonly string[]) =>
      edgeLength(
        pieceNamed(dressOf({ ageMonths: 96, steps: [...steps, 'gathered-skirt'] }), 'skirt-front'),
        'right',
      );
    expect(skirt([]) - skirt(['dropped-waist'])).toBeGreaterThan(50);
  });
});

describe('seams to let out', () => {
  it('ask for their allowance at the side seams of bodice and lining, and nowhere else', () => {
    const dress = dressOf({
      steps: ['yoke', 'back-zip', 'gathered-skirt', 'lining', ['let-out-seams', { allowance: '40 mm' }]],
    });
    const asked = dress.pieces.flatMap((piece) =>
      piece.edges
        .filter((edge) => edge.allowance !== undefined)
        .map((edge) => `${piece.id} ${edge.name} ${edge.allowance}`),
    );
    expect(asked.sort()).toEqual([
      'back side 40',
      'back-lining side 40',
      'back-yoke side 40',
      'front side 40',
      'front-lining side 40',
      'front-yoke side 40',
    ]);
  });
});
