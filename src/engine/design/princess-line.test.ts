import { describe, expect, it } from 'vitest';
import { dressOf, pieceNamed, refusalOf } from '../../../tests/dress-of.ts';
import { distance, dot, pathEndTangent, pathStartTangent } from '../geometry/index.ts';
import { edgeEnd, edgeLength, edgeOf, edgeStart, type Garment } from '../piece/index.ts';

const ageMonths = 132;
const lengthOf = (dress: Garment, id: string, edge: string) => edgeLength(pieceNamed(dress, id), edge);
const waist = (dress: Garment, ...ids: string[]) =>
  ids.reduce((sum, id) => sum + lengthOf(dress, id, 'waist'), 0);

describe('princess line', () => {
  it('parts each half into a middle and a side whose edges agree', () => {
    for (const months of [6, 24, 60, 144]) {
      const dress = dressOf({ ageMonths: months, steps: ['princess-line'] });
      expect(dress.pieces.map((piece) => piece.id)).toEqual(['front', 'front-side', 'back', 'back-side']);
      for (const id of ['front', 'back']) {
        const off = lengthOf(dress, id, 'princess-line') - lengthOf(dress, `${id}-side`, 'princess-line');
        expect(Math.abs(off)).toBeLessThan(0.01);
      }
    }
  });

  it('takes the shaping out of the waist and nothing out of the armhole', () => {
    const plain = dressOf({ ageMonths });
    const dress = dressOf({ ageMonths, steps: [['princess-line', { shaping: '8 mm' }]] });
    for (const id of ['front', 'back']) {
      expect(Math.abs(waist(plain, id) - waist(dress, id, `${id}-side`) - 8)).toBeLessThan(0.5);
      const armhole = lengthOf(dress, id, 'armhole') + lengthOf(dress, `${id}-side`, 'armhole');
      expect(armhole).toBeCloseTo(lengthOf(plain, id, 'armhole'), 4);
    }
  });

  it('lets the waist run through, and its notches meet', () => {
    const dress = dressOf({ ageMonths, steps: ['princess-line'] });
    const [middle, side] = [pieceNamed(dress, 'front'), pieceNamed(dress, 'front-side')];
    const square = (piece: typeof middle, from: string, to: string) =>
      dot(pathEndTangent(edgeOf(piece, from).path), pathStartTangent(edgeOf(piece, to).path));
    expect(square(side, 'waist', 'princess-line')).toBeCloseTo(0, 6);
    expect(square(middle, 'princess-line', 'waist')).toBeCloseTo(0, 6);
    const notch = (piece: typeof middle) => piece.notches.find((n) => n.edge === 'princess-line')?.at ?? 0;
    expect(notch(side)).toBeCloseTo(edgeLength(middle, 'princess-line') - notch(middle), 6);
  });

  it('takes the place of a waist dart, which the lining keeps', () => {
    const dart = { count: 'one', width: '18 mm', tip: '20 mm', back: false };
    const dress = dressOf({
      ageMonths,
      steps: [['waist-darts', dart], ['princess-line', { halves: 'front' }], 'lining'],
    });
    const [middle, side] = [pieceNamed(dress, 'front'), pieceNamed(dress, 'front-side')];
    expect(edgeEnd(side, 'waist').x - edgeStart(middle, 'waist').x).toBeCloseTo(18, 6);
    expect(dress.seams.filter((seam) => seam.name === 'dart').map((seam) => seam.id)).toEqual([
      'dart-front-lining-1',
    ]);
  });

  it('ends in the yoke where a yoke has taken the armhole', () => {
    const dress = dressOf({ ageMonths, steps: [['yoke', { below: '15 mm' }], 'princess-line'] });
    const side = pieceNamed(dress, 'front-side');
    expect(distance(edgeStart(side, 'yoke-line'), edgeEnd(side, 'princess-line'))).toBeLessThan(1e-6);
    const yoke = lengthOf(dress, 'front-yoke', 'yoke-line');
    expect(lengthOf(dress, 'front', 'yoke-line') + edgeLength(side, 'yoke-line')).toBeCloseTo(yoke, 4);
  });

  it('is set in a sleeve, opened behind and given a skirt like any other bodice', () => {
    const steps = ['back-zip', 'princess-line', 'set-in-sleeve', 'pleated-skirt', 'lining'];
    const dress = dressOf({ ageMonths, steps });
    const cap = dress.seams.find((seam) => seam.id === 'sleeve-cap-front');
    expect(cap?.a.map((edge) => edge.piece)).toEqual(['front', 'front-side']);
    const ring = dress.seams.find((seam) => seam.id === 'skirt-waist');
    expect(ring?.a.map((edge) => `${edge.piece}${edge.reversed === true ? ' back' : ''}`)).toEqual([
      'back back',
      'back-side back',
      'front-side',
      'front',
      'front back',
      'front-side back',
      'back-side',
      'back',
    ]);
  });

  it('refuses where there is no room', () => {
    expect(refusalOf({ ageMonths: 6, steps: [['princess-line', { shaping: '100 mm' }]] })).toBe(
      'princess-line.shaping out-of-range',
    );
  });
});
