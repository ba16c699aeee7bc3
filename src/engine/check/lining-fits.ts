import { type Check, tell } from './check.ts';
import { type Look, placeOfSeam, type Rule, seamsNamed, seamWords, sideLength } from './look.ts';
import { SEAM_AGREES, SLACK } from './tolerance.ts';
import { growthWhenTrimmed } from './trimmed-edge.ts';

/** A lining is trimmed 2 to 3 mm at neck and armhole, so that the seam rolls inside (common practice, no source). */
const MOST_TRIMMED = 3;

/**
 * The lining sewn to the shell: at the waist as long as the shell; at neck and armhole different by no more than
 * the trim explains. A hollow edge that is trimmed comes out longer and one that bulges shorter, so the sign of what
 * is allowed follows the shape of the shell's edge.
 */
export const liningFits: Rule = (look) => [
  ...seamsNamed(look, 'waist-lining').map((seam) => checkLining(look, seam, 0)),
  ...seamsNamed(look, 'neck-lining', 'armhole-lining').map((seam) =>
    checkLining(look, seam, MOST_TRIMMED * growthWhenTrimmed(look, seam.a)),
  ),
];

function checkLining(look: Look, seam: ReturnType<typeof seamsNamed>[number], explained: number): Check {
  const shell = sideLength(look, seam.a);
  const lining = sideLength(look, seam.b);
  const from = shell + Math.min(explained, 0) - SEAM_AGREES;
  const to = shell + Math.max(explained, 0) + SEAM_AGREES;
  const variant = lining < from - SLACK ? 'short' : lining > to + SLACK ? 'long' : 'ok';
  const values = {
    seam: seamWords(seam),
    shell: { mm: shell },
    lining: { mm: lining },
    off: { mm: variant === 'short' ? from - lining : lining - to },
  };
  return {
    code: 'lining-fits',
    level: variant === 'ok' ? 'ok' : 'stop',
    measured: { mm: lining },
    allowed: { from: { mm: from }, to: { mm: to } },
    where: placeOfSeam(seam),
    say: tell(`check.lining-fits.${variant}`, values),
    todo: variant === 'ok' ? null : tell('check.lining-fits.todo', values),
  };
}
