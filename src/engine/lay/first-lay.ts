import { type PackProgress, startPacking } from './pack/index.ts';
import type { Packer } from './run-lay.ts';
import { cornersBounds } from './turns.ts';

/**
 * A packer that searches for nothing: the layout from which a search would begin is its answer, so that a lay is there
 * at once, also of a whole party. Where something is pinned or in the way there is none to begin from, and the first one
 * that a search finds is taken.
 */
export const packAtOnce: Packer = (problem, settings) => {
  const { start } = settings;
  const isFree = problem.items.every(({ fixed }) => fixed === undefined);
  if (start === undefined || !isFree) return startPacking(problem, { ...settings, evaluations: 1 });
  const ends = problem.items.map(({ variants }, i) => {
    const place = start[i];
    const outline = place === undefined ? undefined : variants[place.variant]?.outline;
    if (place === undefined || outline === undefined) return 0;
    const { minX, maxX } = cornersBounds(outline);
    return place.x + maxX - minX;
  });
  return {
    ok: true,
    run: toldOnce({ evaluations: 0, best: { places: start, length: Math.max(0, ...ends) } }),
  };
};

// biome-ignore lint/correctness/useYield: there is nothing to tell on the way.
function* toldOnce(progress: PackProgress): Generator<PackProgress, PackProgress, undefined> {
  return progress;
}
