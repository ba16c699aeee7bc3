import { describe, expect, it } from 'vitest';
import { dressOf, type Wish, withNeeds } from '../../../tests/dress-of.ts';
import { DESIGN_STEPS, LIBRARY } from '../design/index.ts';
import { pathEnd, pathLength, pathStart } from '../geometry/index.ts';
import { sketchDress } from './index.ts';

type Steps = NonNullable<Wish['steps']>;

/** Steps that change nothing that is seen on the dress as it is worn, and why. */
const UNSEEN: Readonly<Record<string, string>> = {
  petticoat: 'hangs under the skirt',
  lining: 'lies within',
  'growth-hem': 'its cloth is turned up within; the skirt is as long as before',
  'let-out-seams': 'wider allowances lie within',
  'neck-facing': 'is turned within',
  'armhole-facing': 'is turned within',
  'change-edge-allowance': 'allowances lie within',
  'rename-piece': 'a name is not seen',
  'add-notch': 'notches lie in the allowance',
};

/** Steps that by their own rule change nothing on the middle girl of five, with something for them to do. */
const ASKED: Readonly<Record<string, Steps[number]>> = {
  'side-shaping': ['side-shaping', { takeIn: '10 mm' }],
  'waist-darts': ['waist-darts', { count: 'one' }],
};

/** Both drawings to the tenth of a millimetre. */
function drawn(steps: Steps): string {
  const dress = dressOf({ steps });
  return (['front', 'back'] as const)
    .flatMap((side) => sketchDress(dress, side).lines)
    .map(({ stroke, path }) => {
      const { x: x1, y: y1 } = pathStart(path);
      const { x: x2, y: y2 } = pathEnd(path);
      return [stroke, ...[x1, y1, x2, y2, pathLength(path)].map((n) => n.toFixed(1))].join(' ');
    })
    .join('\n');
}

describe('every step leaves its mark in the sketch', () => {
  for (const { id } of DESIGN_STEPS) {
    const steps = withNeeds(id);
    const without = steps.slice(0, -1);
    const asked = ASKED[id];
    const all = asked === undefined ? steps : [...without, asked];
    const reason = UNSEEN[id];
    it(reason === undefined ? id : `${id} does not: it ${reason}`, () => {
      if (reason === undefined) expect(drawn(all)).not.toBe(drawn(without));
      else expect(drawn(all)).toBe(drawn(without));
    });
  }

  it('the list of what is not seen names steps that there are', () => {
    const known = DESIGN_STEPS.map(({ id }) => id);
    for (const id of Object.keys(UNSEEN)) expect(known).toContain(id);
  });

  it('a front and back that are cut in one are drawn on both sides', () => {
    for (const more of [[], ['wrap-front'], ['keyhole-back', 'split-along']]) {
      const dress = dressOf({ steps: [...more, 'gathered-skirt', 'join-pieces'] });
      for (const side of ['front', 'back'] as const) {
        const { lines } = sketchDress(dress, side);
        expect(lines.filter((line) => line.stroke === 'outline').length, side).toBeGreaterThan(6);
        for (const { path } of lines) expect(Number.isFinite(pathLength(path))).toBe(true);
      }
    }
  });

  it('every library dress is drawn for small and large children', () => {
    for (const { id, steps } of LIBRARY)
      for (const ageMonths of [18, 132]) {
        const dress = dressOf({ ageMonths, steps: steps.map(({ step, given }) => [step, given]) });
        for (const side of ['front', 'back'] as const) {
          const { lines } = sketchDress(dress, side);
          expect(lines.length, `${id} ${side}`).toBeGreaterThan(15);
          expect(
            lines.every(({ path }) => pathLength(path) > 0),
            `${id} ${side}`,
          ).toBe(true);
        }
      }
  });
});
