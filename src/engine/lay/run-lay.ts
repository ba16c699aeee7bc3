import { boxStart } from './box-start.ts';
import type { LayItem, LayStretch } from './lay-items.ts';
import { type LayPlan, leastOf } from './lay-plan.ts';
import { obstaclesOn } from './obstacles.ts';
import {
  type PackPlace,
  type PackProblem,
  type PackProgress,
  type PackSettings,
  type PackStart,
  startPacking,
} from './pack/index.ts';
import {
  type ClothPlace,
  clothPlaceOf,
  endOf,
  packPlaceOf,
  packProblem,
  type StretchProblem,
} from './pack-problem.ts';
import { type Polygon, polygonBounds } from './polygons.ts';

/** Whoever packs outlines on a strip: the search of this room, or one in a worker. */
export type Packer = (problem: PackProblem, settings: PackSettings) => PackStart;

/** Where one item lies on its stretch, and in which of its variants. */
export interface PlacedItem extends ClothPlace {
  readonly variant: number;
}

/** A stretch with a place for each item, in their order. */
export interface PlacedStretch {
  /** Where it begins on the cloth, mm from the cut end. */
  readonly from: number;
  readonly places: readonly PlacedItem[];
  /** Used of the stretch, as it lies, mm. */
  readonly length: number;
}

export interface LayProgress {
  readonly evaluations: number;
  /** The shortest lay so far; null only before the first, and at the end where none was found. */
  readonly best: readonly PlacedStretch[] | null;
}

export interface LayRunSettings extends Omit<PackSettings, 'start'> {
  /** A former lay of the same pieces, for instance the one that the maker sees: the search begins from it. */
  readonly start?: readonly PlacedStretch[];
}

/**
 * Searches for a short lay and tells of it after every little piece of work. First every stretch is laid somehow, so
 * that there is soon a lay to show; then each is made shorter, the one after it following up. Without an end to the
 * cloth there is always a lay.
 */
export function* runLay(
  plan: LayPlan,
  settings: LayRunSettings,
  pack: Packer = startPacking,
): Generator<LayProgress, LayProgress, undefined> {
  const laid: (PlacedStretch | null)[] = plan.stretches.map(() => null);
  const runs = new Map<number, StretchRun>();
  let spent = 0;
  const told = (): LayProgress => ({
    evaluations: spent,
    best: laid.some((l) => l === null) ? null : laid.filter((l) => l !== null),
  });
  if (plan.stretches.length === 0) yield told();
  for (const untilFirst of [true, false]) {
    for (const index of plan.stretches.keys()) {
      const from = startOf(plan, laid, index);
      let run = runs.get(index);
      if (run === undefined || (run.from !== from && plan.stretches.length > 1 && dependsOnPlace(plan))) {
        const former = laid[index] ?? settings.start?.[index] ?? null;
        const evaluations = Math.ceil((settings.evaluations - spent) * shareOf(plan, index));
        run = { from, steps: packStretch(plan, index, from, { ...settings, evaluations, former }, pack) };
        runs.set(index, run);
      }
      laid[index] = followingUp(plan, laid[index] ?? null, from);
      for (;;) {
        const { value, done } = run.steps.next();
        if (done === true) break;
        spent += value.evaluations;
        if (value.placed !== null) laid[index] = shorter({ ...value.placed, from }, laid[index] ?? null);
        yield told();
        if (untilFirst && laid[index] !== null) break;
      }
    }
  }
  return told();
}

interface StretchRun {
  readonly from: number;
  readonly steps: Generator<StretchStep, void, undefined>;
}

/** `evaluations`: since the step before. */
interface StretchStep {
  readonly evaluations: number;
  readonly placed: Omit<PlacedStretch, 'from'> | null;
}

/** Flaws and stripes lie on the cloth and do not move along with a stretch. */
const dependsOnPlace = ({ cloth }: LayPlan): boolean =>
  cloth.repeat?.along !== undefined || (cloth.flaws?.length ?? 0) > 0 || cloth.longest !== undefined;

/** A later stretch begins where the one before it ends, a gap further. */
function startOf(plan: LayPlan, laid: readonly (PlacedStretch | null)[], index: number): number {
  const before = laid[index - 1];
  const stretch = plan.stretches[index - 1];
  if (before === undefined || before === null || stretch === undefined) return 0;
  return before.from + before.length * (stretch.folding === 'crosswise' ? 2 : 1) + plan.cloth.gap;
}

function followingUp(plan: LayPlan, laid: PlacedStretch | null, from: number): PlacedStretch | null {
  return laid === null || dependsOnPlace(plan) ? laid : { ...laid, from };
}

function shorter(found: PlacedStretch, known: PlacedStretch | null): PlacedStretch {
  return known === null || found.from + found.length <= known.from + known.length ? found : known;
}

/** The part of the work that is left for a stretch and those after it, by the number of things to place. */
function shareOf({ stretches }: LayPlan, index: number): number {
  const rest = stretches.slice(index).reduce((sum, { items }) => sum + items.length, 0);
  return rest === 0 ? 1 : (stretches[index]?.items.length ?? 0) / rest;
}

interface StretchSettings extends Omit<PackSettings, 'start'> {
  readonly former: PlacedStretch | null;
}

/** Of the work on a stretch, what is spent on one try to end before a flaw. */
const TRY_BEFORE_FLAW = 0.2;
const MOST_TRIES = 3;

/**
 * One stretch. The packer counts a flaw as used cloth, so lays that end before a flaw are tried on a strip that ends
 * there, shortest first; as soon as one holds all, the rest of the work goes to it.
 */
function* packStretch(
  plan: LayPlan,
  index: number,
  from: number,
  settings: StretchSettings,
  pack: Packer,
): Generator<StretchStep, void, undefined> {
  const stretch = plan.stretches[index];
  if (stretch === undefined) return;
  const { cloth } = plan;
  const held = plan.held[index] ?? [];
  const all = obstaclesOn(stretch, cloth, from);
  const ends = endOf(stretch, cloth, from);
  const strip = (avoid: readonly Polygon[], end: number | undefined): StretchProblem =>
    packProblem(stretch, cloth, from, held, avoid, end);
  const whole = packed(plan, index, strip(all, ends), settings, pack);
  let left = settings.evaluations;
  let first: StretchStep['placed'] = null;
  while (first === null) {
    const { value, done } = whole.next();
    if (done === true) return;
    left -= value.evaluations;
    first = value.placed;
    yield value;
  }
  const warm = { ...settings, former: { ...first, from } };
  for (const end of endsBeforeFlaws(plan, stretch, all, first.length)) {
    const before = all.filter((ring) => polygonBounds(ring).minX < end);
    let spent = 0;
    let holds = false;
    for (const step of packed(plan, index, strip(before, end), { ...warm, evaluations: left }, pack)) {
      spent += step.evaluations;
      holds ||= step.placed !== null;
      yield step;
      if (!holds && spent > settings.evaluations * TRY_BEFORE_FLAW) break;
    }
    left -= spent;
    if (holds || left <= 0) {
      whole.return();
      return;
    }
  }
  yield* whole;
}

/** Starts of flaws before which the stretch might end: a few within what a first lay takes, and the next one beyond. */
function endsBeforeFlaws(
  { cloth }: LayPlan,
  stretch: LayStretch,
  flaws: readonly Polygon[],
  reached: number,
): readonly number[] {
  if (cloth.remnant !== undefined) return [];
  const least = leastOf(stretch);
  const starts = flaws.map((ring) => polygonBounds(ring).minX).sort((a, b) => a - b);
  const within = starts.filter((x) => x >= least && x < reached).slice(-MOST_TRIES);
  return [...within, ...starts.filter((x) => x >= reached).slice(0, 1)];
}

/** A packer that takes so many steps without trying a place has nothing left to try, and would never end. */
const MOST_IDLE = 500;

function* packed(
  plan: LayPlan,
  index: number,
  { problem, kept }: StretchProblem,
  { former, ...settings }: StretchSettings,
  pack: Packer,
): Generator<StretchStep, void, undefined> {
  const items = plan.stretches[index]?.items ?? [];
  const start = former === null ? boxStart(problem) : startPlaces(plan, index, former, { problem, kept });
  const packing = pack(problem, start === null ? settings : { ...settings, start });
  if (!packing.ok) {
    // Sizes and outlines were looked at before; only a strip that was cut short may be too short for a piece.
    if (packing.refusals.every(({ code }) => code === 'too-long')) return;
    throw new Error(`The packer refuses what was planned: ${JSON.stringify(packing.refusals)}`);
  }
  try {
    yield* stepsOf(packing.run, plan, items, kept);
  } finally {
    // One that is left before its end may have more to let go of than its own work.
    packing.run.return?.();
  }
}

function* stepsOf(
  run: Iterator<PackProgress, PackProgress, undefined>,
  { cloth }: LayPlan,
  items: readonly LayItem[],
  kept: StretchProblem['kept'],
): Generator<StretchStep, void, undefined> {
  let spent = 0;
  let idle = 0;
  for (;;) {
    const { value, done } = run.next();
    const places = value.best?.places.slice(0, items.length).map((place, i): PlacedItem => {
      const variant = kept[i]?.[place.variant] ?? 0;
      const chosen = items[i]?.variants[variant];
      if (chosen === undefined) throw new Error('The packer chose a variant that there is not.');
      return { variant, ...clothPlaceOf(chosen, place, cloth) };
    });
    const length = places?.map(({ variant, x }, i) => {
      const box = items[i]?.variants[variant]?.posed.box;
      return box === undefined ? x : x + box.maxX - box.minX;
    });
    yield {
      evaluations: value.evaluations - spent,
      placed: places === undefined ? null : { places, length: Math.max(0, ...(length ?? [])) },
    };
    idle = value.evaluations > spent ? 0 : idle + 1;
    spent = value.evaluations;
    if (done === true || idle > MOST_IDLE) return;
  }
}

/** A former lay in the terms of a problem; null where it was of other pieces. */
function startPlaces(
  plan: LayPlan,
  index: number,
  former: PlacedStretch,
  { problem, kept }: StretchProblem,
): readonly PackPlace[] | null {
  const items = plan.stretches[index]?.items ?? [];
  if (former.places.length !== items.length) return null;
  return problem.items.map((item, i): PackPlace => {
    if (item.fixed !== undefined) return item.fixed;
    const place = former.places[i];
    const variant = place === undefined ? -1 : (kept[i]?.indexOf(place.variant) ?? -1);
    const chosen = items[i]?.variants[place?.variant ?? 0];
    if (place === undefined || chosen === undefined || variant < 0) return { variant: 0, x: 0, y: 0 };
    return { variant, ...packPlaceOf(chosen, place, plan.cloth) };
  });
}
