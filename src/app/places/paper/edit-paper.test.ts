import { describe, expect, it } from 'vitest';
import { correction, formatsOf, heightsIn, sideOf, squareWith, withFurther, withMain } from './edit-paper.ts';

describe('formats of the pattern', () => {
  it('another one to print on takes the place of the first, further ones stay', () => {
    expect(withMain(formatsOf(undefined), 'A3')).toEqual(['A3']);
    expect(withMain(['A4', 'A0'], 'Letter')).toEqual(['Letter', 'A0']);
    expect(withMain(['A4', 'A0'], 'A0')).toEqual(['A0']);
  });
  it('further ones come and go', () => {
    expect(withFurther(['A4'], 'A0', true)).toEqual(['A4', 'A0']);
    expect(withFurther(['A4', 'A0'], 'A0', true)).toEqual(['A4', 'A0']);
    expect(withFurther(['A4', 'A0'], 'A0', false)).toEqual(['A4']);
  });
});

describe('the measured square', () => {
  it('is kept in millimetres, the other side true until it is measured', () => {
    const across = squareWith(undefined, 'across', 99.5);
    expect(across).toEqual({ across: '99.5 mm', down: '100 mm' });
    expect(sideOf(across, 'down')).toBeNull();
    expect(squareWith(across, 'down', 99)).toEqual({ across: '99.5 mm', down: '99 mm' });
  });
  it('takes centimetres for what they are', () => {
    expect(squareWith(undefined, 'down', 9.9)).toEqual({ across: '100 mm', down: '99 mm' });
  });
  it('is forgotten when both sides are true', () => {
    expect(squareWith({ across: '99 mm', down: '100 mm' }, 'across', undefined)).toBeUndefined();
    expect(squareWith({ across: '99 mm', down: '100 mm' }, 'across', 100)).toBeUndefined();
    expect(squareWith({ across: '99 mm', down: '98 mm' }, 'across', undefined)).toEqual({
      across: '100 mm',
      down: '98 mm',
    });
  });
  it('keeps what an order file says in other units', () => {
    expect(sideOf({ across: '3.9 in', down: '10 cm' }, 'across')).toBeCloseTo(99.06, 6);
    expect(sideOf({ across: '3.9 in', down: '10 cm' }, 'down')).toBeNull();
  });
  it('says by how much the next print is larger', () => {
    expect(correction(98)).toBe(102);
    expect(correction(null)).toBe(100);
  });
});

it('heights are parted at commas, and an unfinished one is left out', () => {
  expect(heightsIn('80 cm, 92 cm; 36 1/2 in, ')).toEqual(['80 cm', '92 cm', '36 1/2 in']);
  expect(heightsIn(' ')).toEqual([]);
});
