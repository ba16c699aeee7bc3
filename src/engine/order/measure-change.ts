import { formatLength, type UnitSystem } from '../units/index.ts';
import { say } from '../words/index.ts';

/** Less than any ruler shows, mm. */
const LEAST_CHANGE = 0.5;

/** By how much a measure (mm) has changed from one measuring to the next, in words. */
export function changeWords(before: number, now: number, units: UnitSystem): string {
  const by = now - before;
  if (Math.abs(by) < LEAST_CHANGE) return say('measure.same', {}, units);
  return say(
    by > 0 ? 'measure.more-by' : 'measure.less-by',
    { by: formatLength(Math.abs(by), units) },
    units,
  );
}
