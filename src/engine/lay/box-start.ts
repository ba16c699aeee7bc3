import type { PackPlace, PackProblem, PackRange, PackVariant } from './pack/index.ts';
import { cornersBounds } from './turns.ts';

interface Column {
  readonly x: number;
  readonly along: number;
  /** Up to here it is filled. */
  y: number;
}

/**
 * A layout that is there at once: the box of every piece in columns across the cloth, the longest pieces first, each in
 * the first column that has room. Of a party's pieces it covers about half, where one piece after the other covers a
 * fifth. Null where something is pinned or in the way, or where the places that are allowed do not come out.
 */
export function boxStart({ width, longest, items }: PackProblem): readonly PackPlace[] | null {
  if (items.some(({ fixed }) => fixed !== undefined)) return null;
  const boxes = items.flatMap(({ variants: [variant] }, item) => {
    if (variant === undefined) return [];
    const { minX, minY, maxX, maxY } = cornersBounds(variant.outline);
    return [{ item, variant, along: maxX - minX, across: maxY - minY }];
  });
  boxes.sort((a, b) => b.along - a.along || a.item - b.item);
  const columns: Column[] = [];
  const places: PackPlace[] = [];
  let end = 0;
  for (const { item, variant, along, across } of boxes) {
    const fits = columns.find((column) => placeIn(column, variant, along, across, width) !== null);
    const column = fits ?? { x: firstFrom(end, variant.x), along, y: 0 };
    const place = placeIn(column, variant, along, across, width);
    if (place === null) return null;
    if (fits === undefined) {
      columns.push(column);
      end = column.x + along;
    }
    column.y = place.y + across;
    places[item] = { variant: 0, ...place };
  }
  return end > (longest ?? Number.POSITIVE_INFINITY) || places.length !== items.length ? null : places;
}

/** The lowest place in a column; null where it has no room there, or where the piece may not lie so. */
function placeIn(
  column: Column,
  variant: PackVariant,
  along: number,
  across: number,
  width: number,
): { readonly x: number; readonly y: number } | null {
  const x = firstFrom(column.x, variant.x);
  const y = firstFrom(column.y, variant.y);
  const inside = x + along <= column.x + column.along + ROUNDING && y + across <= width + ROUNDING;
  const allowed = x <= (variant.x?.to ?? x) + ROUNDING && y <= (variant.y?.to ?? y) + ROUNDING;
  return inside && allowed ? { x, y } : null;
}

const ROUNDING = 1e-9;

/** The first allowed value that is not less. */
function firstFrom(least: number, range: PackRange | undefined): number {
  const from = range?.from ?? 0;
  if (least <= from) return from;
  const step = range?.step ?? 0;
  return step === 0 ? least : from + Math.ceil((least - from) / step - ROUNDING) * step;
}
