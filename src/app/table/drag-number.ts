import type { Point } from '../../engine/geometry/index.ts';
import { type Ruler, roundToRuler } from '../../engine/units/index.ts';
import type { GovernedPoint } from './governed-places.ts';
import type { ParamNow } from './param-now.ts';

/** Ratios go by twentieths: finer can't be seen. */
const RATIO_STEP = 0.05;

/**
 * The number that brings the dragged point nearest to `wished`: along the way that it moves, within the range, on a
 * mark of her ruler. `at` is where the point lies while the number is `now.value`; both in the piece's coordinates.
 */
export function draggedNumber(
  now: ParamNow,
  { moves }: Pick<GovernedPoint, 'moves'>,
  at: Point,
  wished: Point,
  ruler: Ruler,
): number {
  const square = moves.x * moves.x + moves.y * moves.y;
  if (square === 0) return now.value;
  const by = ((wished.x - at.x) * moves.x + (wished.y - at.y) * moves.y) / square;
  return onRuler(now, now.value + by, ruler);
}

/** The nearest mark of the ruler within the range; the end of the range where no mark lies in it. */
function onRuler({ kind, range }: ParamNow, value: number, ruler: Ruler): number {
  const step = kind === 'length' ? ruler.step : RATIO_STEP;
  const marked =
    kind === 'length' ? roundToRuler(value, ruler) : Math.round(Math.round(value / step) * step * 100) / 100;
  const [least, most] = range;
  const inRange = (mm: number): boolean => mm >= least - 1e-6 && mm <= most + 1e-6;
  if (inRange(marked)) return marked;
  const back = marked < least ? Math.ceil(least / step - 1e-9) * step : Math.floor(most / step + 1e-9) * step;
  return inRange(back) ? back : Math.min(most, Math.max(least, value));
}
