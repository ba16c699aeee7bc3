import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { completeBody } from '../../src/engine/body/index.ts';
import { designDress } from '../../src/engine/design/index.ts';
import { judgeDress, newTally } from './judge-dress.ts';
import { randomBlock } from './random-block.ts';
import { randomBody } from './random-body.ts';
import { randomDress } from './random-dress.ts';

const CASES = Number(process.env.FROCKWRIGHT_CASES ?? 1200);
const SEED = 20261125;

const clothWidth = { main: 1400, yoke: 1400, skirt: 1120, lining: 1400, net: 1400, trim: 1400 };

describe(`random plausible bodies x designs, ${CASES} cases, seed ${SEED}`, () => {
  it('every dress fits together, and every refusal says why', () => {
    const tally = newTally();
    fc.assert(
      fc.property(randomBody, randomBlock, randomDress, (input, block, steps) => {
        const completed = completeBody(input);
        if (!completed.ok) return;
        const { body } = completed;
        judgeDress(body, designDress({ body, block, steps, clothWidth, units: 'cm', ruler: null }), tally);
      }),
      { numRuns: Math.ceil(CASES * 2.1), seed: SEED },
    );
    console.log(`${tally.drawn} dresses drawn; refused:`, Object.fromEntries(tally.refused));
    expect(tally.drawn).toBeGreaterThanOrEqual(CASES);
  });
});
