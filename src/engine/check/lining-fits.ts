import { type Seam, type SeamName, seamsNamed } from '../piece/index.ts';
import { type Check, tell } from './check.ts';
import { type Look, placeOfSeam, type Rule, seamWords, sewnTimes, sideLength } from './look.ts';
import { SEAM_AGREES, SLACK } from './tolerance.ts';
import { type Growth, growthWhenTrimmed } from './trimmed-edge.ts';

/** A lining is trimmed 2 to 3 mm at neck and armhole, so that the seam rolls inside (common practice, no source). */
const MOST_TRIMMED = 3;
/** Thick cloth may want more, mm; beyond this the difference is no turn of cloth any more (our own limit). */
const NO_LONGER_TRIM = 5;

/**
 * The lining sewn to the shell: at the waist as long as the shell; at neck and armhole different by no more than
 * the trim explains. A hollow edge that is trimmed comes out longer and one that bulges shorter, so the sign of what
 * is allowed follows the shape of the shell's edge. Where one is gathered to the other, the gathers are checked instead.
 */
export const liningFits: Rule = (look) => [
  ...laid(look, 'waist-lining').map((seam) => checkLining(look, seam, [0, 0])),
  ...laid(look, 'neck-lining', 'armhole-lining').map((seam) =>
    checkLining(look, seam, growthWhenTrimmed(look, seam.a)),
  ),
];

const laid = (look: Look, ...names: readonly SeamName[]): readonly Seam[] =>
  seamsNamed(look, ...names).filter(({ join }) => join.kind !== 'gathered');

function checkLining(look: Look, seam: Seam, [least, most]: Growth): Check {
  const times = sewnTimes(look, seam);
  const shell = sideLength(look, seam.a) / times;
  const lining = sideLength(look, seam.b) / times;
  const shortest = (trim: number): number => shell + Math.min((least * trim) / times, 0) - SEAM_AGREES;
  const longest = (trim: number): number => shell + Math.max((most * trim) / times, 0) + SEAM_AGREES;
  const within = (trim: number): boolean =>
    lining >= shortest(trim) - SLACK && lining <= longest(trim) + SLACK;
  const [from, to] = [shortest(MOST_TRIMMED), longest(MOST_TRIMMED)];
  const variant = within(MOST_TRIMMED) ? 'ok' : lining < from ? 'short' : 'long';
  const off = variant === 'short' ? from - lining : lining - to;
  const values = {
    seam: seamWords(seam),
    shell: { mm: shell },
    lining: { mm: lining },
    off: { mm: off },
  };
  return {
    code: 'lining-fits',
    level: variant === 'ok' ? 'ok' : within(NO_LONGER_TRIM) ? 'warn' : 'stop',
    measured: { mm: lining },
    allowed: { from: { mm: from }, to: { mm: to } },
    where: placeOfSeam(seam),
    say: tell(`check.lining-fits.${variant}`, values),
    todo: variant === 'ok' ? null : tell('check.lining-fits.todo', values),
  };
}
