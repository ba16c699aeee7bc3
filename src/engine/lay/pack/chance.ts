/** A repeatable source of chance: 32-bit integer steps only, so that every machine draws the same numbers. */
export interface Chance {
  /** At least 0, less than 1. */
  readonly next: () => number;
  /** A whole number from 0 to `count - 1`. */
  readonly below: (count: number) => number;
  /** Bell-shaped around 0 with a spread of 1, by a sum of even draws: no function that machines round apart. */
  readonly bell: () => number;
}

const STEP = 0x9e3779b9;
const TO_UNIT = 1 / 4294967296;

export function chance(seed: number): Chance {
  let state = Math.imul((seed | 0) + 1, 0x85ebca6b);
  const next = (): number => {
    state = (state + STEP) | 0;
    let t = state ^ (state >>> 16);
    t = Math.imul(t, 0x21f0aaad);
    t ^= t >>> 15;
    t = Math.imul(t, 0x735a2d97);
    t ^= t >>> 15;
    return (t >>> 0) * TO_UNIT;
  };
  const below = (count: number): number => Math.floor(next() * count);
  // Three draws of variance 1/12 each: a variance of 1/4, so twice the sum has a spread of 1.
  const bell = (): number => 2 * (next() + next() + next() - 1.5);
  return { next, below, bell };
}
