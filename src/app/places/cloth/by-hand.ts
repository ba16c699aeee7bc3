import { lengthOf, type PlacedItem, type PlacedStretch, stretchJudge } from '../../../engine/lay/index.ts';
import { type ItemAt, pinName, type SeenLay, type SeenLength, seenLength } from './seen-lay.ts';

/** A place that she wanted for a piece, or why the piece can't lie there. */
export type HandMove =
  | { readonly ok: true; readonly lay: SeenLay }
  | { readonly ok: false; readonly why: 'off-cloth' | 'no-stripe' };

/** A piece that is let go this far over an edge is put to the edge; further out it is refused, mm. */
export const EDGE_SLACK = 20;

/** Puts a piece where she wants it, as near as fold, stripe and edge allow, and pins it there. */
export function movedTo(
  seen: SeenLay,
  at: ItemAt,
  wanted: { readonly x: number; readonly y: number },
  variant = placeOf(seen, at)?.variant ?? 0,
  slack = EDGE_SLACK,
): HandMove {
  const length = seen.lengths[at.length];
  const stretch = length?.placed[at.stretch];
  if (length === undefined || stretch === undefined) return { ok: true, lay: seen };
  const judge = stretchJudge(length.plan, at.stretch, stretch.from);
  const bands = sameWay(length, at, variant).flatMap((band) => {
    const near = judge.nearest(at.item, band, wanted);
    return near === null ? [] : [{ ...near, variant: band }];
  });
  const [best] = bands.toSorted((a, b) => a.off - b.off);
  if (best === undefined) return { ok: false, why: 'no-stripe' };
  if (best.off > slack) return { ok: false, why: 'off-cloth' };
  const placed = withPlace(length, at, { variant: best.variant, ...best.place });
  const pinned = new Set([...length.pinned, pinName(length.plan, at.stretch, at.item)]);
  return { ok: true, lay: withLength(seen, at.length, seenLength(length.at, length.plan, placed, pinned)) };
}

export const placeOf = ({ lengths }: SeenLay, { length, stretch, item }: ItemAt): PlacedItem | undefined =>
  lengths[length]?.placed[stretch]?.places[item];

/** The variants in which a piece lies turned alike; there are several where the cloth has two folds. */
function sameWay({ plan }: SeenLength, { stretch, item }: ItemAt, variant: number): readonly number[] {
  const variants = plan.stretches[stretch]?.items[item]?.variants ?? [];
  const pose = variants[variant]?.posed.pose;
  return variants.flatMap(({ posed }, i) =>
    posed.pose.degrees === pose?.degrees && posed.pose.mirrored === pose.mirrored ? [i] : [],
  );
}

/** How many ways the cloth lets a piece lie. */
export function waysOf({ lengths }: SeenLay, { length, stretch, item }: ItemAt): number {
  const variants = lengths[length]?.plan.stretches[stretch]?.items[item]?.variants ?? [];
  return new Set(variants.map(({ posed: { pose } }) => `${pose.degrees} ${pose.mirrored}`)).size;
}

/** Turns a piece to the next way in which it may lie, about its middle. */
export function turnedOn(seen: SeenLay, at: ItemAt): HandMove {
  const variants = seen.lengths[at.length]?.plan.stretches[at.stretch]?.items[at.item]?.variants ?? [];
  const place = placeOf(seen, at);
  const now = variants[place?.variant ?? -1];
  if (place === undefined || now === undefined) return { ok: true, lay: seen };
  const isOther = ({ posed: { pose } }: typeof now): boolean =>
    pose.degrees !== now.posed.pose.degrees || pose.mirrored !== now.posed.pose.mirrored;
  const next = [...variants.keys()]
    .map((i) => (place.variant + 1 + i) % variants.length)
    .find((i) => variants[i] !== undefined && isOther(variants[i]));
  const then = variants[next ?? -1];
  if (next === undefined || then === undefined) return { ok: true, lay: seen };
  const [a, b] = [now.posed.box, then.posed.box];
  const wanted = {
    x: place.x + (a.maxX - a.minX - b.maxX + b.minX) / 2,
    y: place.y + (a.maxY - a.minY - b.maxY + b.minY) / 2,
  };
  return movedTo(seen, at, wanted, next, Number.POSITIVE_INFINITY);
}

/** Pins a piece where it lies, or lets it move again. */
export function pinnedOrNot(seen: SeenLay, at: ItemAt, isPinned: boolean): SeenLay {
  const length = seen.lengths[at.length];
  if (length === undefined) return seen;
  const name = pinName(length.plan, at.stretch, at.item);
  const others = [...length.pinned].filter((other) => other !== name);
  return withLength(seen, at.length, { ...length, pinned: new Set(isPinned ? [...others, name] : others) });
}

/** Lets everything move again. */
export const nothingPinned = (seen: SeenLay): SeenLay => ({
  ...seen,
  lengths: seen.lengths.map((length) => ({ ...length, pinned: new Set<string>() })),
});

const withLength = (seen: SeenLay, index: number, length: SeenLength): SeenLay => ({
  ...seen,
  lengths: seen.lengths.map((other, i) => (i === index ? length : other)),
});

/** With one item elsewhere; stretches after it follow up or make room. */
function withPlace(
  { plan, placed }: SeenLength,
  { stretch, item }: ItemAt,
  place: PlacedItem,
): readonly PlacedStretch[] {
  let from = 0;
  return placed.map((old, s) => {
    const planned = plan.stretches[s];
    const places = s === stretch ? old.places.map((other, i) => (i === item ? place : other)) : old.places;
    const length = planned === undefined ? old.length : lengthOf(planned, places);
    const made = { from, places, length };
    from += length * (planned?.folding === 'crosswise' ? 2 : 1) + plan.cloth.gap;
    return made;
  });
}
