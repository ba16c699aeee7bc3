import fc from 'fast-check';
import { describe, it } from 'vitest';
import { type ChosenStep, DESIGN_STEPS, findStep, LIBRARY } from '../../src/engine/design/index.ts';
import { judgeDresses } from './judge-dress.ts';
import { randomBodyTo14 } from './random-body.ts';
import { randomStep } from './random-dress.ts';

const CASES = Number(process.env.FROCKWRIGHT_CASES ?? 600);
const SEED = 20270612;
const clothWidth = { main: 1400, yoke: 1400, skirt: 1400, lining: 1120, net: 1400, trim: 1400 };

/** A step of a library dress: as it is, or with numbers of the maker's over its own. */
const varied = (step: ChosenStep): fc.Arbitrary<ChosenStep> => {
  const known = findStep(step.step);
  if (known === undefined) throw new Error(`The library uses an unknown step "${step.step}".`);
  return fc
    .option(randomStep(known), { freq: 2 })
    .map((other) => ({ step: step.step, given: { ...other?.given, ...step.given } }));
};

const figure = fc.option(fc.constantFrom(...DESIGN_STEPS.filter(({ stage }) => stage === 'figure')), {
  freq: 1,
});

const libraryDress = fc
  .constantFrom(...LIBRARY)
  .chain(({ steps }) => fc.tuple(figure, ...steps.map(varied)))
  .map(([adjusted, ...steps]) => (adjusted === null ? steps : [{ step: adjusted.id, given: {} }, ...steps]));

describe(`random bodies to 14 years x every library dress x random numbers, ${CASES} cases, seed ${SEED}`, () => {
  it('every dress fits together, and every refusal says why', () => {
    judgeDresses({
      bodies: randomBodyTo14,
      dresses: libraryDress,
      clothWidth,
      seed: SEED,
      cases: CASES,
      tries: Math.ceil(CASES * 1.4),
    });
  });
});
