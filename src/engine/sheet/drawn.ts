import type { Mark } from './scene.ts';

/** A drawing from its top left corner down, with the height that it takes, mm. */
export interface Drawn {
  readonly marks: readonly Mark[];
  readonly height: number;
}

/** Marks moved as they are. */
export function shifted(marks: readonly Mark[], x: number, y: number): Mark {
  return { kind: 'group', frame: { a: 1, b: 0, c: 0, d: 1, e: x, f: y }, clip: null, marks };
}
