import { describe, expect, it } from 'vitest';
import { completeBody, MEASURE_IDS, type Measured, type MeasureId, measureNext } from './index.ts';

const BODICE: readonly MeasureId[] = [
  'chestGirth',
  'waistGirth',
  'backWidth',
  'backNeckToWaist',
  'shoulderLength',
];
const next = (measured: Measured, weight: number | null = null): string | undefined =>
  measureNext({ ageMonths: 72, measured, weight }, BODICE)?.id;

describe('what to measure next', () => {
  it('a girth first, by which the others are known; then what nothing else tells', () => {
    expect(next({ height: 1150 })).toBe('waistGirth');
    expect(next({ height: 1150, waistGirth: 530 })).toBe('chestGirth');
    expect(next({ height: 1150, chestGirth: 580 })).toBe('waistGirth');
    expect(next({ height: 1150, chestGirth: 580, waistGirth: 530 })).toBe('backNeckToWaist');
    expect(next({ height: 1150, chestGirth: 580, waistGirth: 530, backNeckToWaist: 260 })).toMatch(
      /backWidth|shoulderLength/,
    );
  });

  it('nothing when all is measured, and nothing when nothing is known', () => {
    const all = completeBody({ ageMonths: 72, measured: {} });
    if (!all.ok) throw new Error('No body');
    const measured = Object.fromEntries(MEASURE_IDS.map((id) => [id, all.body.values[id].mm]));
    expect(next(measured)).toBeUndefined();
    expect(measureNext({ measured: {} }, BODICE)).toBeNull();
  });

  it('each one narrows, and what it promises comes true', () => {
    let measured: Measured = { height: 1150 };
    for (let i = 0; i < BODICE.length; i++) {
      const found = measureNext({ ageMonths: 72, measured }, BODICE);
      if (found === null || found.id === 'weight') throw new Error('Not a length');
      const open = (known: Measured): number => {
        const body = completeBody({ ageMonths: 72, measured: known });
        if (!body.ok) throw new Error('No body');
        const spreads = BODICE.map((id) => body.body.values[id]);
        return spreads.reduce((sum, value) => sum + (value.from === 'measured' ? 0 : value.spread ** 2), 0);
      };
      const filled = completeBody({ ageMonths: 72, measured });
      if (!filled.ok) throw new Error('No body');
      const more = { ...measured, [found.id]: filled.body.values[found.id].mm };
      expect(1 - open(more) / open(measured)).toBeCloseTo(found.narrows, 3);
      measured = more;
    }
  });
});
