import { edgeLength, pieceOf } from '../piece/index.ts';
import { armEdgesOf, openArm } from './arm-opening.ts';
import { biasStrip, bindingSeams, bindingWays, finishedWidth, tellBiasStrip } from './bias-strip.ts';
import { COMMON_PRACTICE, cannot, choiceParam, defineStep, done } from './step.ts';

/** A bias strip round each armhole, or round the edge of a cap, of a dress without sleeves. */
export const armholeBinding = defineStep({
  id: 'armhole-binding',
  stage: 'finish',
  kind: 'armhole-finish',
  params: { way: choiceParam(bindingWays, 'inside', COMMON_PRACTICE), finishedWidth },
  words: {
    title: 'Armhole binding',
    about: 'A bias strip that finishes the armholes of a dress without sleeves.',
    way: 'Way',
    'way.inside': 'Turned inside and stitched down',
    'way.bound': 'Wrapped round the edge, seen on both sides',
    finishedWidth: 'Finished width',
    sleeved: 'A sleeve is sewn into the armhole, so there is no edge left to bind. Leave out one of the two.',
    piece: 'Armhole binding',
  },
  apply: ({ garment, bench }, values) => {
    const arm = openArm(garment);
    if (arm === null) return cannot('armhole-binding.sleeved');
    const ring = [...armEdgesOf(garment, 'front', arm, true), ...armEdgesOf(garment, 'back', arm)];
    const wish = {
      id: 'armhole-binding',
      title: { key: 'armhole-binding.piece', values: {} },
      length: ring.reduce((sum, at) => sum + edgeLength(pieceOf(garment, at.piece), at.edge), 0),
      finished: bench.rounded(values.finishedWidth),
      copies: 2,
    };
    const strip = biasStrip(wish);
    tellBiasStrip(bench, strip, wish, values.way);
    return done({
      ...garment,
      pieces: [...garment.pieces, strip],
      seams: [...garment.seams, ...bindingSeams(strip, ring, true)],
    });
  },
});
