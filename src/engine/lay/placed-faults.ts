import type { LayPlan } from './lay-plan.ts';
import { layoutFaults, type PackPlace, type PackProblem, type PackRange } from './pack/index.ts';
import { type ClothPlace, clothPlaceOf, packPlaceOf, packProblem } from './pack-problem.ts';
import type { PlacedItem, PlacedStretch } from './run-lay.ts';

/**
 * What keeps a lay from being cut, by stretch and item of the plan. `overlap`: nearer to another than the gap.
 * `blocked`: on a flaw, or where a leftover has no cloth. `off-cloth`: over an edge, or past the end of the cloth.
 * `not-there`: not on its fold, or off its stripe.
 */
export type PlacedFault =
  | { readonly code: 'overlap'; readonly stretch: number; readonly items: readonly [number, number] }
  | {
      readonly code: 'blocked' | 'off-cloth' | 'not-there';
      readonly stretch: number;
      readonly item: number;
    };

/** Judges places on one stretch, whoever put the pieces there; pins are places like others. */
export interface StretchJudge {
  /** `only`: looks at one item against all others. */
  readonly faults: (places: readonly PlacedItem[], only?: number) => readonly PlacedFault[];
  /**
   * The place nearest to the wanted one at which an item may lie, in that variant: on the cloth, its fold, its stripe.
   * `off`: how far it was wanted off the cloth, mm. Null where the stripes leave no place to the variant.
   */
  readonly nearest: (
    item: number,
    variant: number,
    wanted: ClothPlace,
  ) => { readonly place: ClothPlace; readonly off: number } | null;
}

/** Judges all places of a lay by the outlines and rules of its plan. */
export function placedFaults(plan: LayPlan, placed: readonly PlacedStretch[]): readonly PlacedFault[] {
  return plan.stretches.flatMap((_, s): readonly PlacedFault[] => {
    const found = placed[s];
    return found === undefined ? [] : stretchJudge(plan, s, found.from).faults(found.places);
  });
}

/** `from`: where the stretch begins on the cloth, mm. */
export function stretchJudge({ stretches, cloth }: LayPlan, stretch: number, from: number): StretchJudge {
  const planned = stretches[stretch];
  if (planned === undefined) return { faults: () => [], nearest: () => null };
  const { items } = planned;
  const { problem, kept } = packProblem(planned, cloth, from, []);
  const obstacles = problem.items.slice(items.length).flatMap(({ fixed }) => fixed ?? []);
  const number = (item: number, variant: number): number => kept[item]?.indexOf(variant) ?? -1;

  const packed = (place: PlacedItem | undefined, item: number): PackPlace => {
    const chosen = items[item]?.variants[place?.variant ?? -1];
    if (place === undefined || chosen === undefined) return { variant: -1, x: 0, y: 0 };
    return { variant: number(item, place.variant), ...packPlaceOf(chosen, place, cloth) };
  };
  return {
    faults: (places, only) => {
      const all = [...items.map((_, i) => packed(places[i], i)), ...obstacles];
      const asked = only === undefined ? problem : oneAgainstAll(problem, all, only);
      return layoutFaults(asked, all).flatMap((fault): readonly PlacedFault[] => {
        if (fault.code === 'overlap') {
          const [a, b] = fault.items;
          if (a >= items.length) return [];
          return b >= items.length
            ? [{ code: 'blocked', stretch, item: a }]
            : [{ code: 'overlap', stretch, items: [a, b] }];
        }
        const { item } = fault;
        if (only !== undefined && item !== only) return [];
        return [{ code: fault.code === 'outside' ? 'off-cloth' : 'not-there', stretch, item }];
      });
    },
    nearest: (item, variant, wanted) => {
      const chosen = items[item]?.variants[variant];
      const ranges = problem.items[item]?.variants[number(item, variant)];
      if (chosen === undefined || ranges === undefined) return null;
      const at = packPlaceOf(chosen, wanted, cloth);
      const { grownBox } = chosen.posed;
      const lastX = (problem.longest ?? Number.POSITIVE_INFINITY) - (grownBox.maxX - grownBox.minX);
      const x = nearestIn(at.x, ranges.x ?? { from: 0, to: Math.max(0, lastX) });
      const y = nearestIn(at.y, ranges.y ?? { from: 0, to: 0 });
      const place = clothPlaceOf(chosen, { x: x.value, y: y.value }, cloth);
      return { place, off: Math.max(x.off, y.off) };
    },
  };
}

/** What has no freedom, as a piece on a fold across it, is never off. */
function nearestIn(
  wanted: number,
  { from, to, step }: PackRange,
): { readonly value: number; readonly off: number } {
  const off = to - from < 1e-6 ? 0 : Math.max(0, from - wanted, wanted - to);
  const within = Math.min(to, Math.max(from, wanted));
  if (step === undefined || step === 0) return { value: within, off };
  const last = Math.floor((to - from) / step + 1e-9);
  const steps = Math.min(last, Math.max(0, Math.round((within - from) / step)));
  return { value: from + steps * step, off };
}

/** The others count as fixed, and what is fixed is not held against each other. */
function oneAgainstAll(problem: PackProblem, places: readonly PackPlace[], item: number): PackProblem {
  return {
    ...problem,
    items: problem.items.map((one, i) => {
      const fixed = places[i];
      return i === item || fixed === undefined || fixed.variant < 0 ? one : { ...one, fixed };
    }),
  };
}
