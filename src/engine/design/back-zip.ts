import type { ZipClosing } from '../piece/index.ts';
import { inches, type UnitSystem } from '../units/index.ts';
import { belowWaist, centreBackLength, openBack } from './back-opening.ts';
import { COMMON_PRACTICE, choiceParam, defineStep, done, lengthParam } from './step.ts';

/** A concealed zip loses about 1 1/2 in of its named length once sewn: 8 in gave 6 1/2 (flower-girl sewing notes). */
const CONCEALED_LOSS = inches(1.5);
/** Zips are sold in steps of 2 in or 5 cm (common practice, no source). */
const ZIP_STEPS = { in: inches(2), cm: 50 } as const;
/** The under side of a lapped zip is folded this far past the centre line (common practice, no source). */
const UNDER_FOLD = inches(1 / 8);

const KINDS = { centred: 'centred-zip', concealed: 'concealed-zip', lapped: 'lapped-zip' } as const;

/** Named length, mm, of the shortest zip on sale that opens a dress so far. */
export function zipToBuy(kind: ZipClosing['kind'], openingLength: number, units: UnitSystem): number {
  const needed = openingLength + (kind === 'concealed-zip' ? CONCEALED_LOSS : 0);
  return Math.ceil(needed / ZIP_STEPS[units] - 1e-9) * ZIP_STEPS[units];
}

/** Opens the centre back for a zip, down from the neck and past the waist. */
export const backZip = defineStep({
  id: 'back-zip',
  stage: 'closing',
  kind: 'closing',
  params: {
    way: choiceParam(['centred', 'concealed', 'lapped'], 'concealed', COMMON_PRACTICE),
    belowWaist,
    lap: lengthParam(
      () => inches(3 / 4),
      () => [inches(5 / 8), inches(1)],
      'lapped zip: 5/8 to 1 in turned in on the side that laps over (common practice, no source)',
    ),
  },
  words: {
    title: 'Back zip',
    about: 'A zip in the centre back, from the neck to below the waist.',
    way: 'Kind of zip',
    'way.centred': 'Centred, stitched on both sides',
    'way.concealed': 'Concealed in the seam',
    'way.lapped': 'Lapped: the right back laps over the zip',
    belowWaist: 'Runs below the waist by',
    lap: 'Turned in on the side that laps over (lapped zip)',
    draw: 'Lapped zip',
    'draw.lapped':
      'On the right back allow {lap} beyond the centre line and turn it in on that line. On the left back fold the allowance {under} outside the centre line: the zip is stitched there, and the right back covers it.',
  },
  apply: ({ garment, bench, units }, { way, belowWaist: below, lap }) => {
    const openingLength = centreBackLength(garment) + bench.rounded(below);
    if (way === 'lapped') {
      bench.part({ key: 'back-zip.draw', values: {} });
      bench.tell('back-zip.draw.lapped', { lap: { mm: lap }, under: { mm: UNDER_FOLD } });
    }
    return done({
      ...openBack(garment),
      closing: {
        kind: KINDS[way],
        openingLength,
        zipLength: zipToBuy(KINDS[way], openingLength, units),
      },
    });
  },
});
