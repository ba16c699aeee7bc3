import fc from 'fast-check';
import type { BlockChoice } from '../../src/engine/block/index.ts';

/** Blocks by both methods, with numbers of the maker's over them. */
export const randomBlock: fc.Arbitrary<BlockChoice> = fc
  .record(
    {
      method: fc.constantFrom('sixth-of-neck', 'eighth-of-chest'),
      chestEase: fc.integer({ min: 40, max: 120 }).map((mm) => `${mm} mm`),
      waistEase: fc.integer({ min: 25, max: 80 }).map((mm) => `${mm} mm`),
      tummy: fc.integer({ min: 0, max: 15 }).map((mm) => `${mm} mm`),
      frontShoulderFall: fc.integer({ min: 15, max: 32 }).map((mm) => `${mm} mm`),
      backShoulderFall: fc.integer({ min: 15, max: 32 }).map((mm) => `${mm} mm`),
    },
    { requiredKeys: [] },
  )
  .map((given) => ({ kind: 'drafted', given }));
