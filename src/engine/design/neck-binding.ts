import { partsNeckAtBack } from '../piece/index.ts';
import { biasStrip, bindingSeams, bindingWays, finishedWidth, tellBiasStrip } from './bias-strip.ts';
import { neckLength, neckRing } from './neck-ring.ts';
import { COMMON_PRACTICE, cannot, choiceParam, defineStep, done } from './step.ts';

/** A bias strip that finishes the neck, turned inside or wrapped round the edge. */
export const neckBinding = defineStep({
  id: 'neck-binding',
  stage: 'finish',
  kind: 'neck-finish',
  params: { way: choiceParam(bindingWays, 'inside', COMMON_PRACTICE), finishedWidth },
  words: {
    title: 'Neck binding',
    about: 'A bias strip that finishes the neck; it lies flatter on a child than a loose facing.',
    way: 'Way',
    'way.inside': 'Turned inside and stitched down',
    'way.bound': 'Wrapped round the edge, seen on both sides',
    finishedWidth: 'Finished width',
    'open-shoulders':
      'Shoulders that open with press studs part the neck in two. Finish it with a facing or a lining.',
    piece: 'Neck binding',
  },
  apply: ({ garment, bench }, values) => {
    if (garment.closing?.kind === 'shoulder-studs') return cannot('neck-binding.open-shoulders');
    const wish = {
      id: 'neck-binding',
      title: { key: 'neck-binding.piece', values: {} },
      length: 2 * neckLength(garment),
      finished: bench.rounded(values.finishedWidth),
      copies: 1,
    };
    const strip = biasStrip(wish);
    tellBiasStrip(bench, strip, wish, values.way);
    return done({
      ...garment,
      pieces: [...garment.pieces, strip],
      seams: [...garment.seams, ...bindingSeams(strip, neckRing(garment), !partsNeckAtBack(garment.closing))],
    });
  },
});
