import { describe, expect, it } from 'vitest';
import { completeBody } from '../body/index.ts';
import { createBench } from '../construct/index.ts';
import { pathLength } from '../geometry/index.ts';
import { edgeOf } from '../piece/index.ts';
import { draftBlock, measureHalf } from './index.ts';

function drafted(ageMonths: number, choice: Parameters<typeof draftBlock>[2]) {
  const body = completeBody({ ageMonths, measured: {} });
  if (!body.ok) throw new Error('This body must be complete.');
  const block = draftBlock(createBench(), body.body, choice, 'cm');
  if (!block.ok) throw new Error(JSON.stringify(block.problems));
  return block.block;
}

describe('a drafted half measured as paper', () => {
  it.each([24, 60, 120])('draws the same half again, at %i months', (months) => {
    const block = drafted(months, { kind: 'drafted', given: {} });
    const own = {
      front: measureHalf(block.front),
      back: measureHalf(block.back),
      seamIncluded: 0,
      closingIncluded: 0,
    };
    const again = drafted(months, { kind: 'own', own, fits: null });
    for (const half of ['front', 'back'] as const) {
      const measured = measureHalf(again[half]);
      for (const [field, mm] of Object.entries(own[half])) {
        // The hollow is taken half-way down; the curve through it is drawn anew and may pass a little beside.
        expect(measured[field as keyof typeof measured], `${half} ${field}`).toBeCloseTo(
          mm,
          field === 'armholeHollow' ? 0 : 6,
        );
      }
      for (const edge of ['shoulder', 'side', 'neckline']) {
        const [a, b] = [block, again].map((b) => pathLength(edgeOf(b[half], edge).path));
        expect(Math.abs((a ?? 0) - (b ?? 0)), `${half} ${edge}`).toBeLessThan(3);
      }
    }
  });
});
