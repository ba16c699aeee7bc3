import type { Seam } from '../piece/index.ts';
import { type Check, tell } from './check.ts';
import { placeOfSeam, type Rule, seamWords } from './look.ts';
import { SLACK } from './tolerance.ts';

/**
 * Cut to finished: heavy cloth 1.5, medium 2, light 3 to 4 (D. C. Lo, Pattern Cutting, as reported by a blog). Below
 * about 1.2 it is ease rather than gathers (common practice, no source).
 */
const RATIO = [1.2, 4] as const;

export const gatherRatio: Rule = (look) =>
  look.garment.seams.flatMap((seam) =>
    seam.join.kind === 'gathered' ? [checkRatio(seam, seam.join.ratio)] : [],
  );

function checkRatio(seam: Seam, ratio: number): Check {
  const [least, most] = RATIO;
  const variant =
    ratio < 1 - SLACK ? 'none' : ratio < least - SLACK ? 'flat' : ratio > most + SLACK ? 'thick' : 'ok';
  const level = ({ none: 'stop', flat: 'note', thick: 'warn', ok: 'ok' } as const)[variant];
  const values = { seam: seamWords(seam), ratio: Math.round(ratio * 100) / 100, least, most };
  return {
    code: 'gather-ratio',
    level,
    measured: { ratio },
    allowed: { from: { ratio: least }, to: { ratio: most } },
    where: placeOfSeam(seam),
    say: tell(`check.gather-ratio.${variant}`, values),
    todo: variant === 'ok' ? null : tell(`check.gather-ratio.${variant}.todo`, values),
  };
}
