import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { dressToLay, PLAIN, planned } from '../../../tests/fixtures/laid.ts';
import { boxStart } from './box-start.ts';
import { layoutFaults, type PackItem, type PackProblem } from './pack/index.ts';
import { packProblem } from './pack-problem.ts';

const box = (along: number, across: number): Float64Array =>
  new Float64Array([0, 0, along, 0, along, across, 0, across]);

describe('boxes in columns', () => {
  const size = fc.double({ min: 5, max: 100, noNaN: true });
  const item = fc.record({
    along: size,
    across: size,
    x: fc.constantFrom(undefined, { from: 0, to: 1e6, step: 37 }, { from: 12, to: 1e6 }),
    y: fc.constantFrom(undefined, { from: 0, to: 0 }, { from: 3, to: 100, step: 9 }),
  });

  test('lie apart, inside, and where each may lie', () => {
    let found = 0;
    fc.assert(
      fc.property(fc.array(item, { minLength: 1, maxLength: 14 }), (wanted) => {
        const items = wanted.map(({ along, across, x, y }): PackItem => {
          const outline = box(along, across);
          const range = { ...(x === undefined ? {} : { x }), ...(y === undefined ? {} : { y }) };
          return { variants: [{ outline, ...range }] };
        });
        const problem: PackProblem = { width: 200, items };
        const places = boxStart(problem);
        if (places === null) return;
        found++;
        expect(layoutFaults(problem, places)).toEqual([]);
      }),
      { seed: 20261125, numRuns: 200 },
    );
    expect(found).toBeGreaterThan(50);
  });

  test('four of half the width take two columns', () => {
    const problem = {
      width: 100,
      items: Array.from({ length: 4 }, () => ({ variants: [{ outline: box(30, 50) }] })),
    };
    expect(boxStart(problem)?.map(({ x, y }) => [x, y])).toEqual([
      [0, 0],
      [0, 50],
      [30, 0],
      [30, 50],
    ]);
    expect(boxStart({ ...problem, longest: 59 })).toBeNull();
    const pinned = { variants: [{ outline: box(1, 1) }], fixed: { variant: 0, x: 0, y: 0 } };
    expect(boxStart({ ...problem, items: [...problem.items, pinned] })).toBeNull();
  });

  test('of a dress it needs far less than one piece after another', () => {
    const plan = planned([...dressToLay(1, 'Adaeze'), ...dressToLay(0.9, 'Ngozi')], PLAIN);
    const [stretch] = plan.stretches;
    if (stretch === undefined) throw new Error('There is a stretch.');
    const { problem } = packProblem(stretch, plan.cloth, 0, []);
    const places = boxStart(problem) ?? [];
    expect(layoutFaults(problem, places)).toEqual([]);
    const alongs = problem.items.map(({ variants: [first] }) => {
      const xs = first?.outline.filter((_, k) => k % 2 === 0) ?? new Float64Array();
      return Math.max(...xs) - Math.min(...xs);
    });
    const end = Math.max(...places.map(({ x }, i) => x + (alongs[i] ?? 0)));
    expect(end).toBeLessThan(0.5 * alongs.reduce((sum, along) => sum + along, 0));
  });
});
