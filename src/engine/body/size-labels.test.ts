import { describe, expect, it } from 'vitest';
import { type BodyInput, completeBody, sizeLabels } from './index.ts';
import { ageOfHeight, sizeHeight } from './size-labels.ts';

function labelsOf(input: BodyInput) {
  const completed = completeBody(input);
  if (!completed.ok) throw new Error(JSON.stringify(completed.problems));
  return sizeLabels(completed.body);
}

describe('sizes by height', () => {
  it.each([
    [1129, 1100],
    [1131, 1160],
    [1160, 1160],
    [520, 500],
    [300, 500],
    [1900, 1760],
  ])('%d mm is nearest to %d', (height, size) => {
    expect(sizeHeight(height)).toBe(size);
  });

  it('tells how a child differs from the average of that height', () => {
    const { height, differences } = labelsOf({ measured: { height: 1150, chestGirth: 620 } });
    expect(height).toBe(1160);
    // Snyder 1977, girls of 116 cm: mean chest 57.1 cm, within the fit.
    expect(differences?.chestGirth).toBeGreaterThan(40);
    expect(differences?.chestGirth).toBeLessThan(60);
    expect(labelsOf({ measured: { height: 680 } }).differences).toBeNull();
  });

  it('the age of a label is that whose middle child has its height (WHO: girls of 5 years 109.4 cm)', () => {
    expect(ageOfHeight('girl', 1094.2)).toBeCloseTo(60, 0);
    expect(ageOfHeight('boy', 1100)).toBeCloseTo(60, 0);
    expect(ageOfHeight('girl', 1760)).toBeNull();
    expect(ageOfHeight('girl', 300)).toBeNull();
  });
});

describe('US label sizes', () => {
  it('are found by height and by chest apart, and never mixed with measured averages', () => {
    // Size 6: 46 in tall, chest 25 in; a girl of that height measures 22 1/2 in and so takes size 3 or 4 by her chest.
    const { us } = labelsOf({
      measured: { height: 46 * 25.4, chestGirth: 22.5 * 25.4, waistGirth: 20 * 25.4 },
    });
    expect(us.byHeight.label).toBe('6');
    expect(us.byHeight.differences.chestGirth).toBeCloseTo(-2.5 * 25.4, 0);
    expect(['3', '4']).toContain(us.byChest.label);
    expect(us.byHeight.differences.hipGirth).toBeUndefined();
  });

  it('takes the largest and smallest beyond the table', () => {
    expect(labelsOf({ measured: { height: 600 } }).us.byHeight.label).toBe('1');
    expect(labelsOf({ measured: { height: 1700 } }).us.byHeight.label).toBe('14');
  });
});
