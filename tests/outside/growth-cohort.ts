import { type CalendarDay, type GrowthInput, growBody, growthBand } from '../../src/engine/body/index.ts';
import { rowsOf } from './data-rows.ts';

/*
 * Children to hold forecasts against: Berkeley Child Guidance Study, 70 girls and 66 boys born 1928-29
 * (Tuddenham and Snyder, Univ. Calif. Publ. Child Dev. 1954;1:183-364), data/growth_forecast_error_berkeley.csv.
 */

export interface Cell {
  readonly sex: 'girl' | 'boy';
  readonly measure: string;
  readonly age: number;
  readonly months: number;
  readonly change: number;
  readonly miss: number;
  readonly correlation: number;
}

const cells = rowsOf('growth_forecast_error_berkeley.csv').map(
  (row): Cell => ({
    sex: row.sex === 'boy' ? 'boy' : 'girl',
    measure: row.measure ?? '',
    age: Number(row.age_months),
    months: Number(row.horizon_months),
    change: Number(row.mean_increment),
    miss: Number(row.forecast_error_sd_constant_z),
    correlation: Number(row.correlation),
  }),
);
/** Of heights from six months on: below, the study has too few children. */
export const heightCells = cells.filter(({ measure, age }) => measure === 'height' && age >= 6);

const BORN: CalendarDay = { year: 2015, month: 1, day: 1 };
const dayAt = (months: number): CalendarDay => {
  const date = new Date(Date.UTC(2015, 0, 1) + Math.round(months * 30.4375) * 86_400_000);
  return { year: date.getUTCFullYear(), month: date.getUTCMonth() + 1, day: date.getUTCDate() };
};

function forecast({ sex, age, months }: Cell, height: number) {
  const input: GrowthInput = {
    sex,
    born: BORN,
    measured: { day: dayAt(age), measures: { height } },
    event: dayAt(age + months),
  };
  const result = growBody(input);
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  const { height: value } = result.grown.values;
  if (value === undefined) throw new Error('No height');
  return { value: value.value, band: growthBand(result.grown, 'height') ?? 0 };
}

/** Fixed chance: 32 bits of a multiplying generator, two of them to a normal deviate. */
function createDeviates(seed: number): () => number {
  let state = seed;
  const next = (): number => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return (state + 0.5) / 2 ** 32;
  };
  return () => Math.sqrt(-2 * Math.log(next())) * Math.cos(2 * Math.PI * next());
}

/** [middle, standard deviation] of the WHO by sex and age, mm. */
const WHO = new Map(
  rowsOf('who_lms_monthly.csv').flatMap(
    ({ sex, indicator, age_months: age, M, S }): [string, readonly [number, number]][] => {
      const isHeight = indicator === (Number(age) < 24 ? 'length_for_age' : 'height_for_age');
      return isHeight ? [[`${sex} ${age}`, [Number(M) * 10, Number(M) * Number(S) * 10]]] : [];
    },
  ),
);

const who = (sex: string, age: number): readonly [number, number] =>
  WHO.get(`${sex} ${age}`) ?? [Number.NaN, Number.NaN];

/** How far the forecast growth of the middle child is from the mean growth of the cohort, cm. */
export function changeApart(cell: Cell): number {
  const [now] = who(cell.sex, cell.age);
  const standsUp = cell.age < 24 && cell.age + cell.months >= 24 ? 7 : 0;
  return Math.abs((forecast(cell, now).value - now + standsUp) / 10 - cell.change);
}

/** What became of forecasts in one cell: share within the band of nine in ten, and root mean square of the miss, cm. */
export interface Outcome {
  readonly cell: Cell;
  readonly share: number;
  readonly rms: number;
}

/** Draws children from the published spread and correlation of every cell, and forecasts each of them. */
export function forecastOutcomes(children: number): readonly Outcome[] {
  const deviate = createDeviates(20261125);
  return heightCells
    .filter(({ age, months }) => age + months <= 168)
    .map((cell) => {
      // A child that keeps its place misses by the later spread x sqrt(2(1 - r)): so that spread is found from the miss.
      const [from, fromSpread] = who(cell.sex, cell.age);
      const [to, toSpread] = who(cell.sex, cell.age + cell.months);
      const spread = (10 * cell.miss) / Math.sqrt(2 * (1 - cell.correlation));
      const before = (spread * fromSpread) / toSpread;
      let [inside, squares] = [0, 0];
      for (let i = 0; i < children; i++) {
        const place = deviate();
        const later = cell.correlation * place + Math.sqrt(1 - cell.correlation ** 2) * deviate();
        const { value, band } = forecast(cell, from + before * place);
        const miss = value - (to + spread * later);
        if (Math.abs(miss) <= band) inside++;
        squares += miss ** 2;
      }
      return { cell, share: inside / children, rms: Math.sqrt(squares / children) / 10 };
    });
}
