import { describe, expect, it } from 'vitest';
import { MEASURE_IDS, type StartingWish, startingBody } from './index.ts';

function bodyOf(wish: Partial<StartingWish>) {
  const body = startingBody({ sex: 'girl', ageMonths: null, height: null, weight: null, ...wish });
  if (body === null) throw new Error('No body');
  return body;
}

describe('bodies to begin with', () => {
  it('by age: the middle height of the WHO and the means of the survey', () => {
    const body = bodyOf({ ageMonths: 72 });
    // WHO 2007, girls of 72 months: 115.1 cm. Snyder 1977, girls of 66-78 months: chest 56.8, hip 58.8 cm.
    expect(body.height.mm).toBeCloseTo(1151.2, 0);
    expect(body.chestGirth).toMatchObject({ mm: 568.1, from: 'age' });
    expect(body.hipGirth.mm).toBeCloseTo(587.8, 1);
    expect(bodyOf({ ageMonths: 72, charts: 'us' }).height.mm).not.toBeCloseTo(1151.2, 0);
  });

  it('boys have their own', () => {
    const [girl, boy] = [bodyOf({ ageMonths: 72 }), bodyOf({ ageMonths: 72, sex: 'boy' })];
    expect(boy.chestGirth.mm).toBeGreaterThan(girl.chestGirth.mm);
    expect(boy.hipGirth.mm).not.toBe(girl.hipGirth.mm);
    const [tall, same] = [bodyOf({ height: 1300 }), bodyOf({ height: 1300, sex: 'boy' })];
    expect(same.chestGirth.mm).toBeGreaterThan(tall.chestGirth.mm);
  });

  it('by height and weight is surer of girths than by height, and wider for a heavier child', () => {
    const [height, light, heavy] = [
      bodyOf({ height: 1160 }),
      bodyOf({ height: 1160, weight: 19 }),
      bodyOf({ height: 1160, weight: 25 }),
    ];
    for (const id of ['chestGirth', 'waistGirth', 'hipGirth', 'upperArmGirth'] as const) {
      expect(light[id].from).toBe('build');
      expect(light[id].spread).toBeLessThan(height[id].spread);
      expect(heavy[id].mm).toBeGreaterThan(light[id].mm);
    }
    // Least squares of the survey (Snyder 1977), girls of 24-84 months: 1.68 cm; of 84-168: 2.59 cm.
    expect(light.chestGirth.spread).toBeGreaterThan(16.8);
    expect(light.chestGirth.spread).toBeLessThan(25.9);
  });

  it('marks as estimated what nobody has measured', () => {
    const estimated = (wish: Partial<StartingWish>) => {
      const body = bodyOf(wish);
      return MEASURE_IDS.filter((id) => body[id].from === 'estimated');
    };
    const unsourced = [
      'neckBaseGirth',
      'shoulderLength',
      'shoulderWidth',
      'backWidth',
      'frontChestWidth',
      'backNeckToWaist',
      'scyeDepth',
      'waistHeight',
    ];
    expect(estimated({ height: 1160 })).toEqual(unsourced);
    expect(estimated({ ageMonths: 72 })).toEqual(unsourced);
    // Of babies only height, waist, hip, head and arm are known by age.
    expect(estimated({ ageMonths: 9 })).toEqual(
      MEASURE_IDS.filter(
        (id) => !['height', 'waistGirth', 'hipGirth', 'headGirth', 'upperArmGirth'].includes(id),
      ),
    );
  });

  it('every size and age gives a whole body; nothing at all gives none', () => {
    for (let ageMonths = 1; ageMonths <= 168; ageMonths += 4) {
      for (const sex of ['girl', 'boy'] as const) {
        for (const { mm, spread } of Object.values(bodyOf({ sex, ageMonths }))) {
          expect(mm).toBeGreaterThan(0);
          expect(spread).toBeGreaterThanOrEqual(0);
        }
      }
    }
    for (let height = 560; height <= 1800; height += 40) {
      expect(Object.keys(bodyOf({ height, weight: height / 50 })).length).toBe(MEASURE_IDS.length);
    }
    expect(startingBody({ sex: 'girl', ageMonths: null, height: null, weight: 20 })).toBeNull();
  });
});
