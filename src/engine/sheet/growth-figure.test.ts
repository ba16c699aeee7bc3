import { describe, expect, it } from 'vitest';
import { type GrowthInput, growBody, growthChart } from '../body/index.ts';
import { pathBounds } from '../geometry/index.ts';
import { growthFigure } from './growth-figure.ts';
import type { Mark } from './scene.ts';

const GIRL: GrowthInput = {
  sex: 'girl',
  born: { year: 2021, month: 1, day: 12 },
  measured: { day: { year: 2027, month: 1, day: 12 }, measures: { height: 1150 }, weight: 20 },
  event: { year: 2027, month: 7, day: 12 },
};

function marksOf(measure: 'height' | 'weight', units: 'in' | 'cm'): readonly Mark[] {
  const result = growBody(GIRL);
  const chart = result.ok
    ? growthChart(measure, result.grown, [{ age: 60, value: measure === 'height' ? 1085 : 17.5 }])
    : null;
  if (chart === null) throw new Error('No chart');
  const block = growthFigure(chart, units);
  if (block.kind !== 'figure') throw new Error('No figure');
  return block.draw(180);
}

const textsOf = (marks: readonly Mark[]): readonly string[] =>
  marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : []));

describe('a growth chart on paper', () => {
  it('draws five lines with their names, two dots, a ring and a bar, all within its place', () => {
    const marks = marksOf('height', 'cm');
    expect(textsOf(marks)).toEqual(
      expect.arrayContaining(['3', '15', '50', '85', '97', '66', '72', '110 cm']),
    );
    expect(marks.filter((mark) => mark.kind === 'fill' && mark.fill === 'ink').length).toBe(2);
    expect(marks.filter((mark) => mark.kind === 'fill' && mark.fill === 'paper').length).toBe(1);
    for (const mark of marks) {
      if (mark.kind !== 'stroke') continue;
      const { minX, minY, maxX, maxY } = pathBounds(mark.path);
      expect(minX).toBeGreaterThanOrEqual(0);
      expect(minY).toBeGreaterThanOrEqual(0);
      expect(maxX).toBeLessThanOrEqual(180);
      expect(maxY).toBeLessThanOrEqual(82);
    }
  });

  it('taller lies higher: the forecast above the last dot, 97 above 3', () => {
    const marks = marksOf('height', 'cm');
    const dots = marks.flatMap((mark) => (mark.kind === 'fill' ? [pathBounds(mark.outline)] : []));
    const [first, last, ring] = dots;
    expect(last?.minY).toBeLessThan(first?.minY ?? 0);
    expect(ring?.minY).toBeLessThan(last?.minY ?? 0);
    expect(ring?.minX).toBeGreaterThan(last?.minX ?? 0);
  });

  it('speaks inches and kilos where they belong', () => {
    expect(textsOf(marksOf('height', 'in'))).toContain('44 in');
    expect(textsOf(marksOf('weight', 'in'))).toContain('20 kg');
  });
});
