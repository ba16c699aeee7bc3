import { expect, it } from 'vitest';
import { formatLength, parseLength, RULERS } from '../../src/engine/units/index.ts';

function read(text: string, system: 'in' | 'cm' = 'in'): number {
  const length = parseLength(text, system);
  if (!length.ok) throw new Error(length.problem.code);
  return length.mm;
}

// International yard and pound agreement, 1959 (Federal Register 24 FR 5348): 1 yd = 0.9144 m, so 1 in = 25.4 mm.
it('36 inches are a yard, an eighth of a yard is 11.43 cm', () => {
  expect(read('36 in')).toBeCloseTo(914.4, 9);
  expect(read('4 1/2')).toBeCloseTo(114.3, 9);
});

// Both columns of a listing of US children's sizes (a textile trade page): inches and centimetres to one decimal.
it.each([
  ['31', '78.7'],
  ['34', '86.4'],
  ['43', '109.2'],
  ['25 1/2', '64.8'],
  ['20.5', '52.1'],
  ['27½', '69.8'],
  ['10 3/4', '27.3'],
  ['58 1/2', '148.6'],
])('%s in are %s cm', (inch, cm) => {
  expect(Math.abs(read(inch) - read(`${cm} cm`))).toBeLessThanOrEqual(0.51);
});

// Plain arithmetic on a ruler: 1/16 in = 1.5875 mm, so no length is further than 0.8 mm from a mark.
it('the sixteenths of an inch', () => {
  expect(RULERS.sixteenth.step).toBeCloseTo(1.5875, 12);
  const written = Array.from({ length: 16 }, (_, i) => formatLength((i + 1) * 1.5875, 'in'));
  expect(written).toEqual([
    '1/16 in',
    '1/8 in',
    '3/16 in',
    '1/4 in',
    '5/16 in',
    '3/8 in',
    '7/16 in',
    '1/2 in',
    '9/16 in',
    '5/8 in',
    '11/16 in',
    '3/4 in',
    '13/16 in',
    '7/8 in',
    '15/16 in',
    '1 in',
  ]);
});
