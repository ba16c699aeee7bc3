import { describe, it } from 'vitest';
import { judgeDresses } from './judge-dress.ts';
import { randomBody } from './random-body.ts';
import { randomDress } from './random-dress.ts';

const CASES = Number(process.env.FROCKWRIGHT_CASES ?? 1200);
const SEED = 20261125;

const clothWidth = { main: 1400, yoke: 1400, skirt: 1120, lining: 1400, net: 1400, trim: 1400 };

describe(`random plausible bodies x designs, ${CASES} cases, seed ${SEED}`, () => {
  it('every dress fits together, and every refusal says why', () => {
    judgeDresses({
      bodies: randomBody,
      dresses: randomDress,
      clothWidth,
      seed: SEED,
      cases: CASES,
      tries: Math.ceil(CASES * 2.1),
    });
  });
});
