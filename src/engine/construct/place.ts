import type { Point } from '../geometry/index.ts';

/** A point of the draft that has a name in the trade; `name` is a key of the catalogue (`place.shoulder-tip`). */
export interface Place {
  readonly name: string;
  readonly at: Point;
}

export const place = (name: string, at: Point): Place => ({ name, at });
