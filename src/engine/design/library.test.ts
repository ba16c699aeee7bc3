import { describe, expect, it } from 'vitest';
import { tryDress } from '../../../tests/dress-of.ts';
import { hasWords, LIBRARY } from './index.ts';

describe('the dresses to begin with', () => {
  it('are ten at least, each with a name and a line about it', () => {
    expect(LIBRARY.length).toBeGreaterThanOrEqual(10);
    for (const { id } of LIBRARY) {
      expect(hasWords(`dress.${id}`), id).toBe(true);
      expect(hasWords(`dress.${id}.about`), id).toBe(true);
    }
  });

  for (const { id, steps } of LIBRARY) {
    it(`${id} can be drawn for the middle child of every age`, () => {
      for (const ageMonths of [6, 12, 18, 24, 36, 60, 84, 108, 132, 144]) {
        const dress = tryDress({ ageMonths, steps: steps.map(({ step, given }) => [step, given]) });
        expect(dress.ok ? 'drawn' : JSON.stringify(dress.problems), `${ageMonths} months`).toBe('drawn');
      }
    });
  }
});
