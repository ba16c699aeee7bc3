import type { Point } from '../geometry/index.ts';
import { turnedPoint } from './raster.ts';
import type { QuarterTurns } from './scene.ts';

/** Where a shape lies on the large sheet: turned about the origin by quarter turns, then shifted. */
export interface Placement {
  readonly turns: QuarterTurns;
  readonly shift: Point;
}

/** A point of a shape where the placement puts it. */
export function onSheet(placement: Placement | undefined, p: Point): Point {
  if (placement === undefined) throw new Error('Every shape has a placement.');
  const turned = turnedPoint(placement.turns, p);
  return { x: turned.x + placement.shift.x, y: turned.y + placement.shift.y };
}

/** The other way: where a point of the large sheet lies in the shape's own coordinates. */
export function fromSheet({ turns, shift }: Placement, p: Point): Point {
  return turnedPoint(BACK[turns], { x: p.x - shift.x, y: p.y - shift.y });
}

const BACK = { 0: 0, 1: 3, 2: 2, 3: 1 } as const satisfies Record<QuarterTurns, QuarterTurns>;
