import { describe, expect, it } from 'vitest';
import { completeBody } from '../../src/engine/body/index.ts';
import { type Check, checkGarment } from '../../src/engine/check/index.ts';
import { tell } from '../../src/engine/design/index.ts';
import { dressOf, type Wish } from '../dress-of.ts';
import { small } from '../fixtures/spoiled-trims.ts';

/** What the checks say of a designed dress under one code. */
function cautions(wish: Wish, code: Check['code']): readonly Check[] {
  const completed = completeBody({ ageMonths: wish.ageMonths ?? 60, measured: {} });
  if (!completed.ok) throw new Error('The middle girl is a body.');
  const bounds = { chestEase: [20, 160], waistEase: [20, 110] } as const;
  return checkGarment({ garment: dressOf(wish), body: completed.body, bounds }).filter(
    (c) => c.code === code,
  );
}

const sashOf = (loop: number, knot: number, tail: number) => ({
  ends: 'straight',
  sashLoop: `${loop} mm`,
  sashKnot: `${knot} mm`,
  sashTail: `${tail} mm`,
});

describe('EN 14682, as public summaries tell it', () => {
  it('age 5, tie at the nape: stop (Finnish and Irish consumer pages)', () => {
    const [found, ...others] = cautions(
      { ageMonths: 60, steps: [['back-ties', { tied: 'neck' }]] },
      'ties-and-bows',
    );
    expect(found?.level).toBe('stop');
    expect(others).toEqual([]);
  });

  it('front sash of 400 mm undone: over 360, warn, and the ceremony exclusion is named (trade summary, 2007)', () => {
    const steps: NonNullable<Wish['steps']> = [
      ['gathered-skirt', { length: '500 mm' }],
      ['sash', { ...sashOf(100, 50, 150), tied: 'front' }],
    ];
    const found = cautions({ steps }, 'ties-and-bows');
    expect(found.map(({ level, measured, allowed }) => [level, measured, allowed])).toEqual([
      ['warn', { mm: 400 }, { to: { mm: 360 } }],
    ]);
    const [check] = found;
    expect(check?.todo === undefined || check.todo === null ? '' : tell(check.todo, 'cm')).toMatch(
      /ceremonies or festivals.*under supervision.*outside EN 14682/,
    );
  });

  it('sash tail 300 mm, hem 250 mm below the knot: warn, it hangs below the hem', () => {
    const steps: NonNullable<Wish['steps']> = [
      ['gathered-skirt', { length: '250 mm' }],
      ['sash', sashOf(70, 40, 120)],
    ];
    const found = cautions({ steps }, 'ties-and-bows');
    expect(found.map(({ level, measured, allowed, say }) => [level, measured, allowed, say.key])).toEqual([
      ['warn', { mm: 300 }, { to: { mm: 250 } }, 'check.ties-and-bows.below-hem'],
    ]);
  });
});

describe('CEN/TS 17394-1, as a testing house sums it up', () => {
  it('button of 7 mm at 24 months must hold 70 N, one of 4 mm 50 N', () => {
    for (const [diameter, newtons] of [
      [7, 70],
      [6, 70],
      [5.9, 50],
      [4, 50],
    ] as const) {
      const found = cautions(
        { ageMonths: 24, steps: [['back-buttons', { diameter: `${diameter} mm` }]] },
        'small-parts',
      );
      expect(found.map(({ say }) => say.values.newtons)).toEqual([newtons]);
    }
  });

  it('the law of the United States exempts the buttons of clothes (16 CFR 1501.3(d)): a note, no stop', () => {
    const found = checkGarment(small('buttons', 7, 24)).filter(({ code }) => code === 'small-parts');
    expect(found.map(({ level }) => level)).toEqual(['note']);
    expect(found.map(({ todo }) => (todo === null ? '' : tell(todo, 'in'))).join()).toContain('exempt');
  });
});
