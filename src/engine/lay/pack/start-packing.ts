import { convexParts } from './convex-parts.ts';
import { crossesItself, outlineBox, tidyOutline } from './outline.ts';
import { search } from './search.ts';
import type { PackItem, PackProblem, PackRefusal, PackSettings, PackStart } from './types.ts';

/** A hair that rounding may cost a piece just as wide as the strip, as a part of the strip's width. */
const HAIR = 1e-9;

/**
 * Starts a search for a short layout. Nothing is computed before the first `next()`; each one does a little work, a few
 * milliseconds as a rule, and gives the best layout so far, so that the caller can show it, pause, or stop by asking no
 * more. Refuses a problem that has no answer, with every reason.
 */
export function startPacking(problem: PackProblem, settings: PackSettings): PackStart {
  const refusals = refusalsOf(problem);
  if (refusals.length > 0) return { ok: false, refusals };
  return { ok: true, run: search(problem, settings) };
}

function refusalsOf(problem: PackProblem): readonly PackRefusal[] {
  if (!(problem.width > 0) || !Number.isFinite(problem.width)) return [{ code: 'no-width' }];
  const looked = new Map<Float64Array, 'bad-outline' | 'crosses-itself' | null>();
  const fault = (outline: Float64Array) => {
    const known = looked.get(outline);
    if (known !== undefined) return known;
    const found = outlineFault(outline);
    looked.set(outline, found);
    return found;
  };
  return problem.items.flatMap((item, i): readonly PackRefusal[] => {
    if (item.variants.length === 0) return [{ code: 'no-variant', item: i }];
    const code = item.variants.map(({ outline }) => fault(outline)).find((found) => found !== null);
    if (code != null) return [{ code, item: i }];
    return item.fixed === undefined ? sizeRefusals(problem, item, i) : [];
  });
}

function outlineFault(outline: Float64Array): 'bad-outline' | 'crosses-itself' | null {
  const tidy = tidyOutline(outline);
  if (tidy === null) return 'bad-outline';
  if (crossesItself(tidy)) return 'crosses-itself';
  try {
    convexParts(tidy);
    return null;
  } catch {
    // It touches itself so that it can't be cut into triangles.
    return 'crosses-itself';
  }
}

function sizeRefusals(problem: PackProblem, item: PackItem, i: number): readonly PackRefusal[] {
  const sizes = item.variants.map(({ outline, x, y }) => {
    const { minX, minY, maxX, maxY } = outlineBox(outline);
    return {
      across: maxY - minY + Math.max(0, y?.from ?? 0),
      along: maxX - minX + Math.max(0, x?.from ?? 0),
    };
  });
  const room = problem.width * (1 + HAIR);
  const longest = (problem.longest ?? Number.POSITIVE_INFINITY) * (1 + HAIR);
  if (sizes.some(({ across, along }) => across <= room && along <= longest)) return [];
  const narrow = sizes.filter(({ across }) => across <= room);
  return narrow.length === 0
    ? [{ code: 'too-wide', item: i, least: Math.min(...sizes.map(({ across }) => across)) }]
    : [{ code: 'too-long', item: i, least: Math.min(...narrow.map(({ along }) => along)) }];
}
