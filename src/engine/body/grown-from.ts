import type { Saying, WordKey } from '../words/index.ts';
import type { GrownFrom } from './grow-body.ts';

/** How a value for the day was found, to stand in a sentence. */
export function grownFromSaying(from: GrownFrom): Saying {
  const saying = (key: WordKey, values: Saying['values'] = {}): Saying => ({ key, values });
  switch (from.kind) {
    case 'measured':
      return saying('growth.from.measured');
    case 'with-height':
      return saying('growth.from.with-height');
    case 'held':
      return saying('growth.from.held');
    case 'centile': {
      const reference = { word: `growth.reference.${from.reference}` satisfies WordKey };
      const isPulled = Math.abs(from.zMeasured - from.zEvent) > 0.01;
      return saying(isPulled ? 'growth.from.to-the-middle' : 'growth.from.keeps-place', { reference });
    }
  }
}
