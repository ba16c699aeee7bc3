import { pathFlatten } from '../geometry/index.ts';
import type { Saying } from '../words/index.ts';
import { type FreeRectangle, freeRectangles } from './free-rectangles.ts';
import { obstaclesOn } from './obstacles.ts';
import type { Lay } from './read-lay.ts';

/** A rectangle of cloth that a lay leaves, with what it could still give. */
export interface Offcut extends FreeRectangle {
  /** Which stretch of the lay it is on. */
  readonly stretch: number;
  /** On folded cloth every offcut is there twice. */
  readonly layers: 1 | 2;
  readonly uses: readonly Saying[];
}

/** Smaller leftovers are not worth a name, mm; more than this many are not worth a list (common practice, no source). */
const LEAST_OFFCUT = 60;
const MOST_OFFCUTS = 8;

/**
 * A tied bow of the usual size as it is cut: 510 by 100 mm (a span of 140, tails of 85 and 60 for the knot, 50 wide and
 * doubled) with 12 mm allowance all round, and a knot alone. Common practice, no source.
 */
const BOW = { long: 534, wide: 124 };
const KNOT = { long: 94, wide: 64 };

/** Single bias binding for necks and armholes is cut about 35 mm wide; shorter strips are not worth joining, mm. */
const BINDING = 35;
const LEAST_STRIP = 150;

/** The largest rectangles left within the used length, largest first. */
export function layOffcuts({ stretches, cloth }: Lay): readonly Offcut[] {
  const all = stretches.flatMap((stretch, index) => {
    const { folding, from, length, depth, pieces } = stretch;
    const rings = [
      ...pieces.map(({ outline }) => pathFlatten(outline, 0.5)),
      ...obstaclesOn({ folding, depth, items: [] }, cloth, from),
    ];
    const layers = folding === 'single' ? 1 : 2;
    return freeRectangles(rings, length, depth, MOST_OFFCUTS, LEAST_OFFCUT).map(
      (free): Offcut => ({ ...free, stretch: index, layers, uses: usesOf(free) }),
    );
  });
  return all.sort((a, b) => b.along * b.across - a.along * a.across).slice(0, MOST_OFFCUTS);
}

function usesOf({ along, across }: FreeRectangle): readonly Saying[] {
  const [long, wide] = [Math.max(along, across), Math.min(along, across)];
  const uses: Saying[] = [];
  if (long >= BOW.long && wide >= BOW.wide) uses.push({ key: 'lay.use.bow', values: {} });
  else if (long >= KNOT.long && wide >= KNOT.wide) uses.push({ key: 'lay.use.knot', values: {} });
  const { strips, length } = biasStrips(along, across, BINDING);
  if (strips > 0) {
    const values = { width: { mm: BINDING }, length: { mm: length }, strips };
    uses.push({ key: 'lay.use.binding', values });
  }
  return uses;
}

/**
 * Strips of a width cut side by side at 45 degrees from a rectangle, with square ends; mm. Away from its corners each
 * strip is as long as the short side allows, less its own width for the slanted ends.
 */
export function biasStrips(
  along: number,
  across: number,
  width: number,
): { readonly strips: number; readonly length: number } {
  const short = Math.min(along, across);
  const reach = (along + across) / Math.SQRT2;
  let strips = 0;
  let length = 0;
  for (let from = 0; from + width <= reach; from += width) {
    const to = from + width;
    const inCorner = Math.min(2 * from, 2 * (reach - to));
    const one = Math.min(Math.max(0, inCorner), short * Math.SQRT2 - width);
    if (one < LEAST_STRIP) continue;
    strips++;
    length += one;
  }
  return { strips, length };
}
