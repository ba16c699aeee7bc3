import { describe, expect, it } from 'vitest';
import { type BlockChoice, draftBlock } from '../../src/engine/block/index.ts';
import { completeBody, type MeasureId } from '../../src/engine/body/index.ts';
import { createBench } from '../../src/engine/construct/index.ts';
import { direction, pathNearest } from '../../src/engine/geometry/index.ts';
import { edgeEnd, edgeLength, edgeOf, edgeStart, type Piece } from '../../src/engine/piece/index.ts';
import { inches } from '../../src/engine/units/index.ts';

function draft(
  measured: Partial<Record<MeasureId, number>>,
  choice: BlockChoice,
): { front: Piece; back: Piece } {
  const body = completeBody({ ageMonths: 72, measured });
  if (!body.ok) throw new Error('The body of a worked example must be complete.');
  const result = draftBlock(createBench(), body.body, choice, 'cm');
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.block;
}

/**
 * Teaching blog on children's bodices, January 2017: chest 60, neck 28, back length 27, shoulder 9, across front 23,
 * across back 25 cm. The expected figures are the blog's formulas worked by hand, in cm.
 */
describe('the sixth-of-the-neck method against its worked example', () => {
  const { front, back } = draft(
    {
      chestGirth: 600,
      neckBaseGirth: 280,
      backNeckToWaist: 270,
      shoulderLength: 90,
      frontChestWidth: 230,
      backWidth: 250,
    },
    { kind: 'drafted', given: { backShoulderFall: 2.5, tummy: 0, waistEase: 10 } },
  );
  const cm = (mm: number): number => mm / 10;

  it('has a half width of 32, a height of 28.5 and the side at 16', () => {
    expect(cm(edgeStart(front, 'side').x + edgeStart(back, 'side').x)).toBeCloseTo(32, 2);
    expect(cm(edgeStart(front, 'centre').y)).toBeCloseTo(28.5, 2);
    expect(cm(edgeStart(front, 'side').x)).toBeCloseTo(16, 2);
  });

  it('has a neck width of 5.17, a front depth of 6.17 and a back depth of 1.5', () => {
    expect(cm(edgeStart(front, 'shoulder').x)).toBeCloseTo(5.17, 2);
    expect(cm(edgeStart(back, 'shoulder').x)).toBeCloseTo(5.17, 2);
    expect(cm(edgeEnd(front, 'centre').y)).toBeCloseTo(6.17, 2);
    expect(cm(edgeEnd(back, 'centre').y)).toBeCloseTo(1.5, 2);
  });

  it('puts the underarm at (16, 15.5) and both shoulder ends at 13.94 from the centre, 2.02 down', () => {
    expect(cm(edgeStart(front, 'side').y)).toBeCloseTo(15.5, 2);
    for (const half of [front, back]) {
      expect(cm(edgeEnd(half, 'shoulder').x)).toBeCloseTo(13.94, 2);
      expect(cm(edgeEnd(half, 'shoulder').y)).toBeCloseTo(2.02, 2);
    }
  });

  it('slopes the shoulder by 12.99 degrees', () => {
    const along = direction(edgeStart(front, 'shoulder'), edgeEnd(front, 'shoulder'));
    expect((Math.atan2(along.y, along.x) * 180) / Math.PI).toBeCloseTo(12.99, 1);
  });

  it('runs the front armhole through (11.5, 10.83) and the back one through 12.5 from its centre, 8.5 down', () => {
    expect(pathNearest(edgeOf(front, 'armhole').path, { x: 115, y: 108.33 }).distance).toBeLessThan(0.1);
    expect(pathNearest(edgeOf(back, 'armhole').path, { x: 125, y: 85 }).distance).toBeLessThan(0.1);
  });

  it('has equal shoulders of 9 and equal side seams', () => {
    expect(cm(edgeLength(front, 'shoulder'))).toBeCloseTo(9, 2);
    expect(cm(edgeLength(back, 'shoulder'))).toBeCloseTo(9, 2);
    expect(Math.abs(edgeLength(front, 'side') - edgeLength(back, 'side'))).toBeLessThan(0.5);
  });

  it('draws an armhole of 30.5 to 33.5, 0.51 to 0.56 of the chest', () => {
    const armhole = cm(edgeLength(front, 'armhole') + edgeLength(back, 'armhole'));
    expect(armhole).toBeGreaterThan(30.5);
    expect(armhole).toBeLessThan(33.5);
    expect(armhole / 60).toBeGreaterThan(0.51);
    expect(armhole / 60).toBeLessThan(0.56);
  });

  it('draws a neckline of at least the neck girth, 28, and under 32', () => {
    const neckline = cm(2 * (edgeLength(front, 'neckline') + edgeLength(back, 'neckline')));
    expect(neckline).toBeGreaterThan(28);
    expect(neckline).toBeLessThan(32);
  });

  it('finishes at a chest of 64, an ease of 4', () => {
    expect(cm(2 * (edgeStart(front, 'side').x + edgeStart(back, 'side').x))).toBeCloseTo(64, 2);
  });
});

/**
 * Teaching blog on bodice and sleeve, in inches: chest 24, shoulder 10, waist length 10. Its quarter holds 6 in of
 * ease.
 */
describe('the eighth-of-the-chest method against its worked example', () => {
  const { front } = draft(
    { chestGirth: inches(24), shoulderWidth: inches(10), backNeckToWaist: inches(10) },
    { kind: 'drafted', given: { method: 'eighth-of-chest', chestEase: '6 in', tummy: 0 } },
  );
  const inch = (mm: number): number => mm / 25.4;

  it('has scye 5 1/2, quarter 7 1/2, half shoulder 5 1/4, neck 2 1/4, front neck depth 3, length 10 1/2', () => {
    expect(inch(edgeStart(front, 'side').y)).toBeCloseTo(5.5, 6);
    expect(inch(edgeStart(front, 'side').x)).toBeCloseTo(7.5, 6);
    expect(inch(edgeEnd(front, 'shoulder').x)).toBeCloseTo(5.25, 6);
    expect(inch(edgeStart(front, 'shoulder').x)).toBeCloseTo(2.25, 6);
    expect(inch(edgeEnd(front, 'centre').y)).toBeCloseTo(3, 6);
    expect(inch(edgeStart(front, 'centre').y)).toBeCloseTo(10.5, 6);
  });

  it('drops the shoulder by 1 in', () => {
    expect(inch(edgeEnd(front, 'shoulder').y)).toBeCloseTo(1, 6);
  });
});
