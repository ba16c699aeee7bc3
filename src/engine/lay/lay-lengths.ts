import { outlineArea, type Point } from '../geometry/index.ts';
import type { Flaw, LayCloth, LayPiece, LayPin } from './cloth-rules.ts';
import { type LayPlan, type LayPlanResult, planLay } from './lay-plan.ts';
import { type LayRefusal, refusal } from './lay-refusal.ts';
import { startPacking } from './pack/index.ts';
import { polygonArea } from './polygons.ts';
import { type ShapeStore, shapeStore } from './poses.ts';
import { type LayRunSettings, type Packer, type PlacedStretch, runLay } from './run-lay.ts';

/** A length of the cloth that is at hand: a leftover of odd outline, or a piece of the whole width. mm. */
export interface ClothAtHand {
  readonly length?: number;
  readonly remnant?: readonly Point[];
  readonly flaws?: readonly Flaw[];
}

/** What lies on one length: `at` is its place among those at hand, null is the cloth to be bought. */
export interface LaidLength {
  readonly at: number | null;
  readonly plan: LayPlan;
  readonly placed: readonly PlacedStretch[];
}

export type LengthsProgress =
  | { readonly evaluations: number; readonly lengths: readonly LaidLength[]; readonly refusals: null }
  | { readonly evaluations: number; readonly lengths: null; readonly refusals: readonly LayRefusal[] };

export interface LengthsSettings extends Omit<LayRunSettings, 'start'> {
  /** Without it what is at hand must do. */
  readonly mayBuy: boolean;
}

/** Of the work, what is spent on one try to lay one thing more on a length at hand. */
const ONE_TRY = 0.02;
/** With fewer trial places nothing is found on a length that holds its pieces well but not easily. */
const LEAST_TRY = 1000;
/** After so many things in a row that find no room a length counts as full. */
const FULL_AFTER = 5;

/**
 * Lays pieces on the lengths at hand, in their order, and what is left on cloth to be bought. Pieces that must be cut
 * from one length (`together`) are never divided, nor are the copies of a piece. The largest are tried first.
 */
export function* layOnLengths(
  pieces: readonly LayPiece[],
  cloth: LayCloth,
  atHand: readonly ClothAtHand[],
  { mayBuy, ...settings }: LengthsSettings,
  pack: Packer = startPacking,
  store: ShapeStore = shapeStore(),
): Generator<LengthsProgress, LengthsProgress, undefined> {
  const lengths: LaidLength[] = [];
  let rest = units(pieces);
  let spent = 0;
  for (const [at, hand] of atHand.entries()) {
    const on = clothAtHand(cloth, hand);
    const chosen: Unit[] = [];
    let laid: LaidLength | null = null;
    let failed = 0;
    for (const unit of rest) {
      if (failed >= FULL_AFTER) break;
      const wanted = [...chosen, unit];
      if (wanted.reduce((sum, { area }) => sum + area, 0) > areaOf(on, hand)) continue;
      const planned = planLay(only(pieces, wanted), on, [], store);
      if (!planned.ok) continue;
      const evaluations = Math.max(LEAST_TRY, Math.ceil(settings.evaluations * ONE_TRY));
      let placed: readonly PlacedStretch[] | null = null;
      let last = 0;
      for (const step of runLay(planned.plan, { ...settings, evaluations }, pack)) {
        spent += step.evaluations - last;
        last = step.evaluations;
        yield { evaluations: spent, lengths, refusals: null };
        placed = step.best;
        if (placed !== null) break;
      }
      if (placed === null) failed++;
      else {
        failed = 0;
        chosen.push(unit);
        laid = { at, plan: planned.plan, placed };
      }
    }
    if (laid !== null) lengths.push(laid);
    rest = rest.filter((unit) => !chosen.includes(unit));
  }
  const [first, ...more] = rest;
  if (first === undefined) return { evaluations: spent, lengths, refusals: null };
  if (!mayBuy) {
    const piece = pieces[first.pieces[0] ?? 0]?.cut.label.title ?? '';
    const left = rest.flatMap((unit) => unit.pieces);
    const values = { cloth: cloth.name, piece, more: left.length - 1 };
    return {
      evaluations: spent,
      lengths: null,
      refusals: [refusal('lay.not-enough', values, left)],
    };
  }
  const planned = planLay(only(pieces, [first, ...more]), cloth, [], store);
  if (!planned.ok) return { evaluations: spent, lengths: null, refusals: planned.refusals };
  const evaluations = Math.max(1, settings.evaluations - spent);
  let best: LaidLength | null = null;
  for (const step of runLay(planned.plan, { ...settings, evaluations }, pack)) {
    best = step.best === null ? null : { at: null, plan: planned.plan, placed: step.best };
    yield {
      evaluations: spent + step.evaluations,
      lengths: best === null ? lengths : [...lengths, best],
      refusals: null,
    };
  }
  if (best !== null)
    return { evaluations: settings.evaluations, lengths: [...lengths, best], refusals: null };
  return {
    evaluations: settings.evaluations,
    lengths: null,
    refusals: [
      refusal(
        'lay.does-not-fit',
        { cloth: cloth.name },
        rest.flatMap((unit) => unit.pieces),
      ),
    ],
  };
}

/** Pieces that go to one length. */
interface Unit {
  readonly pieces: readonly number[];
  readonly area: number;
}

function units(pieces: readonly LayPiece[]): readonly Unit[] {
  const groups = new Map<string, number[]>();
  for (const [i, piece] of pieces.entries()) {
    if ((piece.copies ?? piece.cut.piece.cutting.copies) === 0) continue;
    const name = piece.together === undefined ? `piece ${i}` : `group ${piece.together}`;
    groups.set(name, [...(groups.get(name) ?? []), i]);
  }
  const made = [...groups.values()].map((members): Unit => {
    const area = members.reduce((sum, i) => sum + (pieces[i] === undefined ? 0 : wantedArea(pieces[i])), 0);
    return { pieces: members, area };
  });
  return made.sort((a, b) => b.area - a.area);
}

function wantedArea({ cut, copies }: LayPiece): number {
  const whole = cut.piece.cutting.as === 'fold' ? 2 : 1;
  return Math.abs(outlineArea(cut.cuttingLine)) * whole * (copies ?? cut.piece.cutting.copies);
}

/** The same list with nothing of the other pieces, so that places in it stay what they are. */
function only(pieces: readonly LayPiece[], chosen: readonly Unit[]): readonly LayPiece[] {
  return justThese(pieces, new Set(chosen.flatMap((unit) => unit.pieces)));
}

const justThese = (pieces: readonly LayPiece[], wanted: ReadonlySet<number>): readonly LayPiece[] =>
  pieces.map((piece, i) => (wanted.has(i) ? piece : { ...piece, copies: 0 }));

/** Plans what is to lie on one length at hand, or on cloth to be bought (null); `wanted`: places in the list of pieces. */
export function planOnLength(
  pieces: readonly LayPiece[],
  wanted: ReadonlySet<number>,
  cloth: LayCloth,
  hand: ClothAtHand | null,
  pins: readonly LayPin[],
  store: ShapeStore,
): LayPlanResult {
  const on = hand === null ? cloth : clothAtHand(cloth, hand);
  return planLay(justThese(pieces, wanted), on, pins, store);
}

function clothAtHand(cloth: LayCloth, { length, remnant, flaws }: ClothAtHand): LayCloth {
  const { longest, remnant: _, flaws: __, ...rules } = cloth;
  const end = length ?? longest;
  return {
    ...rules,
    ...(remnant === undefined ? {} : { remnant, folding: 'single' as const }),
    ...(remnant !== undefined || end === undefined ? {} : { longest: end }),
    ...(flaws === undefined ? {} : { flaws }),
  };
}

function areaOf(cloth: LayCloth, { remnant }: ClothAtHand): number {
  if (remnant !== undefined) return Math.abs(polygonArea(remnant));
  return cloth.usableWidth * (cloth.longest ?? Number.POSITIVE_INFINITY);
}
