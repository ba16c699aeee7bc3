import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { completeBody } from '../../src/engine/body/index.ts';
import { designDress, LIBRARY } from '../../src/engine/design/index.ts';
import { type Path, pathLength, walkPath } from '../../src/engine/geometry/index.ts';
import { sketchDress } from '../../src/engine/sketch/index.ts';
import { randomBody } from './random-body.ts';
import { changedInTurn, OWN, randomChange } from './random-change.ts';
import { randomDress } from './random-dress.ts';

/** Fewer cases than of whole dresses: every change draws its dress once more. */
const CASES = Math.ceil(Number(process.env.FROCKWRIGHT_CASES ?? 2000) / 4);
const SEED = 20261127;
const clothWidth = { main: 1400, yoke: 1400, skirt: 1120, lining: 1400, net: 1400, trim: 1400 };

/** Random dresses, and some of the library, which wear trims together. */
const randomOrLibrary = fc.oneof(
  { weight: 2, arbitrary: randomDress },
  { weight: 1, arbitrary: fc.constantFrom(...LIBRARY).map(({ steps }) => steps) },
);

describe(`sketches of random dresses x random changes of the maker's own, ${CASES} cases, seed ${SEED}`, () => {
  it('front and back can always be drawn, every line somewhere and of some length', {
    timeout: CASES * 1000,
  }, () => {
    const drawn = new Map<string, number>();
    fc.assert(
      fc.property(
        randomBody,
        randomOrLibrary,
        fc.array(randomChange, { minLength: 1, maxLength: 4 }),
        (input, steps, wished) => {
          const completed = completeBody(input);
          if (!completed.ok) return fc.pre(false);
          const { body } = completed;
          const block = { kind: 'drafted', given: {} } as const;
          const wish = { body, block, steps, clothWidth, units: 'cm', ruler: null } as const;
          const plain = designDress(wish);
          if (!plain.ok) return fc.pre(false);
          let { garment } = plain;
          for (const { change, dress, leftOut } of changedInTurn(wish, garment, wished)) {
            drawn.set(change.step, (drawn.get(change.step) ?? 0) + (leftOut === undefined ? 1 : 0));
            garment = dress.garment;
          }
          for (const side of ['front', 'back'] as const) {
            const { lines } = sketchDress(garment, side);
            // The bodice alone has as many, whatever becomes of the rest.
            expect(lines.length, side).toBeGreaterThan(6);
            for (const { path, stroke } of lines) {
              expect(coordinates(path).every(Number.isFinite), `${side} ${stroke}`).toBe(true);
              expect(pathLength(path), `${side} ${stroke}`).toBeGreaterThan(0);
            }
          }
        },
      ),
      { numRuns: CASES, maxSkipsPerRun: 20, seed: SEED },
    );
    console.log('changes drawn:', Object.fromEntries(drawn));
    // Every change must have been drawn now and then, or nothing was tried.
    for (const { id } of OWN) expect(drawn.get(id) ?? 0, id).toBeGreaterThan(CASES / 100);
  });
});

/** Every number of a line, ends and handles. */
function coordinates(path: Path): readonly number[] {
  const numbers: number[] = [];
  const push = (...more: number[]): void => {
    numbers.push(...more);
  };
  walkPath(path, { moveTo: push, lineTo: push, curveTo: push, close: push });
  return numbers;
}
