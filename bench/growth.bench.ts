import { it } from 'vitest';
import { changeApart, forecastOutcomes, heightCells } from '../tests/outside/growth-cohort.ts';

/** How good the forecasts of height are, by age, against the children of the Berkeley study. */
const BANDS = [
  { name: '6 to 12 months', from: 6, to: 12 },
  { name: '12 to 24 months', from: 12, to: 24 },
  { name: '2 to 5 years', from: 24, to: 60 },
  { name: '5 to 10 years', from: 60, to: 120 },
  { name: '10 to 14 years', from: 120, to: 169 },
] as const;

const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

it('forecasts of height, by age at the measuring', () => {
  const outcomes = forecastOutcomes(1000);
  const rows = BANDS.flatMap(({ name, from, to }) =>
    [3, 6, 12].flatMap((months) => {
      const cells = outcomes.filter(
        ({ cell }) => cell.age >= from && cell.age < to && cell.months === months,
      );
      if (cells.length === 0) return [];
      return [
        {
          age: name,
          'months ahead': months,
          'miss, published (cm)': mean(cells.map(({ cell }) => cell.miss)).toFixed(2),
          'miss, ours (cm)': mean(cells.map(({ rms }) => rms)).toFixed(2),
          'within the band of 90 %': `${(100 * mean(cells.map(({ share }) => share))).toFixed(1)} %`,
        },
      ];
    }),
  );
  console.table(rows);
  const apart = heightCells.map(changeApart);
  console.log(
    `Growth of the middle child, ours against the cohort: ${mean(apart).toFixed(2)} cm apart on average, ${Math.max(...apart).toFixed(2)} cm at most, over ${apart.length} cells.`,
  );
  console.log(`Within the band over all: ${(100 * mean(outcomes.map(({ share }) => share))).toFixed(1)} %.`);
});
