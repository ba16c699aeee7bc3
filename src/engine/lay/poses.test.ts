import { describe, expect, test } from 'vitest';
import { bodiceBack, bodiceFront } from '../../../tests/fixtures/cut-pieces.ts';
import { halfShape, wholeShape } from './piece-shape.ts';
import { halfPose, poseOf, shapeStore, turnsAllowed } from './poses.ts';
import type { TurnDegrees } from './turns.ts';

const one = { way: 'one-way' } as const;
const both = { way: 'both-ways' } as const;

describe('ways in which a piece may lie', () => {
  test('on one-way cloth every head lies the same way', () => {
    expect(turnsAllowed('lengthwise', one, false)).toEqual([0]);
    expect(turnsAllowed('bias', one, false)).toEqual([45]);
    expect(turnsAllowed('cross-allowed', one, false)).toEqual([0, 90]);
  });

  test('on cloth without a way, end for end as well', () => {
    expect(turnsAllowed('lengthwise', both, false)).toEqual([0, 180]);
    expect(turnsAllowed('bias', both, false)).toEqual([45, 135, 225, 315]);
    expect(turnsAllowed('cross-allowed', both, false)).toEqual([0, 90, 180, 270]);
    expect(turnsAllowed('any', both, false)).toHaveLength(8);
  });

  test('turned by 180 the outline is bit for bit the reflection in a point; by 360 in two steps it is the same', () => {
    const shape = wholeShape(bodiceBack(), 6);
    if (shape === null) throw new Error('It encloses cloth.');
    const store = shapeStore();
    for (const degrees of [0, 45, 90, 135] as const) {
      const a = store.posed(shape, poseOf(degrees, false)).corners;
      const b = store.posed(shape, poseOf((degrees + 180) as TurnDegrees, false)).corners;
      expect(a.every((v, i) => v === -(b[i] ?? Number.NaN))).toBe(true);
    }
  });

  test('the partner of a piece at 45 degrees is its mirror image, at 315', () => {
    const shape = wholeShape(bodiceBack(), 6);
    if (shape === null) throw new Error('It encloses cloth.');
    const store = shapeStore();
    const plain = store.posed(shape, poseOf(45, false)).corners;
    const partner = store.posed(shape, poseOf(45, true)).corners;
    expect(partner.every((v, i) => v === (i % 2 === 0 ? 1 : -1) * (plain[i] ?? Number.NaN))).toBe(true);
  });

  test('on a fold, end for end is the mirror image along the fold; the fold edge stays where it is', () => {
    const half = halfShape(bodiceFront(), 6, 'y=0');
    if (half === null) throw new Error('The front has a fold.');
    const store = shapeStore();
    const plain = store.posed(half, halfPose(false, false));
    const turned = store.posed(half, halfPose(true, false));
    expect(
      turned.corners.every((v, i) => v === (i % 2 === 0 ? -1 : 1) * (plain.corners[i] ?? Number.NaN)),
    ).toBe(true);
    expect(plain.grownBox.minY).toBe(0);
    expect(turned.grownBox.minY).toBe(0);
    expect(store.posed(half, halfPose(false, true)).grownBox.maxY).toBe(0);
  });

  test('equal shapes share one array, whoever they belong to', () => {
    const store = shapeStore();
    const [a, b] = [wholeShape(bodiceBack(), 6), wholeShape(bodiceBack(), 6)];
    if (a === null || b === null) throw new Error('They enclose cloth.');
    expect(store.posed(a, poseOf(180, true)).corners).toBe(store.posed(b, poseOf(180, true)).corners);
  });
});
