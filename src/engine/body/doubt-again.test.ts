import { describe, expect, it } from 'vitest';
import { speak } from '../words/index.ts';
import { type DoubtContext, doubtMeasures, type Measured, problemSaying } from './index.ts';

const born = { year: 2021, month: 3, day: 4 };
const before = { height: 1100, chestGirth: 550, waistGirth: 510, armLength: 350 };

/** A girl of five and a half, measured again half a year later. */
function doubts(now: Measured, context: Partial<DoubtContext> = {}) {
  const again = {
    sex: 'girl' as const,
    born,
    now: { day: { year: 2027, month: 3, day: 1 }, measures: now },
    before: [{ day: { year: 2026, month: 9, day: 1 }, measures: before }],
  };
  return doubtMeasures({ ageMonths: 72, measured: now }, { again, ...context });
}
const codes = (now: Measured) => doubts(now).map(({ measure, code }) => `${measure} ${code}`);

describe('two measurings of one child', () => {
  it('as children grow: nothing', () => {
    expect(codes({ height: 1130, chestGirth: 558, waistGirth: 515, armLength: 362 })).toEqual([]);
  });

  it('a little less is how people measure; much less is no child', () => {
    expect(codes({ ...before, height: 1105, armLength: 345 })).toEqual([]);
    expect(codes({ ...before, height: 1075 })).toEqual(['height body.shrank']);
    expect(codes({ ...before, armLength: 320 })).toContain('armLength body.shrank');
  });

  it('faster than the references', () => {
    expect(codes({ ...before, height: 1190 })).toEqual(['height body.grew-too-fast']);
    expect(codes({ ...before, chestGirth: 630, waistGirth: 580 })).toContain(
      'chestGirth body.changed-too-much',
    );
  });

  it('is said with both values and the day', () => {
    const [doubt] = doubts({ ...before, height: 1075 });
    expect(doubt && speak(problemSaying(doubt, 'Ada'), 'cm')).toBe(
      'Ada: the height, 107.5 cm, is less than on 2026-09-01, 110 cm. Children do not shrink: measure again.',
    );
  });
});
