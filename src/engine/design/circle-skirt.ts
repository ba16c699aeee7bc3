import { HALVES } from './bodice.ts';
import { skirtLength } from './skirt-params.ts';
import { sewQuarters, skirtQuarter, tellQuarters } from './skirt-quarter.ts';
import { COMMON_PRACTICE, cannot, choiceParam, defineStep, done } from './step.ts';
import { waistRing } from './waist-ring.ts';

/** Which part of a full circle the whole skirt is. */
const PARTS = { full: 1, 'three-quarter': 0.75, half: 0.5, quarter: 0.25 } as const;
type Part = keyof typeof PARTS;
const PART_NAMES = ['full', 'three-quarter', 'half', 'quarter'] as const satisfies readonly Part[];

/** A skirt cut as part of a ring, flat at the waist. */
export const circleSkirt = defineStep({
  id: 'circle-skirt',
  stage: 'skirt',
  kind: 'skirt',
  params: {
    part: choiceParam(PART_NAMES, 'half', COMMON_PRACTICE),
    length: skirtLength,
  },
  words: {
    title: 'Circle skirt',
    about: 'Cut as part of a circle; smooth at the waist, full at the hem.',
    part: 'Part of a circle',
    'part.full': 'Full circle',
    'part.three-quarter': 'Three quarters',
    'part.half': 'Half circle',
    'part.quarter': 'Quarter circle',
    length: 'Finished length from the waist seam',
    'no-waist': 'The bodice has no waist seam to sew a skirt to.',
    'piece.front': 'Skirt front',
    'piece.back': 'Skirt back',
    draw: 'Circle skirt',
  },
  apply: ({ garment, bench }, values) => {
    const ring = waistRing(garment);
    if (ring === null) return cannot('circle-skirt.no-waist');
    const waist = 2 * (ring.frontHalf + ring.backHalf);
    // A waist of W fits the part f of a circle at r = W / (2 pi f).
    const radius = bench.rounded(waist / (2 * Math.PI * PARTS[values.part]));
    const length = bench.rounded(values.length);
    const quarters = HALVES.map((half) =>
      skirtQuarter(garment, {
        half,
        id: `skirt-${half}`,
        title: { key: `circle-skirt.piece.${half}`, values: {} },
        radius,
        waist: ring[`${half}Half`],
        length,
      }),
    );
    const drawn = quarters.map((piece) => ({ piece, radius }));
    tellQuarters(bench, { key: 'circle-skirt.draw', values: {} }, drawn, length);
    return done(sewQuarters(garment, ring, quarters));
  },
});
