import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { completeBody } from '../../src/engine/body/index.ts';
import { makeCutPieces } from '../../src/engine/cut/index.ts';
import { type DressResult, designDress, tell } from '../../src/engine/design/index.ts';
import type { Garment } from '../../src/engine/piece/index.ts';
import { sewPlan } from '../../src/engine/sew/index.ts';
import { LABEL } from './judge-dress.ts';
import { faultsOfPlan } from './judge-plan.ts';
import { randomBlock } from './random-block.ts';
import { randomBody } from './random-body.ts';
import { changedInTurn, randomChange } from './random-change.ts';
import { randomDress } from './random-dress.ts';

const CASES = Number(process.env.FROCKWRIGHT_CASES ?? 300);
const SEED = 20270115;

const clothWidth = { main: 1400, yoke: 1400, skirt: 1120, lining: 1400, net: 1400, trim: 1400 };

/** Plans the sewing of a dress and says what is wrong with the plan; null where it is refused with a sentence. */
function judged(garment: Garment): { readonly faults: readonly string[]; readonly steps: number } | null {
  const cut = makeCutPieces(garment, { label: () => LABEL });
  const planned = sewPlan({ garment, cut });
  if (!planned.ok) {
    for (const problem of planned.problems) expect(tell(problem, 'in')).toMatch(/^This can not be .{60,}\.$/);
    return null;
  }
  for (const { say, reasons, minutes } of planned.plan.steps) {
    for (const told of [say, ...reasons]) expect(tell(told, 'cm')).not.toContain('undefined');
    expect(minutes).toBeGreaterThan(0);
  }
  return { faults: faultsOfPlan(garment, planned.plan), steps: planned.plan.steps.length };
}

describe(`sewing plans of random dresses, ${CASES} cases, seed ${SEED}`, () => {
  it('need nothing that comes later, sew every seam once, and leave no edge raw', () => {
    const tally = { planned: 0, steps: 0, refused: 0 };
    fc.assert(
      fc.property(randomBody, randomBlock, randomDress, (input, block, steps) => {
        const dress = drawn(input, { block, steps });
        if (dress?.ok !== true) return;
        const plan = judged(dress.garment);
        if (plan === null) {
          tally.refused++;
          return;
        }
        expect(plan.faults).toEqual([]);
        tally.planned++;
        tally.steps += plan.steps;
      }),
      { numRuns: Math.ceil(CASES * 2.1) + 40, seed: SEED },
    );
    console.log(`${tally.planned} planned, ${tally.steps} steps, ${tally.refused} refused`);
    expect(tally.planned).toBeGreaterThanOrEqual(CASES);
    // The designs of the house can all be sewn; only changes of the maker's own can spoil that.
    expect(tally.refused).toBe(0);
  });

  it('stand up to changes of the maker’s own, or say what can’t be sewn', () => {
    let planned = 0;
    fc.assert(
      fc.property(
        randomBody,
        randomDress,
        fc.array(randomChange, { minLength: 1, maxLength: 3 }),
        (input, steps, wished) => {
          const block = { kind: 'drafted', given: {} } as const;
          const body = completeBody(input);
          const dress = drawn(input, { block, steps });
          if (!body.ok || dress?.ok !== true) return;
          let { garment } = dress;
          const wish = { body: body.body, block, steps, clothWidth, units: 'cm', ruler: null } as const;
          for (const changed of changedInTurn(wish, garment, wished)) garment = changed.dress.garment;
          const plan = judged(garment);
          if (plan === null) return;
          expect(plan.faults).toEqual([]);
          planned++;
        },
      ),
      { numRuns: Math.ceil(CASES / 3), seed: SEED },
    );
    expect(planned).toBeGreaterThan(CASES / 10);
  });
});

function drawn(
  input: Parameters<typeof completeBody>[0],
  wish: Pick<Parameters<typeof designDress>[0], 'block' | 'steps'>,
): DressResult | null {
  const completed = completeBody(input);
  return completed.ok
    ? designDress({ body: completed.body, ...wish, clothWidth, units: 'cm', ruler: null })
    : null;
}
