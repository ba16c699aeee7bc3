import { add, type Path, type Point, pathAt, scale, type Vector } from '../geometry/index.ts';

/**
 * Places of an armhole whose top has moved: at these shares of the way down to `end`, mm, moved with the top and less
 * and less below, so that the armhole keeps its hollow.
 */
export const movedHollow = (
  armhole: Path,
  end: number,
  shares: readonly number[],
  moved: Vector,
): readonly Point[] =>
  shares.map((share) => add(pathAt(armhole, end * share).point, scale(moved, (1 - share) ** 2)));
