import { gatheredPanels } from './gathered-panels.ts';
import { skirtLength } from './skirt-params.ts';
import { cannot, defineStep, done, ratioParam } from './step.ts';
import { tellPanels } from './tell-panels.ts';
import { matchWaist } from './waist-notches.ts';
import { closingBelowWaist, waistRing } from './waist-ring.ts';

/** Straight widths of cloth gathered to the waist. */
export const gatheredSkirt = defineStep({
  id: 'gathered-skirt',
  stage: 'skirt',
  kind: 'skirt',
  params: {
    length: skirtLength,
    ratio: ratioParam(
      () => 2,
      [1.2, 6],
      'satin and taffeta 1.5-2 (common practice), medium cloth 2, light 3-4 (Lo, Pattern Cutting, as reported); about 6 is the limit',
    ),
  },
  words: {
    title: 'Gathered skirt',
    about: 'Straight widths of cloth, gathered to the waist.',
    length: 'Finished length from the waist seam',
    ratio: 'Times the waist',
    'no-waist': 'The bodice has no waist seam to sew a skirt to.',
    'piece.front': 'Skirt front',
    'piece.back': 'Skirt back',
    draw: 'Gathered skirt',
  },
  apply: ({ garment, bench, clothWidth }, values) => {
    const ring = waistRing(garment);
    if (ring === null) return cannot('gathered-skirt.no-waist');
    const length = bench.rounded(values.length);
    const parts = gatheredPanels({
      ring,
      ratio: values.ratio,
      length,
      usableWidth: clothWidth.skirt,
      cloth: 'skirt',
      layer: 'shell',
      prefix: 'skirt',
      titles: {
        front: { key: 'gathered-skirt.piece.front', values: {} },
        back: { key: 'gathered-skirt.piece.back', values: {} },
      },
      closingBelow: closingBelowWaist(garment),
      seamName: 'skirt-waist',
    });
    tellPanels(bench, { key: 'gathered-skirt.draw', values: {} }, parts.pieces);
    const matched = matchWaist(garment, ring, 'skirt', parts.pieces);
    return done({
      ...matched.garment,
      pieces: [...matched.garment.pieces, ...matched.pieces],
      seams: [...matched.garment.seams, ...parts.seams],
    });
  },
});
