import { crossesItself, outlineBox, tidyOutline } from './outline.ts';
import { search } from './search.ts';
import { type Shape, shapeOf } from './shape.ts';
import type { PackItem, PackProblem, PackRefusal, PackSettings, PackStart } from './types.ts';

/** A hair that rounding may cost a piece just as wide as the strip, as a part of the strip's width. */
const HAIR = 1e-9;

/**
 * Starts a search for a short layout. Outlines are looked through and prepared at once, each array one time, also over
 * several problems, so an array must not change; after that
 * each `next()` does a little work, a few milliseconds as a rule, and gives the best layout so far, so that the caller
 * can show it, pause, or stop by asking no more. Refuses a problem that has no answer, with every reason.
 */
export function startPacking(problem: PackProblem, settings: PackSettings): PackStart {
  if (!(problem.width > 0) || !Number.isFinite(problem.width)) {
    return { ok: false, refusals: [{ code: 'no-width' }] };
  }
  const shapes = new Map<Float64Array, Shape | OutlineFault>();
  for (const { outline } of problem.items.flatMap(({ variants }) => variants)) {
    if (!shapes.has(outline)) shapes.set(outline, preparedOnce(outline));
  }
  const refusals = problem.items.flatMap((item, i): readonly PackRefusal[] => {
    if (item.variants.length === 0) return [{ code: 'no-variant', item: i }];
    const code = item.variants.map(({ outline }) => shapes.get(outline)).find(isFault);
    if (code !== undefined) return [{ code, item: i }];
    return item.fixed === undefined ? sizeRefusals(problem, item, i) : [];
  });
  if (refusals.length > 0) return { ok: false, refusals };
  const sound = new Map([...shapes].flatMap(([outline, s]) => (isFault(s) ? [] : [[outline, s] as const])));
  return { ok: true, run: search(problem, sound, settings) };
}

type OutlineFault = 'bad-outline' | 'crosses-itself';

const isFault = (found: Shape | OutlineFault | undefined): found is OutlineFault => typeof found === 'string';

/** What was made of an outline is kept as long as the outline is: problems of the same pieces follow one another. */
const prepared = new WeakMap<Float64Array, Shape | OutlineFault>();

function preparedOnce(outline: Float64Array): Shape | OutlineFault {
  const known = prepared.get(outline);
  if (known !== undefined) return known;
  const found = shapeOrFault(outline);
  prepared.set(outline, found);
  return found;
}

function shapeOrFault(outline: Float64Array): Shape | OutlineFault {
  const tidy = tidyOutline(outline);
  if (tidy === null) return 'bad-outline';
  // An outline that touches itself may have no way to be cut into triangles.
  return crossesItself(tidy) ? 'crosses-itself' : (shapeOf(tidy) ?? 'crosses-itself');
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
