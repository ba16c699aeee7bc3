import type { Piece } from '../piece/index.ts';
import { pieceOf } from '../piece/index.ts';
import { copiesOf, lengthAlong, type SewLook } from './look.ts';
import type { SewStep, StepKind } from './step.ts';

/** One step that she has timed: what it was, how long it took, and what had been reckoned for it. */
export interface TimedStep {
  readonly kind: StepKind;
  readonly minutes: number;
  readonly estimate: number;
}

/** Minutes as they are told: whole hours, and what is left. */
export const hoursAndMinutes = (minutes: number): { readonly hours: number; readonly minutes: number } => ({
  hours: Math.floor(minutes / 60),
  minutes: minutes % 60,
});

/** Her own times by kind of step: how many times the estimate she needs, as far as she has timed any. */
export type StepTimes = Readonly<
  Partial<Record<StepKind, { readonly times: number; readonly factor: number }>>
>;

/**
 * To take a step up and put it down, and for each metre of seam: minutes. Estimates from common practice, no source;
 * together they make the 11 to 15 hours and the 5 1/2 hours for two that makers tell of lined dresses for children.
 */
const RATES: Readonly<Record<StepKind, readonly [take: number, metre: number]>> = {
  staystitch: [3, 3],
  dart: [5, 10],
  tuck: [8, 8],
  elastic: [8, 10],
  gather: [6, 5],
  pleats: [15, 10],
  seam: [4, 6],
  princess: [6, 10],
  yoke: [8, 14],
  shoulder: [4, 8],
  side: [5, 8],
  'sides-in-one': [8, 8],
  mount: [6, 6],
  layers: [4, 6],
  wrap: [6, 8],
  collar: [10, 14],
  frill: [8, 12],
  'trim-edge': [8, 8],
  neck: [10, 14],
  face: [8, 14],
  bind: [10, 25],
  understitch: [4, 10],
  armholes: [10, 12],
  turn: [10, 0],
  'shoulders-last': [10, 20],
  'sleeve-seam': [5, 8],
  'set-sleeve': [20, 20],
  cuff: [12, 25],
  widths: [6, 5],
  waist: [15, 14],
  'net-waist': [12, 12],
  tier: [8, 7],
  'close-below': [8, 6],
  zip: [28, 0],
  opening: [15, 10],
  studs: [8, 10],
  placket: [10, 15],
  fell: [8, 35],
  hem: [10, 20],
  'narrow-hem': [6, 12],
  'trim-net': [5, 4],
  'bind-raw': [10, 25],
  neaten: [4, 6],
  'turn-edge': [5, 10],
  'make-trim': [8, 6],
  'catch-trim': [5, 0],
  'sew-on': [8, 0],
  fasten: [10, 0],
  press: [25, 0],
};

/** Estimated minutes of one step, from what is sewn in it. */
export function estimateOf(look: SewLook, step: SewStep): number {
  const [take, metre] = RATES[step.kind];
  return Math.max(1, Math.round(take + (metre * seamLength(look, step)) / 1000));
}

/** What is sewn in a step, over all its copies, mm. */
export function seamLength(look: SewLook, step: SewStep): number {
  const seams = look.garment.seams.filter(({ id }) => step.sews.includes(id));
  if (seams.length > 0) return seams.reduce((sum, seam) => sum + lengthAlong(look, seam.a), 0);
  const pieceAt = (id: string): Piece => pieceOf(look.garment, id);
  const edges = step.finishes.length > 0 ? step.finishes : step.sideA;
  return lengthAlong(
    look,
    edges.map((at) => ({ ...at, times: copiesOf(pieceAt(at.piece)) })),
  );
}

/**
 * What her past times say: for each kind the mean of minutes over estimate, the quickest and the slowest fifth left
 * out, so that one afternoon with a telephone call does not spoil it. Times that are no times are passed over.
 */
export function stepTimes(timed: readonly TimedStep[]): StepTimes {
  const factors = new Map<StepKind, number[]>();
  for (const { kind, minutes, estimate } of timed) {
    if (!(minutes > 0 && Number.isFinite(minutes) && estimate > 0)) continue;
    factors.set(kind, [...(factors.get(kind) ?? []), minutes / estimate]);
  }
  return Object.fromEntries(
    [...factors].map(([kind, all]) => [kind, { times: all.length, factor: trimmedMean(all) }]),
  );
}

const LEFT_OUT = 0.2;

function trimmedMean(values: readonly number[]): number {
  const sorted = values.toSorted((a, b) => a - b);
  const off = values.length < 3 ? 0 : Math.max(1, Math.floor(values.length * LEFT_OUT));
  const kept = sorted.slice(off, sorted.length - off);
  return kept.reduce((sum, value) => sum + value, 0) / kept.length;
}
