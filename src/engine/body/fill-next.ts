import type { BodyInput } from './body.ts';
import { type FillId, filledBody, filledValue } from './fill-model.ts';
import { conditioned, covarianceOf, type Joint, meanOf } from './fill-normal.ts';
import { MEASURE_IDS, type MeasureId } from './measures.ts';

/** The measurement that would help most. */
export interface NextMeasure {
  readonly id: MeasureId | 'weight';
  /** How much of the uncertainty of the dress it would take away: 0 to 1 of the sum of squared spreads. */
  readonly narrows: number;
}

/**
 * What to measure next so that the measures a dress rests on become surest: of all that were not measured the one that
 * takes most off the sum of the squares of what is still open, mm. Also what the dress does not rest on may be it: the
 * weight, or the height. Null when nothing is open, or too little is known to tell.
 */
export function measureNext(input: BodyInput, needed: readonly MeasureId[]): NextMeasure | null {
  const joint = filledBody(input);
  if (joint === null) return null;
  const open = needed.filter((id) => input.measured[id] === undefined);
  const before = uncertainty(joint, open);
  if (before === 0) return null;
  const weight = input.weight ?? null;
  const candidates: readonly (MeasureId | 'weight')[] = [
    ...MEASURE_IDS.filter((id) => input.measured[id] === undefined),
    ...(weight === null ? ['weight' as const] : []),
  ];
  return candidates
    .filter((id) => covarianceOf(joint, id, id) > 0)
    .map((id) => {
      // What is learned does not hang on the value that is found; its middle stands for it.
      const after = uncertainty(conditioned(joint, [[id, meanOf(joint, id)]]), open);
      return { id, narrows: 1 - after / before };
    })
    .reduce<NextMeasure | null>(
      (best, one) => (best === null || one.narrows > best.narrows ? one : best),
      null,
    );
}

const uncertainty = (joint: Joint<FillId>, ids: readonly MeasureId[]): number =>
  ids.reduce((sum, id) => sum + filledValue(joint, id).spread ** 2, 0);
