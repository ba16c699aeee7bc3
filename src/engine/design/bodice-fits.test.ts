import { describe, expect, it } from 'vitest';
import type { Wish } from '../../../tests/dress-of.ts';
import { faultsOf } from '../../../tests/faults-of.ts';

/** Shapes of the bodice in the company that they keep; nothing may be long, short, crooked or unmatched. */
const DRESSES: Readonly<Record<string, NonNullable<Wish['steps']>>> = {
  'darts, lined, with a gathered skirt': [
    ['waist-darts', { count: 'two', width: '12 mm', back: true }],
    'back-zip',
    'gathered-skirt',
    'lining',
  ],
  'princess line with a sleeve and a flat skirt': [
    'princess-line',
    'set-in-sleeve',
    'back-zip',
    'circle-skirt',
  ],
  'princess line under a yoke, lined': ['yoke', 'princess-line', ['lining', { cut: 'follow-yoke' }]],
  'princess line in the place of a dart': [
    ['waist-darts', { count: 'one', width: '18 mm', back: true }],
    'princess-line',
    'pleated-skirt',
    'lining',
  ],
  'wrapped front, lined': ['neckline', 'wrap-front', 'gathered-skirt', 'lining'],
  'wrapped front beside princess lines, bound': [
    'princess-line',
    ['wrap-front', { reach: '50 mm' }],
    'neck-binding',
    'circle-skirt',
  ],
  'dropped waist with a drop shoulder': [
    'dropped-waist',
    'drop-shoulder',
    'back-zip',
    'pleated-skirt',
    'lining',
  ],
  'every figure at once': [
    'long-body',
    'round-tummy',
    'shoulder-slope',
    'nappy-room',
    'seated',
    'set-in-sleeve',
  ],
};

describe('shapes of the bodice fit together', () => {
  for (const [name, steps] of Object.entries(DRESSES)) {
    it(name, () => {
      for (const ageMonths of [36, 96, 144])
        expect(faultsOf({ ageMonths, steps }), `${ageMonths}`).toEqual([]);
    });
  }
});
