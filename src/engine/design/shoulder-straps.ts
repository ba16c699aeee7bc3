import { COMMON_PRACTICE, defineStep, done, lengthParam } from './step.ts';
import { stripPiece, tellStrip } from './strip.ts';

/** Two doubled straps over the shoulders, from the front edge of the bodice to the back one. */
export const shoulderStraps = defineStep({
  id: 'shoulder-straps',
  stage: 'trim',
  kind: 'straps',
  params: {
    strapWidth: lengthParam(
      () => 25,
      () => [6, 100],
      COMMON_PRACTICE,
    ),
    strapLength: lengthParam(
      ({ body }) => 1.6 * body.values.scyeDepth.mm + 40,
      () => [80, 700],
      'over the shoulder from chest to shoulder blade and 4 cm to spare; pin it on at the fitting (common practice, no source)',
    ),
  },
  words: {
    title: 'Shoulder straps',
    about: 'Two straps of doubled cloth over the shoulders.',
    strapWidth: 'Finished width',
    strapLength: 'Length',
    'piece.strap': 'Shoulder strap',
    draw: 'Shoulder straps',
    'draw.pin':
      'Sew the straps to the front edge. Pin the other ends at the fitting, and sew them down firmly on both sides: a strap that comes loose hangs.',
  },
  apply: ({ garment, bench }, values) => {
    const width = bench.rounded(values.strapWidth);
    const strap = stripPiece({
      id: 'strap',
      title: { key: 'shoulder-straps.piece.strap', values: {} },
      length: bench.rounded(values.strapLength),
      width,
      upper: 'fold',
      lower: 'free',
      left: 'attach',
      right: 'attach',
      cutting: { as: 'fold', copies: 2 },
      grain: 'along',
    });
    bench.part({ key: 'shoulder-straps.draw', values: {} });
    tellStrip(bench, strap, width);
    bench.tell('shoulder-straps.draw.pin', {});
    return done({ ...garment, pieces: [...garment.pieces, strap] });
  },
});
