import type { ChartPoint, GrowthChart } from '../body/index.ts';
import { linePath, type Point } from '../geometry/index.ts';
import { formatLength, MM_PER_INCH, type UnitSystem } from '../units/index.ts';
import { say } from '../words/index.ts';
import type { Mark } from './scene.ts';
import { boxAt, circlePath, dot, rectanglePath, stroke, strokeLine } from './shapes.ts';
import { capitalised, textMark } from './text.ts';
import type { FlowBlock } from './text-pages.ts';

/** Height of the whole figure, and the room round the field for what is written there, mm. */
const HEIGHT = 82;
const AIR = { left: 18, right: 9, top: 8, bottom: 14 };
const LABEL = 3;
const TITLE = 4.2;
const DOT = 1.1;
const CAP = 1.6;

/** Lines of the field stand at whole steps, about so many of them. */
const MOST_LINES = 8;
const STEPS = {
  cm: [5, 10, 20, 50, 100, 200],
  in: [0.25, 0.5, 1, 2, 4, 8].map((step) => step * MM_PER_INCH),
  kg: [0.5, 1, 2, 5, 10],
  months: [1, 3, 6, 12, 24],
} as const;

/**
 * One growth chart: the centile lines of children of the age, this child on the days it was measured (dots), and the
 * forecast for the day (ring) with the band in which nine of ten such children will be.
 */
export function growthFigure(chart: GrowthChart, units: UnitSystem): FlowBlock {
  return { kind: 'figure', height: HEIGHT, draw: (width) => growthMarks(chart, units, width) };
}

interface Scale {
  readonly least: number;
  readonly most: number;
  readonly steps: readonly number[];
}

function growthMarks(chart: GrowthChart, units: UnitSystem, width: number): readonly Mark[] {
  const isWeight = chart.measure === 'weight';
  const ages = scaleOf(agesOf(chart), STEPS.months);
  const values = scaleOf(valuesOf(chart), STEPS[isWeight ? 'kg' : units]);
  const field = boxAt(AIR.left, AIR.top, width - AIR.left - AIR.right, HEIGHT - AIR.top - AIR.bottom);
  const x = (age: number): number => place(age, ages, field.minX, field.maxX);
  const y = (value: number): number => place(value, values, field.maxY, field.minY);
  const at = ({ age, value }: ChartPoint): Point => ({ x: x(age), y: y(value) });
  const told = (value: number): string =>
    isWeight ? say('growth.report.kg', { value }, units) : formatLength(value, units);
  const title = say(`growth.reference.${chart.reference}`, {}, units);
  return [
    textMark(capitalised(title), { x: 0, y: TITLE }, { size: TITLE, weight: 'bold' }),
    ...values.steps.flatMap((value) => [
      strokeLine({ x: field.minX, y: y(value) }, { x: field.maxX, y: y(value) }, 'faint'),
      textMark(
        told(value),
        { x: field.minX - 1.5, y: y(value) + LABEL * 0.35 },
        { size: LABEL, align: 'right' },
      ),
    ]),
    ...ages.steps.flatMap((age) => [
      strokeLine({ x: x(age), y: field.minY }, { x: x(age), y: field.maxY }, 'faint'),
      textMark(String(age), { x: x(age), y: field.maxY + LABEL * 1.4 }, { size: LABEL, align: 'centre' }),
    ]),
    textMark(
      say('growth.chart.age', {}, units),
      { x: (field.minX + field.maxX) / 2, y: field.maxY + LABEL * 3.1 },
      { size: LABEL, align: 'centre' },
    ),
    stroke(rectanglePath(field), 'box'),
    ...chart.lines.flatMap(({ centile, points }) => [
      ...polyline(points.map(at), centile === 50 ? 'box' : 'measure'),
      ...points
        .slice(-1)
        .map((last) =>
          textMark(String(centile), { x: at(last).x + 1.5, y: at(last).y + LABEL * 0.35 }, { size: LABEL }),
        ),
    ]),
    ...polyline(chart.child.map(at), 'live'),
    ...chart.child.map((point) => dot(at(point), DOT)),
    ...forecastMarks(chart, at, y),
  ];
}

function forecastMarks(
  { child, forecast }: GrowthChart,
  at: (point: ChartPoint) => Point,
  y: (value: number) => number,
): readonly Mark[] {
  const last = child.at(-1);
  if (forecast === null || last === undefined) return [];
  const middle = at(forecast);
  const ends = [y(forecast.least), y(forecast.most)] as const;
  return [
    strokeLine(at(last), middle, 'pleat-meet'),
    strokeLine({ x: middle.x, y: ends[0] }, { x: middle.x, y: ends[1] }, 'live'),
    ...ends.map((end) => strokeLine({ x: middle.x - CAP, y: end }, { x: middle.x + CAP, y: end }, 'live')),
    { kind: 'fill', outline: circlePath(middle, DOT), fill: 'paper' },
    stroke(circlePath(middle, DOT), 'box'),
  ];
}

function polyline(points: readonly Point[], line: 'box' | 'measure' | 'live'): readonly Mark[] {
  const [first, second, ...rest] = points;
  return first === undefined || second === undefined ? [] : [stroke(linePath(first, second, ...rest), line)];
}

const agesOf = ({ lines, child, forecast }: GrowthChart): readonly number[] => [
  ...lines.flatMap(({ points }) => points.map(({ age }) => age)),
  ...child.map(({ age }) => age),
  ...(forecast === null ? [] : [forecast.age]),
];

const valuesOf = ({ lines, child, forecast }: GrowthChart): readonly number[] => [
  ...lines.flatMap(({ points }) => points.map(({ value }) => value)),
  ...child.map(({ value }) => value),
  ...(forecast === null ? [] : [forecast.least, forecast.most]),
];

/** Holds all values, with lines at whole steps within. */
function scaleOf(values: readonly number[], steps: readonly number[]): Scale {
  const [least, most] = [Math.min(...values), Math.max(...values)];
  const step = steps.find((one) => (most - least) / one <= MOST_LINES) ?? steps.at(-1) ?? 1;
  const first = Math.ceil(least / step - 1e-9);
  const count = Math.max(Math.floor(most / step + 1e-9) - first + 1, 0);
  return { least, most, steps: Array.from({ length: count }, (_, i) => (first + i) * step) };
}

function place(value: number, { least, most }: Scale, from: number, to: number): number {
  return most === least ? (from + to) / 2 : from + ((value - least) / (most - least)) * (to - from);
}
