import { describe, expect, it } from 'vitest';
import { dressOf, pieceNamed, refusalOf } from '../../../tests/dress-of.ts';
import { sleeveFaults } from '../../../tests/sleeve-faults.ts';
import { distance, pathAt, pathLength } from '../geometry/index.ts';
import { edgeLength, edgeOf, edgeStart } from '../piece/index.ts';

describe('flutter sleeve', () => {
  for (const part of ['quarter', 'third', 'half']) {
    it(`${part} circle: everything agrees at every age`, () => {
      for (const ageMonths of [6, 12, 24, 48, 84, 120, 144]) {
        const step: [string, Record<string, string>] = ['flutter-sleeve', { part }];
        expect(sleeveFaults({ ageMonths, steps: [step] }), `${ageMonths} months`).toEqual([]);
        expect(sleeveFaults({ ageMonths, steps: ['yoke', 'lining', step] })).toEqual([]);
      }
    });
  }

  it('ends above the underarm as far as asked, front and back', () => {
    const dress = dressOf({ steps: [['flutter-sleeve', { clear: '40 mm' }]] });
    const wing = pieceNamed(dress, 'sleeve');
    for (const half of ['front', 'back']) {
      expect(edgeLength(pieceNamed(dress, half), 'armhole') - edgeLength(wing, `cap-${half}`)).toBeCloseTo(
        40,
        5,
      );
    }
    expect(refusalOf({ steps: [['flutter-sleeve', { clear: '5 mm' }]] })).toBe(
      'flutter-sleeve.clear out-of-range',
    );
  });

  it('is part of a ring: its inner edge keeps one distance from one point, and half a circle turns by 180 degrees', () => {
    const wing = pieceNamed(dressOf({ steps: [['flutter-sleeve', { part: 'half' }]] }), 'sleeve');
    const length = edgeLength(wing, 'cap-front') + edgeLength(wing, 'cap-back');
    const radius = length / Math.PI;
    const hub = { x: 0, y: -radius };
    for (const name of ['cap-front', 'cap-back']) {
      const { path } = edgeOf(wing, name);
      for (const share of [0, 0.13, 0.5, 0.77, 1]) {
        const { point } = pathAt(path, pathLength(path) * share);
        expect(Math.abs(distance(point, hub) - radius)).toBeLessThan(0.02);
      }
    }
    expect(edgeStart(wing, 'cap-front')).toEqual({ x: 0, y: 0 });
  });

  it('refuses ends deeper than the middle', () => {
    expect(refusalOf({ steps: [['flutter-sleeve', { depth: '40 mm', endDepth: '60 mm' }]] })).toBe(
      'flutter-sleeve.deeper-ends',
    );
  });
});
