import { outlineArea, pathFlatten } from '../geometry/index.ts';
import type { Saying } from '../words/index.ts';
import type { LayCloth, LayPiece, LayPin } from './cloth-rules.ts';
import type { LayVariant } from './lay-drafts.ts';
import { type LayItem, type LayStretch, layItems } from './lay-items.ts';
import { type LayRefusal, refusal } from './lay-refusal.ts';
import { obstaclesOn, remnantAtOrigin } from './obstacles.ts';
import { type HeldItem, packProblem } from './pack-problem.ts';
import { type Polygon, polygonArea, polygonsShared } from './polygons.ts';
import { type ShapeStore, shapeStore } from './poses.ts';
import { turnPath } from './turns.ts';

/** Pieces on a cloth, ready to be packed: nothing in it is left to be refused but that the cloth is too little. */
export interface LayPlan {
  readonly pieces: readonly LayPiece[];
  readonly cloth: LayCloth;
  /** The cloth lies in these ways one after another, from the cut end; empty where there is nothing to lay. */
  readonly stretches: readonly LayStretch[];
  /** For each stretch what the maker has pinned on it. */
  readonly held: readonly (readonly HeldItem[])[];
  readonly notes: readonly Saying[];
  /** No lay of these pieces can be shorter, mm of cloth. */
  readonly leastLength: number;
}

export type LayPlanResult =
  | { readonly ok: true; readonly plan: LayPlan }
  | { readonly ok: false; readonly refusals: readonly LayRefusal[] };

/**
 * Reads pieces and cloth rules into a plan. Refuses, each with its sentence: cloth without width, rules that exclude
 * each other, pieces that the cloth can't hold, matches that do not exist, pins off the cloth or over each other.
 * Where the same pieces are planned several times a `store` spares working out their shapes again.
 */
export function planLay(
  pieces: readonly LayPiece[],
  wanted: LayCloth,
  pins: readonly LayPin[] = [],
  store: ShapeStore = shapeStore(),
): LayPlanResult {
  const wrong = ruleRefusals(wanted);
  if (wrong.length > 0) return { ok: false, refusals: wrong };
  const cloth = asLaid(wanted);
  const { stretches, notes, refusals } = layItems(pieces, cloth, store);
  if (refusals.length > 0) return { ok: false, refusals };
  const held: HeldItem[][] = stretches.map(() => []);
  const pinned = holdPins(stretches, pieces, cloth, pins, held);
  const unmatched = unmatchedRefusals(stretches, pieces, cloth);
  if (pinned.length + unmatched.length > 0) return { ok: false, refusals: [...pinned, ...unmatched] };
  const leastLength = stretches.reduce(
    (sum, stretch) => sum + leastOf(stretch) * (stretch.folding === 'crosswise' ? 2 : 1),
    0,
  );
  return { ok: true, plan: { pieces, cloth, stretches, held, notes, leastLength } };
}

/** Rules of the cloth that are no rules, or exclude each other, whatever is laid on it. */
function ruleRefusals(cloth: LayCloth): readonly LayRefusal[] {
  const { name, usableWidth, gap, shrinkage, extra, folding, way, repeat, remnant, flaws } = cloth;
  const found: LayRefusal[] = [];
  const values = { cloth: name };
  if (!(usableWidth > 0 && Number.isFinite(usableWidth)) && remnant === undefined)
    found.push(refusal('lay.no-width', values));
  if (!(gap >= 0 && Number.isFinite(gap))) found.push(refusal('lay.bad-gap', values));
  if (!(shrinkage >= 0 && shrinkage < 1 && extra >= 0 && Number.isFinite(extra)))
    found.push(refusal('lay.bad-share', values));
  if (folding === 'crosswise' && way === 'one-way') found.push(refusal('lay.crosswise-one-way', values));
  if (folding === 'crosswise' && (flaws?.length ?? 0) > 0) found.push(refusal('lay.flaws-crosswise', values));
  if (remnant !== undefined && folding !== 'single') found.push(refusal('lay.remnant-single', values));
  if (remnant !== undefined && remnantAtOrigin(remnant) === null)
    found.push(refusal('lay.remnant-odd', values));
  const repeats = [repeat?.along, repeat?.across].filter((r) => r !== undefined);
  if (repeats.some(({ every, first }) => !(every > 0 && Number.isFinite(every) && Number.isFinite(first))))
    found.push(refusal('lay.repeat-odd', values));
  if (repeat?.across !== undefined && folding === 'lengthwise')
    found.push(refusal('lay.checks-folded', values));
  if (repeat?.along !== undefined && folding === 'crosswise')
    found.push(refusal('lay.stripes-crosswise', values));
  return found;
}

/** A leftover gives the width and the length that there are. */
function asLaid(cloth: LayCloth): LayCloth {
  const odd = cloth.remnant === undefined ? null : remnantAtOrigin(cloth.remnant);
  if (odd === null) return cloth;
  return { ...cloth, remnant: odd.outline, usableWidth: odd.box.maxY, longest: odd.box.maxX };
}

/** Enough of a stretch, as it lies, for the area, and for the longest item in its shortest way, mm. */
export function leastOf({ items, depth }: LayStretch): number {
  const area = items.reduce((sum, { shape }) => sum + Math.abs(outlineArea(shape.path)), 0);
  const longest = Math.max(0, ...items.map(({ variants }) => Math.min(...variants.map(lengthOf))));
  return Math.max(area / depth, longest);
}

const lengthOf = ({ posed: { box } }: LayVariant): number => box.maxX - box.minX;

/** Matched pieces that no place on the stripes is left for, seen with the whole width at their disposal. */
function unmatchedRefusals(
  stretches: readonly LayStretch[],
  pieces: readonly LayPiece[],
  cloth: LayCloth,
): readonly LayRefusal[] {
  const lost = stretches.flatMap((stretch) => {
    const { kept } = packProblem(stretch, cloth, 0, []);
    return stretch.items.filter((_, i) => kept[i]?.length === 0).map(({ piece }) => piece);
  });
  return [...new Set(lost)].map((piece) =>
    refusal('lay.no-room-to-match', { piece: titleOf(pieces, piece), cloth: cloth.name }, [piece]),
  );
}

const titleOf = (pieces: readonly LayPiece[], piece: number): string => pieces[piece]?.cut.label.title ?? '';

/** Finds for each pin its item and variant. Pinned pieces must lie on the cloth, off its flaws and off each other. */
function holdPins(
  stretches: readonly LayStretch[],
  pieces: readonly LayPiece[],
  cloth: LayCloth,
  pins: readonly LayPin[],
  held: HeldItem[][],
): readonly LayRefusal[] {
  const found: LayRefusal[] = [];
  const rings: { readonly stretch: number; readonly piece: number; readonly ring: Polygon }[] = [];
  for (const pin of pins) {
    const stretch = stretches.findIndex(({ items }) => items.some((item) => gives(item, pin)));
    const on = stretches[stretch];
    const item = on?.items.findIndex((i) => gives(i, pin)) ?? -1;
    const pinned = on?.items[item];
    const values = { piece: titleOf(pieces, pin.piece), cloth: cloth.name };
    if (on === undefined || pinned === undefined) {
      found.push(refusal('lay.pin-unknown', {}, []));
      continue;
    }
    const variant = pinned.variants.findIndex((v) => fits(v, pin));
    const chosen = pinned.variants[variant];
    if (chosen === undefined) {
      const turned = pinned.variants.every((v) => !liesSo(v, pin));
      found.push(refusal(turned ? 'lay.pin-turned' : 'lay.pin-off', values, [pin.piece]));
      continue;
    }
    const { pose, box } = chosen.posed;
    const at = { x: pin.x - box.minX, y: pin.y - box.minY };
    const ring = pathFlatten(turnPath(pose.turn, pinned.shape.path, at), 0.1);
    for (const other of rings) {
      if (other.stretch !== stretch || !overlap(ring, other.ring)) continue;
      const both = { piece: values.piece, other: titleOf(pieces, other.piece) };
      found.push(refusal('lay.pins-overlap', both, [pin.piece, other.piece]));
    }
    if (stretch === 0 && obstaclesOn(on, cloth, 0).some((flaw) => overlap(ring, flaw)))
      found.push(refusal('lay.pin-on-flaw', values, [pin.piece]));
    rings.push({ stretch, piece: pin.piece, ring });
    held[stretch]?.push({ item, variant, place: { x: pin.x, y: pin.y } });
  }
  return found;
}

const gives = (item: LayItem, pin: LayPin): boolean =>
  item.piece === pin.piece && item.copies.includes(pin.copy);

const liesSo = ({ posed: { pose } }: LayVariant, pin: LayPin): boolean =>
  pose.degrees === pin.turn && pose.mirrored === pin.mirrored;

/** What was read from a lay and rounded by the page may be off by this, mm. */
const PINNED_WITHIN = 0.01;

const fits = (variant: LayVariant, pin: LayPin): boolean =>
  liesSo(variant, pin) &&
  pin.x >= -PINNED_WITHIN &&
  pin.y >= variant.fromY - PINNED_WITHIN &&
  pin.y <= variant.toY + PINNED_WITHIN &&
  (variant.fixedX === undefined || Math.abs(pin.x - variant.fixedX) <= PINNED_WITHIN);

/** Touching is no overlap, mm2. */
const TOUCHING = 1;

const overlap = (a: Polygon, b: Polygon): boolean =>
  polygonsShared([a], [b]).reduce((sum, ring) => sum + Math.abs(polygonArea(ring)), 0) > TOUCHING;
