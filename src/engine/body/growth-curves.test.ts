import { describe, expect, it } from 'vitest';
import { type GrowthInput, growBody, growthBand, growthChart, referenceValue } from './index.ts';

const GIRL: GrowthInput = {
  sex: 'girl',
  born: { year: 2021, month: 1, day: 12 },
  measured: {
    day: { year: 2027, month: 1, day: 12 },
    measures: { height: 1150, chestGirth: 575 },
    weight: 20,
  },
  event: { year: 2027, month: 7, day: 12 },
};

function grownOf(input: GrowthInput) {
  const result = growBody(input);
  if (!result.ok) throw new Error('Not grown');
  return result.grown;
}

describe('growth charts', () => {
  it('hold the lines of the WHO, the child on its days, and the forecast with its band', () => {
    const grown = grownOf(GIRL);
    const chart = growthChart('height', grown, [{ age: 48, value: 1010 }]);
    expect(chart?.lines.map(({ centile }) => centile)).toEqual([3, 15, 50, 85, 97]);
    const [first] = chart?.lines[2]?.points ?? [];
    expect(first).toEqual({ age: 42, value: referenceValue('who-height', 'girl', 42, 0) });
    expect(chart?.lines[0]?.points.at(-1)?.age).toBe(84);
    expect(chart?.child.map(({ value }) => value)).toEqual([1010, 1150]);
    const { forecast } = chart ?? {};
    expect((forecast?.most ?? 0) - (forecast?.least ?? 0)).toBeCloseTo(
      2 * (growthBand(grown, 'height') ?? 0),
      9,
    );
    expect(forecast?.value).toBe(grown.values.height?.value);
  });

  it('lines never cross', () => {
    for (const measure of ['height', 'weight'] as const) {
      const lines = growthChart(measure, grownOf(GIRL), [])?.lines ?? [];
      expect(lines.length).toBe(5);
      lines.slice(1).forEach((line, i) => {
        line.points.forEach(({ value }, j) => {
          expect(value).toBeGreaterThan(lines[i]?.points[j]?.value ?? Number.NaN);
        });
      });
    }
  });

  it('nothing to draw where nobody has a reference, no forecast where nothing was grown', () => {
    expect(growthChart('hipGirth', grownOf(GIRL), [])?.child).toEqual([]);
    expect(
      growthChart('neckGirth', { ...grownOf(GIRL), ages: { measured: 20, event: 24, correction: 0 } }, []),
    ).toBeNull();
    expect(growthChart('height', grownOf({ ...GIRL, event: GIRL.measured.day }), [])?.forecast).toBeNull();
  });
});
