import { type CalendarDay, dayAfter, daysBetween } from './calendar.ts';
import { type GrownBody, type GrownValue, growBody } from './grow-body.ts';
import type { GrowthInput } from './growth-input.ts';
import type { MeasureId } from './measures.ts';
import { NINETY_PERCENT } from './normal-curve.ts';
import { dayReached, nextSize } from './size-more.ts';

/** What is known of the dress, mm. */
export interface DressRoom {
  /** How much wider than the chest it is made. */
  readonly chestEase: number;
  /** The least ease with which the child can still wear it. */
  readonly leastEase: number;
  /** From the waist to the hem. */
  readonly skirtLength: number;
  /** Drafted for the child as forecast; else as measured, and the forecast growth has to be left room for too. */
  readonly isGrown: boolean;
}

export interface GrowthAdvice {
  /** How much deeper the hem is turned up, mm: what the skirt may lack at the end of the band that holds nine of ten. */
  readonly hem: number;
  /** What the chest may need more, and what that is in each of the four side-seam allowances, mm. */
  readonly letOut: { readonly girth: number; readonly side: number };
  /** From which day on measuring again makes the forecast sure enough; `when` says how that day lies. */
  readonly measureAgain: {
    readonly when: 'on-day' | 'close-enough' | 'last-fitting';
    readonly day: CalendarDay;
  };
  /** What the next size would be; null where there is no height to go by. */
  readonly oneSizeMore: OneSizeMore | null;
}

export interface OneSizeMore {
  /** The height that names it, mm. */
  readonly height: number;
  /** How much wider than forecast it is drawn. */
  readonly wider: Readonly<Partial<Record<MeasureId, number>>>;
  /** When the child reaches that height; null if not within two years of the event. */
  readonly reached: CalendarDay | null;
}

/** Nobody alters a dress later than this before the day, days (shops have the last fitting 1 to 2 weeks before). */
const LAST_FITTING_DAYS = 14;

/** Nine of ten children lie within so much of the forecast of a measure, mm; null where it was not measured. */
export function growthBand({ values }: GrownBody, id: MeasureId): number | null {
  const value = values[id];
  return value === undefined ? null : NINETY_PERCENT * value.spread;
}

/**
 * What to leave room for and when to measure again. The hem and the side seams take what the forecast may miss, and the
 * forecast growth itself where the dress is drafted as measured. Lengths grow with the height, so a skirt lacks the share of it
 * that it covers. Null where growth can't be told at all.
 */
export function growthAdvice(input: GrowthInput, room: DressRoom): GrowthAdvice | null {
  const result = growBody(input);
  if (!result.ok) return null;
  const { grown } = result;
  const { height } = grown.values;
  const lack = (id: MeasureId): number => {
    const value = grown.values[id];
    if (value === undefined) return 0;
    return (growthBand(grown, id) ?? 0) + (room.isGrown ? 0 : Math.max(value.value - value.measured, 0));
  };
  const hem = height === undefined ? 0 : (lack('height') * room.skirtLength) / height.value;
  const girth = lack('chestGirth');
  return {
    hem,
    letOut: { girth, side: girth / 4 },
    measureAgain: measureAgain(input, room),
    oneSizeMore: height === undefined ? null : oneSizeMore(input, grown, height),
  };
}

/** The earliest day from which the forecast of the chest misses by no more than the dress has ease to spare. */
function measureAgain(input: GrowthInput, room: DressRoom): GrowthAdvice['measureAgain'] {
  const spare = Math.max(room.chestEase - room.leastEase, 0);
  const days = Math.max(daysBetween(input.measured.day, input.event), 0);
  const isSure = (daysBefore: number): boolean => chestBand(input, daysBefore) <= spare;
  if (isSure(days)) return { when: 'close-enough', day: input.measured.day };
  const fitting = Math.min(LAST_FITTING_DAYS, days);
  if (!isSure(fitting)) return { when: 'last-fitting', day: dayAfter(input.event, -fitting) };
  let [sure, unsure] = [fitting, days];
  while (unsure - sure > 1) {
    const middle = Math.floor((sure + unsure) / 2);
    if (isSure(middle)) sure = middle;
    else unsure = middle;
  }
  return { when: 'on-day', day: dayAfter(input.event, -sure) };
}

/** How far the chest would be missed if the child were measured so many days before the event, as it then will be. */
function chestBand(input: GrowthInput, daysBefore: number): number {
  const day = dayAfter(input.event, -daysBefore);
  const then = growBody({ ...input, event: day });
  if (!then.ok) return Number.POSITIVE_INFINITY;
  const measures = Object.fromEntries(
    Object.entries(then.grown.values).map(([id, { value }]) => [id, value]),
  );
  const again = growBody({
    ...input,
    measured: { day, measures, weight: then.grown.weight?.value ?? null },
  });
  return again.ok ? (growthBand(again.grown, 'chestGirth') ?? 0) : Number.POSITIVE_INFINITY;
}

const GIRTHS: readonly MeasureId[] = ['chestGirth', 'waistGirth', 'hipGirth'];

function oneSizeMore(input: GrowthInput, grown: GrownBody, height: GrownValue): OneSizeMore {
  const next = nextSize(height.value);
  const reached = dayReached(input, height.measured, next);
  // The child as it is when it has grown into that size; where that lies too far ahead, as its height says.
  const then = reached === null ? null : growBody({ ...input, event: reached });
  const wider = GIRTHS.flatMap((id) => {
    const now = grown.values[id];
    const later = then?.ok ? then.grown.values[id] : undefined;
    return now === undefined || later === undefined ? [] : [[id, later.value - now.value] as const];
  });
  return { height: next, wider: Object.fromEntries(wider), reached };
}
