import {
  type LayPiece,
  type LayPlan,
  type LayRefusal,
  type LayRunSettings,
  layOnLengths,
  type Packer,
  type PlacedStretch,
  planLay,
  runLay,
  type ShapeStore,
  sideBySide,
} from '../lay/index.ts';
import type { OrderCloth } from './order.ts';

/** How long to search on one cloth: as `LayRunSettings` say. */
export type ClothSettings = Omit<LayRunSettings, 'start'>;
/** Null for a cloth that is passed over. */
export type ClothSearch = (cloth: OrderCloth) => ClothSettings | null;

/** What lies on one length: `at` is its place among those at hand, null is the cloth to be bought. */
export interface PlacedLength {
  readonly at: number | null;
  readonly plan: LayPlan;
  readonly placed: readonly PlacedStretch[];
}

/** How far a search is: on which cloth, and the lay so far; null before there is one, and while lengths are filled. */
export interface LayStep {
  readonly cloth: OrderCloth;
  readonly evaluations: number;
  readonly lengths: readonly PlacedLength[] | null;
}

/** How much cloth the lay so far takes, mm; null before there is one. */
export function lengthSoFar({ lengths }: LayStep): number | null {
  if (lengths === null) return null;
  return lengths.reduce((sum, { placed }) => {
    const last = placed.at(-1);
    return sum + (last === undefined ? 0 : last.from + last.length);
  }, 0);
}

type Found = { readonly lengths: readonly PlacedLength[] } | readonly LayRefusal[];

/**
 * Searches for a lay of the pieces of one cloth: on the lengths at hand where there are some, else on cloth to be
 * bought. `alone`: the lays of each child, from which the lay of all begins.
 */
export function findLay(
  cloth: OrderCloth,
  pieces: readonly LayPiece[],
  alone: readonly PlacedLength[] | null,
  search: ClothSettings,
  store: ShapeStore,
  pack: Packer | undefined,
): Generator<LayStep, Found, undefined> {
  return cloth.atHand.length > 0
    ? onLengths(pieces, cloth, search, store, pack)
    : onRoll(pieces, cloth, alone, search, store, pack);
}

function* onRoll(
  pieces: readonly LayPiece[],
  cloth: OrderCloth,
  alone: readonly PlacedLength[] | null,
  search: ClothSettings,
  store: ShapeStore,
  pack: Packer | undefined,
): Generator<LayStep, Found, undefined> {
  const planned = planLay(pieces, cloth, [], store);
  if (!planned.ok) return planned.refusals;
  const start = alone === null ? null : sideBySide(planned.plan, alone);
  const { plan } = planned;
  return yield* onward(cloth, [{ at: null, plan, start }], search, pack);
}

function* onLengths(
  pieces: readonly LayPiece[],
  cloth: OrderCloth,
  search: ClothSettings,
  store: ShapeStore,
  pack: Packer | undefined,
): Generator<LayStep, Found, undefined> {
  const run = layOnLengths(pieces, cloth, cloth.atHand, { ...search, mayBuy: true }, pack, store);
  for (;;) {
    const { value, done } = run.next();
    if (done === true) return value.lengths === null ? value.refusals : { lengths: value.lengths };
    yield { cloth, evaluations: value.evaluations, lengths: null };
  }
}

/** Makes a lay shorter that there is already; what lies on a length stays on it. */
export function goOn(
  cloth: OrderCloth,
  lengths: readonly PlacedLength[],
  search: ClothSettings,
  pack: Packer | undefined,
): Generator<LayStep, Found, undefined> {
  const begun = lengths.map(({ at, plan, placed }) => ({ at, plan, start: placed }));
  return onward(cloth, begun, search, pack);
}

interface BegunLength {
  readonly at: number | null;
  readonly plan: LayPlan;
  readonly start: readonly PlacedStretch[] | null;
}

/** One length after another; each has an equal part of the time and of the tries. */
function* onward(
  cloth: OrderCloth,
  begun: readonly BegunLength[],
  search: ClothSettings,
  pack: Packer | undefined,
): Generator<LayStep, Found, undefined> {
  const lengths: (PlacedLength | null)[] = begun.map(() => null);
  let spent = 0;
  for (const [i, { at, plan, start }] of begun.entries()) {
    const settings = partOf(search, i, begun.length);
    const run = runLay(plan, { ...settings, ...(start === null ? {} : { start }) }, pack);
    let placed: readonly PlacedStretch[] | null = null;
    let last = 0;
    for (const { best, evaluations } of run) {
      spent += evaluations - last;
      last = evaluations;
      placed = best ?? placed;
      if (placed !== null) lengths[i] = { at, plan, placed };
      const told = lengths.flatMap((length) => (length === null ? [] : [length]));
      yield { cloth, evaluations: spent, lengths: told.length === begun.length ? told : null };
    }
    if (placed === null) return noPlace(cloth);
  }
  return { lengths: lengths.filter((length) => length !== null) };
}

function partOf(search: ClothSettings, index: number, count: number): ClothSettings {
  if (count === 1) return search;
  const { gone } = search;
  const evaluations = Math.ceil(search.evaluations / count);
  return gone === undefined
    ? { ...search, evaluations }
    : { ...search, evaluations, gone: () => Math.min(1, Math.max(0, gone() * count - index)) };
}

const noPlace = ({ name }: OrderCloth): readonly LayRefusal[] => [
  { key: 'lay.does-not-fit', values: { cloth: name }, pieces: [], advice: [] },
];
