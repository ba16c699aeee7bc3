import { inches } from '../units/index.ts';
import { HALVES } from './bodice.ts';
import { skirtLength } from './skirt-params.ts';
import { sewQuarters, skirtQuarter, tellQuarters } from './skirt-quarter.ts';
import { cannot, defineStep, done, lengthParam, type StepContext } from './step.ts';
import { waistRing } from './waist-ring.ts';

/** A quarter may turn this far from its centre to its side, radians; beyond it is a circle skirt. */
const WIDEST_TURN = Math.PI / 4;
/** Least flare of a quarter, mm at the hem; below it the waist can't be drawn as an arc of any use. */
const LEAST_FLARE = 10;
/** Hem of a flared skirt: 1 1/2 in (T. Johnson, It's Fun to Sew: A Cotton School Dress, state extension circular). */
export const FLARED_HEM = inches(1.5);

/** Smooth at the waist, and wider to the hem by straight side seams. */
export const aLineSkirt = defineStep({
  id: 'a-line-skirt',
  stage: 'skirt',
  kind: 'skirt',
  params: {
    length: skirtLength,
    hem: lengthParam(
      usualHem,
      (c) => [c.body.values.hipGirth.mm, 4000],
      'walking room at knee length is 1.2 to 1.5 times the hips (common practice, no source)',
    ),
  },
  words: {
    title: 'A-line skirt',
    about: 'Smooth at the waist, wider to the hem; no gathers and no darts.',
    length: 'Finished length from the waist seam',
    hem: 'Round the hem',
    'no-waist': 'The bodice has no waist seam to sew a skirt to.',
    'too-narrow':
      'A hem of {hem} gives no flare below a waist of {waist}. Take {least} or more, or gather a straight skirt.',
    'too-wide':
      'A hem of {hem} is too wide for an A-line skirt of this length. Take {most} or less, a longer skirt, or a circle skirt.',
    'piece.front': 'Skirt front',
    'piece.back': 'Skirt back',
    draw: 'A-line skirt',
  },
  apply: ({ garment, bench }, values) => {
    const ring = waistRing(garment);
    if (ring === null) return cannot('a-line-skirt.no-waist');
    const waist = 2 * (ring.frontHalf + ring.backHalf);
    const length = bench.rounded(values.length);
    const flare = (values.hem - waist) / 4;
    if (flare < LEAST_FLARE) {
      return cannot('a-line-skirt.too-narrow', {
        hem: { mm: values.hem },
        waist: { mm: waist },
        least: { mm: waist + 4 * LEAST_FLARE },
      });
    }
    if (flare > WIDEST_TURN * length) {
      const most = waist + 4 * WIDEST_TURN * length;
      return cannot('a-line-skirt.too-wide', { hem: { mm: values.hem }, most: { mm: most } });
    }
    const quarters = HALVES.map((half) => {
      // Waist and hem are arcs about one point: each quarter gains the same flare, so its sides slant alike.
      const arc = ring[`${half}Half`];
      const radius = bench.rounded((arc * length) / flare);
      const piece = skirtQuarter(garment, {
        half,
        id: `skirt-${half}`,
        title: { key: `a-line-skirt.piece.${half}`, values: {} },
        radius,
        waist: arc,
        length,
        hemAllowance: FLARED_HEM,
      });
      return { piece, radius };
    });
    tellQuarters(bench, { key: 'a-line-skirt.draw', values: {} }, quarters, length);
    return done(
      sewQuarters(
        garment,
        ring,
        quarters.map(({ piece }) => piece),
      ),
    );
  },
});

/** 1.5 times the hips, and never so little that no flare is left. */
function usualHem({ body, garment }: StepContext): number {
  const ring = waistRing(garment);
  const waist = ring === null ? 0 : 2 * (ring.frontHalf + ring.backHalf);
  return Math.max(1.5 * body.values.hipGirth.mm, 1.2 * waist);
}
